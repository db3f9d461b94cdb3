"""The next coat of a house: what now, why, what the habit would do; a form for a look at the floor.

Reckoned when it is asked for, from the newest plan and the log; kept until either changes.
"""

from __future__ import annotations

import asyncio
from collections import OrderedDict
from collections.abc import Mapping, Sequence
from threading import Lock
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import FarwallError, Refused, Unanswerable, mistakes_of
from farwall.job.colour.asked import Asked
from farwall.job.colour.fit import doses_of
from farwall.job.colour.fit_noun import Swatch
from farwall.job.colour.next_coat import colour_next
from farwall.job.colour.next_noun import NextAnswer
from farwall.nouns import dataclass
from farwall.store.book import Book
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.firm import lessons_of, print_values
from farwall.web.live import Live
from farwall.web.pages.colour.look_form import as_entry, has_spots, passed, spots_typed
from farwall.web.pages.colour.next_shown import NextShown, next_shown
from farwall.web.pages.colour.photo_spots import spots_of_photo
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import There, is_id
from farwall.web.pages.log_keep import Typed, keep_typed, typed_of
from farwall.web.pages.log_words import coats_told
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept, State
from farwall.web.session import Sessions
from farwall.web.words import said

_HELD = 16
ASKED = ("room", "coat", "stain")
WORD = "colour-seen"


def next_coat(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the page."""
    router = guarded(sessions)
    pages = _NextCoat(door, held)
    router.get("/houses/{job}/colour")(pages.show)
    router.post("/houses/{job}/colour")(pages.enter)
    return router


@dataclass(frozen=True)
class Reckoned:
    """An answer with the doses that it rests on."""

    answer: NextAnswer
    doses: tuple[Swatch, ...]


def reckoned(asked: Asked) -> Reckoned:
    """Both, of one question. Raises Refused, Unanswerable."""
    answer = colour_next(asked)
    return Reckoned(answer, doses_of(asked, answer.found))


class Answers:
    """Verdicts that were reckoned, by facts, log and question, the oldest let go. Safe among
    threads."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[Any, ...], Reckoned] = OrderedDict()
        self._lock = Lock()

    def of(self, book: Any, state: State, typed: Mapping[str, str]) -> Reckoned:
        """What was asked of a house with a plan. Raises Refused, Unanswerable."""
        shown = state.shown
        if shown is None:
            raise Unanswerable(said("plan-no"), remedies=state.no)
        kept = tuple(book.entries(state.id))
        told = {key: typed.get(key, "") for key in ASKED}
        place = max((one.place for one in kept), default=0)
        key = (state.id, shown.version, shown.plan.inputs_hash, place, *told.values())
        with self._lock:
            found = self._kept.get(key)
        if found is None:
            found = reckoned(Asked(shown.job, shown.plan, kept, lessons_of(book), **told))
            with self._lock:
                self._kept[key] = found
                while len(self._kept) > _HELD:
                    self._kept.popitem(last=False)
        return found


class _NextCoat:
    """The page and what is entered on it."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.plans = Kept(door.book, door.clock)
        self.answers = Answers()

    async def show(self, job: str, request: Request) -> Response:
        """The verdict; `room`, `coat`, `stain` narrow the question."""
        await self.held.plan_soon(job)
        typed = {key: str(value)[:80] for key, value in request.query_params.items()}
        return await asyncio.to_thread(self._page, job, typed)

    async def enter(self, job: str, request: Request) -> Response:
        """Keep a look at the floor; refused, the form comes back as it was, with every mistake."""
        typed = await typed_of(request)
        state = await asyncio.to_thread(self.plans.state, job)
        plan = state.shown.plan if state.shown is not None else None
        there = There(plan, (), "metric")
        try:
            entry = Typed(await asyncio.to_thread(_entry, typed, self.door.book), typed.files)
            await keep_typed(self.door, job, there, WORD, entry)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(
                self._page, job, {}, told=typed.told, mistakes=wrong, code=422
            )
        if plan is not None:
            self.held.replanning.tapped(job)
        return seen_elsewhere(f"{house_path(job)}/colour")

    def _page(
        self, job: str, typed: Mapping[str, str], *, told: Mapping[str, str] | None = None,
        mistakes: Sequence[str] = (), code: int = 200,
    ) -> Response:  # fmt: skip
        state = self.plans.state(job)
        shown = state.shown
        form = dict(told or {})
        found, no = self._answer(state, typed)
        return page(
            "colour_next.html", code=code, state=state, house=state.name or state.id, house_id=job,
            here="way-colour", part="next", waiting=shown is None and not state.no,
            planned=shown is not None, found=found, no=no, typed=dict(typed), form=form,
            spots=spots_typed(form), mistakes=mistakes, rooms=_rooms(state), coats=_coats(state),
            stains=_stains(state), shown=shown,
            new_id=form["id"] if is_id(form.get("id", "")) else new_id(),
        )  # fmt: skip

    def _answer(
        self, state: State, typed: Mapping[str, str]
    ) -> tuple[NextShown | None, tuple[str, tuple[str, ...]] | None]:
        """The verdict as shown, or why there is none and what to measure."""
        shown = state.shown
        if shown is None:
            return None, None
        try:
            found = self.answers.of(self.door.book, state, typed)
        except Unanswerable as error:
            return None, (error.reason, tuple(error.remedies))
        except FarwallError as error:
            return None, ("", tuple(mistakes_of(error)))
        return next_shown(shown.job, shown.plan, found.answer, found.doses), None


def _entry(typed: Typed, book: Book) -> dict[str, str]:
    """What was typed; where no spot was, what the photo says. Raises Refused."""
    photo = typed.files.get("file")
    if photo is None or has_spots(typed.told):
        return as_entry(typed.told)
    spots = spots_of_photo(photo, said("colour-next-photo"), print_values(book))
    return {**passed(typed.told), **spots}


def _rooms(state: State) -> list[tuple[str, str]]:
    if state.shown is None:
        return []
    return [(one.id, one.label) for one in state.shown.plan.inputs.floor.rooms]


def _coats(state: State) -> tuple[tuple[str, str], ...]:
    return () if state.shown is None else coats_told(state.shown.plan)


def _stains(state: State) -> list[tuple[str, str]]:
    if state.shown is None:
        return []
    return [(one.id, one.name or one.id) for one in state.shown.job.stains]
