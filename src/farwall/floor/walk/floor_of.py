"""The floor of a walk that was closed: rooms, openings with the floor under them, ways out."""

from __future__ import annotations

import shapely

from farwall.floor.geometry import Point, PolygonGeometry, polygon_geometry
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.floor.walk.closed import Closed
from farwall.floor.walk.lay import Join, unit

_APART_M = 2.0
"""Rooms that no door joins are laid this far apart."""


def floor_of(
    closed: Closed, ids: tuple[str, ...]
) -> tuple[Floor, tuple[Exit, ...], tuple[int, ...]]:
    """Floor and ways out of a closed walk, `ids` by room; then numbers of rooms that cross
    themselves and are left out.
    """
    moves = _moves(closed)
    shapes = [shapely.Polygon(corners) for corners in laid_corners(closed)]
    crossed = tuple(n for n, shape in enumerate(shapes) if not shape.is_valid or shape.area < 0.01)
    rooms = tuple(
        Room(ids[n], polygon_geometry(shape), closed.walk.rooms[n].name)
        for n, shape in enumerate(shapes)
        if n not in crossed
    )
    openings = _openings(closed, ids, moves, crossed)
    exits = tuple(
        Exit(f"exit-{one.id}", one.id) for one in openings if one.kind == "outside"
    )  # fmt: skip
    return Floor(rooms, openings), exits, crossed


def laid_corners(closed: Closed) -> list[list[Point]]:
    """The corners of each room [m], groups that no door joins side by side, as in the floor."""
    moves = _moves(closed)
    return [
        [
            (x + moves[n][0], y + moves[n][1])
            for k in range(len(room.walls))
            for x, y in [closed.corner(n, k)]
        ]
        for n, room in enumerate(closed.walk.rooms)
    ]


def _moves(closed: Closed) -> list[Point]:
    """How far each room is moved, so that groups of rooms stand side by side."""
    by_part: dict[int, float] = {}
    right = 0.0
    for part in sorted(set(closed.lay.parts)):
        corners = [
            closed.corner(n, k)
            for n, room in enumerate(closed.walk.rooms)
            if closed.lay.parts[n] == part
            for k in range(len(room.walls))
        ]
        low, high = min(x for x, _ in corners), max(x for x, _ in corners)
        by_part[part] = right - low if by_part else 0.0
        right = high + by_part[part] + _APART_M
    return [(by_part[part], 0.0) for part in closed.lay.parts]


def _openings(
    closed: Closed, ids: tuple[str, ...], moves: list[Point], crossed: tuple[int, ...]
) -> tuple[Opening, ...]:
    joins = {(join.room, join.way): join for join in closed.lay.joins}
    second = {(join.other, join.other_way) for join in closed.lay.joins}
    found: list[Opening] = []
    for n, room in enumerate(closed.walk.rooms):
        for k, way in enumerate(room.ways):
            join = joins.get((n, k))
            if (n, k) in second or (way.to and join is None) or n in crossed:
                continue
            if join is not None and join.other in crossed:
                continue
            face = _face(closed, n, k, moves[n])
            name = f"{ids[n]}-{len(found) + 1}"
            if join is None:
                found.append(Opening(name, "outside", face, (ids[n],), _width(face)))
            else:
                found.append(_joined(closed, join, name=name, ids=ids, moves=moves))
    return tuple(found)


def _joined(
    closed: Closed, join: Join, *, name: str, ids: tuple[str, ...], moves: list[Point]
) -> Opening:
    face = _face(closed, join.room, join.way, moves[join.room])
    other = _face(closed, join.other, join.other_way, moves[join.other])
    (ax, ay), (bx, by) = face
    if (bx - ax) * (other[1][0] - other[0][0]) + (by - ay) * (other[1][1] - other[0][1]) < 0:
        other = other[1], other[0]
    line = _between(face[0], other[0]), _between(face[1], other[1])
    kind = closed.walk.rooms[join.room].ways[join.way].kind
    sides = (ids[join.room], ids[join.other])
    return Opening(name, kind, line, sides, _width(line), _sill(face, other))


def _face(closed: Closed, n: int, k: int, move: Point) -> tuple[Point, Point]:
    """The two jambs of an opening on a room's face: along by their unknowns, across by the wall."""
    way = closed.walk.rooms[n].ways[k]
    (ax, ay), (bx, by) = closed.corner(n, way.wall), closed.corner(n, way.wall + 1)
    ux, uy = unit(closed.lay.headings[n][way.wall])
    joined = next((one for one in closed.lay.joins if (one.other, one.other_way) == (n, k)), None)
    if joined is not None:
        theirs = closed.walk.rooms[joined.room].ways[joined.way].wall
        sx, sy = unit(closed.lay.headings[joined.room][theirs])
        sign = 1.0 if sx * ux + sy * uy > 0 else -1.0
    else:
        sign = 1.0
    start, length = ax * ux + ay * uy, (bx - ax) * ux + (by - ay) * uy
    points = []
    for jamb in closed.net.jambs[n, k]:
        share = (sign * float(closed.fit.x[jamb]) - start) / length if length else 0.0
        x, y = ax + share * (bx - ax) + move[0], ay + share * (by - ay) + move[1]
        points.append((round(x, 4) + 0.0, round(y, 4) + 0.0))
    return points[0], points[1]


def _between(one: Point, two: Point) -> Point:
    return round((one[0] + two[0]) / 2, 4) + 0.0, round((one[1] + two[1]) / 2, 4) + 0.0


def _width(line: tuple[Point, Point]) -> float:
    return round(shapely.LineString(line).length, 4)


def _sill(one: tuple[Point, Point], two: tuple[Point, Point]) -> PolygonGeometry | None:
    """The floor in the depth of the wall."""
    shape = shapely.Polygon([one[0], one[1], two[1], two[0]])
    return polygon_geometry(shape) if shape.is_valid and shape.area > 1e-4 else None
