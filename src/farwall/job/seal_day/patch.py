"""Where the test patch goes: the least seen floor, a closet before a bedroom before a hall."""

from __future__ import annotations

import shapely

from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Room
from farwall.nouns import dataclass
from farwall.units import M_PER_FT

SIDE_M = 3 * M_PER_FT
"""3 × 3 ft: common practice, no source."""
WAIT_H = (16.0, 24.0, 48.0)
"""From the patch to its tape and scratch: the next day; common practice, no source."""
_HIDDEN = ("closet", "wardrobe", "pantry", "store", "utility", "laundry", "cupboard")
_LEAST_M = 0.45
_STEP_M = 0.15


@dataclass(frozen=True)
class PatchSpot:
    """A square of `side_m` about `at` [m] in the least seen room, whole or as much as fits."""

    room: str
    at: Point
    side_m: float
    whole: bool


def patch_of(floor: Floor) -> PatchSpot:
    """The square that lies farthest from the openings of the least seen room that holds one.

    A room's name tells a closet; else the smallest room counts as the least seen.
    """
    rooms = sorted(floor.rooms, key=lambda room: (not _hidden(room), room.polygon.shape.area))
    for side in (SIDE_M, 2 / 3 * SIDE_M, _LEAST_M):
        for room in rooms:
            at = _farthest(floor, room, side)
            if at is not None:
                return PatchSpot(room.id, at, round(side, 3), side == SIDE_M)
    middle = rooms[0].polygon.shape.representative_point()
    return PatchSpot(rooms[0].id, (round(middle.x, 3), round(middle.y, 3)), _LEAST_M, whole=False)


def _hidden(room: Room) -> bool:
    return any(word in f"{room.id} {room.label}".lower() for word in _HIDDEN)


def _farthest(floor: Floor, room: Room, side_m: float) -> Point | None:
    """The middle of the square that lies farthest from the room's openings; None without one."""
    bare = shapely.difference(
        room.polygon.shape, shapely.union_all([one.polygon.shape for one in floor.fixtures])
    )
    if bare.is_empty:
        return None
    ways = shapely.union_all(
        [shapely.LineString(one.line) for one in floor.openings if room.id in one.rooms]
    )
    half = side_m / 2
    west, south, east, north = shapely.bounds(bare)
    best: tuple[float, Point] | None = None
    shapely.prepare(bare)
    for x in _steps(west + half, east - half):
        for y in _steps(south + half, north - half):
            if not bare.covers(shapely.box(x - half, y - half, x + half, y + half)):
                continue
            away = 0.0 if ways.is_empty else ways.distance(shapely.Point(x, y))
            if best is None or away > best[0] + 1e-9:
                best = (away, (round(float(x), 3), round(float(y), 3)))
    return None if best is None else best[1]


def _steps(first: float, last: float) -> list[float]:
    """Places a step apart, the last one too; nothing where the square is wider than the room."""
    if last < first - 1e-9:
        return []
    count = int((last - first) // _STEP_M)
    return [*(first + n * _STEP_M for n in range(count + 1)), last]
