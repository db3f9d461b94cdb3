"""The log of a house on a page: read, added to, struck out, closed; the same as `farwall log`."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from fastapi import APIRouter, Request, Response
from starlette.datastructures import UploadFile

from farwall.errors import FarwallError, Mistake, Refused
from farwall.facts.log import Kept
from farwall.facts.log_words import WORDS
from farwall.facts.plain import Plain
from farwall.job.story.noun import Story
from farwall.papers.wall_clock import Units
from farwall.store.files import MOST_BYTES
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.closing import lacks, teaches
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import GROUPS, There, fields_of, is_id, moment_of, told_of
from farwall.web.pages.log_lines import Told, lines_of
from farwall.web.pages.log_words import sums_told, word_name, word_says
from farwall.web.pages.paper import house_path, mistakes_of, page, seen_elsewhere
from farwall.web.pages.photo import photo_answer
from farwall.web.pages.shown import Kept as KeptPlans
from farwall.web.pages.shown import State
from farwall.web.people.roles import CLOSE, NotAllowed
from farwall.web.people.who import name_of_who, who_asks
from farwall.web.session import Sessions
from farwall.web.taking import Offer, take
from farwall.web.words import said

DEVICE = "office"
_CLOSING = frozenset({"handed-over", "called-back"})
"""Words that close a job, or tell of a closed one."""
_ROOM = 20_000


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
        form = await form_of(request, MOST_BYTES + _ROOM)
        try:
            told = {key: text_of(form, key) for key in form}
            file = form.get("file")
            content = await file.read() if isinstance(file, UploadFile) and file.filename else b""
        finally:
            await form.close()
        word = told.get("word", "")
        if word not in WORDS:
            raise Refused(Mistake(word[:40], said("log-enter-what")))
        who = who_asks(request)
        if word in _CLOSING and who is not None and not who.may(CLOSE):
            raise NotAllowed(said("log-close-not-you"))
        case = await asyncio.to_thread(self._case, job)
        try:
            entry = await self._keep(case, word, told, content)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, job, word, told, mistakes=wrong, code=422)
        if case.state.shown is not None:
            self.held.replanning.tapped(job)
        return seen_elsewhere(f"{house_path(job)}/log#e-{entry}")

    def photo(self, job: str, sha: str, request: Request) -> Response:
        """A file that an entry of this house names, by the hash of what is in it."""
        named = {one.entry.about.get("file") for one in self.book.entries(job)}
        if sha not in named:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        return photo_answer(self.book, sha, request)

    async def _keep(self, case: _Case, word: str, told: Mapping[str, str], content: bytes) -> str:
        """The id of the entry that is now in the book. Raises Refused."""
        from farwall.readers.log_json import Head, entry_from_words, entry_to_dict

        job, now = case.state.id, self.door.clock()
        shown = case.state.shown
        plan = shown.plan if shown else None
        at = moment_of(told, now, plan.starts_at if plan else "")
        carried = told_of(word, case.there, told)
        if content:
            sha = await self.door.written(lambda: self.book.put_file(content))
            carried = [*(one for one in carried if not one.startswith("file=")), f"file={sha}"]
        ident = told.get("id", "")
        ident = ident if is_id(ident) else new_id()
        late = bool(told.get("day") or told.get("time"))
        who = name_of_who()

        def keep() -> None:
            own = [one.entry for one in self.book.entries(job) if one.entry.device == DEVICE]
            if any(one.id == ident for one in own):
                return  # the form came twice
            number = 0 if late else max((one.number for one in own), default=0) + 1
            head = Head(
                id=ident, job=job, at=at.isoformat(timespec="milliseconds"),
                who=(told.get("who") or who)[:200], device=DEVICE, number=number,
            )  # fmt: skip
            plainly: dict[str, Plain] = entry_to_dict(entry_from_words(word, carried, head, plan))
            received = self.door.now()
            offer = Offer(DEVICE, 0, received, (plainly,))
            answer = take(self.book, offer, received_at=received)
            if answer.turned:
                raise Refused(*(Mistake("", why) for why in answer.turned[0].why))

        await self.door.written(keep)
        return ident

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
        if not case.state.fresh or not case.kept:
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
    from farwall.job.story.say import clock

    over = story.last("handed-over")
    return {
        "sums": list(sums_told(shown.plan, story)),
        "odd": list(story.contradictions),
        "closed": said("log-closed", at=clock(shown.plan, over.at_min)) if over else "",
        "lacks": [] if over else list(lacks(shown.plan, story)),
        "teaches": teaches(shown.job, shown.plan, story, job_id=case.state.id),
    }
