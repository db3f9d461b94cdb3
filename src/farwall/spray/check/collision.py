"""`collision`: two sprayers whose bodies come too near to one another."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, pairwise

import numpy as np
from numpy.typing import NDArray

from farwall.spray.check.nouns import BODY_M, HAIR, PLACE_M, Fault, SoFar
from farwall.spray.check.people import Person
from farwall.spray.check.world import World

SPRAYING_M = 1.0
"""How far apart two who spray stay, middle to middle: two bodies and half a metre. Rank: guess."""
WALKING_M = 2 * BODY_M
"""How far apart they stay when either walks or rests: two bodies."""


def collisions(
    people: tuple[Person, ...], world: World, so_far: SoFar | None = None
) -> Iterator[Fault]:
    """Each stretch of time in which two sprayers are too near, told at its first moment.

    Between two moments both go straight and evenly, so the least distance is exact. How near
    two came before a minute that is told (`so_far`) is a fact, and not judged.
    """
    sprayers = [person for person in people if person.who.startswith("sprayer")]
    for one, two in combinations(sprayers, 2):
        was_near = False
        for start, end in pairwise(_moments(one, two)):
            both = _sprays(one, start, end) and _sprays(two, start, end)
            if so_far is not None and so_far.is_past(end):
                continue
            limit = SPRAYING_M if both else WALKING_M
            gap, at_min = _nearest(one, two, start, end)
            near = gap < limit - PLACE_M - HAIR
            if near and not was_near:
                yield _fault(one, two, at_min, world, gap=gap, limit=limit)
            was_near = near


def _moments(one: Person, two: Person) -> list[float]:
    return sorted({*one.moments.ravel().tolist(), *two.moments.ravel().tolist()})


def _sprays(person: Person, start: float, end: float) -> bool:
    middle = (start + end) / 2
    return any(
        piece.sprays and piece.path[0, 2] < middle < piece.path[-1, 2] for piece in person.pieces
    )


def _nearest(one: Person, two: Person, start: float, end: float) -> tuple[float, float]:
    """The least distance between two moments, and when. [m, min]"""
    here, there = (_away(one, two, minute) for minute in _inside(start, end))
    way = there - here
    square = float(way @ way)
    share = float(np.clip(-(here @ way) / square, 0.0, 1.0)) if square > 0 else 0.0
    return float(np.hypot(*(here + share * way))), start + share * (end - start)


def _inside(start: float, end: float) -> tuple[float, float]:
    """A hair inside the stretch: at its very ends another leg may be asked."""
    hair = min(HAIR, (end - start) / 4)
    return start + hair, end - hair


def _away(one: Person, two: Person, minute: float) -> NDArray[np.float64]:
    return np.subtract(two.at(minute), one.at(minute))


def _fault(
    one: Person, two: Person, at_min: float, world: World, *, gap: float, limit: float
) -> Fault:
    middle = np.add(one.at(at_min), two.at(at_min)) / 2
    fields = [p.field for p in (*one.pieces, *two.pieces) if p.path[0, 2] <= at_min + HAIR]
    doing = "both spraying" if limit == SPRAYING_M else "on their way"
    return Fault(
        "collision",
        fields[-1] if fields else one.pieces[0].field,
        at_min,
        f"At {at_min:.2f} min the {one.who} and the {two.who} are {gap:.2f} m apart, {doing}, "
        f"{world.place(float(middle[0]), float(middle[1]))}; they need {limit:.2f} m.",
    )
