"""The page of a house put together: floor, tape, sheet, what was refused, what was gained."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from contextlib import AbstractContextManager
from typing import Any

from fastapi import Response

from farwall.errors import FarwallError, mistakes_of
from farwall.job.aside import of_the_floor
from farwall.nouns import dataclass
from farwall.papers.words import names_in
from farwall.phrasebook import speaking, told
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.aside import aside_told
from farwall.web.pages.beside import plans_beside
from farwall.web.pages.fact_form import FactForm, fact_form
from farwall.web.pages.facts import gain_of
from farwall.web.pages.lines import facts_told
from farwall.web.pages.looking_at import SCALES, Look, Window, at_work
from farwall.web.pages.moment import floor_at
from farwall.web.pages.moment_words import moment_of, named, words_of
from farwall.web.pages.paper import house_path, page
from farwall.web.pages.papers import PAPERS
from farwall.web.pages.refused_floor import refused_floor
from farwall.web.pages.sheet import sheet_of
from farwall.web.pages.shown import Kept, Shown, State
from farwall.web.pages.sources import ranks_told
from farwall.web.pages.standing import standing
from farwall.web.pages.tape import WIDTHS, tape
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.words import LANGUAGE

SPEEDS = (1, 2, 5, 20, 60)
"""Minutes of the plan a second; from `_THROUGH` on the waits are played through."""


def now_min_of(door: Door, shown: Shown) -> float | None:
    """The minute of the plan that it is; None when that is no day of this house."""
    start = shown.clock.starts_at
    minute = float(int((door.clock() - start).total_seconds() // 60))
    if not shown.clock.day_told:
        return None
    return minute if shown.course.from_min <= minute <= shown.course.to_min else None


def plan_word(shown: Shown) -> str:
    """A word that changes with the plan, the log and the language: what is drawn may be kept."""
    went = f"{shown.went.mark}-{shown.went.now_min:g}" if shown.went is not None else ""
    days = sorted(shown.days.items())
    told = f"{shown.plan.inputs_hash}-{shown.version}-{went}-{LANGUAGE.get()}-{days}"
    return hashlib.sha256(told.encode()).hexdigest()[:12]


def day_word(shown: Shown) -> str:
    """A word that changes with the facts and the log, for a page that watches its day."""
    return f"{shown.version}-{shown.went.mark if shown.went is not None else ''}"


@dataclass(frozen=True)
class HousePages:
    """Makes pages of houses from what is kept of them."""

    door: Door
    held: Live
    kept: Kept

    def drawn(self, shown: Shown, minute: float, storey: int) -> bytes:
        """The floor at a moment, drawn once."""
        path = house_path(shown.job.id)

        def made() -> bytes:
            with spoken(shown):
                return floor_at(shown, minute, storey=storey, path=path).encode()

        key = (plan_word(shown), shown.job.id, minute, storey)
        return self.kept.made(key, made)

    def unplanned(
        self,
        state: State,
        *,
        mistakes: Sequence[str] = (),
        form: FactForm | None = None,
        code: int = 200,
    ) -> Response:
        """The page of a house that never had a plan: being made, or why there is none."""
        return page("house_unplanned.html", code=code, **self._common(state, mistakes, form))

    def page(
        self,
        state: State,
        look: Look,
        *,
        storey: int = 0,
        mistakes: Sequence[str] = (),
        form: FactForm | None = None,
        code: int = 200,
    ) -> Response:
        """The page of a planned house at a moment."""
        shown = state.shown
        assert shown is not None
        with spoken(shown):
            values = self._values(state, shown, look, storey)
            return page("house.html", code=code, **values, **self._common(state, mistakes, form))

    def _values(self, state: State, shown: Shown, look: Look, storey: int) -> dict[str, Any]:
        path, now = house_path(state.id), now_min_of(self.door, shown)
        link = f"{path}?{address(look.window)}&minute="
        tapes = [
            tape(shown, look.window, minute=look.minute, width=w, link=link, now_min=now)
            for w in WIDTHS
        ]
        moment = moment_of(shown.floor_plan, look.minute)
        stands = standing(shown.course, moment, shown.went)
        words = words_of(shown, moment, stands)
        floor = self.drawn(shown, look.minute, storey).decode()
        return {
            "shown": shown, "house": state.name or shown.name, "look": look, "path": path,
            "scales": SCALES, "tapes": tapes,
            "papers": PAPERS, "refused": named(list(shown.figures.refused)), "storey": storey,
            "speeds": SPEEDS, "floor": floor, "marks": marks_of(floor), "now": words,
            "now_min": now, "today": now is not None and at_work(shown.course, now),
            "sheet": sheet_of(shown), "ranks": list(ranks_told()), "facts": facts_told(shown.job),
            "plan_word": plan_word(shown), "day_word": day_word(shown),
            "seen": address(look.window), "address": address,
            "clock_time": shown.clock.at(look.minute).strftime("%H:%M"),
            "faults": [told(one) for one in shown.faults],
            "logged": [told(one) for one in logged(self.held, state)],
            "gain": gain_of(self.door.book, state),
            "beside": plans_beside(self.door.book, state),
        }  # fmt: skip

    def _common(
        self, state: State, mistakes: Sequence[str], form: FactForm | None
    ) -> dict[str, Any]:
        asked = form or fact_form(self.door.book.facts(state.id), state.version)
        return {
            "state": state, "no": state.why_not,
            "form": asked, "mistakes": mistakes, "aside": aside_told(self.door.book, state.id),
            "may_change": (asks := who_asks()) is not None and asks.may(CHANGE),
            "waiting": not state.fresh and not state.no,
            "mend": refused_floor(state.id, self.door.book.facts(state.id), state.no)
            if state.no
            else None,
        }  # fmt: skip


def spoken(shown: Shown) -> AbstractContextManager[None]:
    """While it lasts the core's sentences are said in the page's language, names kept."""
    return speaking("es" if LANGUAGE.get() == "es" else "en", names_in(shown.plan))


def address(window: Window) -> str:
    """A window of the tape as part of an address."""
    return f"from={window.from_min:g}&to={window.to_min:g}"


def marks_of(floor: str) -> tuple[str, ...]:
    """The marks that a drawn floor shows, for its key."""
    return tuple(floor.partition('data-marks="')[2].partition('"')[0].split())


def logged(held: Live, state: State) -> list[str]:
    """What to do now by the log, where something was entered and the plan is the newest."""
    if not state.fresh or not of_the_floor(held.door.book.entries(state.id)):
        return []
    try:
        return list(held.now(state.id)["said"])
    except FarwallError as error:
        return mistakes_of(error)
