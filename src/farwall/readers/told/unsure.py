"""What geometry can say where a file is silent: the ground, shut-in floor, a shared wall."""

from __future__ import annotations

from itertools import pairwise
from math import dist

import shapely

from farwall.floor.geometry import polygons_of
from farwall.readers.told.rooms import Rooms
from farwall.readers.told.sides import Line, Sides

GROUND_M = 1.5
"""Storeys so near to the zero of the model, or to the lowest outside door, lie at the ground.
Rank: guess."""
_WALLS_M = 0.26
"""Half the thickest wall between two rooms that encloses floor. Rank: guess."""
_PROBES_M = (0.2, 0.35, 0.5)
_FLAT = 0.02
_Edge = tuple[tuple[float, ...], tuple[float, ...]]


class Ground:
    """Which rooms lie at the ground outside."""

    def __init__(self, rooms: Rooms, with_outside_doors: list[str]) -> None:
        self._rooms = rooms
        heights = [self._height(room) for room in with_outside_doors]
        known = [height for height in heights if height is not None]
        self._grounds = [0.0, min(known)] if known else []

    def holds(self, room: str) -> bool:
        """Whether an outside door of this room may be a way out to the ground."""
        height = self._height(room)
        if height is None or not self._grounds:
            return True
        return any(abs(height - ground) <= GROUND_M for ground in self._grounds)

    def _height(self, room: str) -> float | None:
        space = self._rooms.spaces[room]
        if space.floor_m is not None:
            return space.floor_m
        return next((s.elevation_m for s in self._rooms.storeys if s.id == space.storey), None)


class Shut:
    """Floor that the rooms of a storey enclose without its being a room itself."""

    def __init__(self, rooms: Rooms) -> None:
        self._rooms = rooms
        self._holes: dict[str, list[shapely.Polygon]] = {}

    def holds(self, room: str, sides: Sides) -> bool:
        """Whether the far side of a seam lies in such floor."""
        storey = self._rooms.spaces[room].storey
        if storey not in self._holes:
            self._holes[storey] = self._found(storey)
        (ax, ay), (bx, by) = sides.seam
        long = dist(*sides.seam)
        turn = 1.0 if sides.left is None else -1.0
        nx, ny = -(by - ay) / long * turn, (bx - ax) / long * turn
        probes = shapely.MultiPoint(
            [((ax + bx) / 2 + nx * far, (ay + by) / 2 + ny * far) for far in _PROBES_M]
        )
        return any(hole.intersects(probes) for hole in self._holes[storey])

    def _found(self, storey: str) -> list[shapely.Polygon]:
        shapes = [s.shape for s in self._rooms.spaces.values() if s.storey == storey]
        outdoors = [s.shape for s in self._rooms.outdoors if s.storey == storey]
        swollen = shapely.union_all([shape.buffer(_WALLS_M) for shape in [*shapes, *outdoors]])
        rings = [ring for part in polygons_of(swollen) for ring in part.interiors]
        return [shapely.Polygon(ring).buffer(_WALLS_M) for ring in rings]


def place_on_shared_edge(
    one: shapely.Polygon, other: shapely.Polygon, wall_m: float, width_m: float | None
) -> Line | None:
    """A seam in the middle of the longest wall between two rooms, or None when they share none.

    width_m: how wide [m]; None: as wide as the wall.
    """
    lines = [
        line
        for side in pairwise(one.exterior.coords)
        for facing in pairwise(other.exterior.coords)
        if (line := _midway(side, facing, wall_m)) is not None
    ]
    longest = max(lines, key=lambda line: dist(*line), default=None)
    if longest is None or width_m is None:
        return longest
    (ax, ay), (bx, by) = longest
    long = dist(*longest)
    if long < width_m:
        return longest
    share = width_m / long / 2
    dx, dy = bx - ax, by - ay
    return (
        (ax + dx * (0.5 - share), ay + dy * (0.5 - share)),
        (ax + dx * (0.5 + share), ay + dy * (0.5 + share)),
    )


def _midway(side: _Edge, facing: _Edge, wall_m: float) -> Line | None:
    """The line midway between two edges that run along each other, across a wall at most."""
    (ax, ay), (bx, by) = side
    long = dist((ax, ay), (bx, by))
    if long < 2 * _FLAT:
        return None
    ux, uy = (bx - ax) / long, (by - ay) / long
    along = [(x - ax) * ux + (y - ay) * uy for x, y in facing]
    aside = [-(x - ax) * uy + (y - ay) * ux for x, y in facing]
    low, high = max(0.0, min(along)), min(long, max(along))
    if abs(aside[0] - aside[1]) > _FLAT or abs(aside[0]) > wall_m or high - low < 0.3:
        return None
    off = (aside[0] + aside[1]) / 4
    return (
        (ax + ux * low - uy * off, ay + uy * low + ux * off),
        (ax + ux * high - uy * off, ay + uy * high + ux * off),
    )
