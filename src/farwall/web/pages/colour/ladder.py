"""The ladder of a house's samples: looked at state by state, looks added, a standard signed."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.job.colour.ladder import Ladder, ladder_of
from farwall.job.colour.ladder_minds import warnings
from farwall.job.colour.ladder_said import asks
from farwall.job.colour.told import as_told, samples_of
from farwall.nouns import dataclass
from farwall.readers.job_json import job_from
from farwall.store.book import Book
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.firm import print_values
from farwall.web.live import Live
from farwall.web.pages.colour.ladder_facts import with_log
from farwall.web.pages.colour.ladder_shown import rungs_shown, states_shown
from farwall.web.pages.colour.photo_look import look_told
from farwall.web.pages.forms.keep import keep_facts
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import Field, There, fields_of, is_id
from farwall.web.pages.log_keep import Typed, keep_typed, typed_of
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept as KeptPlans
from farwall.web.pages.shown import State
from farwall.web.people.roles import CHANGE, TAP, NotAllowed
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said

INTO_FACTS = "into-facts"
DEEDS = ("sample-seen", "sample-judged", "sample-approved")
"""Words of the log that are told here, each with a form."""
_BY_PHOTO = ("lightness", "lab_a", "lab_b", "error_de", "spots", "spread_lightness")
"""What a photo tells of a look, or a person who measured it in another way."""


def ladder(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the page."""
    router = guarded(sessions)
    pages = _Page(door, held)
    router.get("/houses/{job}/colour/ladder")(pages.show)
    router.post("/houses/{job}/colour/ladder")(pages.tell)
    return router


@dataclass(frozen=True)
class _Case:
    """A house: its newest facts, its log, the plan where there is one."""

    state: State
    job: Job
    kept: Sequence[Kept]

    @property
    def there(self) -> There:
        plan = self.state.shown.plan if self.state.shown else None
        return There(plan, self.kept, self.job.wishes.units)


class _Page:
    """The page, made of facts and log as they stand: it needs no plan."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.plans = KeptPlans(door.book, door.clock)

    async def show(self, job: str) -> Response:
        """The ladder."""
        return await asyncio.to_thread(self._page, job)

    async def tell(self, job: str, request: Request) -> Response:
        """Keep a look, a judgement or a signature; refused, the form comes back as it was."""
        typed = await typed_of(request)
        word = typed.told.get("word", "")
        if word == INTO_FACTS:
            return await self._into_facts(job)
        if word not in DEEDS:
            raise Refused(Mistake(word[:40], said("log-enter-what")))
        case = await asyncio.to_thread(self._case, job)
        try:
            if word == DEEDS[0]:
                typed = await asyncio.to_thread(_by_photo, typed, self.book)
            await keep_typed(self.door, job, case.there, word, typed)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(
                self._page, job, word=word, told=typed.told, mistakes=wrong, code=422
            )
        if case.state.shown is not None:
            self.held.replanning.tapped(job)
        return seen_elsewhere(f"{house_path(job)}/colour/ladder#rungs")

    async def _into_facts(self, job: str) -> Response:
        """Write what the log tells of samples into the facts, and have the house planned anew."""
        asking = who_asks()
        if asking is None or not asking.may(CHANGE):
            raise NotAllowed(said("ladder-facts-not-you"))
        case = await asyncio.to_thread(self._case, job)
        facts = await asyncio.to_thread(self.book.facts, job, case.state.version)
        try:
            changed = with_log(facts, case.job, case.kept)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(
                self._page, job, word=INTO_FACTS, mistakes=wrong, code=422
            )
        await keep_facts(self.door, case.state, changed)
        await self.held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/colour/ladder#rungs")

    def _case(self, job: str) -> _Case:
        state = self.plans.state(job)
        facts = job_from(self.book.facts(job, state.version), "The job")
        return _Case(state, facts, self.book.entries(job))

    def _page(
        self,
        job: str,
        *,
        word: str = "",
        told: Mapping[str, str] | None = None,
        mistakes: Sequence[str] = (),
        code: int = 200,
    ) -> Response:
        case = self._case(job)
        found = ladder_of(case.job, samples_of(case.job, case.kept))
        asking = who_asks()
        return page(
            "colour_ladder.html", code=code, house=case.state.name or job, house_id=job,
            here="way-colour", part="ladder", shown=case.state.shown,
            states=states_shown(found), coats=max(found.most_coats, 1),
            rungs=rungs_shown(found, case.job, case.job.wishes.units),
            asks=[one.text for one in asks(found, case.job)],
            warnings=[one.text for one in warnings(found, case.job)],
            deeds=_forms(case, found, word, told or {}), mistakes=mistakes, refused=word,
            may_tell=asking is not None and asking.may(TAP),
            more=[one.id for one in as_told(case.job, case.kept) if one not in case.job.samples],
            may_change=asking is not None and asking.may(CHANGE), into_facts=INTO_FACTS,
            photos=f"{house_path(job)}/photo", names=[one.name for one in found.rungs],
        )  # fmt: skip


def _forms(case: _Case, found: Ladder, word: str, told: Mapping[str, str]) -> list[dict[str, Any]]:
    """A form for each deed; what was typed stands in the one that was refused."""
    forms = []
    for one in DEEDS if found.rungs else DEEDS[:1]:
        typed = told if one == word else {}
        fields = [_field(each) for each in fields_of(one, case.there, typed)]
        forms.append({
            "word": one,
            "id": typed["id"] if is_id(typed.get("id", "")) else new_id(),
            "plain": [each for each in fields if each.name not in _BY_PHOTO],
            "measured": [each for each in fields if each.name in _BY_PHOTO],
            "open": one == word,
        })  # fmt: skip
    return forms


def _field(one: Field) -> Field:
    """A field as this page asks it: no colour needs to be typed where a photo tells it."""
    return replace(one, must=False) if one.name in _BY_PHOTO else one


def _by_photo(typed: Typed, book: Book) -> Typed:
    """The look that its photo tells, where no colour was typed. Raises Refused."""
    content = typed.files.get("file")
    if not content or any(typed.told.get(key) for key in _BY_PHOTO[:3]):
        return typed
    return replace(typed, told={**typed.told, **look_told(content, print_values(book))})
