"""Marks on the mopped floor: photos laid on the plan propose, persons say yes or no."""

from __future__ import annotations

import asyncio
import base64
from collections.abc import Mapping

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.facts.log_colour import MARKS, UNKNOWN
from farwall.job.colour.marks import Proposed
from farwall.papers.wall_clock import Units
from farwall.readers.floor_photo.plane import plane_of
from farwall.readers.floor_photo.seen import pairs_text, target_text
from farwall.store.new_id import new_id
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.colour.marks_keep import FloorPhoto, Floors, House
from farwall.web.pages.colour.marks_places import DRAWN, place_of
from farwall.web.pages.colour.marks_points import landmarks, pairs_told, target_told
from farwall.web.pages.colour.marks_shown import MarksShown
from farwall.web.pages.guarded import guarded
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.log_form import There
from farwall.web.pages.log_keep import Typed, keep_typed, typed_of
from farwall.web.pages.paper import house_path, no_page, seen_elsewhere
from farwall.web.pages.shown import Kept
from farwall.web.session import Sessions
from farwall.web.words import said

_ANSWERS = ("yes", "no", "other")


def marks(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the pages."""
    router = guarded(sessions)
    pages = _Marks(door, held)
    router.get("/houses/{job}/colour/marks")(pages.show)
    router.post("/houses/{job}/colour/marks")(pages.bring)
    router.get("/houses/{job}/colour/marks/{photo}")(pages.photo)
    router.post("/houses/{job}/colour/marks/{photo}")(pages.tell)
    router.get("/houses/{job}/colour/marks/{photo}/picture")(pages.picture)
    return router


class _Marks:
    """The pages of a house's marks; photos laid on the plan are kept between questions."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.plans = Kept(door.book, door.clock)
        self.floors = Floors(door, self.plans)
        self.shown = MarksShown(self.floors, self.plans)

    async def show(self, job: str) -> Response:
        """Photos by room, what stands, what it asks of each field, how to photograph."""
        return await asyncio.to_thread(self.shown.every, job)

    async def bring(self, job: str, request: Request) -> Response:
        """Keep a photo of a room; refused, the page says why."""
        typed = await typed_of(request)
        content, room = typed.files.get("file", b""), typed.told.get("room", "")
        try:
            house = await asyncio.to_thread(self.floors.house, job)
            if not content:
                raise Refused(Mistake(said("marks-photo"), said("marks-photo-none")))
            if room not in house.job.floor.room_by_id:
                raise Refused(Mistake(said("marks-room"), said("marks-room-none")))
            sha = await self.door.written(lambda: self.door.book.put_file(content))
            await asyncio.to_thread(self.floors.look, sha)
            await self._log(job, "photo", {"room": room, "file": sha, "note": said("marks-note")})
        except Refused as error:
            return await asyncio.to_thread(self.shown.every, job, mistakes_of(error), 422)
        return seen_elsewhere(f"{house_path(job)}/colour/marks/{sha}")

    async def photo(self, job: str, photo: str, place: str = "") -> Response:
        """The photo with its points, or the floor from above with its marks."""
        return await asyncio.to_thread(self.shown.photo, job, photo, place=bool(place))

    async def tell(self, job: str, photo: str, request: Request) -> Response:
        """Points, a verdict, a mark drawn by hand, or that one was mended."""
        told = (await typed_of(request, fields=140)).told
        house = await asyncio.to_thread(self.floors.house, job)
        one = house.photo(photo)
        if one is None:
            return no_page()
        try:
            if told.get("do") == "place":
                return await self._place(job, house, one, told)
            word, about = await asyncio.to_thread(self._said, house, one, told)
            await self._log(job, word, about)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(
                self.shown.photo, job, photo, told=told, mistakes=wrong,
                place=told.get("do") == "place",
            )  # fmt: skip
        return seen_elsewhere(f"{house_path(job)}/colour/marks/{photo}")

    def picture(self, job: str, photo: str, which: str = "look") -> Response:
        """The photo made fit for the page, or the floor from above."""
        house = self.floors.house(job)
        one = house.photo(photo)
        if one is None or which not in {"look", "above"} or (which == "above" and not one.points):
            return no_page()
        if which == "look":
            text = self.floors.look(one.sha).picture_base64
        else:
            text = self.floors.seen(house, one).picture_base64
        headers = {"cache-control": "private, no-cache", "content-security-policy": PICTURE_CSP}
        return Response(base64.b64decode(text), media_type="image/jpeg", headers=headers)

    async def _place(
        self, job: str, house: House, one: FloorPhoto, told: Mapping[str, str]
    ) -> Response:
        look = await asyncio.to_thread(self.floors.look, one.sha)
        known = landmarks(house.job.floor, one.room)
        letter = told.get("letter", "")
        if "at.x" in told and letter in {each.letter for each in known}:
            # A browser without script: the click on the picture sets the letter that was chosen.
            filled = {**told, f"{letter}_x": told["at.x"], f"{letter}_y": told.get("at.y", "")}
            return await asyncio.to_thread(self.shown.photo, job, one.sha, told=filled, place=True)
        pairs = pairs_told(known, told, look.file_px)
        size = round(look.width_px * look.file_px), round(look.height_px * look.file_px)
        target = target_told(told, house.job.wishes.units)
        if target is None:
            plane_of(pairs, size)
        points = pairs_text(pairs) if target is None else ";".join(
            filter(None, (target_text(target), pairs_text(pairs)))
        )  # fmt: skip
        await self._log(job, "photo-placed", {
            "file": one.sha, "room": one.room, "points": points,
        })  # fmt: skip
        return seen_elsewhere(f"{house_path(job)}/colour/marks/{one.sha}")

    def _said(
        self, house: House, one: FloorPhoto, told: Mapping[str, str]
    ) -> tuple[str, dict[str, str]]:
        """The word of the log and what it carries. Raises Refused."""
        if told.get("do") == "mended":
            return "mark-mended", {"mark": told.get("mark", ""), "how": told.get("how", ""),
                                   "room": one.room}  # fmt: skip
        if told.get("do") == "away":
            known = next((each for each in house.judged if each.name == told.get("mark")), None)
            if known is None:
                raise Refused(Mistake(said("marks-mark"), said("marks-mark-gone")))
            return "mark-judged", {"mark": known.name, "kind": known.kind, "there": "no",
                                   "room": known.room or one.room}  # fmt: skip
        if told.get("do") == "drawn":
            return "mark-judged", _drawn_by_hand(one, told, house.job.wishes.units)
        proposed = self.floors.proposed(house, house.beside(one))
        mark = next((each for each in proposed if each.name == told.get("mark")), None)
        answer = told.get("answer", "")
        if mark is None or answer not in _ANSWERS:
            raise Refused(Mistake(said("marks-mark"), said("marks-mark-gone")))
        return "mark-judged", _verdict(mark, answer, told, one)

    async def _log(self, job: str, word: str, about: Mapping[str, str]) -> None:
        there = await asyncio.to_thread(self._there, job)
        told = {key: value for key, value in about.items() if value}
        await keep_typed(self.door, job, there, word, Typed({**told, "id": new_id()}, {}))

    def _there(self, job: str) -> There:
        shown = self.plans.state(job).shown
        return There(shown.plan if shown else None, self.door.book.entries(job), "metric")


def _verdict(
    one: Proposed, answer: str, told: Mapping[str, str], photo: FloorPhoto
) -> dict[str, str]:
    kind = told.get("other", "") if answer == "other" else one.mark.kind
    if answer == "other" and kind not in (*MARKS, UNKNOWN):
        raise Refused(Mistake(said("marks-other"), said("marks-other-none")))
    x, y = one.mark.at
    return {
        "mark": one.name, "kind": kind, "there": "no" if answer == "no" else "yes",
        "room": one.room, "x_m": f"{x:.2f}", "y_m": f"{y:.2f}",
        "length_m": f"{one.mark.length_m:.2f}", "width_m": f"{one.mark.width_m:.2f}",
        "file": photo.sha if photo.sha in one.photos else one.photos[0],
        "note": told.get("note", ""),
    }  # fmt: skip


def _drawn_by_hand(photo: FloorPhoto, told: Mapping[str, str], units: Units) -> dict[str, str]:
    kind = told.get("kind", "")
    mistakes = [] if kind in (*MARKS, UNKNOWN) else [
        Mistake(said("marks-other"), said("marks-other-none"))
    ]  # fmt: skip
    places: dict[str, str] = {}
    for key in DRAWN:
        text = told.get(key, "").strip()
        value = place_of(text, units) if text or key in {"x_m", "y_m"} else 0.0
        if value is None:
            mistakes.append(Mistake(said(f"marks-drawn-{key}"), said("marks-drawn-none")))
        else:
            places[key] = f"{value:.2f}"
    if mistakes:
        raise Refused(*mistakes)
    name = f"{photo.room} {float(places['x_m']):.1f},{float(places['y_m']):.1f}"
    return {"mark": name, "kind": kind, "there": "yes", "room": photo.room, "file": photo.sha,
            "note": told.get("note", ""), **places}  # fmt: skip
