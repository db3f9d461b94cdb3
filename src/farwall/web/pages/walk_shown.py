"""What a closed walk says on its page: how each room closes, and what to measure again."""

from __future__ import annotations

from farwall.floor.walk.closed import Closed, RoomClosing
from farwall.floor.walk.held import Advice
from farwall.floor.walk.lay import unit
from farwall.floor.walk.net import Row
from farwall.floor.walk.suspect import Found, untold_from
from farwall.nouns import dataclass
from farwall.readers.walk.said import added_text, small_text, tape_text
from farwall.web.words import said


@dataclass(frozen=True)
class WallLine:
    """A row of the table of a room: wall, as read, added by least squares, by the simple rule."""

    wall: str
    read: str
    added: str
    simple: str
    again: bool


@dataclass(frozen=True)
class RoomClosed:
    """A room's sentence, its table, and what nothing checks in it (empty: all is checked)."""

    name: str
    sentence: str
    lines: tuple[WallLine, ...]
    unheld: str


def again_said(closed: Closed, found: Found) -> str:
    """Which wall to measure again, how sure that is, and which other it may be."""
    first = found.suspects[0]
    row = closed.row(first.row)
    by = _small(closed, first.slip_m)
    if row.kind in {"square", "depth"}:
        words = said("walk-look-at", what=_what(closed, row), by=by)
    else:
        words = said(
            "walk-again-long" if first.slip_m > 0 else "walk-again-short",
            what=_what(closed, row), read=_tape(closed, row.value_m), by=by,
            rest=_tape(closed, row.value_m - first.slip_m), chance=_percent(first.chance),
        )  # fmt: skip
    others = untold_from(found.suspects)[1:3]
    if others:
        named = said("walk-or").join(
            f"{_what(closed, closed.row(one.row))} ({_percent(one.chance)} %)" for one in others
        )
        words += " " + said("walk-again-other", others=named)
    return words


def rooms_closed(closed: Closed) -> list[RoomClosed]:
    """All rooms in the order of the walk."""
    again = {
        (row.room, row.wall)
        for one in closed.found
        for row in [closed.row(one.suspects[0].row)]
        if row.kind == "wall"
    }
    return [_room(closed, one, again) for one in closed.rooms]


def doors_said(closed: Closed) -> list[str]:
    """What is to be asked about openings."""
    names = {room.name.casefold() for room in closed.walk.rooms}
    found = []
    for n, k in closed.lay.loose:
        room, way = closed.walk.rooms[n], closed.walk.rooms[n].ways[k]
        key = "walk-one-side" if way.to.casefold() in names else "walk-not-walked"
        found.append(said(key, room=room.name, to=way.to))
    if len(set(closed.lay.parts)) > 1:
        found.append(said("walk-not-joined"))
    return found


def _room(closed: Closed, one: RoomClosing, again: set[tuple[int, int]]) -> RoomClosed:
    room = closed.walk.rooms[one.room]
    if one.miss is None:
        sentence = said("walk-closes-reckoned")
    elif one.miss.far < 5e-4:
        sentence = said("walk-closes")
    else:
        sentence = said(
            "walk-misses", by=_small(closed, one.miss.far), ratio=f"{one.miss.one_in:,.0f}"
        )
    lines = []
    for k, wall in enumerate(room.walls):
        added = one.added_m[k]
        lines.append(
            WallLine(
                f"{k + 1}",
                said("walk-blank") if wall.length_m is None else _tape(closed, wall.length_m),
                "" if added is None else _units(added_text(added, us=closed.walk.us)),
                _simple(closed, one, k),
                (one.room, k) in again,
            )
        )
    return RoomClosed(room.name, sentence, tuple(lines), _unheld(closed, one.room))


def _simple(closed: Closed, one: RoomClosing, k: int) -> str:
    """What the compass rule adds along a wall."""
    if not one.simple:
        return ""
    x, y = unit(closed.lay.headings[one.room][k])
    along = one.simple[k][0] * x + one.simple[k][1] * y
    return _units(added_text(along, us=closed.walk.us))


def _unheld(closed: Closed, room: int) -> str:
    held = [one for one in closed.held if one.room == room]
    loose = ", ".join(str(one.wall + 1) for one in held if not one.seen)
    alike = ", ".join(str(one.wall + 1) for one in held if one.seen and one.alike)
    words = []
    if loose:
        words.append(said("walk-not-seen", walls=loose))
    if alike:
        words.append(said("walk-not-apart", walls=alike))
    check = next((one for one in closed.advice if one.room == room), None)
    if words and check is not None:
        words.append(_advice(check))
    return " ".join(words)


def _advice(check: Advice) -> str:
    key = "walk-measure-across" if check.across else "walk-measure-diagonal"
    return said(key, one=check.start + 1, two=check.end + 1)


def _what(closed: Closed, row: Row) -> str:
    """What a reading is of, in the words of the page."""
    room = closed.walk.rooms[row.room]
    way = room.ways[row.wall] if row.wall < len(room.ways) else None
    to = way.to if way is not None and way.to else said("walk-outside")
    return said(
        f"walk-of-{row.kind}", wall=row.wall + 1, other=row.other + 1, room=room.name, to=to
    )


def _tape(closed: Closed, length_m: float) -> str:
    return tape_text(length_m, us=closed.walk.us)


def _small(closed: Closed, length_m: float) -> str:
    return _units(small_text(length_m, us=closed.walk.us))


def _units(text: str) -> str:
    """Inches in the language of the page."""
    return f"{text[:-3]} {said('unit-in')}" if text.endswith(" in") else text


def _percent(chance: float) -> int:
    return round(100 * min(chance, 0.99))
