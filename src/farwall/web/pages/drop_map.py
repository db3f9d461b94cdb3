"""The drop map: the floor with the seconds that a drop takes in each room."""

from __future__ import annotations

from farwall.air.limits import LONGEST_DROP_S, TIGHT_DROP_S
from farwall.facts.job import Job
from farwall.web.pages.rooms_map import InRoom, rooms_map
from farwall.web.words import said


def drop_map(job: Job) -> str:
    """The map as SVG, a drawing for each storey; empty for a floor without rooms."""
    return rooms_map(job.floor, {room.id: _in_room(job, room.id) for room in job.floor.rooms})


def _in_room(job: Job, room: str) -> InRoom:
    found = job.survey.rooms.get(room)
    seconds = found.drop_s if found is not None else None
    if seconds is None:
        return InRoom(said("drop-none"))
    words = said("drop-s", s=f"{seconds:g}")
    if seconds > LONGEST_DROP_S:
        return InRoom(words, strong=True, hatch="shut")
    return InRoom(words, strong=True, hatch="tight" if seconds > TIGHT_DROP_S else "")
