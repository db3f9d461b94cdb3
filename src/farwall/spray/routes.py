"""Walks of a body on free ground: the shortest way around wet stain, walls and fixtures."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point, polygons_of
from farwall.spray.shortest import ON_M, Corners, Search, Sights, corners_of
from farwall.spray.world import mitred


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
    """One connected ground where a body's centre may be, made ready for many walks.

    sights: of larger ground that this one is a part of.
    """

    def __init__(self, ground: shapely.Polygon, sights: Sights | None = None) -> None:
        self.ground = ground
        self._sights = sights

    @cached_property
    def _roomy(self) -> BaseGeometry:
        roomy = mitred(self.ground, ON_M)
        shapely.prepare(roomy)
        return roomy

    @cached_property
    def _corners(self) -> Corners:
        return corners_of(self.ground)

    @cached_property
    def _numbers(self) -> list[int]:
        if self._sights is None:
            return []
        return [self._sights.number((x, y)) for x, y in self._corners.places.tolist()]

    def holds(self, line: shapely.LineString) -> bool:
        """Whether the body may walk along the whole line."""
        return bool(shapely.covers(self._roomy, line))

    def straight(self, places: Sequence[Point]) -> list[bool]:
        """For each place after the first, whether a straight walk leads there from the last."""
        if len(places) < 2:
            return []
        xy = np.array(places)
        legs = shapely.linestrings(np.stack([xy[:-1], xy[1:]], axis=1))
        held: list[bool] = np.atleast_1d(shapely.covers(self._roomy, legs)).tolist()
        return held

    def walk(self, start: Point, end: Point) -> tuple[Point, ...] | None:
        """The shortest walk from `start` to `end`, or None when there is none."""
        if self.holds(shapely.linestrings([start, end])):
            return (start, end)
        search = Search(
            self._roomy,
            self._corners,
            (start, end),
            sights=self._sights,
            numbers=self._numbers,
        )
        return search.walk()


def length_m(path: Sequence[Point]) -> float:
    """Length of a walk."""
    return sum(math.dist(one, two) for one, two in itertools.pairwise(path))


def gap_m(one: Point, two: Point) -> float:
    """Straight metres between two places."""
    return math.dist(one, two)
