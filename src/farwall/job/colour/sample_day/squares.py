"""Where the squares lie: one set of three for each finish and each pour, in its smallest room.

One per pour and per finish class, in a hidden place: common practice. Which rooms are of which pour
is not told in a job, so that further pours name no room.
"""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.nouns import dataclass

SIDE_M = 0.6
"""Side of a square for one coat: 2 ft at the least, common practice (0.61 m). A square with more
coats is longer by as much for each, so that every coat shows on a square of its own."""


@dataclass(frozen=True)
class Place:
    """A place of three squares: a room by its id, empty where nobody knows, and what it is for."""

    room: str
    why: str


def places_of(job: Job, *, coats: int) -> tuple[Place, ...]:
    """The places, those of the floor's most common finish first. coats: so many on a square."""
    least_m2 = 3 * coats * SIDE_M**2 * _BESIDE
    by_finish: dict[str, list[str]] = {}
    for room in job.floor.rooms:
        own = job.survey.rooms.get(room.id)
        finish = (own.finish if own else None) or job.survey.finish or ""
        by_finish.setdefault(finish, []).append(room.id)
    order = sorted(by_finish, key=lambda one: (-_area(job, by_finish[one]), one))
    several = len(order) > 1
    found = [
        Place(_smallest(job, by_finish[one], least_m2), one or "finish not told" if several else "")
        for one in order
    ]
    pours = job.survey.pours or 1
    return (*found, *(Place("", f"pour {number}") for number in range(2, pours + 1)))


_BESIDE = 1.5
"""Three squares and half as much again for who kneels beside them: our guess."""


def _smallest(job: Job, rooms: list[str], least_m2: float) -> str:
    """The smallest room with space for three squares; the largest where none has."""
    fits = [one for one in rooms if _area(job, [one]) >= least_m2]
    if not fits:
        return max(rooms, key=lambda one: (_area(job, [one]), one))
    return min(fits, key=lambda one: (_area(job, [one]), one))


def _area(job: Job, rooms: list[str]) -> float:
    return sum(job.floor.room_by_id[room].polygon.shape.area for room in rooms)
