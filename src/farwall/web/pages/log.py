"""The log of a house on a page: read, added to, struck out, closed; the same as `farwall log`."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import FarwallError, Mistake, Refused, mistakes_of
from farwall.facts.log import Kept
from farwall.facts.log_money import OFFICE_WORDS
from farwall.facts.log_words import SET_ASIDE, WORDS
from farwall.job.aside import of_the_floor
from farwall.job.story.figures import litres_told
from farwall.job.story.noun import Story
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.closing import lacks, teaches
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import GROUPS, There, fields_of, is_id, slips_of
from farwall.web.pages.log_keep import files_named, keep_typed, typed_of
from farwall.web.pages.log_lines import Told, lines_of
from farwall.web.pages.log_words import minute_told, sums_told, word_name, word_says
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.photo import photo_answer
from farwall.web.pages.shown import Kept as KeptPlans
from farwall.web.pages.shown import State
from farwall.web.people.roles import CHANGE, CLOSE, NotAllowed
from farwall.web.people.who import may_tell_of_money, who_asks
from farwall.web.session import Sessions
from farwall.web.words import said

_CLOSING = frozenset({"handed-over", "called-back"})
"""Words that close a job, or tell of a closed one."""


def log(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of a house's log."""
    router = guarded(sessions)
    pages = _Log(door, held)
    router.get("/houses/{job}/log")(pages.show)
    router.post("/houses/{job}/log")(pages.enter)
    router.get("/houses/{job}/photo/{sha}")(pages.photo)
    return router


@dataclass(frozen=True)
class _Case:
    """A house with its log: its plan as it stands, its entries, what they tell."""

    state: State
    kept: Sequence[Kept]
    story: Story | None

    @property
    def units(self) -> Units:
        return self.state.shown.units if self.state.shown else "us"

    @property
    def there(self) -> There:
        plan = self.state.shown.plan if self.state.shown else None
        return There(plan, self.kept, self.units)


class _Log:
    """What is answered of a log; plans are kept between questions."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.plans = KeptPlans(door.book, door.clock)

    async def show(self, job: str, request: Request, word: str = "") -> Response:
        """The page; `word`: with the fields of that word, `entry` and others put into them."""
        await self.held.plan_soon(job)
        told = {key: value[:200] for key, value in request.query_params.items()}
        return await asyncio.to_thread(self._page, job, word, told)

    async def enter(self, job: str, request: Request) -> Response:
        """Keep an entry; refused, the form comes back as it was, with every mistake."""
        typed = await typed_of(request)
        told, word = typed.told, typed.told.get("word", "")
        if word not in WORDS:
            raise Refused(Mistake(word[:40], said("log-enter-what")))
        who = who_asks(request)
        if word in _CLOSING and who is not None and not who.may(CLOSE):
            raise NotAllowed(said("log-close-not-you"))
        if word == SET_ASIDE and who is not None and not who.may(CHANGE):
            raise NotAllowed(said("aside-not-you"))
        if word in OFFICE_WORDS and not may_tell_of_money(request):
            raise NotAllowed(said("log-money-not-you"))
        case = await asyncio.to_thread(self._case, job)
        try:
            entry = await keep_typed(self.door, job, case.there, word, typed)
        except Refused as error:
            wrong = slips_of(error, word, case.there)
            return await asyncio.to_thread(self._page, job, word, told, mistakes=wrong, code=422)
        if case.state.shown is not None:
            self.held.replanning.tapped(job)
        return seen_elsewhere(f"{house_path(job)}/log#e-{entry}")

    def photo(self, job: str, sha: str, request: Request) -> Response:
        """A file that an entry of this house names, by the hash of what is in it."""
        if sha not in files_named(one.entry for one in self.book.entries(job)):
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        return photo_answer(self.book, sha, request)

    def _case(self, job: str) -> _Case:
        from farwall.job.story import story

        state, kept = self.plans.state(job), self.book.entries(job)
        return _Case(state, kept, story(state.shown.plan, kept) if state.shown else None)

    def _page(
        self,
        job: str,
        word: str,
        told: Mapping[str, str],
        *,
        mistakes: Sequence[str] = (),
        code: int = 200,
    ) -> Response:
        case = self._case(job)
        state, shown, kept = case.state, case.state.shown, case.kept
        lines = lines_of(
            Told.of(case.story) if case.story else Told.bare(kept), kept,
            shown.plan if shown else None, case.units,
        )  # fmt: skip
        word = word if word in WORDS else ""
        return page(
            "log.html", code=code, state=state, house=state.name or state.id,
            path=house_path(job), house_id=job, here="way-log", lines=lines,
            struck=sum(bool(one.struck) for one in lines),
            groups=_groups(), word=word, word_told=word_says(word) if word else "",
            fields=fields_of(word, case.there, told) if word else [], told=told,
            new_id=told["id"] if is_id(told.get("id", "")) else new_id(), mistakes=mistakes,
            now=self._now(case), **_comes_to(case),
        )  # fmt: skip

    def _now(self, case: _Case) -> list[str]:
        """What to do now, as `farwall log` says it."""
        if not case.state.fresh or not of_the_floor(case.kept):
            return []
        try:
            return list(self.held.now(case.state.id)["said"])
        except FarwallError as error:
            return mistakes_of(error)


def _groups() -> list[tuple[str, list[tuple[str, str]]]]:
    return [
        (said(f"log-group-{name}"), [(word, word_name(word)) for word in words])
        for name, words in GROUPS
    ]


def _comes_to(case: _Case) -> dict[str, Any]:
    """What the log comes to, whether it is closed, what lacks before that."""
    shown, story = case.state.shown, case.story
    if shown is None or story is None:
        return {"sums": [], "odd": [], "closed": "", "lacks": [], "teaches": ""}
    over = story.last("handed-over")
    return {
        "sums": list(sums_told(shown.plan, story, case.units)),
        "odd": [litres_told(one, us=case.units == "us") for one in story.contradictions],
        "closed": said("log-closed", at=minute_told(shown.plan, over.at_min, case.units))
        if over
        else "",
        "lacks": [] if over else list(lacks(shown.plan, story)),
        "teaches": teaches(shown.job, shown.plan, story, job_id=case.state.id),
    }
