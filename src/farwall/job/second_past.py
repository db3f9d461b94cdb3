"""The second sprayer of a crew of two in mid-day: where he stands, with what in his tank. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.plan import Field, Plan
from farwall.facts.so_far import SoFar
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.job.in_view import as_seen
from farwall.nouns import dataclass
from farwall.spray.building import build_world
from farwall.spray.crew import second_base

_HAIR_MIN = 0.001


@dataclass(frozen=True)
class SecondPast:
    """The second sprayer at the minute now, in the terms of `Settled`.

    `stays`: he goes on spraying; else he walks out, and the rest is for the first.
    """

    here: Point
    at: Point
    base: Point
    tank_l: float
    tank_then_l: float
    stays: bool
    as_planned: bool


def word_of(sprayer: int) -> str:
    """The person in the words of walks."""
    return "sprayer" if sprayer == 1 else f"sprayer {sprayer}"


def swaps_for(by: str) -> int:
    """Whose tank a filling is for: the number of the sprayer."""
    return 2 if by.endswith("sprayer 2") else 1


def sprayers_from_now(plan: Plan, so_far: SoFar) -> int | None:
    """How many spray from now on, where the crew is of two; None where it is of one."""
    if plan.inputs.crew.sprayers != 2:
        return None
    before = None if plan.so_far is None else plan.so_far.sprayers
    return so_far.sprayers or before or 2


def without_who_never_came(fields: tuple[Field, ...]) -> tuple[Field, ...]:
    """The fields without the fillings of a second who left before he had come in.

    What is in his tank stands in the past of the plan.
    """
    came = any(walk.who == word_of(2) for field in fields for walk in field.walks)
    if came or any(band.sprayer == 2 for field in fields for band in field.bands):
        return fields
    return tuple(
        replace(field, refills=tuple(r for r in field.refills if swaps_for(r.by) == 1))
        for field in fields
    )


def stands(sprayer: int, past: Sequence[Field], base: Point, now_min: float) -> Point:
    """Where a sprayer stands: where his last band, or his last walk before now, has ended."""
    who = word_of(sprayer)
    ends = [band.path[-1] for field in past for band in field.bands if band.sprayer == sprayer]
    walks = [walk.path[-1] for field in past for walk in field.walks if walk.who == who]
    ends += [end for end in walks if end[2] <= now_min + _HAIR_MIN]
    return max(ends, key=lambda end: end[2])[:2] if ends else base


def base_2(plan: Plan, coat: str, base: Point) -> Point:
    """Where the second fills: where his first walk of the coat begins, else beside the tub."""
    who = word_of(2)
    walks = [w for f in plan.fields if f.coat == coat for w in f.walks if w.who == who]
    if walks:
        return min(walks, key=lambda walk: walk.path[0][2]).path[0][:2]
    given = plan.inputs
    floor = Floor(given.floor.rooms, given.openings, given.fixtures, given.saw_cuts)
    return second_base(as_seen(build_world(floor, given.exits), plan), base)
