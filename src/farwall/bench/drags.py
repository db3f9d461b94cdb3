"""A wall of a house dragged a little, as in an editor: rooms and openings go with it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import shapely

from farwall.bench.dice import Dice
from farwall.floor.geometry import Point, polygon_geometry
from farwall.floor.nouns import Floor, Opening

_THICK_M = 0.2
_MOST_CM = 60


def dragged(floor: Floor, dice: Dice) -> Floor | None:
    """The floor with one straight wall, and all that is in line with it, moved by up to 0.6 m.

    None where that throw makes no house: a door would leave its wall, a fixture its room, a room
    its shape. Only walls along x or y are dragged.
    """
    axis = dice.between(0, 1)
    at_m = dice.one_of(sorted({round(xy[axis], 2) for xy in _corners(floor)}))
    by_m = dice.between(-_MOST_CM, _MOST_CM) / 100

    def moved(xy: Point) -> Point:
        if abs(xy[axis] - at_m) > _THICK_M:
            return xy
        return (xy[0] + by_m, xy[1]) if axis == 0 else (xy[0], xy[1] + by_m)

    found = replace(
        floor,
        rooms=tuple(
            replace(room, polygon=polygon_geometry(_moved(room.polygon.shape, moved)))
            for room in floor.rooms
        ),
        openings=tuple(_opening(one, moved) for one in floor.openings),
    )
    return found if _is_a_house(floor, found) else None


def _corners(floor: Floor) -> list[Point]:
    return [
        (float(x), float(y))
        for room in floor.rooms
        for x, y in shapely.get_coordinates(room.polygon.shape)
    ]


def _moved(shape: shapely.Polygon, moved: Callable[[Point], Point]) -> shapely.Polygon:
    return shapely.transform(
        shape, lambda xy: np.array([moved((float(x), float(y))) for x, y in xy])
    )


def _opening(one: Opening, moved: Callable[[Point], Point]) -> Opening:
    line = (moved(one.line[0]), moved(one.line[1]))
    if one.threshold is None:
        return replace(one, line=line)
    shape = polygon_geometry(_moved(one.threshold.shape, moved))
    return replace(one, line=line, threshold=shape)


def _is_a_house(before: Floor, after: Floor) -> bool:
    same = zip(before.openings, after.openings, strict=True)
    if any(abs(_long(a) - _long(b)) > 1e-6 for a, b in same):
        return False
    shapes = [room.polygon.shape for room in after.rooms]
    if not all(shape.is_valid and shape.area > 1.0 for shape in shapes):
        return False
    if any(a.intersection(b).area > 1e-4 for i, a in enumerate(shapes) for b in shapes[:i]):
        return False
    for old, new in zip(before.rooms, after.rooms, strict=True):
        for fixture in before.fixtures:
            inside = fixture.polygon.shape.intersection(old.polygon.shape).area
            if abs(fixture.polygon.shape.intersection(new.polygon.shape).area - inside) > 1e-6:
                return False
    return all(_on_walls(one, after) for one in after.openings)


def _long(one: Opening) -> float:
    return float(shapely.LineString(one.line).length)


def _on_walls(one: Opening, floor: Floor) -> bool:
    """Whether each room of an opening has a wall along all of it, and a little more."""
    line = shapely.LineString(one.line)
    reach = line.buffer(0.25, cap_style="flat")
    for name in one.rooms:
        wall = floor.room_by_id[name].polygon.shape.exterior.intersection(reach)
        if wall.length < line.length - 1e-3:
            return False
    return True
