"""A walk with a tape as a floor: rooms and openings, how it closed, and what to measure again."""

from __future__ import annotations

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.floor.faults import faults_of
from farwall.floor.geometry import Point
from farwall.floor.walk.closed import Closed, close_walk
from farwall.floor.walk.floor_of import floor_of
from farwall.floor.walk.nouns import Walk
from farwall.floor.walk.suspect import Found, untold_from
from farwall.readers.room_names import Ids, slug
from farwall.readers.walk.json_walk import walk_from_json
from farwall.readers.walk.said import added_text, row_words, small_text, tape_text
from farwall.readers.walk.text import walk_from_text
from farwall.units import M_PER_FT


def walk_of(data: bytes) -> Walk:
    """What was told in a file. Raises Refused with every mistake."""
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Refused(Mistake("", "This is no UTF-8 text.", "Save it as UTF-8.")) from error
    return walk_from_json(text) if text.lstrip().startswith("{") else walk_from_text(text)


def read_walk(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor of a walk in a file. Raises Refused with every mistake."""
    reading = reading_of(close_walk(walk_of(data)))
    if scale_m_per_unit is None:
        return reading
    what = "A walk tells its own unit; the scale was not used."
    left = (*reading.left, Note("scale-not-used", what))
    return Reading(**{**reading.__dict__, "left": left})


def reading_of(closed: Closed) -> Reading:
    """A closed walk as a reading."""
    walk = closed.walk
    taken = Ids()
    ids = tuple(taken.take(slug(room.name) or f"room-{n + 1}") for n, room in enumerate(walk.rooms))
    floor, exits, crossed = floor_of(closed, ids)
    if not floor.rooms:
        what = "No room closes: the walls cross each other."
        raise Refused(Mistake("", what, "Look at the turns, and measure again."))
    asks = [*_again(closed), *_asks_of_doors(closed)]
    if not exits:
        asks.append(
            Note("no-way-out", "No opening leads outside. Tell which door leaves the house.")
        )
    left = [
        Note("room-crossed", f"The walls of {walk.rooms[n].name} cross each other; it is left out.")
        for n in crossed
    ]
    left += [Note("floor", str(one)) for one in faults_of(floor, exits)]
    left += _not_held(closed)
    return Reading(
        format="walk",
        length_unit="ft" if walk.us else "m",
        header_unit="ft" if walk.us else "m",
        scale_m_per_unit=M_PER_FT if walk.us else 1.0,
        floor=floor,
        exits=exits,
        mended=tuple(_mended(closed)),
        left=tuple(left),
        asks=tuple(asks),
    )


def again_words(closed: Closed, found: Found) -> str:
    """Which wall to measure again, how sure, and what it cannot be told apart from."""
    walk, first = closed.walk, found.suspects[0]
    row = closed.row(first.row)
    us = walk.us
    if row.kind in {"square", "depth"}:
        words = f"Look at {row_words(walk, row)}: it is off by {small_text(first.slip_m, us=us)}"
    else:
        way = "long" if first.slip_m > 0 else "short"
        words = (
            f"Measure {row_words(walk, row)} again: {tape_text(row.value_m, us=us)} was read, "
            f"{small_text(first.slip_m, us=us)} too {way} for all the rest, "
            f"which tells of {tape_text(row.value_m - first.slip_m, us=us)}"
        )
    words += f" (chance {100 * min(first.chance, 0.99):.0f} %)."
    others = untold_from(found.suspects)[1:3]
    if others:
        named = " or ".join(
            f"{row_words(walk, closed.row(one.row))} ({100 * one.chance:.0f} %)" for one in others
        )
        words += f" It may as well be {named}."
    return words


def _again(closed: Closed) -> list[Note]:
    return [
        Note("measure-again", again_words(closed, one), _place(closed, one.suspects[0].row))
        for one in closed.found
    ]


def _place(closed: Closed, number: int) -> Point | None:
    """The middle of the wall that a reading is of."""
    row = closed.row(number)
    room = closed.walk.rooms[row.room]
    if row.kind in {"at", "width", "rest", "depth"}:
        wall = room.ways[row.wall].wall if row.wall < len(room.ways) else row.wall
    else:
        wall = row.wall
    (ax, ay), (bx, by) = closed.corner(row.room, wall), closed.corner(row.room, wall + 1)
    return round((ax + bx) / 2, 3), round((ay + by) / 2, 3)


def _asks_of_doors(closed: Closed) -> list[Note]:
    walk = closed.walk
    names = {room.name.casefold() for room in walk.rooms}
    found = []
    for n, k in closed.lay.loose:
        room, way = walk.rooms[n], walk.rooms[n].ways[k]
        if way.to.casefold() not in names:
            what = f"The opening from {room.name} leads to {way.to}, which was not walked."
            found.append(Note("not-walked", f"{what} Walk it too."))
        else:
            what = f"The opening from {room.name} to {way.to} was not found from the other side"
            rest = "; tell it in both rooms, and mark two of them apart by `mark A`."
            found.append(Note("opening-one-side", what + rest))
    if len(set(closed.lay.parts)) > 1:
        what = (
            "Not all rooms are joined by doors; groups are laid side by side, not where they lie."
        )
        found.append(Note("not-joined", what))
    return found


def _mended(closed: Closed) -> list[Note]:
    us, found = closed.walk.us, []
    for one in closed.rooms:
        room, where = closed.walk.rooms[one.room], closed.corner(one.room, 0)
        place = (round(where[0], 3), round(where[1], 3))
        if one.miss is None:
            found.append(Note("wall-reckoned", f"{room.name}: a wall that was not measured was "
                              "reckoned from the others.", place))  # fmt: skip
            continue
        added = ", ".join(
            f"{k + 1}: {added_text(add, us=us)}"
            for k, add in enumerate(one.added_m)
            if add is not None
        )
        ratio = f"1 in {one.miss.one_in:.0f}" if one.miss.far > 1e-4 else "closed"
        what = (
            f"{room.name} misses its first corner by {small_text(one.miss.far, us=us)} ({ratio}); "
            f"added by wall {added}."
        )
        found.append(Note("misclosure", what, place))
    return found


def _not_held(closed: Closed) -> list[Note]:
    """Walls in which half a foot could hide, and the check that would show it."""
    found = []
    for n, room in enumerate(closed.walk.rooms):
        loose = [str(one.wall + 1) for one in closed.held if one.room == n and not one.seen]
        alike = [
            str(one.wall + 1) for one in closed.held if one.room == n and one.seen and one.alike
        ]
        if not loose and not alike:
            continue
        what = f"{room.name}:"
        if loose:
            what += f" half a foot would not be seen in wall {', '.join(loose)};"
        if alike:
            what += f" a slip in wall {', '.join(alike)} would be seen, not told apart;"
        check = next((one for one in closed.advice if one.room == n), None)
        if check is None:
            what += " no single check more would help."
        elif check.across:
            walls = f"wall {check.start + 1} to {check.end + 1}"
            what += f" the width in the middle from {walls} would help."
        else:
            what += f" a diagonal from corner {check.start + 1} to {check.end + 1} would help."
        found.append(Note("not-held", what))
    return found
