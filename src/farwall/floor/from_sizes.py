"""A first floor from room sizes: rectangles laid side by side as their doors lead.

Sizes and doors are as told; where a room lies is a stand-in, for nobody told it. Walls have no
thickness. Good for a first plan: areas, fields, order and mix hang on sizes and doors most.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import field
from typing import Literal

import shapely

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point, polygon_geometry
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.nouns import dataclass

Way = Literal["door", "cased", "wide"]
WIDTH_M: dict[str, float] = {"door": 0.76, "cased": 0.91, "wide": 1.83, "outside": 0.91}
"""30 in, 36 in, 6 ft, 36 in: usual widths, a guess for this house."""
LEAST_M, MOST_M = 0.6, 60.0
"""Lengths of a room that are taken: our guess of what no slip of the pen would be."""
_CORNER_M = 0.1
"""Wall left beside an opening."""
_STEP_M = 0.3
_SAME_M = 1e-6
_THRIFTS = (0.0, 1.0, 4.0, 16.0)
"""How dear a metre of a wall is that other doors still wait for, in square metres of ground."""


@dataclass(frozen=True)
class SizedRoom:
    """A room by two lengths [m]. leads: number of the room its way leads to, None for outside."""

    id: str
    name: str
    long_m: float
    wide_m: float
    leads: int | None = None
    way: Way = "door"


@dataclass(frozen=True)
class _Box:
    x: float
    y: float
    wide: float
    high: float

    @property
    def ends(self) -> tuple[float, float]:
        return self.x + self.wide, self.y + self.high

    def meets(self, other: _Box) -> bool:
        (x1, y1), (a1, b1) = self.ends, other.ends
        return (
            min(x1, a1) - max(self.x, other.x) > _SAME_M
            and min(y1, b1) - max(self.y, other.y) > _SAME_M
        )


@dataclass
class _Laid:
    rooms: Sequence[SizedRoom]
    boxes: dict[int, _Box] = field(default_factory=dict)
    lines: dict[int, tuple[Point, Point]] = field(default_factory=dict)


def floor_from_sizes(rooms: Sequence[SizedRoom]) -> tuple[Floor, tuple[Exit, ...]]:
    """The floor and its ways out; of each room one opening, numbers of rooms from 0.

    Raises Refused with all that cannot be: sizes, doors that lead nowhere or round in a ring, no
    way outside, a room for which no wall is left. `where` of a mistake is the room's number.
    """
    mistakes = _mistakes(rooms)
    if mistakes:
        raise Refused(*mistakes, about="No floor can be made of these rooms.")
    tried = [_laid(rooms, thrift) for thrift in _THRIFTS]
    done = [one for one in tried if isinstance(one, _Laid)]
    if not done:
        raise Refused(*[one for one in tried if isinstance(one, Mistake)][-1:],
                      about="No floor can be made of these rooms.")  # fmt: skip
    best = min(done, key=lambda one: _ground(list(one.boxes.values())))
    return _floor(best)


def _mistakes(rooms: Sequence[SizedRoom]) -> list[Mistake]:
    found = []
    for n, room in enumerate(rooms):
        if not all(LEAST_M <= one <= MOST_M for one in (room.long_m, room.wide_m)):
            found.append(Mistake(str(n), "size", f"{LEAST_M:g} to {MOST_M:g} m"))
        if room.leads is not None and not 0 <= room.leads < len(rooms):
            found.append(Mistake(str(n), "leads-nowhere"))
    if not any(room.leads is None for room in rooms):
        found.append(Mistake("", "no-way-out"))
    elif not found:
        found += [Mistake(str(n), "shut") for n in range(len(rooms)) if _rings(rooms, n)]
    return found


def _rings(rooms: Sequence[SizedRoom], n: int) -> bool:
    """Whether the doors from a room on lead round without end."""
    at: int | None = n
    for _ in rooms:
        if at is None:
            return False
        at = rooms[at].leads
    return at is not None


def _laid(rooms: Sequence[SizedRoom], thrift: float) -> _Laid | Mistake:
    """Every room in its place, one after the other, each where the ground in all stays least."""
    laid = _Laid(rooms)
    outside = [n for n, room in enumerate(rooms) if room.leads is None]
    waiting = [*outside]
    while waiting:
        n = waiting.pop(0)
        if not _place(laid, n, thrift):
            return Mistake(str(n), "no-wall")
        inner = [k for k, room in enumerate(rooms) if room.leads == n]
        waiting += sorted(inner, key=lambda k: -rooms[k].long_m * rooms[k].wide_m)
    for n in outside:
        line = _free_line(laid, n)
        if line is None:
            return Mistake(str(n), "no-wall")
        laid.lines[n] = line
    return laid


def _place(laid: _Laid, n: int, thrift: float) -> bool:
    room = laid.rooms[n]
    if not laid.boxes:
        laid.boxes[n] = _Box(0.0, 0.0, room.long_m, room.wide_m)
        return True
    by = [laid.boxes[room.leads]] if room.leads is not None else list(laid.boxes.values())
    need = WIDTH_M[room.way] + 2 * _CORNER_M
    wait = sum(one.leads == room.leads for one in laid.rooms) if room.leads is not None else 0
    best: tuple[float, _Box, tuple[Point, Point]] | None = None
    for other in by:
        for box, line in _beside(other, room, need):
            # Whoever leaves by the first door walks down from it: nothing is laid in the way.
            if box.y < -_SAME_M or any(box.meets(one) for one in laid.boxes.values()):
                continue
            used = abs(line[1][0] - line[0][0]) + abs(line[1][1] - line[0][1])
            cost = _ground([*laid.boxes.values(), box]) + thrift * wait * used
            if best is None or cost < best[0] - _SAME_M:
                best = (cost, box, line)
    if best is None:
        return False
    laid.boxes[n] = best[1]
    if room.leads is not None:
        laid.lines[n] = _middle(best[2], WIDTH_M[room.way])
    return True


def _beside(
    other: _Box, room: SizedRoom, need: float
) -> Iterator[tuple[_Box, tuple[Point, Point]]]:
    """The room on each side of another, turned both ways, slid along; the wall that both share."""
    (x1, y1) = other.ends
    for wide, high in {(room.long_m, room.wide_m), (room.wide_m, room.long_m)}:
        least = min(need, wide, other.wide)
        for x in _slid(other.x, x1, wide, least):
            a, b = max(x, other.x), min(x + wide, x1)
            yield _Box(x, y1, wide, high), ((a, y1), (b, y1))
            yield _Box(x, other.y - high, wide, high), ((a, other.y), (b, other.y))
        least = min(need, high, other.high)
        for y in _slid(other.y, y1, high, least):
            a, b = max(y, other.y), min(y + high, y1)
            yield _Box(x1, y, wide, high), ((x1, a), (x1, b))
            yield _Box(other.x - wide, y, wide, high), ((other.x, a), (other.x, b))


def _slid(low: float, high: float, length: float, least: float) -> list[float]:
    """Where something of a length may begin along a wall to share `least` of it."""
    first, last = low - length + least, high - least
    count = int((last - first) / _STEP_M) + 1
    steps = [first + k * (last - first) / count for k in range(count + 1)]
    return [low, high - length, (low + high - length) / 2, *steps]


def _ground(boxes: Sequence[_Box]) -> float:
    """The rectangle around all, and half of what its longer side exceeds the shorter."""
    wide = max(one.ends[0] for one in boxes) - min(one.x for one in boxes)
    high = max(one.ends[1] for one in boxes) - min(one.y for one in boxes)
    return wide * high + 0.5 * abs(wide - high)


def _middle(line: tuple[Point, Point], width: float) -> tuple[Point, Point]:
    """The opening of a width in the middle of a wall, shorter where the wall is."""
    (ax, ay), (bx, by) = line
    length = abs(bx - ax) + abs(by - ay)
    half = min(width, max(length - 2 * _CORNER_M, 0.6 * length)) / 2
    mx, my = (ax + bx) / 2, (ay + by) / 2
    ux, uy = (bx - ax) / length, (by - ay) / length
    return ((round(mx - ux * half, 4), round(my - uy * half, 4)),
            (round(mx + ux * half, 4), round(my + uy * half, 4)))  # fmt: skip


def _free_line(laid: _Laid, n: int) -> tuple[Point, Point] | None:
    """An outside door in the longest wall of a room that no other room lies behind."""
    box = laid.boxes[n]
    x1, y1 = box.ends
    others = shapely.union_all([
        shapely.box(one.x, one.y, *one.ends).buffer(0.6, join_style="mitre")
        for k, one in laid.boxes.items() if k != n
    ])  # fmt: skip
    walls = [((box.x, box.y), (x1, box.y)), ((box.x, y1), (x1, y1)),
             ((box.x, box.y), (box.x, y1)), ((x1, box.y), (x1, y1))]  # fmt: skip
    free = [
        part
        for wall in walls
        for part in shapely.get_parts(shapely.LineString(wall).difference(others)).tolist()
        if part.length >= min(WIDTH_M["outside"] + 2 * _CORNER_M, box.wide, box.high) - _SAME_M
    ]
    longest = max(free, key=lambda part: part.length, default=None)
    if longest is None:
        return None
    first, last = longest.coords[0], longest.coords[-1]
    return _middle(((first[0], first[1]), (last[0], last[1])), WIDTH_M["outside"])


def _floor(laid: _Laid) -> tuple[Floor, tuple[Exit, ...]]:
    rooms = tuple(
        Room(one.id, polygon_geometry(shapely.box(box.x, box.y, *box.ends)), one.name)
        for n, one in enumerate(laid.rooms)
        for box in [laid.boxes[n]]
    )
    openings, exits = [], []
    for n, one in enumerate(laid.rooms):
        line = laid.lines[n]
        width = round(shapely.LineString(line).length, 4)
        if one.leads is None:
            name = f"out-{one.id}"
            openings.append(Opening(name, "outside", line, (one.id,), width))
            exits.append(Exit(f"exit-{one.id}", name))
        else:
            sides = (one.id, laid.rooms[one.leads].id)
            openings.append(Opening(f"{one.id}-on", one.way, line, sides, width))
    return Floor(rooms, tuple(openings)), tuple(exits)
