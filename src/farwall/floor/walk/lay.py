"""How the walls of all rooms lie to each other: directions from turns, rooms joined by doors.

Directions only; where corners lie is the affair of least squares.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin

from farwall.errors import Mistake, Refused
from farwall.floor.walk.nouns import Walk, WalkRoom, WalkWay

MOST_ROOMS, MOST_WALLS, MOST_WALLS_IN_ALL = 60, 60, 800
LONGEST_M = 100.0
_TURNS_PLAY_DEG = 12.0
"""Turns that were measured may miss a full round by this much; more is a slip, our guess."""
_FACING_DEG = 10.0


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
    door that was told from one side only, or that does not face its twin.
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
    mistakes = _mistakes(walk)
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
    """Headings of a room's walls, the first 0; what turns miss of a round is spread over angles."""
    total = sum(wall.turn_deg for wall in room.walls)
    angles = [k for k, wall in enumerate(room.walls) if not _right(wall.turn_deg)]
    miss = (360.0 if total > 0 else -360.0) - total
    headings, squares, at = [], [], 0.0
    for k, wall in enumerate(room.walls):
        headings.append(at)
        squares.append(min(at % 90.0, 90.0 - at % 90.0) < 0.5)
        at += wall.turn_deg + (miss / len(angles) if k in angles else 0.0)
    return headings, squares


def _right(turn_deg: float) -> bool:
    return abs(abs(turn_deg) - 90.0) < 1e-9


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
    for n, room in enumerate(walk.rooms):
        for k, way in enumerate(room.ways):
            if way.to:
                waiting.setdefault((n, number[way.to.casefold()], way.mark), []).append(k)
    joins, loose = [], []
    for (room_n, other, mark), ways in waiting.items():
        twins = waiting.get((other, room_n, mark), [])
        if len(ways) == 1 and len(twins) == 1:
            if room_n < other:
                joins.append(Join(room_n, ways[0], other, twins[0]))
        else:
            loose += [(room_n, k) for k in ways]
    return joins, loose


def _mistakes(walk: Walk) -> list[Mistake]:
    found: list[Mistake] = []
    if not walk.rooms:
        found.append(Mistake("", "There is no room in the walk.", "Write `room NAME` first."))
    if len(walk.rooms) > MOST_ROOMS:
        found.append(Mistake("", f"A walk holds at most {MOST_ROOMS} rooms.", "Part it."))
    if sum(len(room.walls) for room in walk.rooms) > MOST_WALLS_IN_ALL:
        found.append(Mistake("", f"A walk holds at most {MOST_WALLS_IN_ALL} walls.", "Part it."))
    names: set[str] = set()
    for room in walk.rooms:
        if room.name.casefold() in names:
            found.append(Mistake(room.name, "two rooms have this name.", "Name one otherwise."))
        names.add(room.name.casefold())
    for room in walk.rooms:
        found += _mistakes_of(room, names)
    for one in walk.shared:
        for n, wall in ((one.room, one.wall), (one.other_room, one.other_wall)):
            if not (0 <= n < len(walk.rooms) and 0 <= wall < len(walk.rooms[n].walls)):
                found.append(Mistake("", "A shared wall is told that is not there.", "Count anew."))
    return found


def _mistakes_of(room: WalkRoom, names: set[str]) -> list[Mistake]:
    count = len(room.walls)
    if not 3 <= count <= MOST_WALLS:
        what = f"it has {count} {'wall' if count == 1 else 'walls'}."
        return [Mistake(room.name, what, f"A room has 3 to {MOST_WALLS}, walked once round.")]
    found = []
    for k, wall in enumerate(room.walls):
        if wall.length_m is not None and not 0.0 < wall.length_m <= LONGEST_M:
            what = f"wall {k + 1} cannot be {wall.length_m:g} m."
            found.append(Mistake(room.name, what, f"More than 0, at most {LONGEST_M:g} m."))
        if not abs(wall.turn_deg) < 180.0:
            found.append(Mistake(room.name, f"the turn after wall {k + 1} is no turn."))
    total = sum(wall.turn_deg for wall in room.walls)
    if not found and abs(abs(total) - 360.0) > _TURNS_PLAY_DEG:
        found.append(Mistake(room.name, _turns_said(total), _turn_to_try(room, total)))
    elif not found and abs(abs(total) - 360.0) > 1e-6 and all(_right(w.turn_deg) for w in room.walls):
        found.append(Mistake(room.name, _turns_said(total), _turn_to_try(room, total)))
    for k, way in enumerate(room.ways):
        found += _mistakes_of_way(room, k, way, names)
    for diagonal in room.diagonals:
        apart = abs(diagonal.start - diagonal.end)
        if not all(0 <= one < count for one in (diagonal.start, diagonal.end)) or not apart:
            found.append(Mistake(room.name, "a diagonal joins no two corners.", "Count anew."))
        elif not 0.0 < diagonal.length_m <= 2 * LONGEST_M:
            found.append(Mistake(room.name, f"a diagonal cannot be {diagonal.length_m:g} m."))
    for one in room.across:
        if not all(0 <= wall < count for wall in (one.wall, one.other)) or one.wall == one.other:
            found.append(Mistake(room.name, "a cross distance joins no two walls.", "Count anew."))
        elif not 0.0 < one.length_m <= LONGEST_M:
            found.append(Mistake(room.name, f"a cross distance cannot be {one.length_m:g} m."))
        elif abs(abs(_turn_between(room, one.wall, one.other)) - 180.0) > _FACING_DEG:
            what = f"walls {one.wall + 1} and {one.other + 1} do not face each other."
            found.append(Mistake(room.name, what, "Measure across between walls that do."))
    return found


def _turn_between(room: WalkRoom, one: int, other: int) -> float:
    low, high = sorted((one, other))
    turned = sum(wall.turn_deg for wall in room.walls[low:high])
    return (turned + 360.0) % 720.0 - 360.0


def _mistakes_of_way(room: WalkRoom, k: int, way: WalkWay, names: set[str]) -> list[Mistake]:
    where = f"{room.name}, opening {k + 1}"
    found = []
    if not 0 <= way.wall < len(room.walls):
        return [Mistake(where, "it stands in a wall that is not there.", "Count the walls anew.")]
    if way.to and way.to.casefold() not in names:
        found.append(Mistake(where, f"it leads to {way.to}, which was not walked.",
                             "Walk that room too, or write `to outside`."))  # fmt: skip
    if way.to.casefold() == room.name.casefold():
        found.append(Mistake(where, "it leads to its own room.", "Leave it out."))
    if way.at_m < 0 or not 0.2 <= way.width_m <= LONGEST_M:
        found.append(Mistake(where, "its place or width cannot be.", "At least 0.2 m wide."))
    if way.depth_m is not None and not 0 <= way.depth_m <= 2.0:
        found.append(Mistake(where, f"a wall {way.depth_m:g} m deep cannot be.", "At most 2 m."))
    return found


def _turns_said(total: float) -> str:
    return f"its turns make {abs(total):g} degrees, once round is 360."


def _turn_to_try(room: WalkRoom, total: float) -> str:
    """Which turns, taken the other way, would make one round."""
    aim = 360.0 if total > 0 else -360.0
    able = [
        str(k + 1)
        for k, wall in enumerate(room.walls)
        if abs(total - 2 * wall.turn_deg - aim) <= _TURNS_PLAY_DEG
    ]
    if not able:
        return "Look at the turns again."
    walls = ", ".join(able[:6]) + (" or others" if len(able) > 6 else "")
    return f"The turn after wall {walls} to the other side would make one round."
