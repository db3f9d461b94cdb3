"""The price of a house, and a page for each part of it; of its newest plan."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from typing import Any

from fastapi import APIRouter, Response

from farwall.job.office import Office, OfficeGround, office_of
from farwall.job.office.say import PARTS as SAID
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import page
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.price.hours_told import hours_told
from farwall.web.pages.price.price_told import price_told
from farwall.web.pages.shown import Kept
from farwall.web.pages.told import told_on_page
from farwall.web.session import Sessions

PARTS = ("hours", "quantities", "masking", "buying")
"""Beside the price itself; each may have a template `price_PART.html`."""
Shown = Callable[[OfficeGround, Office], dict[str, Any]]
SHOWN: dict[str, Shown] = {"price": price_told, "hours": hours_told}
"""What the template of a part is given as `told`; `price` is the first page. A part without one
shows its lines as the terminal has them."""


def price(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the pages."""
    router = guarded(sessions)
    pages = _Price(door, held)
    router.get("/houses/{job}/price")(pages.show)
    router.get("/houses/{job}/price/{part}")(pages.part)
    return router


class _Price:
    """The pages, reckoned when they are asked for from the plan that is kept."""

    def __init__(self, door: Door, held: Live) -> None:
        self.held, self.book = held, door.book
        self.kept = Kept(door.book, door.clock)

    async def show(self, job: str) -> Response:
        """The price."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, "price")

    async def part(self, job: str, part: str) -> Response:
        """One part, whole."""
        if part not in PARTS:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, part)

    def _page(self, job: str, part: str) -> Response:
        state = self.kept.state(job)
        ground = office_ground_of(self.book, state)
        office = None if ground is None else office_of(ground)
        told = lines = None
        if ground is not None and office is not None:
            if part in SHOWN:
                told = SHOWN[part](ground, office)
            else:
                with speaking(LANGUAGE.get(), names_in(ground.plan)):
                    lines = [told_on_page(one) for one in SAID[part][1](office)]
        return page(
            "price.html", state=state, house=state.name or state.id, house_id=job,
            here="way-price", parts=PARTS, part=part, told=told, lines=lines, office=office,
            waiting=office is None and not state.no,
            units=ground.job.wishes.units if ground is not None else "us",
        )  # fmt: skip
