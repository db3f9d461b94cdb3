"""A house: its floor at a moment, the tape, the sheet of words; its papers made on demand."""

from __future__ import annotations

import asyncio
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request, Response
from starlette.datastructures import FormData

from farwall.errors import Refused, mistakes_of
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.fact_form import FactForm, fact_form, over_newest
from farwall.web.pages.facts import change_facts, take_back, try_out
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.house_page import HousePages, day_word, now_min_of, plan_word
from farwall.web.pages.looking_at import look_at
from farwall.web.pages.my_order import my_order
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.pages.papers import PAPERS, paper
from farwall.web.pages.phone_ways import phone_base
from farwall.web.pages.shown import Kept, State, planned
from farwall.web.pages.tape import tape
from farwall.web.session import Sessions
from farwall.web.words import LANGUAGE

_CACHED = "private, max-age=86400, immutable"
Minute = Annotated[float | None, Query(ge=-1e6, le=1e6, allow_inf_nan=False)]
From = Annotated[float | None, Query(alias="from", ge=-1e6, le=1e6, allow_inf_nan=False)]
To = Annotated[float | None, Query(alias="to", ge=-1e6, le=1e6, allow_inf_nan=False)]
Width = Annotated[float, Query(ge=200, le=3000, allow_inf_nan=False)]
StoreyNo = Annotated[int, Query(ge=0, le=100)]


def house(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of one house."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _House(door, held)
    router.get("/houses/{job}")(pages.one)
    router.get("/houses/{job}/state")(pages.how_far)
    router.get("/houses/{job}/moment.svg")(pages.moment)
    router.get("/houses/{job}/tape.svg")(pages.tape)
    router.post("/houses/{job}/facts")(pages.facts)
    router.post("/houses/{job}/try")(pages.tried)
    router.post("/houses/{job}/back")(pages.back)
    my_order(router, door, held, pages.kept)
    router.get("/houses/{job}/{name}")(pages.a_paper)
    return router


class _House:
    """What is answered of a house; plans and drawings are kept between questions."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.kept = Kept(door.book, door.clock)
        self.pages = HousePages(door, held, self.kept)

    async def one(  # noqa: PLR0917 - what an address of the page may say
        self, job: str, minute: Minute = None, at: str = "", scale: str = "",
        first: From = None, last: To = None, storey: StoreyNo = 0,
    ) -> Response:  # fmt: skip
        """The page of a house at a moment."""
        await self.held.plan_soon(job)

        def made() -> Response:
            state = self.kept.state(job)
            if state.shown is None:
                return self.pages.unplanned(state)
            window = (first, last) if first is not None and last is not None else None
            look = look_at(
                state.shown, minute=minute, at=at, scale=scale, window=window,
                now_min=now_min_of(self.door, state.shown),
            )  # fmt: skip
            return self.pages.page(state, look, storey=storey)

        return await asyncio.to_thread(made)

    async def how_far(self, job: str) -> dict[str, Any]:
        """Whether the plan of the newest facts is there, or why there will be none."""
        await self.held.plan_soon(job)
        state = await asyncio.to_thread(self.kept.state, job)
        word = day_word(state.shown) if state.shown is not None else ""
        return {
            "version": state.version, "fresh": state.fresh, "no": list(state.no), "day": word,
        }  # fmt: skip

    def moment(
        self, job: str, request: Request, minute: Minute = None, plan: str = "",
        storey: StoreyNo = 0,
    ) -> Response:  # fmt: skip
        """The floor at a moment; kept by the browser when it names the plan that is shown."""
        shown = planned(self.kept.state(job))
        look = look_at(shown, minute=minute)
        tag = f'"{plan_word(shown)}-{look.minute:g}-{storey}"'
        same = plan == plan_word(shown)
        headers = {"etag": tag, "cache-control": _CACHED if same else "private, no-cache"}
        if request.headers.get("if-none-match") == tag:
            return Response(status_code=304, headers=headers)
        drawn = self.pages.drawn(shown, look.minute, storey)
        return Response(drawn, media_type="image/svg+xml", headers=headers)

    def tape(  # noqa: PLR0917 - what an address of the tape may say
        self, job: str, minute: Minute = None, scale: str = "", first: From = None,
        last: To = None, width: Width = 860.0,
    ) -> Response:  # fmt: skip
        """The tape through a window, as wide as it is shown."""
        shown = planned(self.kept.state(job))
        window = (first, last) if first is not None and last is not None else None
        look = look_at(shown, minute=minute, scale=scale, window=window)
        drawn = tape(
            shown, look.window, minute=look.minute, width=width,
            now_min=now_min_of(self.door, shown),
        )  # fmt: skip
        headers = {"cache-control": "private, no-cache"}
        return Response(drawn.svg, media_type="image/svg+xml", headers=headers)

    def a_paper(self, job: str, name: str, request: Request) -> Response:
        """A paper of the house, made when it is asked for and kept for its plan."""
        if name not in PAPERS:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        shown = planned(self.kept.state(job))
        base, _ = phone_base(request)
        screens = f"{base}{house_path(job)}" if base else ""
        key = (job, shown.version, shown.plan.inputs_hash, name, LANGUAGE.get(), screens)
        content = self.kept.made(key, lambda: paper(shown, name, screens=screens))
        kind = "application/pdf" if name.endswith(".pdf") else "image/svg+xml"
        headers = {
            "cache-control": "private, no-cache",
            "content-disposition": f'inline; filename="{name}"',
        }
        if kind != "application/pdf":
            headers["content-security-policy"] = PICTURE_CSP
        return Response(content, media_type=kind, headers=headers)

    async def facts(self, job: str, request: Request) -> Response:
        """Keep changed facts and have them planned; refused, the form comes back as it was."""
        form = await form_of(request)
        state = await asyncio.to_thread(self.kept.state, job)
        try:
            await change_facts(self.door, state, form)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._refused, state, form, wrong)
        await self.held.plan_soon(job)
        return seen_elsewhere(house_path(job))

    async def tried(self, job: str, request: Request) -> Response:
        """Try one of the what-ifs of the sheet: a new version of the facts, planned beside."""
        form = await form_of(request)
        state = await asyncio.to_thread(self.kept.state, job)
        await try_out(self.door, state, form)
        await self.held.plan_soon(job)
        return seen_elsewhere(house_path(job))

    async def back(self, job: str, request: Request) -> Response:
        """Take the facts back to an older version: a new version that says the same."""
        form = await form_of(request)
        state = await asyncio.to_thread(self.kept.state, job)
        await take_back(self.door, state, form)
        await self.held.plan_soon(job)
        return seen_elsewhere(house_path(job))

    def _refused(self, state: State, form: FormData, wrong: list[str]) -> Response:
        state = self.kept.state(state.id)
        asked, wrong = self._typed(state, form, wrong)
        if state.shown is None:
            return self.pages.unplanned(state, mistakes=wrong, form=asked, code=422)
        look = look_at(state.shown)
        return self.pages.page(state, look, mistakes=wrong, form=asked, code=422)

    def _typed(self, state: State, form: FormData, wrong: list[str]) -> tuple[FactForm, list[str]]:
        """The form with what was typed; typed into older facts, laid over the newest."""
        book, word = self.door.book, str(form.get("version", ""))
        versions = [str(one.version) for one in book.versions(state.id)]
        facts = book.facts(state.id, state.version)
        if word == str(state.version) or word not in versions:
            return fact_form(facts, state.version, told=form), wrong
        before = fact_form(book.facts(state.id, int(word)), int(word))
        found, said_of_it = over_newest(before, fact_form(facts, state.version), form)
        return found, list(said_of_it)
