"""Invented houses walked with a tape: walls a little out of square, a tape that errs, one slip.

The truth is drawn apart from what the sums believe: every built wall is one line, turned as a
whole by 0.2 degrees and pushed by 3 mm, its two faces 2 mm; the tape errs by 5 mm a reading, is a
little too long or short for the whole day and sags with the third power of the length; what is
read is rounded to an eighth of an inch or a millimetre. All of these are guesses.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import hypot

from farwall.bench.generator import house_of
from farwall.bench.walk_built import HALF_M, Built, Chance, edges_of
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor, Opening, Room
from farwall.floor.walk.held import Advice
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

TAPE_M, TAPE_SHARE, SAG_PER_M2 = 0.005, 0.0003, 0.5e-5
NARROW = 1 / 3


def walked(
    seed: int,
    *,
    rooms: int = 12,
    checks: str = "one",
    rough: float = 1.0,
    more: Sequence[Advice] = (),
) -> Walk:
    """A house of 12 rooms as measured without a slip.

    checks: none · one (a diagonal a room) · two · across (as one, and the width in the middle
    where a room is three times as long as wide). rough: how many times as much tape and walls
    err. more: checks measured beside, all other readings staying the same.
    """
    chance = Chance(f"walk {seed}")
    floor = _house(rooms, seed)
    built = Built(floor, chance, rough=rough)
    tape = _Tape(chance, us=chance.next() < 0.7, rough=rough)
    measured = [_Measured(floor, built, tape, room) for room in floor.rooms]
    told = [one.told(checks) for one in measured]
    later = _Tape(Chance(f"later {seed}"), us=tape.us, rough=rough)
    for one in more:
        told[one.room] = measured[one.room].with_check(told[one.room], one, later)
    return Walk(tuple(told), us=tape.us)


def _house(rooms: int, seed: int) -> Floor:
    """The floor of the first seed from 1000 times this one on whose walls are drawn with depth."""
    for number in range(seed * 1000, seed * 1000 + 1000):
        floor = house_of(rooms, number).job.floor
        if all(one.threshold is not None for one in floor.openings if one.kind != "outside"):
            return floor
    raise ValueError(f"no house with walls from seed {seed}")


class _Tape:
    def __init__(self, chance: Chance, *, us: bool, rough: float) -> None:
        self.chance, self.us, self.rough = chance, us, rough
        self.longer = 1.0 + chance.normal(TAPE_SHARE)

    def read(self, true_m: float) -> float:
        """What is read for a true length, rounded as on the tape [m]."""
        sag = SAG_PER_M2 * true_m**3
        erred = true_m * self.longer + sag + self.chance.normal(self.rough * TAPE_M)
        step = M_PER_IN / 8 if self.us else 0.001
        return max(round(erred / step), 1) * step


def _corners(room: Room, built: Built) -> list[Point]:
    edges = edges_of(room)
    found = []
    for k, edge in enumerate(edges):
        before = edges[k - 1]
        upright, level = (before, edge) if before[2][0] else (edge, before)
        x0, y0 = edge[0]
        found.append((built.face(*upright, y0), built.face(*level, x0)))
    return found


class _Measured:
    """A room as it is walked."""

    def __init__(self, floor: Floor, built: Built, tape: _Tape, room: Room) -> None:
        self.floor, self.built, self.tape, self.room = floor, built, tape, room
        self.edges, self.corners = edges_of(room), _corners(room, built)

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

    def with_check(self, told: WalkRoom, check: Advice, tape: _Tape) -> WalkRoom:
        """The room with one check more."""
        corners, (a, b) = self.corners, (check.start, check.end)
        if not check.across:
            more = Diagonal(a, b, tape.read(_far(corners[a], corners[b])))
            return replace(told, diagonals=(*told.diagonals, more))
        middles = [
            ((x0 + x1) / 2, (y0 + y1) / 2)
            for k in (a, b)
            for (x0, y0), (x1, y1) in [(corners[k], corners[(k + 1) % len(corners)])]
        ]
        return replace(told, across=(*told.across, Across(a, b, tape.read(_far(*middles)))))

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
