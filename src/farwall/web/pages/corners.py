"""The photo of a plan: its sheet's corners set by hand, its scale told, then laid flat and read."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.errors import Refused, mistakes_of
from farwall.web.door import Door
from farwall.web.pages.corners_form import CORNERS, ENDS, FIELDS, PAPERS, begun, hints_of
from farwall.web.pages.corners_keep import PHOTO, flattened, keep_flat
from farwall.web.pages.drafts import floor_of
from farwall.web.pages.guard import asks_for_session, form_of, text_of
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.paper import PageRoute, house_path, page, seen_elsewhere
from farwall.web.session import Sessions

Json = dict[str, Any]


def corners(door: Door, sessions: Sessions) -> APIRouter:
    """The routes of a photo's corners. To be included before those of a house's papers."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _Corners(door)
    router.get("/houses/{job}/corners")(pages.asked)
    router.post("/houses/{job}/corners")(pages.told)
    router.get("/houses/{job}/corners/picture")(pages.picture)
    return router


class _Corners:
    """The page of the corners of one house's photo."""

    def __init__(self, door: Door) -> None:
        self.door = door

    def asked(self, job: str) -> Response:
        """The photo with its corners as they were seen or told."""
        photo = self.door.book.document(PHOTO, job)
        if photo is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        return self._page(job, photo, begun(photo))

    async def told(self, job: str, request: Request) -> Response:
        """Lay the sheet flat and read it; refused, the page comes back as it was filled."""
        form = await form_of(request)
        told = {key: text_of(form, key)[:40] for key in FIELDS}
        book = self.door.book
        photo = await asyncio.to_thread(book.document, PHOTO, job)
        if photo is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        try:
            hints = hints_of(told)
            content = await asyncio.to_thread(book.file, str(photo["file"]))
            shown = await asyncio.to_thread(flattened, content, str(photo["name"]), hints)
            await self.door.written(lambda: keep_flat(book, job, told, shown))
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, job, photo, told, wrong, 422)
        return seen_elsewhere(f"{house_path(job)}/draw")

    def picture(self, job: str, file: str = "") -> Response:
        """The photo made fit for the page; no other file of the book."""
        photo = self.door.book.document(PHOTO, job)
        if photo is None or photo["preview"] != file:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        headers = {
            "cache-control": "private, max-age=86400, immutable",
            "content-security-policy": PICTURE_CSP,
        }
        return Response(self.door.book.file(file), media_type="image/jpeg", headers=headers)

    def _page(
        self, job: str, photo: Json, told: Mapping[str, str], mistakes: Sequence[str] = (),
        code: int = 200,
    ) -> Response:  # fmt: skip
        name = floor_of(self.door.book, job).name
        return page(
            "corners.html", code=code, photo=photo, told=told, mistakes=mistakes, name=name,
            path=f"{house_path(job)}/corners", corners=CORNERS, ends=ENDS, papers=PAPERS,
        )  # fmt: skip
