"""A floor walked with a tape: room after room typed or dictated, closed, then on to the house."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.floor.walk.closed import Closed, close_walk
from farwall.floor.walk.floor_of import laid_corners
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.readers.walk.read import reading_of
from farwall.readers.walk.text import walk_from_text
from farwall.units import ft2_from_m2
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.new_houses import free_id, next_working_day, with_firm
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.pages.walk_form import (
    MOST_WALLS,
    WAY_KINDS,
    RoomBlanks,
    blanks_in,
    lines_of,
    more_walls,
)
from farwall.web.pages.walk_picture import walk_picture
from farwall.web.pages.walk_shown import again_said, doors_said, rooms_closed
from farwall.web.people.who import name_of_who
from farwall.web.session import Sessions
from farwall.web.words import LANGUAGE, said

_MOST_BYTES, _MOST_FIELDS, _MOST_LETTERS = 120_000, 200, 60_000
_SHEETS = 12


@dataclass(frozen=True)
class _Asked:
    """What stands on the page: house, units, the walk so far, the room that is being walked."""

    house: str
    units: Units
    text: str
    blanks: RoomBlanks

    @property
    def whole(self) -> str:
        """The walk as its reader takes it; a text that begins with its own heading keeps it."""
        tape = "metres" if self.units == "metric" else "feet"
        return f"walk, tape in {tape}\n{self.text}"


def walk(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of a walk."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )

    @router.get("/walk")
    async def ask() -> Response:
        units = await asyncio.to_thread(firm_units, door.book)
        return _shown(_Asked(said("rooms-house"), units, "", RoomBlanks()))

    @router.get("/walk/sheet.pdf")
    async def sheet() -> Response:
        from farwall.papers.walk_paper.sheet import walk_sheet_pdf

        units = await asyncio.to_thread(firm_units, door.book)
        pdf = await asyncio.to_thread(walk_sheet_pdf, _SHEETS, language=LANGUAGE.get(), units=units)
        return Response(pdf, media_type="application/pdf", headers={"cache-control": "no-store"})

    @router.post("/walk")
    async def tell(request: Request) -> Response:
        told = await form_of(request, _MOST_BYTES, fields=_MOST_FIELDS)
        asked = _asked(told)
        if told.get("do") == "more":
            return _shown(_with(asked, blanks=more_walls(asked.blanks)))
        try:
            asked = _taken(asked)
            if not asked.text.strip():
                return _shown(asked)
            closed = await asyncio.to_thread(_closed, asked)
        except Refused as error:
            return _shown(asked, mistakes=error.mistakes)
        reading = reading_of(closed)
        if told.get("do") != "make":
            return _shown(asked, closed=closed, reading=reading)
        wrong = _in_the_way(reading)
        if wrong:
            return _shown(asked, closed=closed, reading=reading, mistakes=wrong)
        facts = await asyncio.to_thread(new_house, door, asked.house, reading, asked.units)
        job, now, book, who = str(facts["id"]), door.now(), door.book, name_of_who()
        await door.written(lambda: book.put_facts(job, facts, who=who, at=now, name=asked.house))
        await held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/first")

    return router


def _asked(told: Mapping[str, Any]) -> _Asked:
    text = told.get("walk")
    text = text[:_MOST_LETTERS] if isinstance(text, str) else ""
    units: Units = "metric" if told.get("units") == "metric" else "us"
    house = " ".join(str(told.get("house", "")).split())[:80] or said("rooms-house")
    return _Asked(house, units, text.replace("\r\n", "\n"), blanks_in(told))


def _with(asked: _Asked, *, text: str | None = None, blanks: RoomBlanks) -> _Asked:
    return _Asked(asked.house, asked.units, asked.text if text is None else text, blanks)


def _taken(asked: _Asked) -> _Asked:
    """The room in the blanks added to the walk, the blanks empty again. Raises Refused."""
    if not asked.blanks.told:
        return asked
    added = "\n".join(lines_of(asked.blanks))
    text = f"{asked.text.rstrip()}\n\n{added}\n".lstrip()
    new = _with(asked, text=text, blanks=RoomBlanks())
    walk_from_text(new.whole)
    return new


def _closed(asked: _Asked) -> Closed:
    return close_walk(walk_from_text(asked.whole))


def _in_the_way(reading: Reading) -> list[Mistake]:
    """What keeps a walk from becoming a house."""
    if not reading.exits:
        return [Mistake("", said("walk-no-way-out"))]
    return list(faults_of(reading.floor, reading.exits))


def _shown(
    asked: _Asked,
    *,
    closed: Closed | None = None,
    reading: Reading | None = None,
    mistakes: Sequence[Mistake] = (),
) -> Response:
    more: dict[str, Any] = {"picture": "", "times": 0, "again": [], "rooms": [], "doors": []}
    if closed is not None and reading is not None:
        picture, times = walk_picture(closed, reading.floor, laid_corners(closed))
        area_m2 = sum(room.polygon.shape.area for room in reading.floor.rooms)
        area = f"{ft2_from_m2(area_m2):,.0f} ft²" if asked.units == "us" else f"{area_m2:,.1f} m²"
        more = {
            "picture": picture, "times": times, "area": area, "rooms": rooms_closed(closed),
            "again": [again_said(closed, one) for one in closed.found],
            "doors": doors_said(closed),
        }  # fmt: skip
    return page(
        "walk.html", code=422 if mistakes else 200, asked=asked, blanks=asked.blanks,
        mistakes=mistakes, kinds=WAY_KINDS, most=MOST_WALLS, **more,
    )  # fmt: skip


def new_house(door: Door, name: str, reading: Reading, units: Units) -> dict[str, Any]:
    """Facts of a house of this floor, with what the firm begins with."""
    from farwall.job.from_reading import written_out
    from farwall.readers.job_json import job_to_dict

    job = written_out(Job(version=1, floor=reading.floor, exits=reading.exits, name=name))
    facts = with_firm(job_to_dict(job), door.book)
    facts["wishes"] = {**facts.get("wishes", {}), "units": units}
    return facts | {"id": free_id(door.book, name), "starts_at": next_working_day(door.clock())}
