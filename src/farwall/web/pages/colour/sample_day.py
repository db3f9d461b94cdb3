"""The page of the sample day: the same steps as on the phone, what was entered, what is missing."""

from __future__ import annotations

import asyncio
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request, Response

from farwall.errors import FarwallError, Mistake, Refused, mistakes_of
from farwall.readers.job_json import job_from
from farwall.web.door import Door
from farwall.web.firm import print_values
from farwall.web.live import Live
from farwall.web.pages.colour.photo_look import look_told
from farwall.web.pages.colour.sample_day_shown import day_shown, ground_of, photos_to_read
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import There
from farwall.web.pages.log_keep import Typed, keep_typed
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept, State
from farwall.web.people.roles import TAP
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said

_ROOM = 2000
PAPERS = ("sample-day.pdf", "sample-card.pdf")


def sample_day(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the page."""
    router = guarded(sessions)
    pages = _SampleDay(door, held)
    router.get("/houses/{job}/colour/sample-day")(pages.show)
    router.post("/houses/{job}/colour/sample-day")(pages.read)
    return router


class _SampleDay:
    """The page, of the newest facts and the log; a plan's clocks are taken where there is one."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.plans = Kept(door.book, door.clock)

    async def show(self, job: str) -> Response:
        """The day as it stands."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, [])

    async def read(self, job: str, request: Request) -> Response:
        """Read the colour off a photo of a sample and enter it."""
        form = await form_of(request, _ROOM)
        sha = text_of(form, "file")
        try:
            await self._read(job, sha)
        except FarwallError as error:
            why = mistakes_of(error) if isinstance(error, Refused) else [str(error)]
            told = said("colour-day-read-failed", why=" ".join(map(str, why)))
            return await asyncio.to_thread(self._page, job, [told], 422)
        return seen_elsewhere(f"{house_path(job)}/colour/sample-day#photos")

    async def _read(self, job: str, sha: str) -> None:
        state = await asyncio.to_thread(self.plans.state, job)
        ground = await asyncio.to_thread(self._ground, job, state)
        photo = next((one for one in photos_to_read(ground.happened) if one["file"] == sha), None)
        if photo is None:
            raise Refused(Mistake("", said("colour-day-photo-gone")))
        content = await asyncio.to_thread(self.door.book.file, sha)
        told = await asyncio.to_thread(self._look, content)
        light = {"light": photo["light"]} if photo["light"] else {}
        typed = Typed({**told, "sample": photo["sample"], "state": photo["state"], **light,
                       "file": sha}, {})  # fmt: skip
        kept = await asyncio.to_thread(self.door.book.entries, job)
        there = There(state.shown.plan if state.shown else None, kept, ground.job.wishes.units)
        await keep_typed(self.door, job, there, "sample-seen", typed)

    def _look(self, content: bytes) -> dict[str, str]:
        return look_told(content, print_values(self.door.book))

    def _ground(self, job: str, state: State) -> Any:
        book = self.door.book
        newest = book.versions(job)[-1]
        facts = job_from(book.facts(job, newest.version), "The job")
        plan = state.shown.plan if state.shown else None
        return ground_of(facts, plan, book.entries(job), self.door.clock())

    def _page(self, job: str, mistakes: list[str], code: int = 200) -> Response:
        state = self.plans.state(job)
        who = who_asks()
        told, slips = None, mistakes
        try:
            told = day_shown(self._ground(job, state))
        except Refused as error:
            slips = [*mistakes, *map(str, mistakes_of(error))]
        home = house_path(job)
        return page(
            "colour_sample_day.html", code=code, house=state.name or state.id, house_id=job,
            shown=state.shown, here="way-colour", part="sample-day", told=told, mistakes=slips,
            phone=f"/slab/{quote(job, safe='')}?samples", may_tap=who is not None and who.may(TAP),
            papers=[(said(f"papers-name-{name.replace('.', '-')}"), f"{home}/papers/{name}")
                    for name in PAPERS],
        )  # fmt: skip
