"""What a reader mended, left or asks, answered one by one: accepted as proposed, or refused.

Each code has two acts, for yes and for no. Here those are done that need no hand: a way out marked
or taken away, a name dropped, a leaf hung, a shape taken as a room or as a fixture. What needs a
hand is told with the place where it is done.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from math import dist
from typing import Literal

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.floor.geometry import Point
from farwall.floor.nouns import Exit, Fixture, Opening, Room, free_name
from farwall.nouns import dataclass

Answer = Literal["yes", "no"]
NEAR_M = 1.2
"""An act at a place takes what lies nearest within this. Rank: guess, as on the drawing screen."""


@dataclass(frozen=True)
class Acts:
    """What yes does and what no does; an empty one only notes that it was seen."""

    yes: str = ""
    no: str = ""


_UNIT = Acts("", "unit")
ACTS: Mapping[str, Acts] = {
    "gap-closed": Acts("", "wide-here"),
    "name-guessed": Acts("", "name-room"),
    "label-lost": Acts("room-here", ""),
    "outside-slab": Acts("", "room-here"),
    "closed-shape": Acts("", "room-here"),
    "room-unsound": Acts("room-here", ""),
    "shelves": Acts("", "fixture-here"),
    "overhang": Acts("", "fixture-here"),
    "casework-unclear": Acts("", "fixture-here"),
    "symbol": Acts("fixture-here", ""),
    "fixtures-to-check": Acts("", "pick-fixture"),
    "way-out-unsure": Acts("exit-here", "no-exit-here"),
    "no-leaf": Acts("", "leaf-here"),
    "opening-nowhere": Acts("", "wide-here"),
    "opening-to-unclosed": Acts("", "wide-here"),
    "stair": Acts("fixture-here", ""),
    "way-out": Acts("way-out", ""),
    "tracing": Acts("trace", ""),
    "unit-overruled": _UNIT,
    "unit-found": _UNIT,
    "scale-told": _UNIT,
    "scale-doubted": _UNIT,
    "scales-differ": _UNIT,
    "dimension-doubted": _UNIT,
    "unit-doubted": _UNIT,
    "scale": Acts("", "unit"),
    "one-room": Acts("join-here", ""),
    "room-parted": Acts("", "join-here"),
    "room-in-pieces": Acts("", "join-here"),
    "no-way-in": Acts("door-here", ""),
    "door-unplaced": Acts("door-here", ""),
    "opening-unsound": Acts("door-here", ""),
    "opening-one-side": Acts("door-here", ""),
    "window-to-the-floor": Acts("door-here", ""),
    "open-edge": Acts("", "door-here"),
    "door-placed": Acts("", "pick-opening"),
    "perhaps-outdoors": Acts("", "strike-room"),
    "region-as-room": Acts("", "strike-room"),
    "stairs-as-rooms": Acts("", "strike-room"),
    "not-walked": Acts("", "room-here"),
    "no-way-out": Acts("way-out", ""),
}
"""By the codes of the readers; any other can only be seen."""
SEEN_ONLY = frozenset({
    "recovered", "doubles-dropped", "origin-moved", "not-read", "degrees-to-metres", "plan-marks",
    "changed-since-export",
    # of frames and units
    "mercator", "date-line", "unit-metres", "north-turned", "edge-reframed", "edge-unplaced",
    "scale-not-used", "flattened", "taken-flat", "laid-back", "bent", "turned",
    "corners",
    # of pages, their lettering and their scale
    "bar-aside", "check-scale", "import-missing", "left-aside", "link-outside", "names",
    "not-to-scale", "pages-left", "pages-not-looked-at", "scan-traced", "style-passed-over",
    "unit-custom",
    # of lines that were left aside
    "set-aside", "torn", "storeys", "other-drawing", "rooms-joined", "room-split",
    "dimension-lines", "gaps", "border", "title-block", "grid-lines", "hatching",
    "treads", "furniture",
    # of a walk with a tape
    "room-crossed", "floor", "measure-again", "not-joined", "misclosure", "not-held",
    "wall-reckoned",
    # of doors and windows whose sides the file and its geometry tell unlike, or not at all
    "door-width-taken", "door-flag", "door-disagrees", "door-third-space", "door-by-relation",
    "fixture-nowhere", "window-nowhere", "open-through-floor", "transitions-paired",
    "between-storeys", "leaf",
    # of rooms and storeys
    "several-levels", "storey-split", "overlap-cut", "outline-mended", "room-doubled", "id-twice",
    "zone-over-rooms", "storeys-by-height", "storey-by-floor", "storey-unknown",
    "floor-at-two-heights", "room-apart", "floor-from-shell", "room-without-floor", "face-broken",
    "two-floors", "polygon-misplaced", "shell-in-pieces", "footprint-taken",
    "floor-sloped", "floor-stepped", "fixture-unsound", "exit-unsound", "body-broken",
    "floor-unsound",
    # of stated areas
    "wall-centres", "stated-differs", "stated-net-too", "stated-class",
    # of what is entered elsewhere: the survey, and the rooms' heights
    "north", "windows", "ceilings", "water",
})  # fmt: skip
"""Codes that nothing can be done about: they tell what was done on opening."""
_BY_HAND = {
    "wide-here": "an opening is put there on the drawing screen (`farwall serve`, then Draw)",
    "room-here": "the room is drawn there on the drawing screen (`farwall serve`, then Draw)",
    "fixture-here": "a fixture is put there on the drawing screen (`farwall serve`, then Draw)",
    "pick-fixture": "each fixture is picked and struck on the drawing screen (`farwall serve`)",
    "trace": "rooms are traced on the drawing screen (`farwall serve`, then Draw)",
    "door-here": "an opening is put there on the drawing screen (`farwall serve`, then Draw)",
    "pick-opening": "it is moved along its wall on the drawing screen (`farwall serve`, then Draw)",
    "unit": "say the unit by --scale METRES_PER_UNIT, for instance 0.0254 for inches",
}


@dataclass(frozen=True)
class Answered:
    """A reading with its notes answered; `said` tells by a note's number what became of it."""

    reading: Reading
    said: Mapping[int, str]


def numbered(reading: Reading) -> list[Note]:
    """The notes in the order in which they are numbered, from 1: mended, left, asks."""
    return [*reading.mended, *reading.left, *reading.asks]


def answered(
    reading: Reading, *, accept: Sequence[int] = (), refuse: Sequence[int] = ()
) -> Answered:
    """The reading with some notes accepted and some refused; numbers as `numbered` gives them.

    Raises Refused for a number that is not there or is both accepted and refused.
    """
    notes = numbered(reading)
    if mistakes := list(_wrong_numbers(len(notes), accept, refuse)):
        raise Refused(*mistakes)
    said: dict[int, str] = {}
    answers: list[tuple[int, Answer]] = [
        *((number, "yes") for number in accept), *((number, "no") for number in refuse),
    ]  # fmt: skip
    for number, answer in sorted(answers):
        reading, said[number] = _answer(reading, notes[number - 1], answer)
    return Answered(reading, said)


def _wrong_numbers(count: int, accept: Sequence[int], refuse: Sequence[int]) -> Iterator[Mistake]:
    for name, numbers in (("--accept", accept), ("--refuse", refuse)):
        for number in numbers:
            if not 1 <= number <= count:
                there = f"They are numbered from 1 to {count}." if count else "There are no notes."
                yield Mistake(name, f"there is no note {number}.", there)
    for number in sorted({*accept} & {*refuse}):
        yield Mistake("--refuse", f"note {number} is accepted too.", "Say one of both.")


def _answer(reading: Reading, note: Note, answer: Answer) -> tuple[Reading, str]:
    acts = ACTS.get(note.code)
    word = "Accepted" if answer == "yes" else "Refused"
    if acts is None:
        return reading, f"{word}: it tells what was done on opening, and nothing changes by it."
    act = acts.yes if answer == "yes" else acts.no
    if not act:
        return reading, f"{word}: it stays as it was read."
    done = _DONE_HERE[act](reading, note) if act in _DONE_HERE else None
    if done is not None:
        return done[0], f"{word}: {done[1]}."
    hand = _BY_HAND.get(act, "nothing near that place can be changed so")
    return reading, f"{word}, and nothing was changed here: {hand}."


Done = tuple[Reading, str] | None


def _name_dropped(reading: Reading, note: Note) -> Done:
    room = _room_at(reading, note)
    if room is None:
        return None
    return _with_room(reading, room, replace(room, name="")), f"“{room.id}” has no name now"


def _exit_here(reading: Reading, note: Note) -> Done:
    opening = _opening_near(reading, note.where, outside=True)
    return None if opening is None else _way_out_at(reading, opening)


def _way_out(reading: Reading, _: Note) -> Done:
    outside = [one for one in reading.floor.openings if one.kind == "outside"]
    widest = max(outside, key=lambda one: dist(*one.line), default=None)
    return None if widest is None else _way_out_at(reading, widest)


def _way_out_at(reading: Reading, opening: Opening) -> Done:
    if any(way.opening == opening.id for way in reading.exits):
        return reading, f"“{opening.id}” is a way out already"
    way = Exit(f"exit-{opening.id}", opening.id)
    asks = tuple(note for note in reading.asks if note.code != "way-out")
    found = replace(reading, exits=(*reading.exits, way), asks=asks)
    return found, f"“{opening.id}” is a way out"


def _no_exit_here(reading: Reading, note: Note) -> Done:
    opening = _opening_near(reading, note.where, outside=True)
    if opening is None:
        return None
    exits = tuple(way for way in reading.exits if way.opening != opening.id)
    return replace(reading, exits=exits), f"“{opening.id}” is no way out"


def _strike_room(reading: Reading, note: Note) -> Done:
    """The room away, and what leads from it alone; openings to others lead outside no more."""
    room = _room_at(reading, note)
    if room is None:
        return None
    floor = reading.floor
    openings = tuple(one for one in floor.openings if room.id not in one.rooms)
    kept = {one.id for one in openings}
    rooms = tuple(one for one in floor.rooms if one is not room)
    exits = tuple(way for way in reading.exits if way.opening in kept)
    windows = tuple(one for one in floor.windows if one.room != room.id)
    left = replace(floor, rooms=rooms, openings=openings, windows=windows)
    return replace(reading, floor=left, exits=exits), f"“{room.label}” is no room now"


def _join_here(reading: Reading, note: Note) -> Done:
    """The two rooms that lie nearest to the place, as one."""
    import shapely

    from farwall.floor.as_one import rooms_joined

    if note.where is None or len(reading.floor.rooms) < 2:
        return None
    spot = shapely.Point(note.where)
    near = sorted(_meant(reading, note), key=lambda one: one.polygon.shape.distance(spot))[:2]
    if len(near) < 2 or near[1].polygon.shape.distance(spot) > NEAR_M:
        return None
    try:
        floor = rooms_joined(reading.floor, near[0].id, near[1].id)
    except Refused:
        return None
    said = f"“{near[0].label}” and “{near[1].label}” are one room"
    kept = {way.id for way in floor.openings}
    parts = {near[0].id, near[1].id}  # what was stated of the parts is not stated of the whole
    return replace(
        reading,
        floor=floor,
        exits=tuple(way for way in reading.exits if way.opening in kept),
        stated={key: one for key, one in reading.stated.items() if key not in parts},
        ceilings_m={k: v for k, v in reading.ceilings_m.items() if k != near[1].id},
        levels_m={k: v for k, v in reading.levels_m.items() if k != near[1].id},
    ), said


def _leaf_here(reading: Reading, note: Note) -> Done:
    opening = _opening_near(reading, note.where)
    if opening is None or opening.kind == "outside":
        return None
    changed = tuple(
        replace(one, kind="door") if one is opening else one for one in reading.floor.openings
    )
    floor = replace(reading.floor, openings=changed)
    return replace(reading, floor=floor), f"“{opening.id}” is a door"


def _fixture_here(reading: Reading, note: Note) -> Done:
    if note.shape is None:
        return None
    kind = _between_quotes(note.what) or "fixture"
    ident = free_name(kind, {one.id for one in reading.floor.fixtures})
    there = Fixture(kind, note.shape, ident)
    floor = replace(reading.floor, fixtures=(*reading.floor.fixtures, there))
    return replace(reading, floor=floor), f"“{ident}” is kept dry"


def _room_here(reading: Reading, note: Note) -> Done:
    if note.shape is None:
        return None
    floor = reading.floor
    name = _between_quotes(note.what) or _slab_name(note)
    ident = free_name(name.lower().replace(" ", "-") or "room", set(floor.room_by_id))
    storey = floor.rooms[0].storey if floor.rooms else ""
    room = Room(ident, note.shape, name, storey)
    return replace(reading, floor=replace(floor, rooms=(*floor.rooms, room))), (
        f"“{ident}” is a room of {note.shape.shape.area:.1f} m², without a door as yet"
    )


_DONE_HERE: Mapping[str, Callable[[Reading, Note], Done]] = {
    "name-room": _name_dropped,
    "exit-here": _exit_here,
    "no-exit-here": _no_exit_here,
    "way-out": _way_out,
    "leaf-here": _leaf_here,
    "strike-room": _strike_room,
    "join-here": _join_here,
    "fixture-here": _fixture_here,
    "room-here": _room_here,
}


def _between_quotes(what: str) -> str:
    return what.partition("“")[2].partition("”")[0].strip()[:80]


def _slab_name(note: Note) -> str:
    """The name that a reader's words on a slab outside begin with."""
    named = note.code == "outside-slab" and not note.what.startswith("A nameless slab")
    return note.what.partition(" (")[0][:80] if named else ""


def _meant(reading: Reading, note: Note) -> list[Room]:
    """The rooms that a note names, all where it names none: storeys lie over each other in plan."""
    named = [one for one in reading.floor.rooms if f"“{one.label}”" in note.what]
    return named or list(reading.floor.rooms)


def _room_at(reading: Reading, note: Note) -> Room | None:
    import shapely

    if note.where is None:
        return None
    spot = shapely.Point(note.where)
    inside = (one for one in _meant(reading, note) if one.polygon.shape.intersects(spot))
    return next(inside, None)


def _with_room(reading: Reading, old: Room, new: Room) -> Reading:
    rooms = tuple(new if one is old else one for one in reading.floor.rooms)
    return replace(reading, floor=replace(reading.floor, rooms=rooms))


def _opening_near(
    reading: Reading, where: Point | None, *, outside: bool = False
) -> Opening | None:
    """The nearest opening by its middle, none beyond NEAR_M."""
    if where is None:
        return None

    def away_m(one: Opening) -> float:
        (ax, ay), (bx, by) = one.line
        return dist(((ax + bx) / 2, (ay + by) / 2), where)

    there = [one for one in reading.floor.openings if not outside or one.kind == "outside"]
    nearest = min(there, key=away_m, default=None)
    return nearest if nearest is not None and away_m(nearest) <= NEAR_M else None
