"""The screens on which facts are entered: survey, samples, crew, and the first questions."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable, Mapping
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.facts.job import Job
from farwall.job.colour.told import survey_told
from farwall.job.go import go_or_no_go
from farwall.readers.job_json import job_from
from farwall.store.nouns import BookTrouble
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.drop_map import drop_map
from farwall.web.pages.forms.asked import Asked, asked_of
from farwall.web.pages.forms.crew import CREW, FIRST
from farwall.web.pages.forms.keep import changed_by_other, keep_facts, keep_form
from farwall.web.pages.forms.masking import MASKING
from farwall.web.pages.forms.materials import MATERIALS
from farwall.web.pages.forms.merged import merged
from farwall.web.pages.forms.notes import Notes
from farwall.web.pages.forms.nouns import Form
from farwall.web.pages.forms.offers import OFFERS
from farwall.web.pages.forms.samples import SAMPLES
from farwall.web.pages.forms.sheets import sheets_of
from farwall.web.pages.forms.shown import form_shown, link_of, window_asked
from farwall.web.pages.forms.survey import SURVEY
from farwall.web.pages.forms.terms import TERMS
from farwall.web.pages.forms.told import Slip, Wrong
from farwall.web.pages.forms.washing import WASHING
from farwall.web.pages.forms.waste import WASTE
from farwall.web.pages.forms.workers import WORKERS
from farwall.web.pages.go_sheet import go_sheet
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.new_houses import keep_money
from farwall.web.pages.one_window import with_window
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said

SCREENS: dict[str, Form] = {
    "survey": SURVEY,
    "samples": SAMPLES,
    "crew": CREW,
    "first": FIRST,
    "materials": MATERIALS,
    "workers": WORKERS,
    "washing": WASHING,
    "waste": WASTE,
    "terms": TERMS,
    "masking": MASKING,
    "offers": OFFERS,
}
MADE: dict[str, Callable[[Job], Form]] = {"sheets": sheets_of}
"""Forms that are made for the job at hand."""
_HERE = {
    "first": "",
    **dict.fromkeys(("sheets", "workers", "washing", "waste", "materials"), "way-acid"),
    **dict.fromkeys(("terms", "masking", "offers"), "way-price"),
}
"""Which way of the house leads to a screen, where none is called as the screen is."""
MOST_BYTES, MOST_FIELDS = 500_000, 4_000
"""A house of five hundred rooms has four blanks in each and some more."""


def told_facts(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the forms of a house."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _Forms(door, held)
    for name in (*SCREENS, *MADE):
        router.get(f"/houses/{{job}}/{name}")(_asking(pages, name))
        router.post(f"/houses/{{job}}/{name}")(_telling(pages, name))
    router.post("/houses/{job}/survey/window")(pages.add_window)
    return router


def _asking(pages: _Forms, name: str) -> Callable[..., Awaitable[Response]]:
    async def ask(job: str, kept: str = "") -> Response:
        return await asyncio.to_thread(pages.page, job, name, kept=kept)

    return ask


def _telling(pages: _Forms, name: str) -> Callable[..., Awaitable[Response]]:
    async def tell(job: str, request: Request) -> Response:
        return await pages.tell(job, name, request)

    return tell


class _Forms:
    """The forms of houses."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.kept = Kept(door.book)

    async def tell(self, job: str, name: str, request: Request) -> Response:
        """Keep what was typed and have it planned; refused, the form comes back as it was."""
        told = await form_of(request, MOST_BYTES, fields=MOST_FIELDS)
        state = await asyncio.to_thread(self.kept.state, job)
        try:
            form = await asyncio.to_thread(self._form, name, job)
            new = await keep_form(self.door, form, state, told)
        except Wrong as error:
            typed, slips = await asyncio.to_thread(
                self._over_newest, job, name, dict(told), error.slips
            )
            return await asyncio.to_thread(self.page, job, name, told=typed, slips=slips, code=422)
        except BookTrouble as error:  # what was typed stands there still, to be kept later
            slips = tuple(Slip("", "", str(one)) for one in error.mistakes)
            return await asyncio.to_thread(
                self.page, job, name, told=dict(told), slips=slips, code=503
            )
        if name == "terms":
            await self.door.written(lambda: keep_money(self.door.book, job))
        await self.held.plan_soon(job)
        if name == "first":
            return seen_elsewhere(house_path(job))
        return seen_elsewhere(f"{house_path(job)}/{name}?kept={'yes' if new else 'same'}")

    async def add_window(self, job: str, request: Request) -> Response:
        """One more window; refused, the survey comes back with what is wrong."""
        told = await form_of(request)
        state = await asyncio.to_thread(self.kept.state, job)
        try:
            facts = await asyncio.to_thread(self.door.book.facts, job, state.version)
            if str(told.get("version", "")) != str(state.version):
                raise changed_by_other()
            changed = await asyncio.to_thread(with_window, asked_of(SURVEY, facts), facts, told)
            await keep_facts(self.door, state, changed)
        except Wrong as error:
            return await asyncio.to_thread(
                self.page, job, "survey", told=told, slips=error.slips, code=422
            )
        await self.held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/survey?kept=yes#part-windows")

    def _over_newest(
        self, job: str, name: str, told: dict[str, Any], slips: tuple[Slip, ...]
    ) -> tuple[dict[str, Any], tuple[Slip, ...]]:
        """What was typed, with the slips; typed into older facts, as typing into the newest."""
        versions = [one.version for one in self.door.book.versions(job)]
        word = str(told.get("version", ""))
        if word == str(versions[-1]) or word not in map(str, versions):
            return told, slips
        before, now = (self._asked(name, job, one) for one in (int(word), versions[-1]))
        found = merged(before, now, told)
        return {**found.told}, found.slips

    def _asked(self, name: str, job: str, version: int) -> Asked:
        facts = self.door.book.facts(job, version)
        form = SCREENS.get(name) or MADE[name](job_from(facts, "The job"))
        return asked_of(form, facts)

    def _form(self, name: str, job: str) -> Form:
        if name in SCREENS:
            return SCREENS[name]
        newest = self.door.book.versions(job)[-1]
        return MADE[name](job_from(self.door.book.facts(job, newest.version), "The job"))

    def page(
        self,
        job: str,
        name: str,
        *,
        kept: str = "",
        told: Mapping[str, Any] | None = None,
        slips: tuple[Slip, ...] = (),
        code: int = 200,
    ) -> Response:
        """The form of a house; with what was typed and is wrong where that was refused."""
        newest = self.door.book.versions(job)[-1]
        form = self._form(name, job)
        asked = asked_of(form, self.door.book.facts(job, newest.version))
        told_job = survey_told(asked.job, self.door.book.entries(job))
        go = go_or_no_go(told_job) if name in {"survey", "samples", "waste"} else None
        shown = form_shown(
            asked, newest.version, notes=Notes(asked.job, go), told=told, slips=slips
        )
        word = {"yes": said("form-kept", n=newest.version), "same": said("form-same")}.get(kept, "")
        return page(
            "entry.html",
            code=code, form=shown, house=newest.name or job, house_id=job, kept=word,
            here=_HERE.get(name, f"way-{name}"), link_of=link_of,
            action=f"{house_path(job)}/{name}",
            may_change=(asks := who_asks()) is not None and asks.may(CHANGE),
            save="first-go" if name == "first" else "form-save",
            go=go_sheet(go, asked.job) if name == "survey" and go is not None else None,
            drop_map=drop_map(asked.job) if name == "survey" else "",
            window=window_asked(asked, told or {}, slips) if name == "survey" else None,
        )  # fmt: skip
