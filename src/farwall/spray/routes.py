"""Walks of a body on free ground: the shortest way around wet stain, walls and fixtures."""

from __future__ import annotations

import heapq
import itertools
import math
from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point, polygons_of
from farwall.spray.world import mitred

ON_M = 0.004
"""How far a place may lie off the ground by rounding; a body keeps that much more away."""


def part_with(ground: BaseGeometry, place: Point) -> shapely.Polygon | None:
    """The connected part of `ground` that holds `place` (within a millimetre or so), or None."""
    point = shapely.Point(place)
    parts = polygons_of(ground)
    near = min(parts, key=lambda part: part.distance(point), default=None)
    return near if near is not None and near.distance(point) < ON_M else None


def nearest_on(ground: BaseGeometry, place: Point) -> Point:
    """The nearest place of `ground` to `place`."""
    found = shapely.shortest_line(ground, shapely.Point(place)).coords[0]
    return (float(found[0]), float(found[1]))


class Walkable:
    """One connected ground where a body's centre may be, made ready for many walks."""

    def __init__(self, ground: shapely.Polygon) -> None:
        self.ground = ground

    @cached_property
    def _roomy(self) -> BaseGeometry:
        roomy = mitred(self.ground, ON_M)
        shapely.prepare(roomy)
        return roomy

    @cached_property
    def _corners(self) -> list[Point]:
        return _inner_corners(self.ground)

    def holds(self, line: shapely.LineString) -> bool:
        """Whether the body may walk along the whole line."""
        return bool(self._roomy.covers(line))

    def straight(self, places: Sequence[Point]) -> list[bool]:
        """For each place after the first, whether a straight walk leads there from the last."""
        if len(places) < 2:
            return []
        xy = np.array(places)
        legs = shapely.linestrings(np.stack([xy[:-1], xy[1:]], axis=1))
        return [bool(held) for held in np.atleast_1d(shapely.covers(self._roomy, legs))]

    def walk(self, start: Point, end: Point) -> tuple[Point, ...] | None:
        """The shortest walk from `start` to `end`, or None when there is none.

        A shortest walk turns only at inner corners of the ground; the corners
        are searched nearest first and sight lines are tested when needed.
        """
        if self.holds(shapely.LineString([start, end])):
            return (start, end)
        return _search(self._roomy, np.array([start, *self._corners, end]))


def _search(roomy: BaseGeometry, places: np.ndarray) -> tuple[Point, ...] | None:
    goal = len(places) - 1
    to_goal = np.hypot(*(places - places[goal]).T)
    best = np.full(len(places), np.inf)
    best[0] = 0.0
    came = {0: 0}
    closed = np.zeros(len(places), dtype=bool)
    queue = [(float(to_goal[0]), 0)]
    while queue:
        _, here = heapq.heappop(queue)
        if closed[here]:
            continue
        closed[here] = True
        if here == goal:
            return _trace(came, places, goal)
        step = np.hypot(*(places - places[here]).T)
        better = np.flatnonzero(~closed & (best[here] + step < best - 1e-9))
        if not len(better):
            continue
        ends = np.stack([np.broadcast_to(places[here], (len(better), 2)), places[better]], axis=1)
        clear = shapely.covers(roomy, shapely.linestrings(ends))
        for there in better[clear].tolist():
            best[there] = best[here] + step[there]
            came[there] = here
            heapq.heappush(queue, (float(best[there] + to_goal[there]), there))
    return None


def _trace(came: dict[int, int], places: np.ndarray, goal: int) -> tuple[Point, ...]:
    path = [goal]
    while path[-1] != 0:
        path.append(came[path[-1]])
    return tuple((float(places[i][0]), float(places[i][1])) for i in reversed(path))


def _inner_corners(ground: shapely.Polygon) -> list[Point]:
    """Corners of the ground that a walk may turn around."""
    found: list[Point] = []
    for index, ring in enumerate([ground.exterior, *ground.interiors]):
        xy = np.asarray(ring.coords)[:-1]
        if ring.is_ccw != (index == 0):
            xy = xy[::-1]
        before = xy - np.roll(xy, 1, axis=0)
        after = np.roll(xy, -1, axis=0) - xy
        turn = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
        found.extend((float(x), float(y)) for x, y in xy[turn < -1e-9])
    return found


def length_m(path: Sequence[Point]) -> float:
    """Length of a walk."""
    return sum(math.dist(one, two) for one, two in itertools.pairwise(path))


def gap_m(one: Point, two: Point) -> float:
    """Straight metres between two places."""
    return math.dist(one, two)
