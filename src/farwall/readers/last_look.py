"""The last look at any reading: what no plan could be made on is left aside, and named.

Readers judge what they know of their formats. What slips through all of them (a room far off, a
door in mid-air, an exit that leads nowhere) is caught here, so that a reading never holds in
silence what a job would refuse.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from farwall.errors import Mistake
from farwall.facts.reading import MISPLACED, Note, Reading
from farwall.floor.faults import faults_of

T = TypeVar("T")
_ROUNDS = 4
"""Without a room its doors are wrong too, without these their exits; then nothing hangs on them."""
_PLACE = re.compile(r"(?:floor\.)?(rooms|openings|fixtures|exits)\[(\d+)\]")
_CODES = {
    "rooms": "room-unsound",
    "openings": "opening-unsound",
    "fixtures": "fixture-unsound",
    "exits": "exit-unsound",
}


def looked_over(reading: Reading, torn: Sequence[Note] = ()) -> Reading:
    """The reading without what its own floor cannot hold, each such thing under `left`.

    Rooms that overlap stay, with a note, for nobody here knows which of them is right. A reading
    without a scale, or with rooms beside their walls, is no floor yet and stays as it is. torn:
    what is missing in the file itself.
    """
    reading = replace(reading, left=(*torn, *reading.left)) if torn else reading
    if reading.scale_m_per_unit is None or any(n.code == MISPLACED for n in reading.left):
        return reading
    notes: list[Note] = []
    for _ in range(_ROUNDS):
        if not reading.floor.rooms:
            break
        faults = faults_of(reading.floor, reading.exits)
        gone = [(found, fault) for fault in faults if (found := _PLACE.match(fault.where))]
        if not gone:
            notes += [_note("floor-unsound", fault) for fault in faults]
            break
        notes += [_note(_CODES[found[1]], fault) for found, fault in gone]
        reading = _without(reading, {(found[1], int(found[2])) for found, _ in gone})
    if not notes:
        return reading
    return _asked(replace(reading, left=(*reading.left, *dict.fromkeys(notes))))


def _note(code: str, fault: Mistake) -> Note:
    what = fault.what[:1].upper() + fault.what[1:]
    end = "" if code == "floor-unsound" else " Left aside."
    return Note(code, f"{what}{end} {fault.remedy}".strip())


def _without(reading: Reading, gone: set[tuple[str, int]]) -> Reading:
    def kept(name: str, items: tuple[T, ...]) -> tuple[T, ...]:
        return tuple(item for at, item in enumerate(items) if (name, at) not in gone)

    floor = reading.floor
    rooms = kept("rooms", floor.rooms)
    ids = {room.id for room in rooms}
    openings = tuple(one for one in kept("openings", floor.openings) if set(one.rooms) <= ids)
    there = {one.id for one in openings}
    return replace(
        reading,
        floor=replace(
            floor, rooms=rooms, openings=openings, fixtures=kept("fixtures", floor.fixtures)
        ),
        exits=tuple(way for way in kept("exits", reading.exits) if way.opening in there),
        stated={key: value for key, value in reading.stated.items() if key in ids},
        ceilings_m={key: value for key, value in reading.ceilings_m.items() if key in ids},
        levels_m={key: value for key, value in reading.levels_m.items() if key in ids},
    )


def _asked(reading: Reading) -> Reading:
    """With the questions that arise when rooms or ways out were left aside."""
    asked = {note.code for note in reading.asks}
    if not reading.floor.rooms and "tracing" not in asked:
        what = "No room of it could be kept. Trace the rooms by hand."
        return replace(reading, asks=(Note("tracing", what), *reading.asks))
    if reading.floor.rooms and not reading.exits and "way-out" not in asked:
        what = "No way out is left. Say which opening leads outside."
        return replace(reading, asks=(Note("way-out", what), *reading.asks))
    return reading
