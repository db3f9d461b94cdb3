"""Invented houses walked with a tape: walls a little out of square, a tape that errs, one slip.

The truth is drawn apart from what the sums believe: every built wall is one line, turned as a
whole by 0.2 degrees and pushed by 3 mm, its two faces 2 mm; the tape errs by 5 mm a reading, is a
little too long or short for the whole day and sags with the third power of the length; what is
read is rounded to an eighth of an inch or a millimetre. All of these are guesses.
"""

from __future__ import annotations

from math import hypot, radians, tan
from random import Random

from farwall.bench.generator import house_of
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Opening, Room
from farwall.floor.walk.nouns import (
    LEFT,
    RIGHT,
    Across,
    Diagonal,
    Walk,
    WalkRoom,
    WalkWall,
    WalkWay,
)
from farwall.units import M_PER_IN

HALF_M = 0.06
SKEW_DEG, SHIFT_M, FACE_M = 0.2, 0.003, 0.002
TAPE_M, TAPE_SHARE, SAG_PER_M2 = 0.005, 0.0003, 0.5e-5
NARROW = 1 / 3
Key = tuple[str, int, int]


class Chance:
    """Normal draws that come out the same in every version of Python."""

    def __init__(self, seed: str) -> None:
        self.next = Random(seed).random

    def normal(self, sigma: float) -> float:
        """Sum of twelve uniform draws less six: near enough to normal, within six sigma."""
        return sigma * (sum(self.next() for _ in range(12)) - 6.0)

    def among(self, count: int) -> int:
        """A whole number from 0, below count."""
        return int(self.next() * count)


class _Built:
    """The walls of a floor as built: each line turned and pushed a little."""

    def __init__(self, floor: Floor, chance: Chance) -> None:
        spans: dict[tuple[str, int], list[list[float]]] = {}
        for room in floor.rooms:
            for one, two, out in _edges(room):
                axis, place, span = _line(one, two, out)
                spans.setdefault((axis, place), []).append(span)
        self.lines: dict[tuple[str, int], list[tuple[float, float, float, float]]] = {}
        self.faces: dict[tuple[str, int, int, int], float] = {}
        self.chance = chance
        for key in sorted(spans):
            for low, high in _joined(spans[key]):
                turned = tan(radians(chance.normal(SKEW_DEG)))
                self.lines.setdefault(key, []).append((low, high, turned, chance.normal(SHIFT_M)))

    def face(self, one: Point, two: Point, out: Point, at: float) -> float:
        """Where the face of an edge lies across, at a place along it [m]."""
        axis, place, span = _line(one, two, out)
        middle = sum(span) / 2
        number, (low, high, turned, shift) = min(
            enumerate(self.lines[axis, place]),
            key=lambda each: max(each[1][0] - middle, middle - each[1][1]),
        )
        side = int(out[0] + out[1])
        key = (axis, place, number, side)
        if key not in self.faces:
            self.faces[key] = self.chance.normal(FACE_M)
        nominal = one[0] if axis == "x" else one[1]
        return nominal + shift + turned * (at - (low + high) / 2) + self.faces[key]


def _edges(room: Room) -> list[tuple[Point, Point, Point]]:
    """Edges of a room walked clockwise, each with its outward side."""
    ring = list(reversed(room.polygon.coordinates[0][:-1]))
    found = []
    for k, one in enumerate(ring):
        two = ring[(k + 1) % len(ring)]
        length = hypot(two[0] - one[0], two[1] - one[1])
        along = (two[0] - one[0]) / length, (two[1] - one[1]) / length
        found.append((one, two, (round(-along[1]) + 0.0, round(along[0]) + 0.0)))
    return found


def _line(one: Point, two: Point, out: Point) -> tuple[str, int, list[float]]:
    """Axis, whole centimetre of the middle of the wall, and the stretch along it."""
    if abs(one[0] - two[0]) < 1e-9:
        return "x", round((one[0] + out[0] * HALF_M) * 100), sorted((one[1], two[1]))
    return "y", round((one[1] + out[1] * HALF_M) * 100), sorted((one[0], two[0]))


def _joined(spans: list[list[float]]) -> list[tuple[float, float]]:
    found: list[list[float]] = []
    for low, high in sorted(spans):
        if found and low <= found[-1][1] + 3 * HALF_M:
            found[-1][1] = max(found[-1][1], high)
        else:
            found.append([low, high])
    return [(low, high) for low, high in found]


def walked(seed: int, *, rooms: int = 12, checks: str = "one") -> Walk:
    """A house of 12 rooms as measured without a slip.

    checks: none · one (a diagonal a room) · two · across (as one, and the width in the middle
    where a room is three times as long as wide).
    """
    chance = Chance(f"walk {seed}")
    floor = _house(rooms, seed)
    built = _Built(floor, chance)
    tape = _Tape(chance, us=chance.next() < 0.7)
    told = tuple(_Measured(floor, built, tape, room).told(checks) for room in floor.rooms)
    return Walk(told, us=tape.us)


def _house(rooms: int, seed: int) -> Floor:
    """The floor of the first seed from 1000 times this one on whose walls are drawn with depth."""
    for number in range(seed * 1000, seed * 1000 + 1000):
        floor = house_of(rooms, number).job.floor
        if all(one.threshold is not None for one in floor.openings if one.kind != "outside"):
            return floor
    raise ValueError(f"no house with walls from seed {seed}")


class _Tape:
    def __init__(self, chance: Chance, *, us: bool) -> None:
        self.chance, self.us = chance, us
        self.longer = 1.0 + chance.normal(TAPE_SHARE)

    def read(self, true_m: float) -> float:
        """What is read for a true length, rounded as on the tape [m]."""
        erred = true_m * self.longer + SAG_PER_M2 * true_m**3 + self.chance.normal(TAPE_M)
        step = M_PER_IN / 8 if self.us else 0.001
        return max(round(erred / step), 1) * step


def _corners(room: Room, built: _Built) -> list[Point]:
    edges = _edges(room)
    found = []
    for k, edge in enumerate(edges):
        before = edges[k - 1]
        upright, level = (before, edge) if before[2][0] else (edge, before)
        x0, y0 = edge[0]
        found.append((built.face(*upright, y0), built.face(*level, x0)))
    return found


class _Measured:
    """A room as it is walked."""

    def __init__(self, floor: Floor, built: _Built, tape: _Tape, room: Room) -> None:
        self.floor, self.built, self.tape, self.room = floor, built, tape, room
        self.edges, self.corners = _edges(room), _corners(room, built)

    def told(self, checks: str) -> WalkRoom:
        count, corners = len(self.corners), self.corners
        walls = tuple(
            WalkWall(self.tape.read(_far(corners[k], corners[(k + 1) % count])), self._turn(k))
            for k in range(count)
        )
        ways = tuple(
            self._way(opening, k)
            for opening in self.floor.openings
            if self.room.id in opening.rooms
            for k in [_wall_of(opening, self.edges)]
            if k is not None
        )
        diagonals = tuple(
            Diagonal(a, b, self.tape.read(_far(corners[a], corners[b])))
            for a, b in _chosen(corners, checks)
        )
        across = _across(corners, self.tape) if checks == "across" and _narrow(corners) else ()
        return WalkRoom(self.room.id, walls, ways, diagonals, across)

    def _turn(self, k: int) -> float:
        (one, two, _), (_, three, _) = self.edges[k], self.edges[(k + 1) % len(self.edges)]
        cross = (two[0] - one[0]) * (three[1] - two[1]) - (two[1] - one[1]) * (three[0] - two[0])
        return LEFT if cross > 0 else RIGHT

    def _way(self, opening: Opening, k: int) -> WalkWay:
        one, two, out = self.edges[k]
        axis = 1 if out[0] else 0
        ends = sorted((opening.line[0][axis], opening.line[1][axis]))
        near, far = ends if two[axis] > one[axis] else reversed(ends)
        face = self.built.face(one, two, out, near)
        jamb = (face, near) if axis else (near, face)
        other = next((each for each in opening.rooms if each != self.room.id), "")
        at_m = self.tape.read(_far(self.corners[k], jamb))
        width_m = self.tape.read(abs(far - near))
        depth_m = self.tape.read(2 * HALF_M) if other else None
        return WalkWay(k, at_m, width_m, opening.kind, other, depth_m, mark=opening.id)


def _chosen(corners: list[Point], checks: str) -> list[tuple[int, int]]:
    """The longest diagonal, then the longest that shares no corner with it."""
    if checks == "none":
        return []
    count = len(corners)
    able = [(a, b) for a in range(count) for b in range(a + 2, count) if (b + 1) % count != a]
    able.sort(key=lambda pair: -_far(corners[pair[0]], corners[pair[1]]))
    first = able[0]
    second = next((pair for pair in able if not set(pair) & set(first)), None)
    return [first, second] if checks == "two" and second else [first]


def _narrow(corners: list[Point]) -> bool:
    wide = max(x for x, _ in corners) - min(x for x, _ in corners)
    high = max(y for _, y in corners) - min(y for _, y in corners)
    return len(corners) == 4 and min(wide, high) < NARROW * max(wide, high)


def _across(corners: list[Point], tape: _Tape) -> tuple[Across, ...]:
    lengths = [_far(corners[k], corners[(k + 1) % 4]) for k in range(4)]
    k = max(range(4), key=lambda each: lengths[each])
    a, b = corners[k], corners[(k + 1) % 4]
    c, d = corners[(k + 2) % 4], corners[(k + 3) % 4]
    middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    other = ((c[0] + d[0]) / 2, (c[1] + d[1]) / 2)
    return (Across(k, (k + 2) % 4, tape.read(_far(middle, other))),)


def _wall_of(opening: Opening, edges: list[tuple[Point, Point, Point]]) -> int | None:
    """The wall of a room in whose depth an opening's line lies."""
    (ax, ay), (bx, by) = opening.line
    upright = abs(ax - bx) < 1e-6
    for k, (one, two, out) in enumerate(edges):
        if bool(out[0]) != upright:
            continue
        across, line = (one[0], ax) if upright else (one[1], ay)
        low, high = sorted((one[1], two[1]) if upright else (one[0], two[0]))
        ends = sorted((ay, by) if upright else (ax, bx))
        depth = (line - across) * (out[0] + out[1])
        if -0.01 <= depth <= 2 * HALF_M + 0.01 and low - 0.01 <= ends[0] and ends[1] <= high + 0.01:
            return k
    return None


def _far(one: Point, two: Point) -> float:
    return hypot(two[0] - one[0], two[1] - one[1])
