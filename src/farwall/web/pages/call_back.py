"""A call after hand-over: the questions, and the likely causes held against the house's own log."""

from __future__ import annotations

import asyncio

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused
from farwall.job.call_back import QUESTIONS, Triage, call_from, triage_of
from farwall.job.call_back.asked import BY_KEY
from farwall.job.call_back.say import NO_VERDICT, weighed
from farwall.job.office import OfficeGround
from farwall.job.office.ground import handed_over_on
from farwall.nouns import dataclass
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking, told
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import page
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.shown import Kept
from farwall.web.pages.typed_days import plain
from farwall.web.session import Sessions

SHOWN_WHOLE = 4


@dataclass(frozen=True)
class Asked:
    """A question on the page: its choices with their words, or a line to write on."""

    key: str
    words: str
    choices: tuple[tuple[str, str], ...]
    typed: str


def call_back(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The route of the page: a form that only asks, so that an answer can be sent as an address."""
    router = guarded(sessions)
    pages = _CallBack(door, held)
    router.get("/houses/{job}/call-back")(pages.show)
    return router


class _CallBack:
    """The page, reckoned when it is asked for from plan and log as they stand."""

    def __init__(self, door: Door, held: Live) -> None:
        self.held, self.book = held, door.book
        self.kept = Kept(door.book, door.clock)

    async def show(self, job: str, request: Request) -> Response:
        """The questions, and the causes once something was answered."""
        await self.held.plan_soon(job)
        typed = {key: str(value)[:80] for key, value in request.query_params.items()}
        return await asyncio.to_thread(self._page, job, typed)

    def _page(self, job: str, typed: dict[str, str]) -> Response:
        state = self.kept.state(job)
        ground = office_ground_of(self.book, state)
        mistakes: tuple[Mistake, ...] = ()
        found: Triage | None = None
        rooms: dict[str, str] = {}
        if ground is not None:
            rooms = {one.id: one.label for one in ground.job.floor.rooms}
            try:
                found = _answered(ground, typed, rooms)
            except Refused as no:
                mistakes = tuple(map(_asked_so, no.mistakes))
        names = names_in(ground.plan) if ground is not None else frozenset()
        with speaking(LANGUAGE.get(), names):
            return page(
                "call_back.html", state=state, house=state.name or state.id, house_id=job,
                here="", waiting=ground is None and not state.no, planned=ground is not None,
                asked=_asked(typed, rooms), mistakes=mistakes, found=found,
                whole=SHOWN_WHOLE, ask=_to_ask(found), no_verdict=NO_VERDICT,
                weighed=told(weighed(found)) if found is not None else "",
                logged=bool(found is not None and found.records),
            )  # fmt: skip


def _answered(ground: OfficeGround, typed: dict[str, str], rooms: dict[str, str]) -> Triage | None:
    """What comes of the answers; None while nothing was answered. Raises Refused."""
    known = [
        f"{key}={plain(value) if key == 'when' else value}"
        for key, value in typed.items() if key in BY_KEY and value
    ]  # fmt: skip
    if not known:
        return None
    latitude = ground.job.place.latitude_deg
    call = call_from(
        known, rooms, handed_over=handed_over_on(ground),
        north=None if latitude is None else latitude > 0,
    )  # fmt: skip
    return triage_of(ground.job, ground.plan, ground.story, call, ground.lessons)


def _asked_so(mistake: Mistake) -> Mistake:
    """A mistake at the question as the page asks it, not at its key."""
    asked = BY_KEY.get(mistake.where)
    where = told(asked.words).rstrip(".?") if asked is not None else mistake.where
    return Mistake(where, told(mistake.what), told(mistake.remedy))


def _asked(typed: dict[str, str], rooms: dict[str, str]) -> tuple[Asked, ...]:
    found = []
    for one in QUESTIONS:
        choices = tuple((each, told(each)) for each in one.answers)
        if one.key == "room":
            choices = tuple(rooms.items())
        found.append(Asked(one.key, one.words, choices, typed.get(one.key, "")))
    return tuple(found)


def _to_ask(found: Triage | None) -> tuple[str, ...]:
    return () if found is None else tuple(BY_KEY[key].words for key in found.ask)
