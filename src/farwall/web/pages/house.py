"""A house: its floor at a moment, the tape, the sheet of words; its papers made on demand."""

from __future__ import annotations

import asyncio
import hashlib
from collections.abc import Sequence
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request, Response
from starlette.datastructures import FormData

from farwall.errors import FarwallError, Refused
from farwall.papers.words import listed
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.live_jobs import NotPlanned
from farwall.web.pages.fact_form import FactForm, fact_form
from farwall.web.pages.facts import change_facts, gain_of
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.lines import facts_told
from farwall.web.pages.looking_at import Look, look_at
from farwall.web.pages.moment import floor_at
from farwall.web.pages.moment_words import moment_of, words_of
from farwall.web.pages.paper import PageRoute, house_path, mistakes_of, page, seen_elsewhere
from farwall.web.pages.papers import PAPERS, paper
from farwall.web.pages.sheet import sheet_of
from farwall.web.pages.shown import Kept, Shown, State
from farwall.web.pages.tape import SCALES, tape
from farwall.web.session import Sessions

_WIDE, _NARROW = 860.0, 358.0
_CACHED = "private, max-age=86400, immutable"
Minute = Annotated[float | None, Query(ge=-1e5, le=1e5, allow_inf_nan=False)]


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
    router.get("/houses/{job}/{name}")(pages.a_paper)
    router.post("/houses/{job}/facts")(pages.facts)
    return router


class _House:
    """What is answered of a house; plans and drawings are kept between questions."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.kept = Kept(door.book)

    async def one(self, job: str, minute: Minute = None, at: str = "", scale: str = "") -> Response:
        """The page of a house at a moment."""
        await self.held.plan_soon(job)

        def made() -> Response:
            state = self.kept.state(job)
            shown = state.shown
            look = look_at(shown, minute=minute, at=at, scale=scale) if shown else None
            return self._page(state, look)

        return await asyncio.to_thread(made)

    async def how_far(self, job: str) -> dict[str, Any]:
        """Whether the plan of the newest facts is there, or why there will be none."""
        await self.held.plan_soon(job)
        state = await asyncio.to_thread(self.kept.state, job)
        return {"version": state.version, "fresh": state.fresh, "no": list(state.no)}

    def moment(self, job: str, request: Request, minute: Minute = None, plan: str = "") -> Response:
        """The floor at a moment; kept by the browser when it names the plan that is shown."""
        shown = _planned(self.kept.state(job))
        look = look_at(shown, minute=minute)
        tag = f'"{plan_word(shown)}-{look.minute:g}"'
        same = plan == plan_word(shown)
        headers = {"etag": tag, "cache-control": _CACHED if same else "private, no-cache"}
        if request.headers.get("if-none-match") == tag:
            return Response(status_code=304, headers=headers)
        drawn = self._drawn(shown, look.minute)
        return Response(drawn, media_type="image/svg+xml", headers=headers)

    def a_paper(self, job: str, name: str) -> Response:
        """A paper of the house, made when it is asked for and kept for its plan."""
        if name not in PAPERS:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        shown = _planned(self.kept.state(job))
        key = (job, shown.version, shown.plan.inputs_hash, name)
        content = self.kept.made(key, lambda: paper(shown, name))
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

    def _refused(self, state: State, form: FormData, wrong: list[str]) -> Response:
        facts = self.door.book.facts(state.id)
        asked = fact_form(facts, state.version, told=form)
        look = look_at(state.shown) if state.shown else None
        return self._page(state, look, mistakes=wrong, form=asked, code=422)

    def _drawn(self, shown: Shown, minute: float) -> bytes:
        key = (shown.job.id, shown.version, shown.plan.inputs_hash, minute)
        return self.kept.made(key, lambda: floor_at(shown, minute).encode())

    def _page(
        self,
        state: State,
        look: Look | None,
        *,
        mistakes: Sequence[str] = (),
        form: FactForm | None = None,
        code: int = 200,
    ) -> Response:
        asked = form or fact_form(self.door.book.facts(state.id), state.version)
        common: dict[str, Any] = {
            "code": code, "state": state, "form": asked, "mistakes": mistakes,
            "waiting": not state.fresh and not state.no,
        }  # fmt: skip
        shown = state.shown
        if shown is None or look is None:
            return page("house_unplanned.html", **common)
        path = house_path(state.id)
        link = f"{path}?scale={look.scale}&minute="
        tapes = [
            tape(shown.plan, shown.clock, scale=look.scale, minute=look.minute, width=w, link=link)
            for w in (_WIDE, _NARROW)
        ]
        moment = moment_of(shown.plan, look.minute)
        return page(
            "house.html",
            shown=shown, look=look, path=path, scales=SCALES, tapes=tapes, papers=PAPERS,
            refused=listed(list(shown.figures.refused)),
            floor=self._drawn(shown, look.minute).decode(),
            now=words_of(shown.plan, moment, shown.clock, shown.units),
            sheet=sheet_of(shown), facts=facts_told(shown.job), plan_word=plan_word(shown),
            clock_time=shown.clock.at(look.minute).strftime("%H:%M"),
            logged=_logged(self.held, state), gain=gain_of(self.door.book, state), **common,
        )  # fmt: skip


def plan_word(shown: Shown) -> str:
    """A word that changes with the plan: drawings asked for with it may be kept."""
    told = f"{shown.plan.inputs_hash}-{shown.version}"
    return hashlib.sha256(told.encode()).hexdigest()[:12]


def _planned(state: State) -> Shown:
    if state.shown is None:
        raise NotPlanned("There is no plan of this house yet.", remedies=list(state.no))
    return state.shown


def _logged(held: Live, state: State) -> list[str]:
    """What to do now by the log, where something was entered and the plan is the newest."""
    if not state.fresh or not held.door.book.entries(state.id):
        return []
    try:
        return list(held.now(state.id)["said"])
    except FarwallError as error:
        return mistakes_of(error)
