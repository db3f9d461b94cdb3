"""What cannot be in a walk, all of it at once, each with its room and what to do."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.errors import Mistake
from farwall.floor.walk.nouns import Across, Diagonal, Walk, WalkRoom, WalkWay

MOST_ROOMS, MOST_WALLS, MOST_WALLS_IN_ALL, MOST_OTHERS = 60, 60, 320, 300
LONGEST_M = 100.0
DEEPEST_M = 2.0
_NARROWEST_M = 0.2
_TURNS_PLAY_DEG = 12.0
"""Turns that were measured may miss a full round by this much; more is a slip, our guess."""
_FACING_DEG = 10.0


def mistakes_of(walk: Walk) -> list[Mistake]:
    """Every mistake of a walk; empty for one that can be closed."""
    found: list[Mistake] = list(_too_much(walk))
    names: set[str] = set()
    for room in walk.rooms:
        if room.name.casefold() in names:
            found.append(Mistake(room.name, "two rooms have this name.", "Name one otherwise."))
        names.add(room.name.casefold())
    for room in walk.rooms:
        found += _of_room(room)
    for one in walk.shared:
        for n, wall in ((one.room, one.wall), (one.other_room, one.other_wall)):
            if not (0 <= n < len(walk.rooms) and 0 <= wall < len(walk.rooms[n].walls)):
                found.append(Mistake("", "A shared wall is told that is not there.", "Count anew."))
        if not 0 <= one.depth_m <= DEEPEST_M:
            found.append(Mistake("", f"A wall {one.depth_m:g} m deep cannot be.", "At most 2 m."))
    return found


def is_right(turn_deg: float) -> bool:
    """Whether a turn is a right angle to either side."""
    return abs(abs(turn_deg) - 90.0) < 1e-9


def _too_much(walk: Walk) -> Iterator[Mistake]:
    if not walk.rooms:
        yield Mistake("", "There is no room in the walk.", "Write `room NAME` first.")
    if len(walk.rooms) > MOST_ROOMS:
        yield Mistake("", f"A walk holds at most {MOST_ROOMS} rooms.", "Part it.")
    if sum(len(room.walls) for room in walk.rooms) > MOST_WALLS_IN_ALL:
        yield Mistake("", f"A walk holds at most {MOST_WALLS_IN_ALL} walls.", "Part it.")
    others = sum(len((*room.ways, *room.diagonals, *room.across)) for room in walk.rooms)
    if others + len(walk.shared) > MOST_OTHERS:
        what = f"A walk holds at most {MOST_OTHERS} openings and checks."
        yield Mistake("", what, "Part it.")


def _of_room(room: WalkRoom) -> list[Mistake]:
    count = len(room.walls)
    if not 3 <= count <= MOST_WALLS:
        what = f"it has {count} {'wall' if count == 1 else 'walls'}."
        return [Mistake(room.name, what, f"A room has 3 to {MOST_WALLS}, walked once round.")]
    found = [*_of_walls(room)]
    if not found:
        found += _of_turns(room)
    for k, way in enumerate(room.ways):
        found += _of_way(room, k, way)
    for diagonal in room.diagonals:
        found += _of_diagonal(room, diagonal)
    for one in room.across:
        found += _of_across(room, one)
    return found


def _of_walls(room: WalkRoom) -> Iterator[Mistake]:
    for k, wall in enumerate(room.walls):
        if wall.length_m is not None and not 0.0 < wall.length_m <= LONGEST_M:
            what = f"wall {k + 1} cannot be {wall.length_m:g} m."
            yield Mistake(room.name, what, f"More than 0, at most {LONGEST_M:g} m.")
        if not abs(wall.turn_deg) < 180.0:
            yield Mistake(
                room.name, f"the turn after wall {k + 1} is no turn.", "Below 180 degrees."
            )


def _of_turns(room: WalkRoom) -> Iterator[Mistake]:
    total = sum(wall.turn_deg for wall in room.walls)
    play = 1e-6 if all(is_right(wall.turn_deg) for wall in room.walls) else _TURNS_PLAY_DEG
    if abs(abs(total) - 360.0) > play:
        what = f"its turns make {abs(total):g} degrees, once round is 360."
        yield Mistake(room.name, what, _turn_to_try(room, total))


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


def _of_way(room: WalkRoom, k: int, way: WalkWay) -> Iterator[Mistake]:
    where = f"{room.name}, opening {k + 1}"
    if not 0 <= way.wall < len(room.walls):
        yield Mistake(where, "it stands in a wall that is not there.", "Count the walls anew.")
        return
    if way.to.casefold() == room.name.casefold():
        yield Mistake(where, "it leads to its own room.", "Leave it out.")
    if not (0 <= way.at_m <= LONGEST_M and 0 <= (way.rest_m or 0.0) <= LONGEST_M):
        yield Mistake(where, "its place cannot be.", "Measure from the corner to its near jamb.")
    if not _NARROWEST_M <= way.width_m <= LONGEST_M:
        yield Mistake(where, "its width cannot be.", f"At least {_NARROWEST_M:g} m.")
    if way.depth_m is not None and not 0 <= way.depth_m <= DEEPEST_M:
        yield Mistake(where, f"a wall {way.depth_m:g} m deep cannot be.", "At most 2 m.")


def _of_diagonal(room: WalkRoom, one: Diagonal) -> Iterator[Mistake]:
    if not all(0 <= k < len(room.walls) for k in (one.start, one.end)) or one.start == one.end:
        yield Mistake(room.name, "a diagonal joins no two corners.", "Count anew.")
    elif not 0.0 < one.length_m <= 2 * LONGEST_M:
        yield Mistake(room.name, f"a diagonal cannot be {one.length_m:g} m.", "Measure it again.")


def _of_across(room: WalkRoom, one: Across) -> Iterator[Mistake]:
    if not all(0 <= k < len(room.walls) for k in (one.wall, one.other)) or one.wall == one.other:
        yield Mistake(room.name, "a cross distance joins no two walls.", "Count anew.")
    elif not (0.0 < one.length_m <= LONGEST_M and 0 <= (one.at_m or 0.0) <= LONGEST_M):
        yield Mistake(
            room.name, f"a cross distance cannot be {one.length_m:g} m.", "Measure again."
        )
    elif abs(abs(_turn_between(room, one.wall, one.other)) - 180.0) > _FACING_DEG:
        what = f"walls {one.wall + 1} and {one.other + 1} do not face each other."
        yield Mistake(room.name, what, "Measure across between walls that do.")


def _turn_between(room: WalkRoom, one: int, other: int) -> float:
    low, high = sorted((one, other))
    turned = sum(wall.turn_deg for wall in room.walls[low:high])
    return (turned + 360.0) % 720.0 - 360.0
