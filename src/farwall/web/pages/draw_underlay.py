"""A picture laid under the floor: taken by its content, kept in the book, placed by the screen."""

from __future__ import annotations

import asyncio
import json
from typing import Any

from fastapi import Request, Response
from fastapi.responses import JSONResponse
from starlette.datastructures import UploadFile

from farwall.errors import Mistake, Refused
from farwall.web.door import Door
from farwall.web.pages.drafts import UNDERLAY, floor_of
from farwall.web.pages.drawn_read import placed_at
from farwall.web.pages.guard import form_of
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.picture import MOST_PICTURE_BYTES, picture_of
from farwall.web.words import said

Json = dict[str, Any]
_ROOM = 20_000
_BEGIN_WIDE_M = 12.0
"""As wide a picture is laid until it is scaled. Rank: guess."""
_BEGIN_OPACITY = 0.5


def underlay_told(document: Json | None) -> Json | None:
    """What the screen needs of it; None where there is none."""
    return document if document is not None and document.get("file") else None


class Underlays:
    """The picture under the floor of a house."""

    def __init__(self, door: Door) -> None:
        self.door = door

    async def lay(self, job: str, request: Request) -> Response:
        """Take a picture in, or take away what is there."""
        form = await form_of(request, MOST_PICTURE_BYTES + _ROOM)
        try:
            file, away = form.get("picture"), form.get("away") == "yes"
            content = await file.read() if isinstance(file, UploadFile) and file.filename else b""
            name = (file.filename or "")[:200] if isinstance(file, UploadFile) else ""
        finally:
            await form.close()
        book = self.door.book
        floor = await asyncio.to_thread(floor_of, book, job)
        if away:
            await self.door.written(lambda: book.put_document(UNDERLAY, floor.id, {"file": ""}))
            return seen_elsewhere(f"{house_path(job)}/draw")
        if not content:
            raise Refused(Mistake("", said("underlay-none")))
        picture = picture_of(content)
        m_per_px = _BEGIN_WIDE_M / picture.width_px
        document = {
            "kind": picture.kind, "width_px": picture.width_px, "height_px": picture.height_px,
            "name": name, "at": [0.0, picture.height_px * m_per_px], "m_per_px": m_per_px,
            "opacity": _BEGIN_OPACITY,
        }  # fmt: skip

        def keep() -> None:
            sha = book.put_file(content)
            book.put_document(UNDERLAY, floor.id, {"file": sha, **document})

        await self.door.written(keep)
        return seen_elsewhere(f"{house_path(job)}/draw")

    def picture(self, job: str, file: str = "") -> Response:
        """The picture that lies under the floor; no other file of the book."""
        laid = underlay_told(self.door.book.document(UNDERLAY, job))
        if laid is None or laid["file"] != file:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        headers = {
            "cache-control": "private, max-age=86400, immutable",
            "content-security-policy": PICTURE_CSP,
        }
        return Response(self.door.book.file(file), media_type=laid["kind"], headers=headers)

    async def place(self, job: str, request: Request) -> Response:
        """Keep where it lies, how large and how faint."""
        form = await form_of(request)
        try:
            told = json.loads(str(form.get("place", "")))
        except (ValueError, RecursionError):
            told = None
        book = self.door.book
        laid = underlay_told(await asyncio.to_thread(book.document, UNDERLAY, job))
        placed = _placed(told) if laid is not None else None
        if laid is None or placed is None or told.get("file") != laid["file"]:
            raise Refused(Mistake("", said("underlay-none")))
        await self.door.written(lambda: book.put_document(UNDERLAY, job, {**laid, **placed}))
        return JSONResponse({})


def _placed(told: Any) -> Json | None:
    if not isinstance(told, dict):
        return None
    at, scale, opacity = placed_at(told.get("at")), told.get("m_per_px"), told.get("opacity")
    if at is None or not isinstance(scale, int | float) or not isinstance(opacity, int | float):
        return None
    if not 1e-6 <= scale <= 10 or not 0 <= opacity <= 1:  # and thus no numbers without an end
        return None
    return {"at": list(at), "m_per_px": float(scale), "opacity": float(opacity)}
