"""Where band edges meet the walls: distances to tick on the masking film.

A bare floor shows no bands. Ticks on the film along the walls do: each wall
run is measured from its left end, as a person sees it who stands in the room
and faces it, and each tick parts two bands. Places are metres of the
floor; nothing is rounded here.

Words as in `wall_runs`; a fixture's side is a run too.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry.polygon import orient
from shapely.ops import substring

from farwall.facts.plan import Field, Plan
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.papers.wall_runs import STEP_DEPTH_M, TOLERANCE_M, runs_of_ring

LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ"
"""I, L and O are left out: on a dusty sheet they read as figures."""


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
    """A run with ticks, measured from `line[0]`: its left end as one faces it.

    That is a corner, or, where the field does not reach the corner, the jamb,
    the cabinet or the cut at which the field begins.
    """

    letter: str
    room: str
    of: str
    line: tuple[Point, ...]
    ticks: tuple[Tick, ...]

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
    borders = _borders(field)
    openings = [shapely.LineString(opening.line) for opening in plan.inputs.openings]
    found: list[WallRun] = []
    for room, of, line in _runs(plan, field):
        stretches = sorted(_stretches(line, borders), key=lambda s: (s.low, s.high))
        ticks = tuple(_ticks(line, stretches, openings))
        if any(tick.at_m is not None for tick in ticks):
            begins = stretches[0].low
            found.append(WallRun(_letter(len(found)), room, of, *_from(line, begins, ticks)))
    return tuple(found)


def _from(
    line: tuple[Point, ...], begins: float, ticks: tuple[Tick, ...]
) -> tuple[tuple[Point, ...], tuple[Tick, ...]]:
    """The run and its ticks counted from where the field's floor begins along it. [m]"""
    if begins <= TOLERANCE_M:
        return line, ticks
    run = shapely.LineString(line)
    rest = substring(run, begins, run.length)
    moved = tuple(
        tick if tick.at_m is None else replace(tick, at_m=tick.at_m - begins) for tick in ticks
    )
    return tuple((x, y) for x, y, *_ in rest.coords), moved


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


@dataclass(frozen=True)
class _Borders:
    """All band borders edge by edge, from `starts` to `ends`, the band to the left of each."""

    starts: np.ndarray
    ends: np.ndarray
    bands: np.ndarray


def _borders(field: Field) -> _Borders:
    starts, ends, bands = [np.empty((0, 2))], [np.empty((0, 2))], [np.empty(0, dtype=int)]
    for band in field.bands:
        oriented = orient(band.polygon.shape)
        for ring in (oriented.exterior, *oriented.interiors):
            points = shapely.get_coordinates(ring)
            starts.append(points[:-1])
            ends.append(points[1:])
            bands.append(np.full(len(points) - 1, band.order))
    return _Borders(np.concatenate(starts), np.concatenate(ends), np.concatenate(bands))


def _stretches(line: tuple[Point, ...], borders: _Borders) -> Iterable[_Stretch]:
    """Where bands touch the run from its floor side: their borders run against its direction."""
    done = 0.0
    for a, b in pairwise(line):
        long = math.dist(a, b)
        ahead = (np.array(b) - a) / long
        aside = np.array([-ahead[1], ahead[0]])
        near = np.abs((borders.starts - a) @ aside) <= TOLERANCE_M
        near &= np.abs((borders.ends - a) @ aside) <= TOLERANCE_M
        high = np.minimum((borders.starts[near] - a) @ ahead, long)
        low = np.maximum((borders.ends[near] - a) @ ahead, 0.0)
        for k in np.flatnonzero(high - low > TOLERANCE_M):
            order = int(borders.bands[near][k])
            yield _Stretch(done + float(low[k]), done + float(high[k]), order)
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
