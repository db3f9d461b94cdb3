"""The list of houses, and the two ways to bring one in."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Sequence
from dataclasses import replace
from importlib.resources import files
from typing import Any

from fastapi import APIRouter, Depends, Request, Response
from starlette.datastructures import UploadFile

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.readers.photo.kinds import is_picture
from farwall.store.nouns import NoSuchJob
from farwall.web.door import Door, TooLarge
from farwall.web.live import Live
from farwall.web.pages.brought import MOST_MB, Brought, brought, called_by, facts_of_job
from farwall.web.pages.brought_keep import is_known, keep_reading
from farwall.web.pages.brought_page import AskedPages
from farwall.web.pages.corners_keep import keep_photo, looked_at
from farwall.web.pages.guard import asks_for_session, form_of, text_of
from farwall.web.pages.lines import Lines, Sought
from farwall.web.pages.new_houses import next_working_day, with_firm
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.pages.where_stands import FILTERS
from farwall.web.people.who import name_of_who
from farwall.web.session import Sessions
from farwall.web.words import said

PAGE = 50
_ROOM = 20_000
"""Bytes that a form takes beside its file."""


def houses(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the list."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _Houses(door, held)
    router.get("/")(pages.all)
    router.post("/houses/sample")(pages.sample)
    router.post("/houses/bring")(pages.bring)
    router.get("/brought/{key}")(pages.asked.show)
    router.post("/brought/{key}")(pages.asked.answered)
    router.get("/brought/{key}/picture.svg")(pages.asked.picture)
    return router


class _Houses:
    """The list, and what is put into it."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.lines = Lines(door.book, door.clock)
        self.asked = AskedPages(door, self._keep_brought)

    def all(self, after: str = "", q: str = "", show: str = "") -> Response:
        """A page of the list: q, words of names that are sought; show, one of `FILTERS`."""
        chosen = show if show in FILTERS else ""
        return self._listed(Sought(q.strip()[:80], chosen, after, PAGE))

    async def sample(self, request: Request) -> Response:
        """Put the sample house into the book, where it is not, and have it planned."""
        await form_of(request)
        facts = sample_facts()
        job = str(facts["id"])
        if await asyncio.to_thread(self._known, job):
            return seen_elsewhere(house_path(job))
        return await self._keep(job, facts)

    async def bring(self, request: Request) -> Response:
        """Put a house from a file into the book; refused, nothing is kept."""
        try:
            form = await form_of(request, MOST_MB * 1_000_000 + _ROOM)
            try:
                file, again = form.get("file"), text_of(form, "again") == "yes"
                if not isinstance(file, UploadFile) or not file.filename:
                    raise Refused(Mistake("", said("bring-no-file")))
                content, name = await file.read(), file.filename[:200]
            finally:
                await form.close()
            if is_picture(content):
                return await self._bring_photo(content, name)
            found = await asyncio.to_thread(_read, content, name)
            job = found.id
            if found.asked is not None:
                return await self.asked.begun(found, content, name)
            if not again and await asyncio.to_thread(is_known, self.door.book, job):
                raise Refused(Mistake("", said("bring-known", id=job, name=found.name or job)))
            return await self._keep_brought(found, content, name)
        except (Refused, TooLarge) as error:
            code = 413 if isinstance(error, TooLarge) else 422
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._listed, code=code, mistakes=wrong)

    async def _bring_photo(self, content: bytes, name: str) -> Response:
        """A photo of a plan: a house is begun, and the sheet's corners are asked first."""
        shown = await asyncio.to_thread(looked_at, content, name)
        wish, book = called_by(name), self.door.book
        job = await self.door.written(lambda: keep_photo(book, content, shown, wish, name))
        return seen_elsewhere(f"{house_path(job)}/corners")

    def _listed(
        self, sought: Sought = Sought(most=PAGE), *, code: int = 200,  # noqa: B008
        mistakes: Sequence[str] = (),
    ) -> Response:  # fmt: skip
        found = self.lines.page(sought)
        lines = found.lines
        return page(
            "houses.html", code=code, lines=lines, sought=sought, most=MOST_MB, mistakes=mistakes,
            found=found, filters=FILTERS, last=lines[-1].id if found.more else "",
        )  # fmt: skip

    def _known(self, job: str) -> bool:
        try:
            return bool(self.door.book.versions(job))
        except NoSuchJob:
            return False

    async def _keep_brought(self, found: Brought, content: bytes, name: str) -> Response:
        """Keep it with what its reader found; what is no job yet is corrected first."""
        facts = found.facts
        if facts is not None and found.is_drawing:
            facts = await asyncio.to_thread(with_firm, facts, self.door.book)
            facts.setdefault("starts_at", next_working_day(self.door.clock()))
        answer = None if facts is None else await self._keep(found.id, facts)
        if found.is_drawing:
            await self.door.written(lambda: keep_reading(self.door.book, found, content, name))
            if answer is not None:  # a drawing tells nothing of the day and of who sprays
                return seen_elsewhere(f"{house_path(found.id)}/first")
        return answer or seen_elsewhere(f"{house_path(found.id)}/draw")

    async def _keep(self, job: str, facts: dict[str, Any]) -> Response:
        name, now, book = str(facts.get("name", "")), self.door.now(), self.door.book
        who = name_of_who()
        await self.door.written(lambda: book.put_facts(job, facts, who=who, at=now, name=name))
        await self.held.plan_soon(job)
        return seen_elsewhere(house_path(job))


def sample_facts() -> dict[str, Any]:
    """The invented house that `farwall demo` plans."""
    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    facts: dict[str, Any] = json.loads(text)
    return facts_of_job(facts)


def _read(content: bytes, name: str) -> Brought:
    """What a file brings. Raises Refused; what is wrong with all of it is told by its name."""
    try:
        return brought(content, name)
    except Refused as error:
        file = name.replace("\\", "/").rpartition("/")[2]
        raise Refused(*(replace(one, where=one.where or file) for one in error.mistakes)) from None
