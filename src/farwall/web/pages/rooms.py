"""A floor by its sizes: each room by two lengths and where its door leads."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.floor.from_sizes import LEAST_M, MOST_M, SizedRoom, Way, floor_from_sizes
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.readers.room_names import slug
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.forms.measures import FEET, NoNumber
from farwall.web.pages.forms.shown import link_of
from farwall.web.pages.forms.told import Slip, Wrong
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.new_houses import free_id, next_working_day, with_firm
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.people.who import name_of_who
from farwall.web.session import Sessions
from farwall.web.words import said

WAYS_ON: tuple[Way, ...] = ("door", "cased", "wide")
_FIRST, _MORE, _MOST = 6, 4, 40
_MOST_BYTES, _MOST_FIELDS = 60_000, 6 * _MOST
_KEYS = ("name", "long", "wide", "way", "leads")


@dataclass(frozen=True)
class RoomRow:
    """What stands in the blanks of a room; leads: number of a room from 1, 0 is outside."""

    n: int
    name: str = ""
    long: str = ""
    wide: str = ""
    way: str = "door"
    leads: str = "1"

    @property
    def told(self) -> bool:
        """Whether anything of it was told."""
        return bool(self.name or self.long or self.wide)


def rooms(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of a new floor."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )

    @router.get("/rooms")
    async def ask() -> Response:
        units = await asyncio.to_thread(firm_units, door.book)
        return _shown(units, said("rooms-house"), rows_in({}, _FIRST))

    @router.post("/rooms")
    async def tell(request: Request) -> Response:
        told = await form_of(request, _MOST_BYTES, fields=_MOST_FIELDS)
        units: Units = "metric" if told.get("units") == "metric" else "us"
        name = " ".join(str(told.get("house", "")).split())[:80] or said("rooms-house")
        count = sum(key.endswith(".name") for key in told)
        rows = rows_in(told, min(max(count, 1), _MOST))
        if "more" in told:
            more = rows_in(told, min(len(rows) + _MORE, _MOST))
            return _shown(units, name, more)
        try:
            facts = await asyncio.to_thread(new_house, door, name, rows, units)
        except Wrong as error:
            return _shown(units, name, rows, error.slips)
        job, now, book, who = str(facts["id"]), door.now(), door.book, name_of_who()
        await door.written(lambda: book.put_facts(job, facts, who=who, at=now, name=name))
        await held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/first")

    return router


def _shown(
    units: Units, house: str, rows: Sequence[RoomRow], slips: Sequence[Slip] = ()
) -> Response:
    wrong = {link_of(one): one.what for one in slips if one.name}
    return page(
        "rooms.html",
        code=422 if slips else 200, units=units, house=house, rows=rows, slips=slips, wrong=wrong,
        link_of=link_of, unit=said(FEET.scale(units).unit), ways_on=WAYS_ON, most=_MOST,
    )  # fmt: skip


def rows_in(told: Mapping[str, Any], count: int) -> list[RoomRow]:
    """The rows of a form; the first leads outside until it is told otherwise."""
    found = []
    for n in range(1, count + 1):
        typed = {key: told.get(f"room.{n}.{key}") for key in _KEYS}
        texts = {key: one.strip()[:80] for key, one in typed.items() if isinstance(one, str)}
        found.append(RoomRow(n, **{"leads": "0" if n == 1 else "1", **texts}))
    return found


def new_house(door: Door, name: str, rows: Sequence[RoomRow], units: Units) -> dict[str, Any]:
    """Facts of a house of these rooms, with what the firm begins with. Raises Wrong."""
    from farwall.job.from_reading import written_out
    from farwall.readers.job_json import job_to_dict

    sized, numbers = sized_rooms(rows, units)
    try:
        floor, exits = floor_from_sizes(sized)
    except Refused as error:
        raise Wrong([_in_words(one, rows, numbers, units) for one in error.mistakes]) from None
    job = written_out(Job(version=1, floor=floor, exits=exits, name=name))
    facts = with_firm(job_to_dict(job), door.book)
    facts["wishes"] = {**facts.get("wishes", {}), "units": units}
    return facts | {"id": free_id(door.book, name), "starts_at": next_working_day(door.clock())}


def sized_rooms(rows: Sequence[RoomRow], units: Units) -> tuple[list[SizedRoom], list[int]]:
    """The rooms that were told, and the number of the row of each. Raises Wrong."""
    told = [row for row in rows if row.told]
    place = {row.n: k for k, row in enumerate(told)}
    slips: list[Slip] = [] if told else [Slip("room.1.name", "", said("rooms-none"))]
    found, taken = [], set[str]()
    for row in told:
        if not row.name:
            slips.append(_slip(row.n, "name", said("rooms-no-name")))
        sides = [_length(row, key, units, slips) for key in ("long", "wide")]
        leads = int(row.leads) if row.leads.isdecimal() else -1
        if leads and leads not in place:
            slips.append(_slip(row.n, "leads", said("rooms-leads-nowhere", n=row.leads[:4])))
        name = _free(slug(row.name)[:60] or f"room-{row.n}", taken)
        way: Way = next((one for one in WAYS_ON if one == row.way), "door")
        found.append(SizedRoom(name, row.name, sides[0], sides[1], place.get(leads), way))
    if slips:
        raise Wrong(slips)
    return found, [row.n for row in told]


def _length(row: RoomRow, key: str, units: Units, slips: list[Slip]) -> float:
    text = getattr(row, key)
    try:
        return FEET.si(text, units)
    except NoNumber:
        slips.append(_slip(row.n, key, said("rooms-no-length", text=text)))
        return LEAST_M


def _free(name: str, taken: set[str]) -> str:
    found, n = name, 1
    while found in taken:
        n += 1
        found = f"{name}-{n}"
    taken.add(found)
    return found


def _slip(n: int, key: str, what: str) -> Slip:
    return Slip(f"room.{n}.{key}", said(f"rooms-{key}-of", n=n), what)


def _in_words(
    mistake: Mistake, rows: Sequence[RoomRow], numbers: Sequence[int], units: Units
) -> Slip:
    """A mistake of the floor, in the words of the form."""
    if not mistake.where:
        return Slip("room.1.leads", "", said("rooms-no-way-out"))
    n = numbers[int(mistake.where)]
    if mistake.what == "size":
        low, high = (FEET.text(one, units) for one in (LEAST_M, MOST_M))
        unit = said(FEET.scale(units).unit)
        return _slip(n, "long", said("rooms-size", low=low, high=f"{high} {unit}"))
    if mistake.what == "shut":
        return _slip(n, "leads", said("rooms-shut"))
    if mistake.what == "no-wall":
        leads = rows[n - 1].leads
        to = next((row.name for row in rows if str(row.n) == leads), said("rooms-outside"))
        return _slip(n, "leads", said("rooms-no-wall", room=to))
    return _slip(n, "leads", said("rooms-leads-nowhere", n=rows[n - 1].leads))
