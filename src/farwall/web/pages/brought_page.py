"""The page of a drawing that is asked about: its picture, its storeys, its scale."""

from __future__ import annotations

import asyncio
import hashlib
from collections.abc import Awaitable, Callable, Sequence
from typing import Any

from fastapi import Request, Response

from farwall.errors import Refused, mistakes_of
from farwall.units import ft2_from_m2, ft_from_m
from farwall.web.door import Door
from farwall.web.pages.brought import Brought, brought, id_from
from farwall.web.pages.brought_asked import BROUGHT, said_of, storey_id
from farwall.web.pages.brought_keep import is_known
from farwall.web.pages.brought_stated import stated_told
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.paper import house_path, no_page, page, seen_elsewhere
from farwall.web.pages.repairs import UNITS
from farwall.web.words import said

Json = dict[str, Any]
Keep = Callable[[Brought, bytes, str], Awaitable[Response]]
_KEYS = ("storey", "unit", "length", "measure", "again")


class AskedPages:
    """The routes of `/brought/{key}`; `keep` puts what was brought into the book."""

    def __init__(self, door: Door, keep: Keep) -> None:
        self.door, self.keep = door, keep

    async def begun(self, found: Brought, content: bytes, name: str) -> Response:
        """Keep the drawing and what is asked of it, and go to its page."""
        key, book = hashlib.sha256(content).hexdigest()[:24], self.door.book

        def keep() -> None:
            files = {"file": book.put_file(content), "picture": book.put_file(found.picture)}
            value = {**files, "name": name, "called": found.name, "asked": found.asked}
            book.put_document(BROUGHT, key, value)

        await self.door.written(keep)
        return seen_elsewhere(f"/brought/{key}")

    def show(self, key: str) -> Response:
        """The page."""
        document = self.door.book.document(BROUGHT, key)
        return no_page() if document is None else self._page(key, document, {})

    def picture(self, key: str) -> Response:
        """What was read, drawn."""
        document = self.door.book.document(BROUGHT, key)
        if document is None:
            return no_page()
        headers = {"cache-control": "private, no-cache", "content-security-policy": PICTURE_CSP}
        content = self.door.book.file(str(document["picture"]))
        return Response(content, media_type="image/svg+xml", headers=headers)

    async def answered(self, key: str, request: Request) -> Response:
        """Bring the storey that was chosen; refused, the form comes back as it was."""
        form = await form_of(request)
        told = {name: text_of(form, name) for name in _KEYS}
        document = await asyncio.to_thread(self.door.book.document, BROUGHT, key)
        if document is None:
            return no_page()
        try:
            return await self._bring(document, told)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, key, document, told, wrong, 422)

    async def _bring(self, document: Json, told: dict[str, str]) -> Response:
        answer = said_of(document["asked"], told)
        name, book = str(document["name"]), self.door.book
        content = await asyncio.to_thread(book.file, str(document["file"]))
        found = await asyncio.to_thread(
            brought, content, name, storey=answer.storey,
            scale_m_per_unit=answer.scale_m_per_unit,
        )  # fmt: skip
        if found.asked is not None:
            return await self.begun(found, content, name)
        known = await asyncio.to_thread(is_known, book, found.id)
        if known and told["again"] != "yes":
            return seen_elsewhere(house_path(found.id))
        return await self.keep(found, content, name)

    def _page(
        self, key: str, document: Json, told: Json, mistakes: Sequence[str] = (), code: int = 200
    ) -> Response:
        asked = document["asked"]
        base = id_from(str(document["name"]))
        storeys = [self._storey(one, storey_id(base, asked, one["id"])) for one in asked["storeys"]]
        measures = [_measure(one) for one in asked.get("measures") or []]
        return page(
            "brought.html", code=code, key=key, called=document["called"], mistakes=mistakes,
            storeys=storeys if len(storeys) > 1 else [], scale=asked["scale"], measures=measures,
            notes=asked.get("notes") or [], units=list(UNITS),
            stated=stated_told(asked.get("stated") or []),
            told={key: told.get(key, "") for key in _KEYS},
        )  # fmt: skip

    def _storey(self, one: Json, job: str) -> Json:
        """A storey in words, and where its house is when it was brought already."""
        many = one["rooms"] != 1
        parts = [said("brought-rooms", n=one["rooms"]) if many else said("brought-room")]
        if one["area_m2"] is not None:
            ft2 = ft2_from_m2(one["area_m2"])
            parts.append(said("brought-area", m2=f"{one['area_m2']:.1f}", ft2=f"{ft2:,.0f}"))
        if one["elevation_m"] is not None:
            metres, feet = one["elevation_m"], ft_from_m(one["elevation_m"])
            parts.append(said("brought-height", m=f"{metres:+.2f}", ft=f"{feet:+.1f}"))
        there = house_path(job) if is_known(self.door.book, job) else ""
        return {"id": one["id"], "name": one["name"], "told": ", ".join(parts), "there": there}


def _measure(one: Json) -> str:
    way = f"brought-{one['way']}"
    return said(f"{way}-of", room=one["room"]) if one["room"] else said(way)
