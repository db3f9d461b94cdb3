"""Take-off: net area, edge to mask, openings; exact, from the polygons.

Net area is a room's polygon less the fixtures in it. The edge to mask is the
edge of that net area (walls, posts, fixtures) less the widths of the openings
on it; a wall behind a fixture is not masked, the fixture's own edge is.
"""

from __future__ import annotations

from collections import Counter

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.nouns import Floor, Opening, Room
from farwall.nouns import dataclass

_ON_EDGE_M = 0.002


@dataclass(frozen=True)
class RoomTakeoff:
    """What one room comes to. `opening_widths_m` holds the widths by opening id."""

    room: str
    gross_m2: float
    fixtures_m2: float
    net_m2: float
    mask_m: float
    opening_widths_m: dict[str, float]


@dataclass(frozen=True)
class Takeoff:
    """All rooms, and the floor in all; an opening between two rooms is counted once."""

    rooms: tuple[RoomTakeoff, ...]
    net_m2: float
    mask_m: float
    openings: dict[str, int]
    """How many openings of each kind."""
    opening_width_m: float


def take_off(floor: Floor) -> Takeoff:
    """Areas [m²] and lengths [m] of a floor, room by room and in all.

    Source: plane geometry; measured on the polygons as they are given. Thresholds count where
    they have been joined to the rooms (`thresholds.join_thresholds`) and not before.
    """
    rooms = tuple(_room(room, floor) for room in floor.rooms)
    return Takeoff(
        rooms=rooms,
        net_m2=sum(room.net_m2 for room in rooms),
        mask_m=sum(room.mask_m for room in rooms),
        openings=dict(Counter(opening.kind for opening in floor.openings)),
        opening_width_m=sum(width_m(opening) for opening in floor.openings),
    )


def width_m(opening: Opening) -> float:
    """Clear width of an opening, its line's length where no width is given. [m]"""
    if opening.width_m is not None:
        return opening.width_m
    return float(shapely.LineString(opening.line).length)


def net_shape(room: Room, floor: Floor) -> BaseGeometry:
    """What of a room is sprayed: its polygon less the fixtures of the floor."""
    shape = room.polygon.shape
    kept_dry = [
        fixture.polygon.shape
        for fixture in floor.fixtures
        if fixture.polygon.shape.intersects(shape)
    ]
    return shape.difference(shapely.union_all(kept_dry)) if kept_dry else shape


def _room(room: Room, floor: Floor) -> RoomTakeoff:
    net, gross = net_shape(room, floor), room.polygon.shape.area
    edge = net.boundary
    here = [opening for opening in floor.openings if room.id in opening.rooms]
    open_m = sum(_open_m(opening, room.id, edge) for opening in here)
    return RoomTakeoff(
        room=room.id,
        gross_m2=gross,
        fixtures_m2=gross - net.area,
        net_m2=net.area,
        mask_m=max(edge.length - open_m, 0.0),
        opening_widths_m={opening.id: width_m(opening) for opening in here},
    )


def _open_m(opening: Opening, room: str, edge: BaseGeometry) -> float:
    """How much of a room's edge an opening leaves without a wall."""
    line = shapely.LineString(opening.line)
    if line.distance(edge) < _ON_EDGE_M and opening.threshold is None:
        shared = edge.intersection(line.buffer(_ON_EDGE_M, cap_style="flat")).length
        return float(min(shared, line.length))
    return width_m(opening) * opening.rooms.count(room)
