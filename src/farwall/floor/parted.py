"""Takes the floor under the doors out of the rooms again: what `thresholds` joined, parted.

Whoever draws wants a wall to be one straight line with a door on it; in a job made of a drawing
each doorway is a notch in the room's outline. Joined again, the same floor comes out: a notch of
which that does not hold stays where it is.
"""

from __future__ import annotations

from dataclasses import replace
from math import dist, hypot

import shapely

from farwall.floor.geometry import Point, polygon_geometry, polygons_of
from farwall.floor.nouns import Floor, Opening, Room
from farwall.floor.thresholds import DEEPEST_WALL_M, WELD_M, join_thresholds

_SQUARE = 0.02
_STRAIGHT_M = 0.0005
_SAME_M2 = 1e-3


def part_thresholds(floor: Floor) -> Floor:
    """The floor, doorways in `threshold` where they can be told; `join_thresholds` undoes it."""
    left: set[str] = set()
    for _ in range(len(floor.openings) + 1):
        found = _parted(floor, left)
        wrong = _unlike(floor, found)
        if not wrong:
            return found
        left |= {one.id for one in floor.openings if wrong & set(one.rooms)}
    return floor


def _unlike(floor: Floor, parted: Floor) -> set[str]:
    """Rooms that joining does not bring back."""
    before = {room.id: room.polygon.shape for room in join_thresholds(floor).rooms}
    after = {room.id: room.polygon.shape for room in join_thresholds(parted).rooms}
    return {
        name
        for name, shape in before.items()
        if shapely.symmetric_difference(shape, after[name]).area > _SAME_M2
    }


def _parted(floor: Floor, left: set[str]) -> Floor:
    rings = {room.id: _open(room) for room in floor.rooms}
    cut: set[str] = set()
    openings = []
    for one in floor.openings:
        if one.threshold is not None or one.id in left:
            openings.append(one)
            continue
        opening, changed = _without_notch(one, rings)
        cut |= changed
        openings.append(opening)
    rooms = tuple(_with(room, rings[room.id]) if room.id in cut else room for room in floor.rooms)
    return replace(floor, rooms=rooms, openings=tuple(openings))


def _open(room: Room) -> list[Point]:
    return list(room.polygon.coordinates[0][:-1])


def _with(room: Room, ring: list[Point]) -> Room:
    holes = room.polygon.coordinates[1:]
    shape = shapely.Polygon(_straight(ring), holes)
    if not shape.is_valid or shape.is_empty:
        return room
    return replace(room, polygon=polygon_geometry(shape))


def _straight(ring: list[Point]) -> list[Point]:
    """The ring without corners that lie on a straight wall."""
    kept: list[Point] = []
    for place, at in enumerate(ring):
        before, after = ring[place - 1], ring[(place + 1) % len(ring)]
        if _aside_m(at, before, after) > _STRAIGHT_M:
            kept.append(at)
    return kept


def _aside_m(at: Point, start: Point, end: Point) -> float:
    (ax, ay), (bx, by) = start, end
    length = hypot(bx - ax, by - ay)
    if length == 0:
        return dist(at, start)
    return abs((at[0] - ax) * (by - ay) - (at[1] - ay) * (bx - ax)) / length


def _without_notch(one: Opening, rings: dict[str, list[Point]]) -> tuple[Opening, set[str]]:
    """The opening with its threshold, the rooms' rings cut back; as it came where none is found."""
    notches, changed, cut = [], set(), {}
    for name in dict.fromkeys(one.rooms):
        ring = rings.get(name, [])
        found = _notch(ring, one.line)
        if found is None:
            continue
        notch, rest = found
        notches.append(shapely.Polygon(notch))
        cut[name] = rest
        changed.add(name)
    whole = polygons_of(shapely.union_all(notches))
    if len(whole) != 1:
        return one, set()
    rings.update(cut)
    return replace(one, threshold=polygon_geometry(whole[0])), changed


def _notch(ring: list[Point], line: tuple[Point, Point]) -> tuple[list[Point], list[Point]] | None:
    """The doorway of a ring at a line, and the ring without it."""
    count = len(ring)
    if count < 6:
        return None
    for place in range(count):
        near, far = ring[place], ring[(place + 1) % count]
        if not (_same(near, far, line) or _same(far, near, line)):
            continue
        before, after = ring[place - 1], ring[(place + 2) % count]
        if not (_squarely(before, near, line) and _squarely(after, far, line)):
            continue
        rest = [at for n, at in enumerate(ring) if n not in {place, (place + 1) % count}]
        if shapely.Polygon(rest).area < shapely.Polygon(ring).area:
            return [before, near, far, after], rest
    return None


def _same(start: Point, end: Point, line: tuple[Point, Point]) -> bool:
    return dist(start, line[0]) < WELD_M and dist(end, line[1]) < WELD_M


def _squarely(face: Point, seam: Point, line: tuple[Point, Point]) -> bool:
    deep, wide = dist(face, seam), dist(*line)
    if not WELD_M < deep <= DEEPEST_WALL_M or wide == 0:
        return False
    across = (face[0] - seam[0]) * (line[1][0] - line[0][0])
    across += (face[1] - seam[1]) * (line[1][1] - line[0][1])
    return abs(across) < _SQUARE * deep * wide
