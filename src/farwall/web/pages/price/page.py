"""The price of a house, and a page for each part of it; of its newest plan."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Refused, mistakes_of
from farwall.job.office import Office, OfficeGround, office_of
from farwall.job.office.say import PARTS as SAID
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.web.door import Door
from farwall.web.firm import FIRM
from farwall.web.live import Live
from farwall.web.pages.guard import form_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.price.buying import buying_shown
from farwall.web.pages.price.due import due_shown
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.price.hours_told import hours_told
from farwall.web.pages.price.masking import masking_shown
from farwall.web.pages.price.price_told import price_told
from farwall.web.pages.price.quantities import quantities_shown
from farwall.web.pages.price.wares import MOST_MB, WARES, document_of, sent
from farwall.web.pages.shown import Kept
from farwall.web.pages.told import told_on_page
from farwall.web.pages.when import date_told
from farwall.web.people.roles import NotAllowed
from farwall.web.people.who import may_see_costs
from farwall.web.session import Sessions
from farwall.web.words import said

PARTS = ("hours", "quantities", "masking", "buying", "due")
"""Beside the price itself; each may have a template `price_PART.html`."""
FIRM_ALONE = frozenset({"price", "hours", "buying", "due"})
"""Parts that tell what things cost the firm: for who may change facts, not for helper or owner."""
_ROOM = 200_000
Shown = Callable[[OfficeGround, Office], dict[str, Any]]
SHOWN: dict[str, Shown] = {
    "due": due_shown,
    "buying": buying_shown,
    "quantities": quantities_shown,
    "masking": masking_shown,
    "price": price_told,
    "hours": hours_told,
}
"""What the template of a part is given as `told`; `price` is the first page. A part without one
shows its lines as the terminal has them."""


def price(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the pages."""
    router = guarded(sessions)
    pages = _Price(door, held)
    router.get("/houses/{job}/price")(pages.show)
    router.get("/houses/{job}/price/{part}")(pages.part)
    router.post("/houses/{job}/price/buying/list")(pages.bring)
    router.get("/price-list.xlsx")(pages.empty_workbook)
    router.get("/price-list.csv")(pages.empty_table)
    return router


class _Price:
    """The pages, reckoned when they are asked for from the plan that is kept."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.kept = Kept(door.book, door.clock)

    async def show(self, job: str) -> Response:
        """The price; who may not see it is shown what the job takes."""
        if not may_see_costs():
            return seen_elsewhere(f"{house_path(job)}/price/quantities")
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, "price")

    async def part(self, job: str, part: str) -> Response:
        """One part, whole."""
        if part not in PARTS:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        if part in FIRM_ALONE and not may_see_costs():
            raise NotAllowed(said("price-firm-alone"))
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, part)

    async def bring(self, job: str, request: Request) -> Response:
        """Read a price list in a process of its own, and keep it for the firm."""
        from farwall.readers.price_list import price_list_in

        form = await form_of(request, MOST_MB * 1_000_000 + _ROOM)
        try:
            name, content = await sent(form)
            read = await asyncio.to_thread(price_list_in, content, name=name)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, job, "buying", mistakes=wrong, code=422)
        sha = await self.door.written(lambda: self.book.put_file(content))
        kept = document_of(read, name=name, sha=sha, kept_at=self.door.now())
        await self.door.written(lambda: self.book.put_document(WARES, FIRM, kept))
        return seen_elsewhere(f"{house_path(job)}/price/buying#price-list")

    def empty_workbook(self) -> Response:
        """An empty price list to fill in."""
        return _file("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")

    def empty_table(self) -> Response:
        """The same as a table of text."""
        return _file("csv", "text/csv; charset=utf-8")

    def _page(
        self, job: str, part: str, *, mistakes: Sequence[str] = (), code: int = 200
    ) -> Response:
        state = self.kept.state(job)
        ground = office_ground_of(self.book, state)
        office = None if ground is None else office_of(ground)
        kept = self.book.document(WARES, FIRM) if part == "buying" else None
        told = lines = None
        if ground is not None and office is not None:
            if part in SHOWN:
                told = SHOWN[part](ground, office)
            else:
                with speaking(LANGUAGE.get(), names_in(ground.plan)):
                    us = ground.job.wishes.units == "us"
                    lines = [told_on_page(one) for one in SAID[part][1](office, us)]
        return page(
            "price.html", code=code, mistakes=mistakes, most=MOST_MB, kept=kept,
            kept_on=date_told(datetime.fromisoformat(kept["kept_at"])) if kept else "",
            state=state, shown=state.shown, house=state.name or state.id, house_id=job,
            here="way-price", parts=_parts(), part=part, alone=may_see_costs(), told=told,
            lines=lines, office=office, waiting=office is None and not state.no,
            units=ground.job.wishes.units if ground is not None else "us",
        )  # fmt: skip


def _parts() -> tuple[str, ...]:
    return PARTS if may_see_costs() else tuple(one for one in PARTS if one not in FIRM_ALONE)


def _file(suffix: str, kind: str) -> Response:
    from farwall.papers.price_template import price_template

    told = {"content-disposition": f'attachment; filename="price-list.{suffix}"'}
    return Response(price_template(suffix), media_type=kind, headers=told)
