"""What closed jobs taught: learned beside, looked into, switched off, forgotten by choice."""

from __future__ import annotations

import asyncio
import math
from collections.abc import Callable, Sequence
from concurrent.futures import Executor
from dataclasses import replace
from datetime import date
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.facts.lessons import Lesson, Lessons
from farwall.papers.wall_clock import Units
from farwall.readers.kept_json import kept_to_dict
from farwall.web.door import Door
from farwall.web.firm import FIRM, keep_lessons, lessons_in, lessons_of
from farwall.web.live import Live
from farwall.web.live_jobs import PLAN
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.lesson_picture import narrowing
from farwall.web.pages.lesson_words import (
    counted_told,
    gate_told,
    grouped,
    name_told,
    own_told,
    practice_weighs,
    shares_told,
    told,
)
from farwall.web.pages.paper import page, seen_elsewhere
from farwall.web.pages.when import date_told
from farwall.web.session import Sessions
from farwall.web.teaching import How, closed_of, taught
from farwall.web.words import said

Json = dict[str, Any]
STEPS = "lessons-steps"
"""Kind of document: ranges job by job, and which jobs taught nothing."""
_KEY = "lessons"
_AT_ONCE = 20
_WIDE, _NARROW = 860.0, 358.0


def lessons(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the lessons."""
    router = guarded(sessions)
    pages = _Lessons(door, held)
    router.get("/lessons")(pages.show)
    router.get("/lessons/look")(pages.look)
    router.get("/lessons/state")(pages.how_far)
    router.get("/lessons/lessons.json")(pages.document)
    router.post("/lessons/learn")(pages.learn)
    router.post("/lessons/switch")(pages.switch)
    return router


class _Lessons:
    """The firm's lessons, and how they are learned."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book

    def show(self) -> Response:
        """All lessons, a sentence each."""
        return self._page()

    def look(self, name: str = "") -> Response:
        """One lesson looked into: how its range narrowed, which job moved it."""
        found, units = lessons_of(self.book), firm_units(self.book)
        one = None if found is None else next((x for x in found.lessons if x.name == name), None)
        if found is None or one is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        kept = self.book.document(STEPS, FIRM) or {"steps": []}
        names = {line.id: line.name or line.id for line in self.book.jobs()}
        return page(
            "lesson.html", one=one, title=name_told(one), told=told(one, units),
            own=own_told(one, units), gate=gate_told(one), shares=shares_told(one, names),
            practice=practice_weighs(one), without=found.without, known=set(names),
            pictures=[narrowing(one, kept["steps"], units, width) for width in (_WIDE, _NARROW)],
        )  # fmt: skip

    def how_far(self) -> Json:
        """Whether the lessons are being learned."""
        return {"version": 0, "fresh": not self.held.slow.busy(_KEY), "no": []}

    def document(self) -> Response:
        """The lessons as `lessons.json`, as the command line writes it."""
        from farwall.readers.lessons_json import lessons_text

        found = lessons_of(self.book) or Lessons(1)
        headers = {"content-disposition": 'attachment; filename="lessons.json"'}
        text = lessons_text(found).encode()
        return Response(text, media_type="application/json", headers=headers)

    async def learn(self, request: Request) -> Response:
        """Begin to learn from every job of the book that was handed over, as the form asks."""
        form = await form_of(request)
        was = await asyncio.to_thread(self._how)
        how = was
        try:
            if text_of(form, "forgetting"):
                how = replace(
                    how, forget_jobs=_half_life(text_of(form, "jobs"), "lessons-forget-jobs"),
                    forget_months=_half_life(text_of(form, "months"), "lessons-forget-months"),
                )  # fmt: skip
        except Refused as error:
            return await asyncio.to_thread(self._page, mistakes=mistakes_of(error), code=422)
        job = text_of(form, "without")
        if job:
            left = set(how.without) ^ {job}
            how = replace(how, without=tuple(sorted(left)))
        self.held.slow.begin(_KEY, self._work(how))
        return seen_elsewhere("/lessons")

    async def switch(self, request: Request) -> Response:
        """Switch a lesson off, or on again; it is told all the same."""
        form = await form_of(request)
        name, on = text_of(form, "name"), text_of(form, "on") == "yes"

        def put() -> None:
            found = lessons_of(self.book)
            if found is None or name not in {one.name for one in found.lessons}:
                raise Refused(Mistake(name[:60], said("lessons-no-such")))
            kept = tuple(replace(one, on=on) if one.name == name else one for one in found.lessons)
            keep_lessons(self.book, replace(found, lessons=kept))

        await self.door.written(put)
        return seen_elsewhere("/lessons")

    def _how(self) -> How:
        """How the kept lessons were learned."""
        found = lessons_of(self.book)
        if found is None:
            return How()
        off = tuple(one.name for one in found.lessons if not one.on)
        return How(found.forget_jobs, found.forget_months, found.without, off)

    def _work(self, how: How) -> Callable[[Executor], None]:
        def work(hands: Executor) -> None:
            closed: list[Json] = []
            odd: list[str] = []
            ids = [line.id for line in self.book.in_hand() if line.closed]
            for first in range(0, len(ids), _AT_ONCE):
                asked = []
                for job in ids[first : first + _AT_ONCE]:
                    plan = self.book.document(PLAN, job)
                    if plan is None:
                        odd.append(said("lessons-no-plan", job=job))
                        continue
                    kept = [kept_to_dict(one) for one in self.book.entries(job)]
                    asked.append((job, self.book.facts(job), plan, kept))
                for one in hands.submit(closed_of, asked).result():
                    if isinstance(one, str):
                        odd.append(one)
                    else:
                        closed.append(one)
            asked_how = {
                "forget_jobs": how.forget_jobs, "forget_months": how.forget_months,
                "without": list(how.without), "off": list(how.off),
            }  # fmt: skip
            made = hands.submit(taught, closed, asked_how).result()
            found = lessons_in(made["lessons"])
            assert found is not None
            keep_lessons(self.book, found)
            self.book.put_document(STEPS, FIRM, {"steps": made["steps"], "odd": odd})

        return work

    def _page(self, *, mistakes: Sequence[str] = (), code: int = 200) -> Response:
        slow, units = self.held.slow, firm_units(self.book)
        found = lessons_of(self.book)
        kept = self.book.document(STEPS, FIRM) or {"steps": [], "odd": []}
        lines = self.book.jobs()
        closed = sum(one.closed and not one.aside for one in lines)
        return page(
            "lessons.html", code=code, mistakes=mistakes, waiting=slow.busy(_KEY),
            trouble=slow.trouble.get(_KEY, ""), found=found, closed=closed,
            newer=closed - (found.jobs + len(found.without) if found else 0), odd=kept["odd"],
            groups=_groups(found, units) if found else [],
            counted=counted_told(found, _until(found)) if found and found.jobs else "",
            names={one.id: one.name or one.id for one in lines},
        )  # fmt: skip


def _groups(found: Lessons, units: Units) -> list[tuple[str, list[Json]]]:
    return [
        (name, [_line(one, units) for one in mine]) for name, mine in grouped(found.lessons)
    ]  # fmt: skip


def _line(one: Lesson, units: Units) -> Json:
    return {
        "id": one.name, "name": name_told(one), "short": ", ".join(one.of),
        "told": told(one, units), "on": one.on, "part": len(one.of),
    }  # fmt: skip


def _until(found: Lessons) -> str:
    try:
        return date_told(date.fromisoformat(found.until))
    except ValueError:
        return found.until


def _half_life(text: str, where: str) -> float | None:
    if not text:
        return None
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = math.nan
    if not 0 < value < 1e4:
        raise Refused(Mistake(said(where), said("lessons-half-wrong", text=text[:20])))
    return value
