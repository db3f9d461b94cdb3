"""Whether what a job says of windows and of its place agrees with itself and with the start."""

from __future__ import annotations

import datetime
import zoneinfo
from collections.abc import Iterator

from farwall.errors import Mistake
from farwall.readers.json_text import place_text
from farwall.readers.shape import did_you_mean
from farwall.readers.wording import shown


def sun_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Windows without a length or in a room that is not there, half a place, clocks that differ."""
    yield from _windows(raw)
    place = raw.get("place")
    if isinstance(place, dict):
        yield from _half_a_place(place)
        yield from _zone(place, raw.get("starts_at"))


def _windows(raw: dict[str, object]) -> Iterator[Mistake]:
    floor = raw.get("floor")
    if not isinstance(floor, dict):
        return
    rooms, windows = floor.get("rooms"), floor.get("windows")
    known = [
        str(room["id"])
        for room in (rooms if isinstance(rooms, list) else [])
        if isinstance(room, dict) and room.get("id")
    ]
    main: list[int] = []
    for number, window in enumerate(windows if isinstance(windows, list) else []):
        if not isinstance(window, dict):
            continue
        at = ("floor", "windows", number)
        if window.get("main") is True:
            main.append(number)
        line, name = window.get("line"), window.get("room")
        if isinstance(line, list) and len(line) == 2 and line[0] == line[1]:
            said = "Both ends of this window are the same point."
            yield Mistake(place_text((*at, "line")), said, "Give its two ends.")
        if isinstance(name, str) and name and known and name not in known:
            said = f"There is no room {shown(name)}."
            yield Mistake(place_text((*at, "room")), said, did_you_mean(name, known))
    for number in main[1:]:
        said = f"floor.windows[{main[0]}] is the main window already; a floor has one."
        yield Mistake(place_text(("floor", "windows", number, "main")), said, "Keep one of them.")


def _half_a_place(place: dict[str, object]) -> Iterator[Mistake]:
    keys = ("latitude_deg", "longitude_deg")
    missing = [key for key in keys if place.get(key) is None]
    if len(missing) == 1:
        said = f"{missing[0]} is missing beside the other one."
        yield Mistake("place", said, "Give both, or neither.")


def _zone(place: dict[str, object], start: object) -> Iterator[Mistake]:
    name = place.get("time_zone")
    if not isinstance(name, str) or not name:
        return
    known = zoneinfo.available_timezones()
    if not known:  # a machine without the list of zones cannot judge a name
        return
    if name not in known:
        said = f"{shown(name)} is no time zone."
        example = "Write a name such as America/Chicago."
        yield Mistake("place.time_zone", said, did_you_mean(name, sorted(known)) or example)
        return
    try:
        moment = datetime.datetime.fromisoformat(start) if isinstance(start, str) else None
    except ValueError:
        return
    if moment is None or moment.tzinfo is None:
        return
    there = moment.astimezone(zoneinfo.ZoneInfo(name))
    if there.utcoffset() != moment.utcoffset():
        said = f"starts_at says UTC{moment:%z}, and {name} has UTC{there:%z} on that day."
        remedy = "Mend one of the two: the sun would be reckoned for another hour."
        yield Mistake("place.time_zone", said, remedy)
