"""The first call: twelve questions in a form, what they come to beside it, a way to a new house.

Nothing of a call is kept: its answers are read, answered and forgotten, until somebody makes a
house of it.
"""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused
from farwall.evidence import rank_words
from farwall.job.enquiry import Answer, Enquiry, Found, answer
from farwall.job.enquiry.questions import enquiry_of
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.phrasebook import told as in_page_language
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.enquiry_form import answers, asking, place_of
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.forms.told import Slip
from farwall.web.pages.guard import form_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.new_houses import free_id, next_working_day, with_firm
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.people.who import name_of_who
from farwall.web.session import Sessions
from farwall.web.words import said

_PARTS = ("decline", "visit", "open", "fine")


@dataclass(frozen=True)
class Line:
    """A reason as it is shown: number of its question, what would change it, its rank."""

    number: str
    reason: str
    change: str
    rank: str


def enquiry(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the first call."""
    router = guarded(sessions)

    @router.get("/enquiry")
    async def ask() -> Response:
        return _page(await asyncio.to_thread(firm_units, door.book), {})

    @router.post("/enquiry")
    async def answered(request: Request) -> Response:
        typed, units = await _typed(request), await asyncio.to_thread(firm_units, door.book)
        try:
            told = enquiry_of(answers(typed, units))
        except Refused as error:
            return _page(units, typed, slips=_slips(error))
        return _page(units, typed, found=answer(told))

    @router.post("/enquiry/house")
    async def make(request: Request) -> Response:
        typed, units = await _typed(request), await asyncio.to_thread(firm_units, door.book)
        try:
            told = enquiry_of(answers(typed, units))
            facts = await asyncio.to_thread(_house, door, told, typed, units)
        except Refused as error:
            return _page(units, typed, slips=_slips(error))
        job, now, book, who = str(facts["id"]), door.now(), door.book, name_of_who()
        name = str(facts["name"])
        await door.written(lambda: book.put_facts(job, facts, who=who, at=now, name=name))
        await held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/first")

    return router


async def _typed(request: Request) -> dict[str, str]:
    form = await form_of(request)
    return {key: value[:80] for key, value in form.items() if isinstance(value, str)}


def _house(door: Door, told: Enquiry, typed: Mapping[str, str], units: Units) -> dict[str, Any]:
    """Facts of a house with what the call told: one room stands in for its floor.

    Raises Refused where the house has no name or no area.
    """
    from dataclasses import replace

    from farwall.job.enquiry.as_job import job_of, with_overlay
    from farwall.job.from_reading import written_out
    from farwall.readers.job_json import job_to_dict

    name = " ".join(typed.get("house", "").split())
    mistakes = [] if name else [Mistake("house", said("enquiry-no-name"))]
    if told.area_m2 is None:
        mistakes.append(Mistake("area_m2", said("enquiry-no-area")))
    if mistakes:
        raise Refused(*mistakes)
    job = job_of(told, name=name, room=said("enquiry-whole-floor"))
    job = written_out(replace(job, survey=with_overlay(job.survey, told)))
    facts = with_firm(job_to_dict(job), door.book)
    facts["wishes"] = {**facts.get("wishes", {}), "units": units}
    return facts | {"id": free_id(door.book, name), "starts_at": next_working_day(door.clock())}


def _slips(error: Refused) -> list[Slip]:
    return [Slip(place_of(one.where), "", in_page_language(_said(one))) for one in error.mistakes]


def _said(one: Mistake) -> str:
    """A mistake and what to do; a list to choose from stands beside it already, in its words."""
    chosen = one.what.endswith("is none of the choices.")
    return one.what if chosen else f"{one.what} {one.remedy}".strip()


def _page(
    units: Units, typed: Mapping[str, str], *, found: Answer | None = None,
    slips: Sequence[Slip] = (),
) -> Response:  # fmt: skip
    wrong = {one.name: one.what for one in slips}
    return page(
        "enquiry.html", code=422 if slips else 200, asked=asking(typed, wrong, units),
        found=found, parts=_parts(found) if found else (), slips=slips, wrong=wrong,
        house=typed.get("house", ""), rough=_rough(found) if found else None,
    )  # fmt: skip


def _parts(found: Answer) -> list[tuple[str, list[Line]]]:
    """Reasons under their heads, the heaviest head first."""
    told = [(word, [_line(one) for one in found.found if one.word == word]) for word in _PARTS]
    return [one for one in told if one[1]]


def _line(one: Found) -> Line:
    rank = "" if one.word in {"open", "fine"} else rank_words(one.rank, one.source)
    return Line(str(one.question or ""), one.reason, one.change, rank)


def _rough(found: Answer) -> dict[str, Any] | None:
    rough = found.rough
    if rough is None:
        return None
    return {
        "words": said(
            "enquiry-rough", low=f"{int(rough.low):,}", high=f"{int(rough.high):,}",
            currency=rough.currency, area=f"{rough.area_ft2:,.0f} ft²",
        ),
        "floor": rough.floor,
        "parts": [
            (
                said(
                    "enquiry-rough-part" if one.used else "enquiry-rough-beside", low=one.low,
                    high=one.high, what=in_page_language(one.what),
                ),
                rank_words(one.rank, one.source),
            )
            for one in rough.parts
        ],
    }  # fmt: skip
