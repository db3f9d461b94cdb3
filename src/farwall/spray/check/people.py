"""One person's day: bands and walks in a row, with the waiting between them.

Before the first piece a person stands where it begins, after the last where it
ends: nobody appears or vanishes.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

import numpy as np
import shapely
from numpy.typing import NDArray

from farwall.spray.check.nouns import (
    HAIR,
    PLACE_M,
    TIME_MIN,
    Fault,
    Path,
    Piece,
    PlanRead,
    SoFar,
)

FASTER = 1.05
"""A walk may be this much faster than the plan's pace before it is a jump."""


@dataclass(frozen=True, eq=False)
class Leg:
    """A straight way at one speed, or a wait, of one person."""

    piece: Piece
    row0: NDArray[np.float64]
    row1: NDArray[np.float64]

    @property
    def begins(self) -> float:
        """Its first moment."""
        return float(self.row0[2])

    @property
    def ends(self) -> float:
        """Its last moment."""
        return float(self.row1[2])

    def at(self, minute: float) -> tuple[float, float]:
        """Where the person is at a moment of this leg."""
        lasts = self.ends - self.begins
        share = min(max((minute - self.begins) / lasts, 0.0), 1.0) if lasts > 0 else 0.0
        x, y = self.row0[:2] + share * (self.row1[:2] - self.row0[:2])
        return float(x), float(y)

    def between(self, start: float, end: float) -> shapely.LineString:
        """The part of the way from one moment to another."""
        return shapely.LineString([self.at(start), self.at(end)])


@dataclass(frozen=True, eq=False)
class Person:
    """Somebody on the floor: `sprayer`, `sprayer 2` or `helper`, with all pieces in time."""

    who: str
    pieces: tuple[Piece, ...]
    day: tuple[float, float]

    @cached_property
    def legs(self) -> tuple[Leg, ...]:
        """Ways and waits over the whole day of the plan, each at its own time.

        Pieces that claim the same minutes stay as they are: that is a `jump`, and
        what is trodden on meanwhile is trodden on.
        """
        legs, here = [], _moved(self.pieces[0].path[0], self.day[0])
        for piece in self.pieces:
            legs.append(Leg(piece, here, _moved(here, max(here[2], piece.path[0, 2]))))
            path = piece.path.copy()
            path[:, 2] = np.maximum.accumulate(path[:, 2])
            legs += [Leg(piece, row0, row1) for row0, row1 in pairwise(path)]
            here = path[-1]
        legs.append(Leg(self.pieces[-1], here, _moved(here, max(here[2], self.day[1]))))
        return tuple(legs)

    @cached_property
    def lines(self) -> NDArray[np.object_]:
        """The legs as lines, each wait as a point.

        The index of GEOS finds nothing near a line of no length (seen with 3.14).
        """
        ends = np.array([[leg.row0[:2], leg.row1[:2]] for leg in self.legs])
        waits = (ends[:, 0] == ends[:, 1]).all(axis=1)
        ways = np.asarray(shapely.linestrings(ends))
        ways[waits] = shapely.points(ends[waits, 0])
        return ways

    @cached_property
    def moments(self) -> NDArray[np.float64]:
        """The first and the last moment of each leg, in rows."""
        return np.array([[leg.row0[2], leg.row1[2]] for leg in self.legs])

    @cached_property
    def _ends(self) -> NDArray[np.float64]:
        return np.maximum.accumulate(self.moments[:, 1])

    def at(self, minute: float) -> tuple[float, float]:
        """Where the person is at a moment."""
        index = int(np.searchsorted(self._ends, minute))
        return self.legs[min(index, len(self.legs) - 1)].at(minute)

    def during(self, start: float, end: float) -> list[Leg]:
        """The legs that share some time with a stretch, a moment being the shortest one."""
        shared = (self.moments[:, 0] <= end) & (self.moments[:, 1] >= start)
        return [self.legs[index] for index in np.flatnonzero(shared)]


def _moved(row: NDArray[np.float64], minute: float) -> NDArray[np.float64]:
    return np.array([row[0], row[1], minute])


def people_of(plan: PlanRead) -> tuple[Person, ...]:
    """Everybody who sprays or walks in the plan."""
    pieces = sorted(_pieces(plan), key=lambda piece: (piece.path[0, 2], piece.path[-1, 2]))
    if not pieces:
        return ()
    refills = [refill for field in plan.fields for refill in field.refills]
    day = (
        min([float(p.path[0, 2]) for p in pieces] + [refill.at_min for refill in refills]),
        max([float(p.path[:, 2].max()) for p in pieces] + [r.ready_min for r in refills]),
    )
    names = sorted({piece.who for piece in pieces})
    return tuple(
        Person(name, tuple(piece for piece in pieces if piece.who == name), day) for name in names
    )


def _pieces(plan: PlanRead) -> Iterator[Piece]:
    for field in plan.fields:
        for band in field.bands:
            yield Piece(band.who, field.id, f"band {band.id}", band.path, sprays=True)
        for walk in field.walks:
            yield Piece(walk.who, field.id, "a walk", walk.path)


def jumps(
    people: tuple[Person, ...], *, walk_m_min: float, so_far: SoFar | None = None
) -> Iterator[Fault]:
    """`jump`: being in two places, or going faster than a person walks.

    In a past that is told nobody is too fast: those minutes are facts, and places are still joined.
    """
    for person in people:
        for before, after in pairwise(person.pieces):
            yield from _joint(person.who, before, after)
        for piece in person.pieces:
            if so_far is None or not so_far.is_past(float(piece.path[-1, 2])):
                yield from _pace(person.who, piece, walk_m_min)


def _joint(who: str, before: Piece, after: Piece) -> Iterator[Fault]:
    ended, begun = float(before.path[-1, 2]), float(after.path[0, 2])
    gap_m = float(np.hypot(*(after.path[0, :2] - before.path[-1, :2])))
    if begun < ended - TIME_MIN:
        yield Fault(
            "jump",
            after.field,
            begun,
            f"The {who} begins {after.what} at {begun:.2f} min, {ended - begun:.2f} min before "
            f"{before.what} of field {before.field} is done.",
        )
    if gap_m > PLACE_M + HAIR:
        yield Fault(
            "jump",
            after.field,
            begun,
            f"The {who} ends {before.what} at {ended:.2f} min and begins {after.what} "
            f"{gap_m:.2f} m away from there; no walk leads over.",
        )


def _pace(who: str, piece: Piece, walk_m_min: float) -> Iterator[Fault]:
    path: Path = piece.path
    minutes = np.diff(path[:, 2])
    if (minutes < -HAIR).any():
        at = float(path[int(np.argmin(minutes)), 2])
        yield Fault("jump", piece.field, at, f"Time runs backwards in {piece.what} of the {who}.")
        return
    metres = np.hypot(*np.diff(path[:, :2], axis=0).T)
    allowed = FASTER * walk_m_min * minutes + PLACE_M
    whole = float(metres.sum()) > FASTER * walk_m_min * float(minutes.sum()) + PLACE_M
    # Moments are rounded in files; on a very short leg that alone may look like a hurry.
    legs = metres > allowed + 0.001 * walk_m_min
    if not whole and not legs.any():
        return
    worst = int(np.argmax(metres - allowed))
    pace = float(metres[worst] / max(minutes[worst], HAIR))
    yield Fault(
        "jump",
        piece.field,
        float(path[worst, 2]),
        f"The {who} goes {metres[worst]:.2f} m in {minutes[worst]:.2f} min in {piece.what}: "
        f"{min(pace, 9999):.0f} m a minute, where the plan walks {walk_m_min:g}.",
    )
