"""Change orders on site: what is asked for, what it costs, who said yes; the paper to sign."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from dataclasses import replace

from fastapi import APIRouter, Request, Response

from farwall.errors import Refused
from farwall.evidence import rank_words
from farwall.facts.plain import Plain
from farwall.job.office import OfficeGround, office_of
from farwall.job.office.billing.owed import Owed, owed_of
from farwall.job.office.billing.taken import money_terms
from farwall.job.story.noun import Happened, Story
from farwall.papers.office.money_words import grouped
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_form import There, fields_of, is_id, slips_of, told_of
from farwall.web.pages.log_keep import Typed, keep_typed, typed_of
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.shown import Kept
from farwall.web.pages.told import told_on_page
from farwall.web.session import Sessions
from farwall.web.words import said

WORD = "change"
_LOOK = "look"


def change(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the page."""
    router = guarded(sessions)
    pages = _Changes(door, held)
    router.get("/houses/{job}/change")(pages.show)
    router.post("/houses/{job}/change")(pages.enter)
    return router


class _Changes:
    """The page: orders so far, a form for one more, its price before it is entered."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.kept = Kept(door.book, door.clock)

    async def show(self, job: str, kept: str = "") -> Response:
        """The page."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, {}, kept=kept)

    async def enter(self, job: str, request: Request) -> Response:
        """Its price shown, or the order kept; refused, the form comes back as it was."""
        typed = await typed_of(request)
        if typed.told.get("do") == _LOOK:
            return await asyncio.to_thread(self._look, job, typed)
        there = await asyncio.to_thread(self._there, job)
        try:
            entry = await keep_typed(self.door, job, there, WORD, typed)
        except Refused as error:
            wrong = slips_of(error, WORD, there)
            return await asyncio.to_thread(self._page, job, typed.told, wrong=wrong, code=422)
        if there.plan is not None:
            self.held.replanning.tapped(job)
        return seen_elsewhere(f"{house_path(job)}/change?kept={entry}")

    def _there(self, job: str) -> There:
        state = self.kept.state(job)
        shown = state.shown
        return There(
            shown.plan if shown else None, self.book.entries(job), shown.units if shown else "us"
        )  # fmt: skip

    def _look(self, job: str, typed: Typed) -> Response:
        """What it would come to, with nothing kept."""
        from farwall.readers.log_json import Head, entry_from_words

        there, now = self._there(job), self.door.now()
        try:
            carried = told_of(WORD, there, typed.told)
            entry = entry_from_words(WORD, carried, Head("look", job, now), there.plan)
        except Refused as error:
            wrong = slips_of(error, WORD, there)
            return self._page(job, typed.told, wrong=wrong, code=422)
        return self._page(job, typed.told, about=dict(entry.about))

    def _page(
        self,
        job: str,
        told: Mapping[str, str],
        *,
        wrong: Sequence[str] = (),
        code: int = 200,
        about: Mapping[str, Plain] | None = None,
        kept: str = "",
    ) -> Response:
        state = self.kept.state(job)
        ground = office_ground_of(self.book, state)
        there = self._there(job)
        owed = look = None
        if ground is not None:
            priced = office_of(ground).priced
            owed = owed_of(ground, priced)
            if about is not None:
                look = _look_at(owed_of(_with(ground, about), priced))
        return page(
            "change.html", code=code, state=state, house=state.name or state.id, house_id=job,
            path=house_path(job), here="way-price", owed=owed, money=grouped,
            rates=_rates(ground) if ground is not None else "", look=look, wrong=wrong, told=told,
            fields=fields_of(WORD, there, told),
            new_id=told["id"] if is_id(told.get("id", "")) else new_id(),
            kept=_kept_words(owed, kept), waiting=owed is None and not state.no,
        )  # fmt: skip


def _with(ground: OfficeGround, about: Mapping[str, Plain]) -> OfficeGround:
    """The same with one more order, as if it were entered now."""
    story = ground.story or Story(ground.plan.starts_at)
    one = Happened("look", WORD, story.ends_min, about)
    return replace(ground, story=replace(story, happened=(*story.happened, one)))


def _look_at(owed: Owed) -> str:
    return said(
        "change-order-comes-to", amount=grouped(owed.changes[-1].amount),
        net=grouped(owed.without_tax), gross=grouped(owed.with_tax), currency=owed.currency,
    )  # fmt: skip


def _rates(ground: OfficeGround) -> str:
    """By which rates an order is priced, with their ranks."""
    terms, currency = money_terms(ground.job), ground.job.prices.currency
    if terms.change_per_h is None:
        return said("change-order-no-rate", currency=currency)
    hour, material = terms.change_per_h, terms.change_material_percent
    return said(
        "change-order-rates", hour=grouped(hour.amount), currency=currency, percent=material.value,
        rank=told_on_page(rank_words(hour.rank, hour.source)),
        percent_rank=told_on_page(rank_words(material.rank, material.source)),
    )  # fmt: skip


def _kept_words(owed: Owed | None, kept: str) -> str:
    found = next((one for one in owed.changes if one.id == kept), None) if owed else None
    return said("change-order-kept", n=found.number, amount=grouped(found.amount)) if found else ""
