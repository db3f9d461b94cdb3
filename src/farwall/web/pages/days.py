"""The days of all open houses and crews: asked for, solved beside, kept, looked at, fetched."""

from __future__ import annotations

import asyncio
from collections.abc import Collection, Sequence
from concurrent.futures import Executor
from dataclasses import replace
from datetime import datetime
from typing import Any, TypeVar, cast

from fastapi import APIRouter, Request, Response
from starlette.datastructures import FormData, UploadFile

from farwall.errors import Mistake, Refused, Unanswerable, mistakes_of
from farwall.papers.wall_clock import Units
from farwall.store.files import file_path
from farwall.units import f_from_c
from farwall.web.calendar_work import Asked, asked_from, calendar_of
from farwall.web.door import Door
from farwall.web.firm import FIRM, LESSONS
from farwall.web.live import Live
from farwall.web.pages.days_form import (
    MOST_HOUSES,
    Rows,
    asked_of,
    default_asked,
    folded,
    rows_of,
    what_if_of,
)
from farwall.web.pages.days_shown import Look, shown_of
from farwall.web.pages.days_weather import said_of, weather_kind
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.lines import CALENDAR
from farwall.web.pages.paper import page, seen_elsewhere
from farwall.web.pages.where_stands import plainly
from farwall.web.session import Sessions
from farwall.web.words import said

Json = dict[str, Any]
_Stands = TypeVar("_Stands", bound=Json | None)
WHAT_IF = "calendar-if"
"""Kind of document: the calendar that was asked about last."""
MOST_MB = 8
_ROOM, _MOST_FIELDS = 200_000, 10_000


def days(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the calendar."""
    router = guarded(sessions)
    pages = _Days(door, held)
    router.get("/days")(pages.show)
    router.post("/days/weather")(pages.weather)
    router.post("/days/ask")(pages.ask)
    router.post("/days/if")(pages.what_if)
    router.post("/days/keep")(pages.keep)
    router.post("/days/drop")(pages.drop)
    router.get("/days/state")(pages.how_far)
    router.get("/days/farwall.ics")(pages.calendar_file)
    router.get("/days/days.json")(pages.document)
    return router


class _Days:
    """The calendar that stands in the book, and the question that was put last."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book

    def show(self, first: str = "", weeks: str = "", house: str = "") -> Response:
        """The page; `house`: words of the names that the form shows first."""
        return self._page(first=first, weeks=weeks, sought=house[:80])

    def how_far(self) -> Json:
        """Whether a calendar is being made; the page that waits looks here."""
        busy = self.held.slow.busy(CALENDAR) or self.held.slow.busy(WHAT_IF)
        return {"version": 0, "fresh": not busy, "no": []}

    async def weather(self, request: Request) -> Response:
        """Keep an hourly EPW file, or a forecast, for the calendars to come."""
        form = await form_of(request, MOST_MB * 1_000_000 + _ROOM)
        try:
            try:
                file = form.get("file")
                if not isinstance(file, UploadFile) or not file.filename:
                    raise Refused(Mistake("", said("days-weather-none")))
                content, name = await file.read(), file.filename[:120]
            finally:
                await form.close()
            kind = await asyncio.to_thread(weather_kind, content, name)
        except Refused as error:
            return await asyncio.to_thread(self._page, mistakes=said_of(error), code=422)
        sha = await self.door.written(lambda: self.book.put_file(content))
        was = await asyncio.to_thread(self._asked)
        file_told = (sha, name)
        asked = (
            replace(was, weather=file_told, readings={})
            if kind == "weather"
            else replace(was, forecast=file_told, readings={})
        )
        await self.door.written(lambda: self._put_asked(asked))
        return seen_elsewhere("/days#asks")

    async def ask(self, request: Request) -> Response:
        """Begin a calendar of what the form asks; the one that stands is shown meanwhile."""
        form = await form_of(request, _ROOM, fields=_MOST_FIELDS)
        was = await asyncio.to_thread(self._asked)
        open_ = [one.id for one in await asyncio.to_thread(self.book.in_hand) if not one.closed]
        units = await asyncio.to_thread(firm_units, self.book)
        try:
            asked = asked_of(form, open_, was, units)
        except Refused as error:
            return await asyncio.to_thread(self._page, mistakes=mistakes_of(error), code=422)
        await self.door.written(lambda: self._put_asked(asked))
        self._begin(CALENDAR, asked)
        return seen_elsewhere("/days")

    async def what_if(self, request: Request) -> Response:
        """Begin the calendar with rain or another trade, held to the one that stands."""
        form = await form_of(request)
        stands = await asyncio.to_thread(self.book.document, CALENDAR, FIRM)
        if stands is None or not stands.get("document"):
            raise Unanswerable(said("days-none"))
        try:
            asked = what_if_of(form, asked_from(stands["asked"]))
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, if_mistakes=wrong, told=form, code=422)
        self._begin(WHAT_IF, asked)
        return seen_elsewhere("/days#what-if")

    async def keep(self, request: Request) -> Response:
        """Let the calendar that was asked about stand."""
        await form_of(request)
        asked = await asyncio.to_thread(self.book.document, WHAT_IF, FIRM)
        if asked is not None and asked.get("document"):
            await self.door.written(lambda: self._stand(asked))
            await self._dropped()
        return seen_elsewhere("/days")

    async def drop(self, request: Request) -> Response:
        """Let the question go."""
        await form_of(request)
        await self._dropped()
        return seen_elsewhere("/days")

    def calendar_file(self) -> Response:
        """The calendar as iCalendar, the same UID for the same step in every one."""
        from farwall.papers.calendar_file import calendar_file

        stands, gone = self._standing(), self._aside()
        text = stands["ics"]
        if gone:
            stamp = datetime.fromisoformat(stands["made_at"])
            text = calendar_file(stands["document"], stamp=stamp, earlier=text, gone=gone)
        headers = {
            "cache-control": "private, no-cache",
            "content-disposition": 'attachment; filename="farwall.ics"',
        }
        return Response(text.encode(), media_type="text/calendar", headers=headers)

    def document(self) -> Response:
        """The calendar as `days.json`, as the command line writes it."""
        from farwall.papers.json_text import json_text

        text = json_text(dict(self._standing()["document"])) + "\n"
        headers = {"content-disposition": 'attachment; filename="days.json"'}
        return Response(text.encode(), media_type="application/json", headers=headers)

    # what is kept

    def _standing(self) -> Json:
        stands = self.book.document(CALENDAR, FIRM)
        if stands is None or not stands.get("document"):
            raise Unanswerable(said("days-none"))
        return in_hand(stands, self._aside())

    def _aside(self) -> set[str]:
        """Ids of houses that are set aside."""
        return {one.id for one in self.book.jobs() if one.aside}

    def _asked(self) -> Asked:
        """What was asked last, else what would be."""
        kept = self.book.document("calendar-asked", FIRM)
        if kept is not None:
            return asked_from(kept)
        ids = [one.id for one in self.book.in_hand() if not one.closed][:MOST_HOUSES]
        return default_asked(ids, self.door.clock().date())

    def _put_asked(self, asked: Asked) -> None:
        self.book.put_document("calendar-asked", FIRM, asked.to_dict())

    def _rows(self, asked: Asked, sought: str) -> Rows:
        """Houses that the form offers: the newest open ones, those asked about before, and those
        sought."""
        parts, found = plainly(sought).split(), dict[str, str]()
        for one in self.book.in_hand():
            name = one.name or one.id
            is_sought = parts and all(part in plainly(f"{name} {one.id}") for part in parts)
            if not one.closed and (
                len(found) < MOST_HOUSES or one.id in asked.houses or is_sought
            ):  # fmt: skip
                found[one.id] = name
        return folded(rows_of(found, asked), sought)

    def _begin(self, key: str, asked: Asked) -> None:
        def work(hands: Executor) -> None:
            there = {one.id for one in self.book.in_hand()}
            facts = {one: self.book.facts(one) for one in asked.houses if one in there}
            paths = [
                str(file_path(self.book.where.files, one[0]))
                for one in (asked.weather, asked.forecast)
                if one is not None
            ]
            taught = self.book.document(LESSONS, FIRM)
            made = hands.submit(calendar_of, asked.to_dict(), facts, paths, taught).result()
            told = {**made, "asked": asked.to_dict(), "made_at": self.door.now()}
            if key == WHAT_IF:
                self.book.put_document(WHAT_IF, FIRM, told)
            else:
                self._stand(told)

        self.held.slow.begin(key, work)

    def _stand(self, told: Json) -> None:
        """Keep a calendar as the one that stands, its calendar file grown out of the last one."""
        from farwall.papers.calendar_file import calendar_file

        before = self.book.document(CALENDAR, FIRM) or {}
        ics = before.get("ics", "")
        if told["document"] is not None:
            stamp = datetime.fromisoformat(told["made_at"])
            ics = calendar_file(told["document"], stamp=stamp, earlier=ics, gone=self._aside())
        self.book.put_document(CALENDAR, FIRM, {**told, "ics": ics})

    async def _dropped(self) -> None:
        nothing: Json = {"document": None}
        await self.door.written(lambda: self.book.put_document(WHAT_IF, FIRM, nothing))

    # what is shown

    def _page(
        self,
        *,
        first: str = "",
        weeks: str = "",
        sought: str = "",
        mistakes: Sequence[str] = (),
        if_mistakes: Sequence[str] = (),
        told: FormData | None = None,
        code: int = 200,
    ) -> Response:
        slow, units = self.held.slow, firm_units(self.book)
        asked = self._asked()
        stands, case = self.book.document(CALENDAR, FIRM), self.book.document(WHAT_IF, FIRM)
        if gone := self._aside():
            stands, case = in_hand(stands, gone), in_hand(case, gone)
        document = stands["document"] if stands is not None else None
        case = case if case is not None and case.get("document") and document else None
        shown: Json = {}
        if stands is not None and document is not None and document["houses"]:
            shown = shown_of(stands, case, units, Look(first, weeks, self.door.clock()))
        return page(
            "days.html", code=code, asked=asked, rows=self._rows(asked, sought),
            units=units, mistakes=mistakes, if_mistakes=if_mistakes, most=MOST_MB,
            waiting=slow.busy(CALENDAR), trying=slow.busy(WHAT_IF),
            trouble=[slow.trouble[one] for one in (CALENDAR, WHAT_IF) if one in slow.trouble],
            unplaced=_unplaced(stands), shown=shown,
            form={key: text_of(told, key) if told else "" for key in
                  ("rain", "trade", "where", "back")},
            readings=_readings(asked, units),
        )  # fmt: skip


def in_hand(stands: _Stands, gone: Collection[str]) -> _Stands:
    """A calendar as kept, without the houses that were set aside since."""
    if stands is None or not gone or not stands.get("document"):
        return stands
    document = stands["document"]
    houses = [one for one in document["houses"] if one["id"] not in gone]
    return cast("_Stands", {**stands, "document": {**document, "houses": houses}})


def _unplaced(stands: Json | None) -> list[Json]:
    return [] if stands is None else list(stands.get("unplaced", ()))


def _readings(asked: Asked, units: Units) -> dict[str, str]:
    """Readings as the form shows them."""
    found = {}
    for key, name in (("slab_c", "slab"), ("air_c", "air"), ("rh_percent", "rh")):
        value = asked.readings.get(key)
        if value is not None and key != "rh_percent" and units == "us":
            value = f_from_c(value)
        found[name] = "" if value is None else f"{value:.1f}".removesuffix(".0")
    return found
