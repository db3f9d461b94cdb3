"""The live day over HTTP: a tap, and what to do now at once; a new plan of the rest soon after."""

from __future__ import annotations

import asyncio
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import replace
from typing import Any

from fastapi import APIRouter, Depends, FastAPI, Request
from fastapi.responses import Response

from farwall.errors import Mistake, Refused, Unanswerable
from farwall.facts.plan import Plan
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, said_whole, speaking, told
from farwall.web.door import Door, json_of
from farwall.web.live_jobs import REST, LiveJobs, is_past, minute_of
from farwall.web.packed import packed_json
from farwall.web.pages.tongue import language_of
from farwall.web.people.who import may_tell_of_money
from farwall.web.replanning import Replanning
from farwall.web.slow import Slow
from farwall.web.taking import offer_from, take

Json = dict[str, Any]


class Live:
    """Taps in, what to do now out; plans are made beside."""

    def __init__(self, door: Door, jobs: LiveJobs) -> None:
        self.door, self.jobs = door, jobs
        self.slow = Slow(jobs.make_hands)
        self.replanning = Replanning(self._lay_anew, time.monotonic)
        self._planning: dict[str, asyncio.Task[Any]] = {}

    async def plan_soon(self, job: str) -> None:
        """Begin the plan of a job where the book has none of its newest facts."""
        if job in self._planning or await asyncio.to_thread(self.jobs.is_planned, job):
            return
        work = asyncio.to_thread(self.jobs.make_plan, job)
        task = self._planning[job] = asyncio.create_task(work)
        task.add_done_callback(lambda _: self._planning.pop(job, None))

    async def settled(self) -> None:
        """Wait until no plan is being made."""
        while self._planning:
            await asyncio.gather(*self._planning.values(), return_exceptions=True)
        await self.replanning.settled()
        await self.slow.settled()

    async def _lay_anew(self, job: str) -> None:
        try:
            await asyncio.to_thread(self.jobs.lay_anew, job, clock=self.door.clock())
        except (Refused, Unanswerable):
            return  # what can be said of it the quick answer says

    def now(self, job: str) -> Json:
        """What to do now, with what is to be read aloud. Raises NoSuchJob, NotPlanned."""
        from farwall.facts.plain import plain
        from farwall.job.aside import of_the_floor, over_by
        from farwall.job.live import again, now
        from farwall.job.live.say import said_now
        from farwall.job.story import story

        found = self.jobs.planned(job)
        every = self.door.book.entries(job)
        kept = of_the_floor(every)
        told = story(found.plan, kept)
        clock = self.door.clock()
        at_min, past = minute_of(found.plan, kept, clock), is_past(found.plan, clock)
        lessons = self.jobs.lessons()
        then = now(found.job, found.plan, told, at_min=at_min, lessons=lessons)
        holds = again(found.plan, told, at_min=at_min, us=then.us)
        over = over_by(every, told)
        said = said_now(found.plan, then, again=holds.says, past=past, over=over)
        rest = self.door.book.document(REST, job)
        place = max((one.place for one in every), default=0)
        return {
            "place": place,
            "now": plain(then),
            "again": plain(holds),
            **_told(found.plan, said.splitlines()),
            "rest_upto": rest["upto"] if rest is not None else None,
            "laying_anew": self.replanning.busy(job),
        }


def live(door: Door, held: Live) -> APIRouter:
    """The routes of the live day."""
    router = APIRouter(dependencies=[Depends(door.asks_for_key)])

    @router.get("/api/jobs/{job}/now")
    async def now(job: str, request: Request) -> Response:
        """What to do now, said in the language that is asked for."""
        LANGUAGE.set(language_of(request))
        await held.plan_soon(job)
        return packed_json(request, await asyncio.to_thread(held.now, job))

    @router.post("/api/jobs/{job}/log")
    async def tap(job: str, request: Request) -> Json:
        """One entry, kept, and what to do now."""
        LANGUAGE.set(language_of(request))
        entry = _entry(job, await json_of(request))
        sent_at = entry.pop("sent_at", None)
        offer = offer_from({
            "device": entry.get("device") or "screen", "era": entry.get("era", 0),
            "sent_at": entry["at"] if sent_at is None else sent_at, "entries": [entry],
        })  # fmt: skip
        money = may_tell_of_money(request)
        offer = replace(offer, money=money, tells_clock=sent_at is not None)
        answer = await door.written(lambda: take(door.book, offer, received_at=door.now()))
        if answer.turned:
            why = [Mistake("", one) for one in answer.turned[0].why]
            raise Refused(*why, about="This was not entered:")
        await held.plan_soon(job)
        held.replanning.tapped(job)
        return {"id": entry["id"], **await asyncio.to_thread(held.now, job)}

    @router.get("/api/jobs/{job}/plan")
    async def plan(job: str) -> Json:
        """The plan of the newest facts; refused while it is being made."""
        await held.plan_soon(job)
        await asyncio.to_thread(held.jobs.planned, job)
        return {"plan": await asyncio.to_thread(door.book.document, "plan", job)}

    @router.get("/api/jobs/{job}/rest")
    async def rest(job: str) -> Json:
        """The rest of the day as last laid anew, and up to which place of the log it knows."""
        found = await asyncio.to_thread(door.book.document, REST, job)
        if found is None:
            raise Unanswerable("The rest of this day was not laid anew.")
        return found

    return router


@asynccontextmanager
async def letting_go(app: FastAPI) -> AsyncIterator[None]:
    """While the app runs; then the hands are let go and the last writing ends."""
    yield
    held: Live = app.state.live
    held.jobs.close()
    held.slow.close()
    held.door.writing.shutdown()


def _told(plan: Plan, lines: list[str]) -> Json:
    """`said`: the lines, each whole in the language that is spoken or in English; `said_in`."""
    language = LANGUAGE.get()
    with speaking(language, names_in(plan)):
        whole = [language if said_whole(one) else "en" for one in lines]
        return {"said": [told(one) for one in lines], "said_in": whole}


def _entry(job: str, data: Any) -> Json:
    """The entry as the log wants it."""
    if not isinstance(data, dict):
        raise Refused(Mistake("", "it is an object.", 'Such as {"word": "dry", "about": {}}.'))
    entry: Json = {"about": {}, **data, "job": job}
    if not entry.get("at"):
        raise Refused(Mistake("at", "when was it?", "The device's clock, ISO 8601 with offset."))
    if not entry.get("id"):
        raise Refused(Mistake("id", "each tap has an id of its own.", "Make a UUIDv7 for it."))
    return entry
