"""Where band edges meet the walls: distances to tick on the masking film.

A bare floor shows no bands. Ticks on the film along the walls do: each wall
run is measured from its left corner, as a person sees it who stands in the
room and faces it (from the right one where the field reaches only that), and
each tick parts two bands. Places are metres of the
floor; nothing is rounded here.

Words as in `wall_runs`; a fixture's side is a run too.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import shapely
from shapely.geometry.polygon import orient

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point
from farwall.papers.wall_runs import STEP_DEPTH_M, TOLERANCE_M, along, offset, runs_of_ring

LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ"
"""I, L and O are left out: on a dusty sheet they read as figures."""
_REACH_M = 0.5
"""A field that begins this near to a corner reaches it: a tape can be hooked there."""


@dataclass(frozen=True)
class Tick:
    """A mark `at_m` from the start of its run, between the bands of order `before` and `after`.

    `at_m` is None where the edge lies in a doorway, beside which nothing can be ticked.
    """

    at_m: float | None
    before: int
    after: int


@dataclass(frozen=True)
class WallRun:
    """A run with ticks, measured from `line[0]`.

    That is its left corner as one faces it; its right one (`from_left` False)
    where the field does not reach the left corner but reaches the right.
    """

    letter: str
    room: str
    of: str
    line: tuple[Point, ...]
    ticks: tuple[Tick, ...]
    from_left: bool = True

    @property
    def middle(self) -> Point:
        """The middle of the run."""
        at = shapely.LineString(self.line).interpolate(0.5, normalized=True)
        return (at.x, at.y)


@dataclass(frozen=True)
class _Stretch:
    """A band that touches the run from `low` to `high` metres along it."""

    low: float
    high: float
    band: int


def wall_ticks(plan: Plan, field: Field) -> tuple[WallRun, ...]:
    """Every run of the field's rooms and fixtures that a band edge meets, lettered A, B, C….

    Runs without a tick to measure get no letter. Empty for a field without bands. Source:
    plane geometry on the band polygons of the plan.
    """
    bands = [(band.order, _edges(band.polygon.shape)) for band in field.bands]
    openings = [shapely.LineString(opening.line) for opening in plan.inputs.openings]
    found: list[WallRun] = []
    for room, of, line in _runs(plan, field):
        stretches = sorted(_stretches(line, bands), key=lambda s: (s.low, s.high))
        ticks = tuple(_ticks(line, stretches, openings))
        if any(tick.at_m is not None for tick in ticks):
            run = WallRun(_letter(len(found)), room, of, line, ticks)
            found.append(_from_the_corner_in_reach(run, stretches))
    return tuple(found)


def _from_the_corner_in_reach(run: WallRun, stretches: Sequence[_Stretch]) -> WallRun:
    """The run as it is, or turned round where only its right corner lies in the field."""
    long = shapely.LineString(run.line).length
    left_reached = stretches[0].low <= _REACH_M
    right_reached = max(s.high for s in stretches) >= long - _REACH_M
    if left_reached or not right_reached:
        return run
    ticks = tuple(
        Tick(None if t.at_m is None else long - t.at_m, t.after, t.before)
        for t in reversed(run.ticks)
    )
    return replace(run, line=run.line[::-1], ticks=ticks, from_left=False)


def _letter(count: int) -> str:
    return LETTERS[count % len(LETTERS)] * (count // len(LETTERS) + 1)


def _runs(plan: Plan, field: Field) -> Iterable[tuple[str, str, tuple[Point, ...]]]:
    """Room, fixture kind or "", and line of each run; the floor lies to the right of its line."""
    rooms = {room.id: room for room in plan.inputs.floor.rooms}
    known = [rooms[room] for room in field.rooms if room in rooms]
    for room in known:
        shape = orient(room.polygon.shape)
        for ring in (shape.exterior, *shape.interiors):
            for line in runs_of_ring(_points(ring)[::-1]):
                yield room.id, "", line
    floors = [(room.id, room.polygon.shape) for room in known]
    for fixture in plan.inputs.fixtures:
        shape = orient(fixture.polygon.shape)
        room_id = next((i for i, floor in floors if floor.intersects(shape)), None)
        if room_id is not None:
            for line in runs_of_ring(_points(shape.exterior)):
                yield room_id, fixture.kind, line


def _points(ring: shapely.LinearRing) -> list[Point]:
    return [(x, y) for x, y, *_ in ring.coords]


def _edges(shape: shapely.Polygon) -> list[tuple[Point, Point]]:
    """The border of a band, edge by edge, the band itself to the left of each."""
    edges = []
    oriented = orient(shape)
    for ring in (oriented.exterior, *oriented.interiors):
        edges += list(pairwise(_points(ring)))
    return edges


def _stretches(
    line: tuple[Point, ...], bands: Sequence[tuple[int, list[tuple[Point, Point]]]]
) -> Iterable[_Stretch]:
    """Where bands touch the run from its floor side: their edges run against its direction."""
    done = 0.0
    for a, b in pairwise(line):
        segment = (a, b)
        long = math.dist(a, b)
        for order, edges in bands:
            for p, q in edges:
                if abs(offset(segment, p)) > TOLERANCE_M or abs(offset(segment, q)) > TOLERANCE_M:
                    continue
                high, low = along(segment, p), along(segment, q)
                low, high = max(low, 0.0), min(high, long)
                if high - low > TOLERANCE_M:
                    yield _Stretch(done + low, done + high, order)
        done += long


def _ticks(
    line: tuple[Point, ...],
    stretches: Sequence[_Stretch],
    openings: Sequence[shapely.LineString],
) -> Iterable[Tick]:
    run = shapely.LineString(line)
    for here, there in pairwise(stretches):
        if here.band == there.band:
            continue
        if there.low - here.high <= TOLERANCE_M:
            yield Tick((here.high + there.low) / 2, here.band, there.band)
        elif _doorway(run, here.high, there.low, openings):
            yield Tick(None, here.band, there.band)


def _doorway(
    run: shapely.LineString, low: float, high: float, openings: Sequence[shapely.LineString]
) -> bool:
    """Whether the stretch from low to high is an opening: its line lies within a wall's depth."""
    middle = run.interpolate((low + high) / 2)
    return any(opening.distance(middle) < STEP_DEPTH_M for opening in openings)
