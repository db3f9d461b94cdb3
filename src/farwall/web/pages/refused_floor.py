"""A floor of which no plan can be made: the rooms that the reasons name, the way to mend it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any
from urllib.parse import quote

from farwall.errors import Refused
from farwall.floor.nouns import Floor, Room
from farwall.nouns import dataclass
from farwall.web.pages.paper import house_path
from farwall.web.pages.rooms_map import InRoom, rooms_map
from farwall.web.words import said


@dataclass(frozen=True)
class RefusedFloor:
    """ways: words and address of each way to the drawing. map: SVG, empty where there is none."""

    ways: tuple[tuple[str, str], ...]
    map: str


def refused_floor(job: str, facts: Mapping[str, Any], reasons: Iterable[str]) -> RefusedFloor:
    """Where to mend a floor of these facts, by the core's own sentences on why it has no plan."""
    from farwall.readers.job_json import job_from

    draw = f"{house_path(job)}/draw"
    try:
        floor = job_from(facts, "The job").floor
    except Refused:
        return RefusedFloor(((said("refused-draw"), draw),), "")
    named = rooms_named(floor, reasons)
    ways = [(said("refused-room", room=one.label), f"{draw}?room={quote(one.id)}") for one in named]
    here = InRoom(said("refused-here"), strong=True, hatch="shut")
    return RefusedFloor(
        tuple(ways) or ((said("refused-draw"), draw),),
        rooms_map(floor, {one.id: here for one in named}),
    )


def rooms_named(floor: Floor, reasons: Iterable[str]) -> list[Room]:
    """The rooms whose names stand in sentences, a name within a longer one not counted."""
    left = "\n".join(reasons)
    found = []
    for room in sorted(floor.rooms, key=lambda one: -len(one.label)):
        name = re.compile(rf"(?<!\w){re.escape(room.label)}(?!\w)")
        if room.label and name.search(left):
            found.append(room.id)
            left = name.sub("\n", left)
    return [room for room in floor.rooms if room.id in found]
