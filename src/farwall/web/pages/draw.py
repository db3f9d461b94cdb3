"""Drawing a floor and correcting it: the page, what it asks while a wall moves, what it keeps."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any

from fastapi import APIRouter, Depends, FastAPI, Request, Response
from fastapi.responses import JSONResponse

from farwall.errors import Refused
from farwall.store.nouns import BookTrouble
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.brought_stated import stated_told
from farwall.web.pages.drafts import DRAFT, FloorOf, draft_document, floor_of
from farwall.web.pages.draw_new import New
from farwall.web.pages.draw_underlay import Underlays, underlay_told
from farwall.web.pages.drawn_faults import faults_told, windows_off
from farwall.web.pages.drawn_keep import Other, keep_drawn
from farwall.web.pages.drawn_preview import Previews
from farwall.web.pages.drawn_read import MOST_DRAWN_BYTES, drawn_from
from farwall.web.pages.drawn_rooms import rooms_changed
from farwall.web.pages.drawn_said import preview_said
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.paper import PageRoute, house_path, page
from farwall.web.pages.repairs import UNITS, offers_told
from farwall.web.pages.shown import Kept
from farwall.web.session import Sessions
from farwall.web.words import LANGUAGE, said, words

Json = dict[str, Any]
_ROOM = 200_000
"""Bytes that the form takes beside the drawing, which grows when it is sent as a form."""


def draw(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of drawing. To be included before those of a house's papers."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    previews = Previews(held.jobs.make_hands)

    @asynccontextmanager
    async def letting_go(_app: FastAPI) -> AsyncIterator[None]:
        yield
        previews.close()

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)],
        lifespan=letting_go,
    )  # fmt: skip
    pages, new, underlays = _Draw(door, held, previews), New(door), Underlays(door)
    router.get("/draw")(new.asked)
    router.post("/draw")(new.begun)
    router.get("/houses/{job}/draw")(pages.one)
    router.post("/houses/{job}/draw")(pages.keep)
    router.post("/houses/{job}/draw/preview")(pages.preview)
    router.post("/houses/{job}/draw/unit")(new.read_again)
    router.post("/houses/{job}/draw/rooms")(rooms_changed)
    router.get("/houses/{job}/draw/underlay")(underlays.picture)
    router.post("/houses/{job}/draw/underlay")(underlays.lay)
    router.post("/houses/{job}/draw/underlay/place")(underlays.place)
    return router


class _Draw:
    """The page of a drawn floor."""

    def __init__(self, door: Door, held: Live, previews: Previews) -> None:
        self.door, self.held, self.previews = door, held, previews
        self.kept = Kept(door.book)

    async def one(self, job: str, room: str = "") -> Response:
        """The page; with a room it begins there."""
        floor = await asyncio.to_thread(floor_of, self.door.book, job)
        if floor.version:
            await self._keep_soon(job, floor.version, floor.facts)
        path = f"{house_path(job)}/draw"
        given = {
            "version": floor.version, "seen": floor.seen, "units": floor.units, "path": path,
            "drawn": _answered(floor),
            "windows": floor.windows, "notes": offers_told(floor.reading), "faults": [],
            "underlay": underlay_told(floor.underlay), "room": room[:200],
            "words": draw_words(),
        }  # fmt: skip
        return page(
            "draw.html", floor=floor, path=path, house=house_path(job), given=given,
            unit_names=list(UNITS),
            storeys=list(dict.fromkeys(one.get("storey", "") for one in floor.now["rooms"])),
            stated=stated_told((floor.reading or {}).get("stated") or []),
            can_read_again=floor.reading is not None and bool(floor.reading.get("file")),
        )  # fmt: skip

    async def keep(self, job: str, request: Request) -> Response:
        """Keep what is drawn as new facts; with faults as a drawing, all of them told."""
        form = await form_of(request, MOST_DRAWN_BYTES + _ROOM)
        drawn = drawn_from(str(form.get("drawn", "")))
        answers = _json(str(form.get("answers", "")))
        floor = await asyncio.to_thread(floor_of, self.door.book, job)
        seen = str(form.get("seen", "") or floor.seen)
        if str(form.get("version", "")) != str(floor.version) or seen != floor.seen:
            return _other(floor)
        drop = form.get("drop") == "yes"
        try:
            made = await keep_drawn(self.door, self.kept, floor, drawn, answers=answers, drop=drop)
        except Other:
            return _other(await asyncio.to_thread(floor_of, self.door.book, job))
        except BookTrouble:
            raise  # nothing was kept, and no fault of the drawing
        except Refused as error:
            draft = draft_document(floor.version, floor.name, drawn)
            await self.door.written(lambda: self.door.book.put_document(DRAFT, job, draft))
            faults = faults_told(error.mistakes, drawn)
            now = await asyncio.to_thread(floor_of, self.door.book, job)
            no = {"said": said("draw-not-yet"), "faults": faults, "seen": now.seen}
            return JSONResponse(no, 422)
        now = await asyncio.to_thread(floor_of, self.door.book, job)
        if made is None:
            same = {"said": said("draw-same"), "version": floor.version, "faults": []}
            return JSONResponse({**same, "seen": now.seen})
        await self.held.plan_soon(job)
        off = windows_off(floor.windows, drawn)
        told = said("draw-kept", n=made) + (f" {said('draw-windows-off', n=off)}" if off else "")
        kept = {"said": told, "version": made, "faults": [], "planned": True, "seen": now.seen}
        return JSONResponse(kept)

    async def _keep_soon(self, job: str, version: int, facts: Json) -> None:
        """Make ready for previews; after the plan itself, so that the two do not share the time."""
        await self.held.plan_soon(job)
        if await asyncio.to_thread(self.held.jobs.is_planned, job):
            self.previews.keep_soon(job, version, facts)

    async def preview(self, job: str, request: Request) -> Response:
        """What the floor that is being drawn does: verdict and age of edges, in words."""
        form = await form_of(request, MOST_DRAWN_BYTES + _ROOM)
        drawn = drawn_from(str(form.get("drawn", "")))
        version = str(form.get("version", ""))
        newest = (await asyncio.to_thread(self.door.book.versions, job))[-1].version
        if version != str(newest):
            return JSONResponse({"head": said("facts-other"), "no": True}, 409)
        moving = form.get("moving") == "yes"
        told = await self.previews.ask(job, newest, drawn, moving=moving)
        if told is None:
            facts = await asyncio.to_thread(self.door.book.facts, job, newest)
            await self._keep_soon(job, newest, facts)
        return JSONResponse(preview_said(told or {"waiting": True}, drawn))


def _other(floor: FloorOf) -> Response:
    """What is told to whoever drew on an older floor: the newest, to be laid together."""
    told = {"said": said("draw-other"), "theirs": _answered(floor), "version": floor.version}
    return JSONResponse({**told, "seen": floor.seen}, 409)


def _answered(floor: FloorOf) -> Json:
    answers = floor.reading["answers"] if floor.reading is not None else {}
    return {**floor.now, "answers": answers}


def _json(text: str) -> Any:
    try:
        return json.loads(text) if text else {}
    except (ValueError, RecursionError):
        return {}


def draw_words() -> dict[str, str]:
    """The words of the drawing screen in the language of the request, for what moves there."""
    told = words(LANGUAGE.get())
    every = words("en")
    return {key: told.get(key, every[key]) for key in every if key.startswith("draw-")}
