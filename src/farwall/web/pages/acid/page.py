"""Acid and water of a house: a few lines of each part, and a page for each; of its newest plan."""

from __future__ import annotations

import asyncio
from collections import OrderedDict
from collections.abc import Callable
from threading import Lock
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.job.acid_day.day import acid_day
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.in_short import in_short
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.acid_files import PAPERS
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.readers.job_json import job_from
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.acid.fumes import fumes_shown
from farwall.web.pages.acid.neutralising import neutralising_shown
from farwall.web.pages.acid.people import people_shown
from farwall.web.pages.acid.pours import ask_shown, pours_shown
from farwall.web.pages.acid.strength import strength_shown
from farwall.web.pages.acid.washing import washing_shown
from farwall.web.pages.acid.waste import waste_shown
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import house_path, page
from farwall.web.pages.shown import Kept, State
from farwall.web.pages.told import told_on_page
from farwall.web.session import Sessions
from farwall.web.words import said

_HELD = 16
PARTS = ("strength", "fumes", "pours", "people", "neutralising", "washing", "waste")
"""In the order of the day; each has a template `acid_PART.html`."""
Shown = Callable[[Ground, AcidDay], dict[str, Any]]
SHOWN: dict[str, Shown] = {
    "strength": strength_shown,
    "fumes": fumes_shown,
    "pours": pours_shown,
    "people": people_shown,
    "neutralising": neutralising_shown,
    "washing": washing_shown,
    "waste": waste_shown,
}
"""What a part's template is given under its own name, where the noun alone will not do."""


def acid(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The route of the page."""
    router = guarded(sessions)
    pages = _Acid(door, held)
    router.get("/houses/{job}/acid")(pages.show)
    router.get("/houses/{job}/acid/{part}")(pages.part)
    router.get("/houses/{job}/pour")(pages.pour)
    return router


class _Acid:
    """The page, reckoned when it is asked for from the plan that is kept."""

    def __init__(self, door: Door, held: Live) -> None:
        self.held = held
        self.kept = Kept(door.book, door.clock)
        self.days = Days()

    async def show(self, job: str) -> Response:
        """All parts in a few lines each."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, "")

    async def part(self, job: str, part: str) -> Response:
        """One part, whole."""
        if part not in PARTS:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, part)

    async def pour(self, job: str, request: Request) -> Response:
        """May this be poured: the answer, and the question again; of the newest facts."""
        typed = dict(request.query_params)
        return await asyncio.to_thread(self._pour, job, typed)

    def _pour(self, job: str, typed: dict[str, str]) -> Response:
        newest = self.kept.book.versions(job)[-1]
        facts = job_from(self.kept.book.facts(job, newest.version), "The job")
        ask = ask_shown(facts, typed)
        return page(
            "pour.html", ask=ask, house=newest.name or job, house_id=job, here="way-acid",
            code=422 if ask.get("slips") else 200,
        )  # fmt: skip

    def _page(self, job: str, part: str) -> Response:
        state = self.kept.state(job)
        ground = ground_of(state)
        day = None if ground is None else self.days.of(state, ground)
        told = {} if ground is None or day is None or part not in SHOWN else {
            part: SHOWN[part](ground, day)
        }  # fmt: skip
        return page(
            "acid_part.html" if part else "acid.html", state=state, house=state.name or state.id,
            house_id=job, here="way-acid", parts=PARTS, part=part, day=day, told=told,
            waiting=day is None and not state.no, few={} if part else _few(ground, day),
            units=ground.job.wishes.units if ground is not None else "us", papers=_papers(job),
        )  # fmt: skip


class Days:
    """Acid days that were reckoned, kept by what they hang on, the oldest let go. Safe among
    threads. They hang on the facts, the plan of them and the log; on no language and no clock."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[Any, ...], AcidDay] = OrderedDict()
        self._lock = Lock()

    def of(self, state: State, ground: Ground) -> AcidDay:
        """The acid day of a house as its facts, plan and log stand."""
        shown = state.shown
        version = shown.version if shown is not None else 0
        mark = shown.went.mark if shown is not None and shown.went is not None else ""
        key = state.id, version, ground.plan.inputs_hash, mark
        with self._lock:
            found = self._kept.get(key)
        if found is None:
            found = acid_day(ground)
            with self._lock:
                self._kept[key] = found
                while len(self._kept) > _HELD:
                    self._kept.popitem(last=False)
        return found


def _few(ground: Ground | None, day: AcidDay | None) -> dict[str, list[tuple[str, bool]]]:
    """By part its lines in the page's language, and whether each says no."""
    if ground is None or day is None:
        return {}
    names = {*names_in(ground.plan), *(one.name for one in day.strength.sheets)}
    with speaking(LANGUAGE.get(), names):
        return {
            key: [(told_on_page(one.text), one.stop) for one in lines]
            for key, _, lines in in_short(day, us=ground.job.wishes.units == "us")
        }


def _papers(job: str) -> list[tuple[str, str]]:
    """Each paper of acid: its name and its address."""
    home = f"{house_path(job)}/papers"
    return [(said(f"papers-name-{name.replace('.', '-')}"), f"{home}/{name}") for name in PAPERS]


def ground_of(state: State) -> Ground | None:
    """What the acid day is reckoned from; None where no plan stands."""
    shown = state.shown
    if shown is None:
        return None
    return Ground(shown.job, shown.plan, story=shown.went.story if shown.went else None)
