"""The tanks: litres in, litres out, and who stands where while one is filled.

A tank holds one coat's mix: what another coat left in it does not count. It
begins the day empty (in mid-day: with what is told to be in it), drains evenly over
each band and gains a refill's litres when the refill is done.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from math import inf

import numpy as np
from numpy.typing import NDArray

from farwall.spray.check.nouns import (
    HAIR,
    LITRE,
    PLACE_M,
    TIME_MIN,
    Band,
    Fault,
    Field,
    PlanRead,
    Refill,
    SoFar,
)
from farwall.spray.check.people import Person
from farwall.spray.check.world import World

FILLS = {
    "sprayer": ("sprayer", None),
    "sprayer 2": ("sprayer 2", None),
    "helper": ("sprayer", "helper"),
    "helper to sprayer 2": ("sprayer 2", "helper"),
}
"""Words of `by`: whose tank is filled, and who brings the stain if not that person."""
BESIDE_M = 1.2
"""How near a helper stands to the tank that is filled or swapped."""


@dataclass(frozen=True, eq=False)
class _Tank:
    """One sprayer's tank in one coat."""

    who: str
    bands: tuple[Band, ...]
    refills: tuple[tuple[Refill, Field], ...]
    since_min: float = -inf
    start_l: float = 0.0
    """What it holds at `since_min`; what was before that is past."""

    def level(self, minute: float, *, after: bool) -> float:
        """Litres at a moment, before or after the refill that is done at it. [L]"""
        gained = sum(
            refill.litres
            for refill, _ in self.refills
            if self.since_min < refill.ready_min < minute or (after and refill.ready_min == minute)
        )
        begins, ends, litres = self._drains
        lasts = np.maximum(ends - begins, HAIR)
        share = np.clip((minute - begins) / lasts, 0.0, 1.0)
        before = np.clip((self.since_min - begins) / lasts, 0.0, 1.0)
        return self.start_l + gained - float(litres @ (share - before))

    @cached_property
    def _drains(self) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
        """When each band begins and ends, and the litres that it takes."""
        rows = [(band.begins, band.ends, band.litres) for band in self.bands]
        begins, ends, litres = np.array(rows).T
        return begins, ends, litres

    def moments(self) -> list[float]:
        """Every moment at which the level can be at an end of its range."""
        found = {refill.ready_min for refill, _ in self.refills}
        for band in self.bands:
            found |= {band.begins, band.ends}
        return sorted(moment for moment in found if moment > self.since_min)


def tank_faults(plan: PlanRead, world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    """`tank-dry`, `overfull` and `refill-astray`."""
    for tank in _tanks(plan):
        yield from _levels(tank, world, people)
        yield from _overfull(tank, plan)
    known = {person.who: person for person in people}
    for field in plan.fields:
        for refill in field.refills:
            if plan.is_past(refill.ready_min):
                continue  # nobody told when a filling of the past was: its pace is not judged
            yield from _astray(refill, field, known, world)


def _tanks(plan: PlanRead) -> Iterator[_Tank]:
    told = plan.so_far
    for coat in {field.coat: None for field in plan.fields}:
        fields = [field for field in plan.fields if field.coat == coat]
        for who in sorted({band.who for field in fields for band in field.bands}):
            yield _Tank(
                who,
                tuple(band for field in fields for band in field.bands if band.who == who),
                tuple(
                    (refill, field)
                    for field in fields
                    for refill in field.refills
                    if FILLS.get(refill.by, ("", None))[0] == who
                ),
                *(_told(told, who) if told and told.coat == coat else ()),
            )


def _told(told: SoFar, who: str) -> tuple[float, float] | tuple[()]:
    """From when on a tank is known, and what it held; of a second one only where it is told."""
    litres = told.tank_l if who == "sprayer" else told.tank_2_l
    return () if litres is None else (told.at_min, litres)


def _levels(tank: _Tank, world: World, people: tuple[Person, ...]) -> Iterator[Fault]:
    """One `tank-dry` a time that the level falls below nothing."""
    was_dry, before = False, (max(tank.since_min, 0.0), tank.start_l)
    person = next(person for person in people if person.who == tank.who)
    for minute in tank.moments():
        level = tank.level(minute, after=False)
        if level < -LITRE and not was_dry:
            moment = _crossing(before, (minute, level))
            yield _dry(tank, moment, person, world)
        was_dry = tank.level(minute, after=True) < -LITRE
        before = (minute, tank.level(minute, after=True))


def _crossing(before: tuple[float, float], now: tuple[float, float]) -> float:
    (t0, level0), (t1, level1) = before, now
    drained = level0 - level1
    return t0 + (t1 - t0) * min(max(level0 / drained, 0.0), 1.0) if drained > 0 else t1


def _dry(tank: _Tank, moment: float, person: Person, world: World) -> Fault:
    band = next((b for b in tank.bands if b.ends >= moment - HAIR), tank.bands[-1])
    later = [refill.ready_min for refill, _ in tank.refills if refill.ready_min > moment]
    until = min(later, default=float("inf"))
    needed = -tank.level(min(until, max(b.ends for b in tank.bands)), after=False)
    return Fault(
        "tank-dry",
        band.field,
        moment,
        f"At {moment:.2f} min, in band {band.id}, {world.place(*person.at(moment))}, the tank of "
        f"the {tank.who} runs dry: {needed:.2f} L are missing up to the next refill.",
    )


def _overfull(tank: _Tank, plan: PlanRead) -> Iterator[Fault]:
    for refill, field in tank.refills:
        if refill.ready_min <= tank.since_min:
            continue
        level = tank.level(refill.ready_min, after=True)
        if level > plan.tools.tank_l + LITRE:
            yield Fault(
                "overfull",
                field.id,
                refill.ready_min,
                f"At {refill.ready_min:.2f} min the tank of the {tank.who} holds {level:.2f} L "
                f"after a refill of {refill.litres:.2f} L; it takes {plan.tools.tank_l:.2f} L.",
            )


def _astray(
    refill: Refill, field: Field, people: dict[str, Person], world: World
) -> Iterator[Fault]:
    """`refill-astray`: somebody whom the refill needs is elsewhere, or spraying."""
    for problem in _problems(refill, people, world):
        x, y = refill.at
        yield Fault(
            "refill-astray",
            field.id,
            refill.at_min,
            f"The refill at {refill.at_min:.2f} min, {world.place(x, y)} at ({x:.2f}, {y:.2f}): "
            f"{problem}.",
        )


def _problems(refill: Refill, people: dict[str, Person], world: World) -> Iterator[str]:
    if refill.by not in FILLS:
        yield f"nobody is called {refill.by!r}"
        return
    who, bringer = FILLS[refill.by]
    if who not in people:
        yield f"there is no {who} in the plan"
    else:
        yield from _stands(people[who], refill, within_m=PLACE_M)
        yield from _sprays(people[who], refill)
    if bringer and bringer not in people:
        yield f"no walk of the {bringer} leads there"
    elif bringer:
        yield from _stands(people[bringer], refill, within_m=BESIDE_M)
        yield from _leaves(people[bringer], refill, world)


def _stretch(refill: Refill) -> tuple[float, float]:
    """The refill's time less the tolerance at both ends."""
    start, end = refill.at_min + TIME_MIN, refill.ready_min - TIME_MIN
    middle = (refill.at_min + refill.ready_min) / 2
    return (start, end) if start < end else (middle, middle)


def _stands(person: Person, refill: Refill, *, within_m: float) -> Iterator[str]:
    start, end = _stretch(refill)
    far = 0.0
    for leg in person.during(start, end):
        for minute in (max(start, leg.begins), min(end, leg.ends)):
            far = max(far, float(np.hypot(*np.subtract(leg.at(minute), refill.at))))
    if far > within_m + HAIR:
        yield f"the {person.who} is up to {far:.2f} m away while it lasts"


def _sprays(person: Person, refill: Refill) -> Iterator[str]:
    start, end = _stretch(refill)
    for piece in person.pieces:
        if piece.sprays and piece.path[0, 2] < end - HAIR and piece.path[-1, 2] > start + HAIR:
            yield f"the {person.who} sprays {piece.what} meanwhile"


def _leaves(helper: Person, refill: Refill, world: World) -> Iterator[str]:
    """A helper who refills inside has walked there and walks away again."""
    if world.is_outside(*helper.at(refill.at_min)):
        return
    if not any(piece.path[0, 2] <= refill.at_min + TIME_MIN for piece in helper.pieces):
        yield f"no walk of the {helper.who} leads there before it"
    if not any(piece.path[-1, 2] >= refill.ready_min - TIME_MIN for piece in helper.pieces):
        yield f"no walk of the {helper.who} leads away after it"
