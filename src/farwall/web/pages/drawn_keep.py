"""What was drawn becomes new facts of the job: judged whole, kept as a version, planned beside."""

from __future__ import annotations

import asyncio
import copy
import re
from typing import Any

from farwall.errors import FarwallError, Mistake, Refused
from farwall.web.door import Door
from farwall.web.pages.beside import sums_of
from farwall.web.pages.drafts import FloorOf
from farwall.web.pages.drawn import same, with_drawn
from farwall.web.pages.fact_form import facts_in_words
from farwall.web.pages.figures import BEFORE, noted
from farwall.web.pages.repairs import READING, answered
from farwall.web.pages.shown import Kept
from farwall.web.people.who import name_of_who

Json = dict[str, Any]
_STEP = re.compile(r"([^.\[\]]+)|\[(\d+)\]")
_LOST = re.compile(r"^There is no room ")


class Other(FarwallError):
    """Somebody else has changed the facts meanwhile."""


async def keep_drawn(
    door: Door, kept: Kept, floor: FloorOf, drawn: Json, *, answers: Any, drop: bool
) -> int | None:
    """The number of the new version of the facts; None where nothing was drawn.

    answers: to the notes of the import, kept in either case. drop: what other facts say of rooms
    that are gone is left out. Raises Refused with every fault, Other.
    """
    book, now, who = door.book, door.now(), name_of_who()
    changed = (
        None if same(floor.was, drawn) else await asyncio.to_thread(_judged, floor, drawn, drop)
    )
    before = await asyncio.to_thread(kept.state, floor.id) if changed and floor.version else None

    def keep() -> int | None:
        version = floor.version
        if changed is not None:
            if _newest(door, floor.id) != version:
                raise Other("The facts have changed meanwhile.")
            version = book.put_facts(floor.id, changed, who=who, at=now, name=_name(floor))
        if before is not None and before.shown is not None and before.fresh:
            shown = before.shown
            note = noted(
                shown.figures, version=shown.version, starts_at=shown.plan.starts_at,
                told=facts_in_words(shown.job),
            ) | sums_of(shown.plan)  # fmt: skip
            book.put_document(BEFORE, floor.id, note)
        if floor.reading is not None:
            told = answered(floor.reading, answers)
            if told != floor.reading:
                book.put_document(READING, floor.id, told)
        return version if changed is not None else None

    return await door.written(keep)


def _name(floor: FloorOf) -> str:
    return "" if floor.version else floor.name


def _newest(door: Door, job: str) -> int:
    from farwall.store.nouns import NoSuchJob

    try:
        return door.book.versions(job)[-1].version
    except NoSuchJob:
        return 0


def _judged(floor: FloorOf, drawn: Json, drop: bool) -> Json:  # noqa: FBT001
    """The facts with what was drawn, when a job can be read from them. Raises Refused."""
    from farwall.readers.job_json import job_from

    changed = with_drawn(floor.facts, floor.was, drawn)
    try:
        job_from(copy.deepcopy(changed), "The floor")
    except Refused as error:
        lost = [one for one in error.mistakes if _is_lost(one)]
        if not drop or not lost:
            raise
        changed = without_places(changed, [one.where for one in lost])
        job_from(copy.deepcopy(changed), "The floor")
    return changed


def _is_lost(one: Mistake) -> bool:
    """Whether another fact names a room that is gone."""
    return bool(_LOST.match(one.what)) and not one.where.startswith(("floor", "exits"))


def without_places(facts: Json, places: list[str]) -> Json:
    """The facts without what stands at these places, such as `survey.rooms.pantry`."""
    changed = copy.deepcopy(facts)
    paths = [_path(place) for place in places]
    for path in sorted(paths, key=_late_first, reverse=True):
        holder: Any = changed
        for step in path[:-1]:
            holder = holder[step]
        del holder[path[-1]]
    return changed


def _path(place: str) -> list[str | int]:
    return [int(number) if number else name for name, number in _STEP.findall(place)]


def _late_first(path: list[str | int]) -> list[tuple[str, int]]:
    """So that taking one out of a list does not shift the others."""
    return [("", step) if isinstance(step, int) else (step, 0) for step in path]
