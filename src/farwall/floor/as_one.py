"""Rooms of one real space joined, and a room split in two, as a person says.

A drawing may cut one space into two rooms, or run two into one. Joined, the floor between them
(under their openings, or a seam thinner than a wall) belongs to the room that stays; split, a wide
opening lies along the line, for nothing stands there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import hypot

import shapely
from shapely.ops import split as split_along

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import DECIMALS, Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Floor, Opening, Room, free_name
from farwall.floor.thresholds import join_thresholds

SEAM_M = 0.05
"""Rooms nearer to each other than this have no wall between them. Rank: guess."""
_OVER_M = 0.3
"""A line drawn a little short of the walls still means from wall to wall. Rank: guess."""
_LEAST_M2 = 0.05
_KINK_M = 0.0005


def rooms_joined(floor: Floor, first: str, second: str) -> Floor:
    """The floor with two rooms as one: the first one's id, both names, no opening between them.

    Raises Refused where one is not there, where they are the same, or where a wall without an
    opening stands between them.
    """
    one, other = _room(floor, first), _room(floor, second)
    if first == second or one.storey != other.storey:
        what = "Only two rooms of one storey can be one."
        raise Refused(Mistake("rooms", what, "Choose another room beside it."))
    between = [o for o in floor.openings if set(o.rooms) == {first, second}]
    parts = join_thresholds(Floor((one, other), tuple(between))).rooms
    shapes = [part.polygon.shape for part in parts]
    whole = _whole(shapes)
    if whole is None:
        what = f"A wall stands between “{one.label}” and “{other.label}”."
        raise Refused(Mistake("rooms", what, "Put an opening there first, or move its wall."))
    names = [name for name in dict.fromkeys((one.name, other.name)) if name]
    room = replace(one, polygon=polygon_geometry(whole), name=" + ".join(names))
    openings = tuple(
        replace(o, rooms=tuple(first if name == second else name for name in o.rooms))
        for o in floor.openings
        if o not in between
    )
    rooms = tuple(room if r is one else r for r in floor.rooms if r is not other)
    windows = tuple(replace(w, room=first) if w.room == second else w for w in floor.windows)
    return replace(floor, rooms=rooms, openings=openings, windows=windows)


def _whole(shapes: Sequence[shapely.Polygon]) -> shapely.Polygon | None:
    """The shapes as one polygon, a seam between them closed; None where they lie apart."""
    union = shapely.union_all(shapes)
    found = polygons_of(union)
    if len(found) == 1:
        return _tidy(found[0])
    seam = shapes[0].buffer(SEAM_M, join_style="mitre") & shapes[1].buffer(
        SEAM_M, join_style="mitre"
    )
    closed = polygons_of(shapely.union_all([union, seam.buffer(0.001, join_style="mitre")]))
    return _tidy(closed[0]) if len(closed) == 1 and not seam.is_empty else None


def _tidy(shape: shapely.Polygon) -> shapely.Polygon:
    plain = shape.simplify(_KINK_M)
    return plain if isinstance(plain, shapely.Polygon) and plain.is_valid else shape


def room_split(floor: Floor, room_id: str, line: tuple[Point, Point]) -> Floor:
    """The floor with a room cut in two along a line from wall to wall; a wide opening lies there.

    The larger part keeps the id. Openings go to the part at which they lie. Raises Refused where
    the line does not cut the room in two.
    """
    room = _room(floor, room_id)
    cut = _lengthened(line)
    parts = sorted(
        (p for p in polygons_of(split_along(room.polygon.shape, cut)) if p.area > _LEAST_M2),
        key=lambda part: -part.area,
    )
    seams = _seams(parts, cut)
    if len(parts) != 2 or not seams:
        what = f"The line does not cut “{room.label}” in two."
        raise Refused(Mistake("line", what, "Draw it from wall to wall, straight across."))
    taken = set(floor.room_by_id)
    second = free_name(f"{room_id}-2", taken)
    name = free_name(f"{room.name} 2", {r.name for r in floor.rooms}) if room.name else ""
    kept = replace(room, polygon=polygon_geometry(parts[0]))
    new = Room(second, polygon_geometry(parts[1]), name, room.storey)
    opening_ids = set(floor.opening_by_id)
    wide = []
    for seam in seams:
        ident = free_name(f"wide-{room_id}-{second}", opening_ids)
        opening_ids.add(ident)
        length = hypot(seam[1][0] - seam[0][0], seam[1][1] - seam[0][1])
        wide.append(Opening(ident, "wide", seam, (room_id, second), round(length, DECIMALS)))
    openings = tuple(_sided(o, room_id, second, parts) for o in floor.openings)
    rooms = [r for one in floor.rooms for r in ((kept, new) if one is room else (one,))]
    windows = tuple(
        replace(w, room=_nearer(w.line, room_id, second, parts)) if w.room == room_id else w
        for w in floor.windows
    )
    return replace(floor, rooms=tuple(rooms), openings=(*openings, *wide), windows=windows)


def _room(floor: Floor, room_id: str) -> Room:
    room = floor.room_by_id.get(room_id)
    if room is None:
        raise Refused(Mistake("rooms", f"There is no room “{room_id}”.", "Choose one that is."))
    return room


def _lengthened(line: tuple[Point, Point]) -> shapely.LineString:
    (ax, ay), (bx, by) = line
    length = hypot(bx - ax, by - ay)
    if length == 0:
        raise Refused(Mistake("line", "The line has no length.", "Set two points apart."))
    ux, uy = (bx - ax) / length * _OVER_M, (by - ay) / length * _OVER_M
    return shapely.LineString([(ax - ux, ay - uy), (bx + ux, by + uy)])


def _seams(parts: Sequence[shapely.Polygon], cut: shapely.LineString) -> list[tuple[Point, Point]]:
    """Where two parts meet along the cut."""
    if len(parts) != 2:
        return []
    shared = parts[0].boundary & parts[1].boundary & cut.buffer(0.001)
    lines = shapely.get_parts(shapely.line_merge(shared)).tolist()
    found = []
    for one in lines:
        if isinstance(one, shapely.LineString) and one.length > SEAM_M:
            ends = [(round(x, DECIMALS), round(y, DECIMALS)) for x, y in one.coords]
            found.append((ends[0], ends[-1]))
    return found


def _sided(
    opening: Opening, room_id: str, second: str, parts: Sequence[shapely.Polygon]
) -> Opening:
    if room_id not in opening.rooms:
        return opening
    side = _nearer(opening.line, room_id, second, parts)
    return replace(opening, rooms=tuple(side if r == room_id else r for r in opening.rooms))


def _nearer(
    line: Sequence[Point], room_id: str, second: str, parts: Sequence[shapely.Polygon]
) -> str:
    """The part at whose edge most of a line lies."""
    drawn = shapely.LineString(line)
    away = [shapely.distance(drawn.interpolate(0.5, normalized=True), part) for part in parts]
    return room_id if away[0] <= away[1] else second
