"""The edges of all rooms: every millimetre of the net floor's outline is a run or a mouth.

Thresholds are joined to the rooms first, so that a floor drawn to its wall faces and the same
floor drawn to its seams come out alike.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

import shapely
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from farwall.floor.geometry import Point, polygons_of
from farwall.floor.masking.cutting import HIDDEN_M, Line, Piece, cut, faced, on_line, turn_deg
from farwall.floor.masking.nouns import Mouth, RoomEdge, Run, RunKind
from farwall.floor.nouns import Floor, Opening, Room
from farwall.floor.takeoff import net_shape
from farwall.floor.thresholds import DEEPEST_WALL_M, join_thresholds

CORNER_DEG = 20.0
"""A wall that turns by more than this has a corner; less is the bend of a round wall."""
_SQUARE_DEG = 25.0
_SAME_M = 1e-6
_HAIR_M = 0.0003
"""Steps that rounding to tenths of a millimetre leaves in an edge."""
_STRAIGHT_DEG = 0.5


def edges_of(floor: Floor) -> tuple[RoomEdge, ...]:
    """The edge of each room, in the rooms' order. [m]

    Source: plane geometry, measured on the polygons as they are given. A mouth on the line that
    two rooms share stands in the edge of both.
    """
    return joined_edges(join_thresholds(floor))


def joined_edges(floor: Floor) -> tuple[RoomEdge, ...]:
    """The same for a floor whose thresholds are joined already."""
    return tuple(_edge(room, floor) for room in floor.rooms)


def _edge(room: Room, floor: Floor) -> RoomEdge:
    net = net_shape(room, floor)
    openings = sorted((o for o in floor.openings if room.id in o.rooms), key=lambda one: one.id)
    rings = _pieces(net, room, floor)
    rings = _without_hidden(rings)
    mouths_of = {one.id: _mouth_lines(one, room) for one in openings}
    runs: list[Run] = []
    mouths: list[Mouth] = []
    corners = 0
    for ring in rings:
        opened = _smooth([part for one in ring for part in cut(one, _mouths_on(one, mouths_of))])
        known = _smooth(_with_reveals(opened))
        mouths += [
            Mouth(one.of, (one.start, one.end), one.length_m)
            for one in known
            if one.kind == "mouth"
        ]
        strung, turned = _strung(known)
        runs += strung
        corners += turned
    return RoomEdge(
        room.id, tuple(_in_order(runs)), tuple(sorted(mouths, key=lambda m: (m.opening, m.line))),
        corners, float(net.length),
    )  # fmt: skip


def _pieces(net: BaseGeometry, room: Room, floor: Floor) -> list[list[Piece]]:
    """The rings of the net floor, floor to the left, each piece a wall or a fixture's."""
    wall = room.polygon.shape.boundary
    near = [
        (str(n), one.polygon.shape.boundary)
        for n, one in enumerate(floor.fixtures)
        if one.polygon.shape.intersects(room.polygon.shape)
    ]
    rings = []
    for part in polygons_of(net):
        turned = orient(part)
        for ring in (turned.exterior, *turned.interiors):
            points = _distinct(list(ring.coords))
            if len(points) > 2:
                rings.append(_told(points, wall, near))
    return rings


def _told(
    points: list[Point], wall: BaseGeometry, near: Sequence[tuple[str, BaseGeometry]]
) -> list[Piece]:
    lines = list(pairwise([*points, points[0]]))
    if not near:
        return [Piece("wall", "", a, b) for a, b in lines]
    mids = shapely.points([((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in lines])
    far = shapely.distance(wall, mids)
    pieces = []
    for k, (a, b) in enumerate(lines):
        if far[k] < _SAME_M:
            pieces.append(Piece("wall", "", a, b))
            continue
        of = min(near, key=lambda one: float(one[1].distance(mids[k])))[0]
        pieces.append(Piece("fixture", of, a, b))
    return pieces


def _without_hidden(rings: list[list[Piece]]) -> list[list[Piece]]:
    """Where a fixture stands a hair off a wall, or two do side by side, nothing is hung between."""
    whole = [one for ring in rings for one in ring]
    if not any(one.kind == "fixture" for one in whole):
        return rings
    boxes = shapely.linestrings([[one.start, one.end] for one in whole])
    tree = shapely.STRtree(boxes)
    found: dict[int, list[tuple[float, float, str, str]]] = {}
    first, second = tree.query(boxes, predicate="dwithin", distance=HIDDEN_M)
    for a, b in zip(first.tolist(), second.tolist(), strict=True):
        if a != b and "fixture" in {whole[a].kind, whole[b].kind}:
            span = faced(whole[a], whole[b])
            if span is not None:
                found.setdefault(a, []).append((*span, "hidden", ""))
    count = 0
    made = []
    for ring in rings:
        row: list[Piece] = []
        for one in ring:
            row += cut(one, found.get(count, ()))
            count += 1
        made.append(row)
    return made


def _mouth_lines(opening: Opening, room: Room) -> list[Line]:
    """Where an opening lies on the edge of a room: its line, or the wall face before it."""
    line = shapely.LineString(opening.line)
    edge = room.polygon.shape.boundary
    if opening.threshold is None and line.distance(edge) < HIDDEN_M:
        return [opening.line]
    if opening.threshold is not None:
        ring = opening.threshold.coordinates[0]
        return [*pairwise(ring), opening.line]
    return _cast(opening.line, room)


def _cast(line: Line, room: Room) -> list[Line]:
    """The nearest edge of a room along an opening's line, as far as the line goes. [m]"""
    seen = Piece("", "", *line)
    best: tuple[float, list[Line]] = (DEEPEST_WALL_M, [])
    ring = room.polygon.coordinates[0]
    for a, b in pairwise(ring):
        side = Piece("", "", a, b)
        if abs(math.sin(math.radians(turn_deg(seen, side)))) > 0.17 or side.length_m < _SAME_M:
            continue
        span = on_line(side, line, DEEPEST_WALL_M)
        if span is None:
            continue
        far = float(shapely.LineString((a, b)).distance(shapely.LineString(line)))
        if far < best[0]:
            (x, y), (dx, dy) = side.start, side.way
            ends = tuple((x + t * dx, y + t * dy) for t in span)
            best = (far, [(ends[0], ends[1])])
    return best[1]


def _mouths_on(
    piece: Piece, mouths_of: dict[str, list[Line]]
) -> list[tuple[float, float, str, str]]:
    if piece.kind == "hidden":
        return []
    return [
        (*span, "mouth", of)
        for of, lines in mouths_of.items()
        for line in lines
        if (span := on_line(piece, line)) is not None
    ]


def _with_reveals(ring: list[Piece]) -> list[Piece]:
    """Short walls that lead square from an opening's end to the wall face are its reveals."""
    count, told = len(ring), list(ring)
    for k, one in enumerate(ring):
        if one.kind != "mouth":
            continue
        after, before = (k + 1) % count, k - 1
        if _turns_out(one, ring[after], ring[(k + 2) % count]):
            told[after] = Piece("reveal", one.of, ring[after].start, ring[after].end)
        if _turns_out(_back(one), _back(ring[before]), _back(ring[k - 2]), sign=-1):
            told[before] = Piece("reveal", one.of, ring[before].start, ring[before].end)
    return told


def _turns_out(mouth: Piece, wall: Piece, beyond: Piece, *, sign: int = 1) -> bool:
    """Whether a wall leads square into the room from a mouth and the edge then turns away."""
    if wall.kind != "wall" or wall.length_m > DEEPEST_WALL_M:
        return False
    square = abs(sign * turn_deg(mouth, wall) - 90) < _SQUARE_DEG
    return square and sign * turn_deg(wall, beyond) < -CORNER_DEG


def _back(one: Piece) -> Piece:
    return Piece(one.kind, one.of, one.end, one.start)


def _smooth(ring: list[Piece]) -> list[Piece]:
    """Neighbours that go straight on and are the same are one."""
    made: list[Piece] = []
    for one in ring:
        if made and _alike(made[-1], one) and abs(turn_deg(made[-1], one)) < _STRAIGHT_DEG:
            made[-1] = Piece(one.kind, one.of, made[-1].start, one.end)
        else:
            made.append(one)
    if (
        len(made) > 2
        and _alike(made[-1], made[0])
        and abs(turn_deg(made[-1], made[0])) < _STRAIGHT_DEG
    ):
        last = made.pop()
        made[0] = Piece(last.kind, last.of, last.start, made[0].end)
    return made


def _alike(one: Piece, other: Piece) -> bool:
    return (one.kind, one.of) == (other.kind, other.of)


def _strung(ring: list[Piece]) -> tuple[list[Run], int]:
    """Pieces strung into runs up to the next corner, and how many corners there are."""
    count = len(ring)
    breaks = [
        k for k in range(count)
        if not _alike(ring[k - 1], ring[k]) or abs(turn_deg(ring[k - 1], ring[k])) > CORNER_DEG
    ]  # fmt: skip
    corners = sum(
        ring[k - 1].kind in {"wall", "fixture"} and ring[k].kind in {"wall", "fixture"}
        and abs(turn_deg(ring[k - 1], ring[k])) > CORNER_DEG
        for k in breaks
    )  # fmt: skip
    if not breaks:
        breaks = [min(range(count), key=lambda k: ring[k].start)]
    runs = []
    for here, there in zip(breaks, [*breaks[1:], breaks[0]], strict=True):
        steps = (there - here) % count or count
        pieces = [ring[(here + k) % count] for k in range(steps)]
        if pieces[0].kind == "mouth":
            continue
        line = (pieces[0].start, *(one.end for one in pieces))
        kind: RunKind = pieces[0].kind  # type: ignore[assignment]
        runs.append(Run(kind, line, math.fsum(one.length_m for one in pieces), pieces[0].of))
    return runs, corners


def _in_order(runs: list[Run]) -> list[Run]:
    """The same order however the rings began."""
    return sorted(runs, key=lambda one: (min(one.line), one.line, one.kind, one.of))


def _distinct(points: list[tuple[float, ...]]) -> list[Point]:
    flat = [(float(one[0]), float(one[1])) for one in points]
    found: list[Point] = []
    for point in flat:
        if not found or math.dist(point, found[-1]) > _HAIR_M:
            found.append(point)
    while len(found) > 1 and math.dist(found[0], found[-1]) <= _HAIR_M:
        found.pop()
    return found
