"""Joins the floor under the doors to the rooms, so that neighbours touch along the seam.

A plan gives rooms to their inner wall faces; the floor in the depth of a wall
belongs to neither. Each such threshold is cut along its opening's line, where
a seam would lie, and each part goes to the room on its side.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from math import hypot

import shapely

from farwall.floor.geometry import DECIMALS, Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Floor, Opening, Room

WELD_M = 0.002
"""Corners nearer than this to an edge lie on it: files round to tenths of a millimetre."""
DEEPEST_WALL_M = 0.8
_FAR_M = 50.0


def join_thresholds(floor: Floor) -> Floor:
    """The floor with its thresholds shared out, their openings holding none any more.

    The outer part of an outside door's threshold is dropped. An opening that has no threshold
    and does not touch its room gets the rectangle between its line and the room's wall face.
    An opening that reaches no room of its own is returned as it came.
    """
    shapes = {room.id: room.polygon.shape for room in floor.rooms}
    openings = tuple(_joined(opening, shapes) for opening in floor.openings)
    rooms = tuple(_with_shape(room, shapes[room.id]) for room in floor.rooms)
    return replace(floor, rooms=rooms, openings=openings)


def _with_shape(room: Room, shape: shapely.Polygon) -> Room:
    return room if shape is room.polygon.shape else replace(room, polygon=polygon_geometry(shape))


def _joined(opening: Opening, shapes: dict[str, shapely.Polygon]) -> Opening:
    """The opening without its threshold; the rooms in `shapes` have grown by it."""
    parts = _parts(opening, shapes)
    grown = {}
    for room_id in dict.fromkeys(opening.rooms):
        if room_id not in parts:
            return opening
        shape = shapes[room_id]
        for part in parts[room_id]:
            whole = _united(shape, part)
            if whole is None:
                return opening
            shape = whole
        grown[room_id] = _welded(shape, list(opening.line))
    shapes.update(grown)
    return replace(opening, threshold=None)


def _parts(
    opening: Opening, shapes: dict[str, shapely.Polygon]
) -> dict[str, list[shapely.Polygon]]:
    """What each room gets: its side of the threshold, or the gap between line and wall face."""
    if hypot(*_along(opening.line)) == 0:
        return {}
    sides = _sides(opening)
    parts: dict[str, list[shapely.Polygon]] = {}
    for room_id, side in _matched(opening, sides, shapes):
        parts.setdefault(room_id, []).append(side)
    for room_id in opening.rooms:
        if room_id not in parts and room_id in shapes:
            gap = _gap(opening.line, shapes[room_id])
            if gap is not None:
                parts[room_id] = [gap]
            elif shapes[room_id].distance(shapely.LineString(opening.line)) < WELD_M:
                parts[room_id] = []
    return parts


def _sides(opening: Opening) -> list[shapely.Polygon]:
    """The threshold cut in two along the endless line through the opening's line."""
    if opening.threshold is None:
        return []
    (ax, ay), (bx, by) = opening.line
    dx, dy = _along(opening.line)
    length = hypot(dx, dy)
    ux, uy = dx / length * _FAR_M, dy / length * _FAR_M
    start, end = (ax - ux, ay - uy), (bx + ux, by + uy)
    halves = [
        shapely.Polygon([start, end, (end[0] + s * -uy, end[1] + s * ux),
                         (start[0] + s * -uy, start[1] + s * ux)])
        for s in (1.0, -1.0)
    ]  # fmt: skip
    cut = [part for half in halves for part in polygons_of(opening.threshold.shape & half)]
    return [_rounded(part) for part in cut if part.area > WELD_M**2]


def _matched(
    opening: Opening, sides: list[shapely.Polygon], shapes: dict[str, shapely.Polygon]
) -> list[tuple[str, shapely.Polygon]]:
    """Each side of the threshold with the room it lies at; an outside part has none."""
    rooms = [room_id for room_id in dict.fromkeys(opening.rooms) if room_id in shapes]
    found = []
    for side in sides:
        shares = [(_shared_m(side, shapes[room_id]), room_id) for room_id in rooms]
        best = max(shares, default=(0.0, ""))
        if best[0] > WELD_M:
            found.append((best[1], side))
    return found


def _shared_m(side: shapely.Polygon, room: shapely.Polygon) -> float:
    return float(side.boundary.intersection(room.buffer(WELD_M)).length)


def _gap(line: tuple[Point, Point], room: shapely.Polygon) -> shapely.Polygon | None:
    """The quadrangle between an opening's line and a room's wall face, if there is a gap."""
    if room.distance(shapely.LineString(line)) < WELD_M:
        return None
    (ax, ay), (bx, by) = line
    dx, dy = _along(line)
    length = hypot(dx, dy)
    found = []
    for side in (1.0, -1.0):
        nx, ny = -side * dy / length, side * dx / length
        reach = [_reach(point, (nx, ny), room) for point in _inset(line)]
        if reach[0] is not None and reach[1] is not None:
            corners = [(ax, ay), (bx, by), (bx + nx * reach[1], by + ny * reach[1]),
                       (ax + nx * reach[0], ay + ny * reach[0])]  # fmt: skip
            found.append(_rounded(shapely.Polygon(corners)))
    return min(found, key=lambda gap: gap.area) if found else None


def _inset(line: tuple[Point, Point]) -> tuple[Point, Point]:
    """The ends of a line, a thousandth inwards: a ray from a corner may slip past it."""
    (ax, ay), (bx, by) = line
    dx, dy = (bx - ax) * 0.001, (by - ay) * 0.001
    return (ax + dx, ay + dy), (bx - dx, by - dy)


def _reach(start: Point, way: Point, room: shapely.Polygon) -> float | None:
    end = start[0] + way[0] * DEEPEST_WALL_M, start[1] + way[1] * DEEPEST_WALL_M
    hit = shapely.LineString([start, end]).intersection(room)
    return None if hit.is_empty else float(hit.distance(shapely.Point(start)))


def _united(room: shapely.Polygon, part: shapely.Polygon) -> shapely.Polygon | None:
    """Room and part as one polygon, or None when they do not meet along an edge."""
    snapped = _snapped_to_corners(part, room)
    welded = _welded(room, [(x, y) for x, y in snapped.exterior.coords[:-1]])
    whole = polygons_of(shapely.union(welded, snapped))
    return _without_hairs(whole[0]) if len(whole) == 1 else None


def _without_hairs(shape: shapely.Polygon) -> shapely.Polygon:
    """The polygon without holes that rounding left between two edges that should have met."""
    holes = [
        ring
        for ring in shape.interiors
        if shapely.Polygon(ring).area > WELD_M * shapely.LinearRing(ring).length / 2
    ]
    return shapely.Polygon(shape.exterior, holes)


def _snapped_to_corners(part: shapely.Polygon, room: shapely.Polygon) -> shapely.Polygon:
    corners = [(float(x), float(y)) for x, y in shapely.get_coordinates(room)]

    def settled(point: Point) -> Point:
        near = min(corners, key=lambda c: hypot(c[0] - point[0], c[1] - point[1]))
        return near if hypot(near[0] - point[0], near[1] - point[1]) < WELD_M else point

    return shapely.Polygon([settled((float(x), float(y))) for x, y in part.exterior.coords])


def _welded(room: shapely.Polygon, points: list[Point]) -> shapely.Polygon:
    """The same polygon with the points that lie on its edges among its corners."""
    if room.boundary.distance(shapely.MultiPoint(points)) > WELD_M:
        return room
    rings = [_with_points(list(ring.coords), points) for ring in (room.exterior, *room.interiors)]
    welded = shapely.Polygon(rings[0], rings[1:])
    return welded if welded.is_valid else room


def _with_points(ring: list[Point], points: list[Point]) -> list[Point]:
    result = [ring[0]]
    for start, end in pairwise(ring):
        dx, dy = end[0] - start[0], end[1] - start[1]
        length = hypot(dx, dy)
        on_edge = []
        for point in points:
            along = ((point[0] - start[0]) * dx + (point[1] - start[1]) * dy) / length
            aside = abs((point[0] - start[0]) * dy - (point[1] - start[1]) * dx) / length
            if WELD_M < along < length - WELD_M and aside < WELD_M:
                on_edge.append((along, point))
        result += [point for _, point in sorted(on_edge)]
        result.append(end)
    return result


def _rounded(shape: shapely.Polygon) -> shapely.Polygon:
    """Corners on the file's grid, so that both parts of a threshold end on the same points."""
    return shapely.Polygon(shapely.get_coordinates(shape).round(DECIMALS))


def _along(line: tuple[Point, Point]) -> Point:
    (ax, ay), (bx, by) = line
    return bx - ax, by - ay
