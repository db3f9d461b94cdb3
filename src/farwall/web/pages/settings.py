"""Settings: language and light of this browser, and what each new house begins with."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.web.door import Door
from farwall.web.firm import FIRM as OF_FIRM
from farwall.web.pages.forms.asked import asked_of
from farwall.web.pages.forms.crew import FIRM
from farwall.web.pages.forms.merged import merged
from farwall.web.pages.forms.notes import Notes
from farwall.web.pages.forms.shown import form_shown, link_of
from farwall.web.pages.forms.told import Slip, Wrong, changed_facts
from farwall.web.pages.guard import asks_for_session, form_of, text_of
from farwall.web.pages.light import COOKIE as LIGHT_COOKIE
from farwall.web.pages.light import LIGHTS
from farwall.web.pages.new_houses import (
    NEW_HOUSES,
    firm_facts,
    older_facts,
    told_by_firm,
    version_of,
)
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.pages.tongue import TONGUE
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import LANGUAGES, said

_A_YEAR_S = 366 * 86_400
_MOST_BYTES, _MOST_FIELDS = 60_000, 200


def settings(door: Door, sessions: Sessions) -> APIRouter:
    """The routes of the settings."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )

    @router.get("/settings")
    async def ask(request: Request, kept: str = "") -> Response:
        return await asyncio.to_thread(_page, door, request, kept)

    @router.post("/settings")
    async def choose(request: Request) -> Response:
        told = await form_of(request)
        answer = seen_elsewhere("/settings?kept=browser")
        for name, cookie, known in (("tongue", TONGUE, LANGUAGES), ("light", LIGHT_COOKIE, LIGHTS)):
            _set(answer, request, cookie, text_of(told, name), known)
        return answer

    @router.post("/settings/firm")
    async def tell(request: Request) -> Response:
        told = await form_of(request, _MOST_BYTES, fields=_MOST_FIELDS)

        def keep() -> None:
            facts = firm_facts(door.book)
            if str(told.get("version", "")) != version_of(facts):
                raise Wrong([Slip("", "", said("facts-other"))])
            changed = changed_facts(asked_of(FIRM, facts), facts, told)
            before = door.book.document(NEW_HOUSES, OF_FIRM) or {}
            made = before if changed is None else told_by_firm(changed)
            made = made | _units(text_of(told, "wishes.units"))
            if made != before:
                door.book.put_document(NEW_HOUSES, OF_FIRM, made)

        try:
            await door.written(keep)
        except Wrong as error:
            typed, slips = await asyncio.to_thread(_over_newest, door, dict(told), error.slips)
            return await asyncio.to_thread(_page, door, request, "", typed, slips)
        return seen_elsewhere("/settings?kept=firm")

    return router


def _over_newest(
    door: Door, told: dict[str, Any], slips: tuple[Slip, ...]
) -> tuple[dict[str, Any], tuple[Slip, ...]]:
    """What was typed, with the slips; typed into an older page, as typing into the newest."""
    now, word = firm_facts(door.book), str(told.get("version", ""))
    before = None if word == version_of(now) else older_facts(door.book, word)
    if before is None:
        return told, slips
    found = merged(asked_of(FIRM, before), asked_of(FIRM, now), told)
    return {**found.told}, found.slips


def _units(told: str) -> dict[str, Any]:
    """The firm's units as chosen, also where they are what stands in: its own pages follow the
    newest house only as long as nobody chose."""
    return {"wishes": {"units": told}} if told in {"us", "metric"} else {}


def _set(
    answer: Response, request: Request, cookie: str, chosen: str, known: tuple[str, ...]
) -> None:
    """Keep a choice in the browser; an empty one is given up, another is none."""
    if chosen in known:
        answer.set_cookie(
            cookie, chosen, max_age=_A_YEAR_S, samesite="strict", path="/", httponly=True,
            secure=request.url.scheme == "https",
        )  # fmt: skip
    elif not chosen:  # as the browser asks
        answer.delete_cookie(cookie, path="/", httponly=True, samesite="strict")


def _page(
    door: Door,
    request: Request,
    kept: str,
    told: Mapping[str, Any] | None = None,
    slips: tuple[Slip, ...] = (),
) -> Response:
    facts = firm_facts(door.book)
    asked = asked_of(FIRM, facts)
    shown = form_shown(asked, version_of(facts), notes=Notes(asked.job), told=told, slips=slips)
    chosen = request.cookies.get(TONGUE, "")
    return page(
        "settings.html",
        code=422 if slips else 200, form=shown, link_of=link_of, languages=LANGUAGES,
        lights=LIGHTS, tongue=chosen if chosen in LANGUAGES else "",
        may_change=(asks := who_asks()) is not None and asks.may(CHANGE),
        terms=_terms(door),
        kept=said(f"settings-kept-{kept}") if kept in {"browser", "firm"} else "",
    )  # fmt: skip


def _terms(door: Door) -> str:
    """Where the firm's name, rates and terms are told: with its newest house; empty without one."""
    newest = door.book.jobs(limit=1)
    return f"{house_path(newest[0].id)}/terms" if newest else ""
