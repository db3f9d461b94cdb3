"""Stop lines and saw cuts of a plan, each once, with what ends there first. Pure."""

from __future__ import annotations

from itertools import pairwise
from math import dist

import shapely

from farwall.facts.plan import Field, Plan, StopLine
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.papers.office.ground import PaperGround

ROOM_NEAR_M = 0.35
"""A room whose floor comes this near to a line lies at it: half a thick wall, and a hair."""


@dataclass(frozen=True)
class Stop:
    """A stop line with its mark on the drawing, the field that ends there first, and the next."""

    mark: str
    line: StopLine
    rooms: tuple[str, ...]
    length_m: float
    first: Field
    then: Field | None


@dataclass(frozen=True)
class Cut:
    """A saw cut: one that is there, or one that a field would need; used: as a stop line."""

    mark: str
    line: tuple[Point, ...]
    rooms: tuple[str, ...]
    length_m: float
    there: bool
    used: bool
    for_field: Field | None = None


def stops_of(plan: Plan) -> tuple[Stop, ...]:
    """Every stop line once, lettered in the order in which spraying ends there first."""
    fields = sorted(plan.fields, key=lambda one: (one.start_min, one.order))
    found: dict[str, tuple[StopLine, list[Field]]] = {}
    for field in fields:
        for line in field.stop_lines:
            found.setdefault(line.id, (line, []))[1].append(field)
    ordered = sorted(found.values(), key=lambda one: (one[1][0].start_min, one[1][0].order))
    return tuple(
        Stop(
            letter(n), line, rooms_at(plan, line.line), long_m(line.line), own[0],
            next((each for each in own[1:] if each.coat == own[0].coat), None),
        )
        for n, (line, own) in enumerate(ordered)
    )  # fmt: skip


def cuts_of(ground: PaperGround) -> tuple[Cut, ...]:
    """Saw cuts that are there, then lines that a field that cannot be done whole would need."""
    plan = ground.plan
    used = {line.id for field in plan.fields for line in field.stop_lines}
    cuts = [
        Cut(str(n), one.line, rooms_at(plan, one.line), long_m(one.line), there=True,
            used=one.id in used)
        for n, one in enumerate(plan.inputs.saw_cuts, 1)
    ]  # fmt: skip
    seen: set[tuple[Point, ...]] = set()
    for field in plan.fields:
        if field.verdict not in {"stop-line", "cannot"}:
            continue
        for remedy in field.remedies:
            if remedy.code == "stop-line" and remedy.line and remedy.line not in seen:
                seen.add(remedy.line)
                cuts.append(Cut(
                    str(len(cuts) + 1), remedy.line, rooms_at(plan, remedy.line),
                    long_m(remedy.line), there=False, used=False, for_field=field,
                ))  # fmt: skip
    return tuple(cuts)


def long_m(line: tuple[Point, ...]) -> float:
    """Length of a line of points. [m]"""
    return sum(dist(a, b) for a, b in pairwise(line))


def rooms_at(plan: Plan, line: tuple[Point, ...]) -> tuple[str, ...]:
    """Ids of the rooms that lie at a line: in them, or at either side of it."""
    middle = shapely.LineString(line).interpolate(0.5, normalized=True)
    return tuple(
        room.id
        for room in plan.inputs.floor.rooms
        if room.polygon.shape.distance(middle) <= ROOM_NEAR_M
    )


def letter(count: int) -> str:
    """A, B … Z, AA, BB …"""
    return "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[count % 26] * (count // 26 + 1)
