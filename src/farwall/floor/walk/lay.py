"""How the walls of all rooms lie to each other: directions from turns, rooms joined by doors.

Directions only; where corners lie is the affair of least squares.
"""

from __future__ import annotations

from math import cos, radians, sin

from farwall.errors import Refused
from farwall.floor.walk.nouns import Walk, WalkRoom
from farwall.floor.walk.sound import is_right, mistakes_of
from farwall.nouns import dataclass

_FACING_DEG = 10.0
FIRST_DEG = 90.0
"""The first wall runs up the page, so that a room walked clockwise lies right of its first."""


@dataclass(frozen=True)
class Join:
    """A door told from two rooms: room, and number of the way in that room, for both."""

    room: int
    way: int
    other: int
    other_way: int


@dataclass(frozen=True)
class Lay:
    """Directions of all walls in one frame [degrees], the joins, and what could not be joined.

    squares: whether a wall lies square to the first one of its group by right turns alone;
    parts: number of the group of joined rooms that each room is in; loose: room and way of each
    door that leads to a room not walked, was told from one side only, or does not face its twin.
    """

    headings: tuple[tuple[float, ...], ...]
    squares: tuple[tuple[bool, ...], ...]
    hands: tuple[int, ...]
    joins: tuple[Join, ...]
    parts: tuple[int, ...]
    loose: tuple[tuple[int, int], ...]


def unit(heading_deg: float) -> tuple[float, float]:
    """The unit vector of a heading."""
    return cos(radians(heading_deg)), sin(radians(heading_deg))


def lay_of(walk: Walk) -> Lay:
    """Directions and joins of a walk. Raises Refused with every mistake of it."""
    mistakes = mistakes_of(walk)
    if mistakes:
        raise Refused(*mistakes, about="The walk does not hold together.")
    own = [_own(room) for room in walk.rooms]
    joins, loose = _joins(walk)
    shared = [Join(one.room, -1 - k, one.other_room, -1 - k) for k, one in enumerate(walk.shared)]
    turned: dict[int, tuple[float, int]] = {}
    good: list[Join] = []
    for first in range(len(walk.rooms)):
        if first not in turned:
            turned[first] = (0.0, first)
            _spread_out(walk, own, [*joins, *shared], turned, first)
    for join in joins:
        if _faces(walk, own, join, turned):
            good.append(join)
        else:
            loose += [(join.room, join.way), (join.other, join.other_way)]
    headings = tuple(
        tuple((one + turned[n][0]) % 360.0 for one in own[n][0]) for n in range(len(own))
    )
    hands = tuple(1 if sum(w.turn_deg for w in room.walls) > 0 else -1 for room in walk.rooms)
    return Lay(
        headings, tuple(tuple(one[1]) for one in own), hands, tuple(good),
        tuple(turned[n][1] for n in range(len(own))), tuple(sorted(loose)),
    )  # fmt: skip


def _own(room: WalkRoom) -> tuple[list[float], list[bool]]:
    """Headings of a room's walls, the first up the page, and whether each is square to it.

    What turns miss of a round is spread over the angles that were told.
    """
    total = sum(wall.turn_deg for wall in room.walls)
    angles = [k for k, wall in enumerate(room.walls) if not is_right(wall.turn_deg)]
    miss = (360.0 if total > 0 else -360.0) - total
    headings, squares, at = [], [], FIRST_DEG
    for k, wall in enumerate(room.walls):
        headings.append(at)
        squares.append(min(at % 90.0, 90.0 - at % 90.0) < 0.5)
        at += wall.turn_deg + (miss / len(angles) if k in angles else 0.0)
    return headings, squares


def wall_of(walk: Walk, join: Join, *, other: bool = False) -> int:
    """Number of the wall that a join stands in, in its first or its other room."""
    room, way = (join.other, join.other_way) if other else (join.room, join.way)
    if way < 0:
        one = walk.shared[-1 - way]
        return one.other_wall if other else one.wall
    return walk.rooms[room].ways[way].wall


def _outward(walk: Walk, own: list[tuple[list[float], list[bool]]], room: int, wall: int) -> float:
    left_round = sum(one.turn_deg for one in walk.rooms[room].walls) > 0
    return own[room][0][wall] + (-90.0 if left_round else 90.0)


def _needed(walk: Walk, own: list[tuple[list[float], list[bool]]], join: Join) -> float:
    """How much further the other room is turned than the first, that their walls face."""
    mine = _outward(walk, own, join.room, wall_of(walk, join))
    theirs = _outward(walk, own, join.other, wall_of(walk, join, other=True))
    return mine + 180.0 - theirs


def _spread_out(
    walk: Walk,
    own: list[tuple[list[float], list[bool]]],
    joins: list[Join],
    turned: dict[int, tuple[float, int]],
    first: int,
) -> None:
    waiting = [first]
    while waiting:
        room = waiting.pop(0)
        for join in joins:
            for here, there, sign in ((join.room, join.other, 1), (join.other, join.room, -1)):
                if here == room and there not in turned:
                    turn = turned[room][0] + sign * _needed(walk, own, join)
                    turned[there] = (turn, turned[room][1])
                    waiting.append(there)


def _faces(
    walk: Walk,
    own: list[tuple[list[float], list[bool]]],
    join: Join,
    turned: dict[int, tuple[float, int]],
) -> bool:
    miss = turned[join.room][0] + _needed(walk, own, join) - turned[join.other][0]
    return abs((miss + 180.0) % 360.0 - 180.0) <= _FACING_DEG


def _joins(walk: Walk) -> tuple[list[Join], list[tuple[int, int]]]:
    """Doors told from both sides, and those told from one."""
    number = {room.name.casefold(): n for n, room in enumerate(walk.rooms)}
    waiting: dict[tuple[int, int, str], list[int]] = {}
    joins: list[Join] = []
    loose: list[tuple[int, int]] = []
    for n, room in enumerate(walk.rooms):
        for k, way in enumerate(room.ways):
            other = number.get(way.to.casefold(), -1)
            if way.to and other < 0:
                loose.append((n, k))
            elif way.to:
                waiting.setdefault((n, other, way.mark), []).append(k)
    for (room_n, other, mark), ways in waiting.items():
        twins = waiting.get((other, room_n, mark), [])
        if len(ways) == 1 and len(twins) == 1:
            if room_n < other:
                joins.append(Join(room_n, ways[0], other, twins[0]))
        else:
            loose += [(room_n, k) for k in ways]
    return joins, loose
