"""A house begun by drawing: its name and, where it is known, its first room by two lengths."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence
from typing import Any

from fastapi import Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.readers.room_names import slug
from farwall.store.book import Book
from farwall.store.nouns import DRAWING
from farwall.web.door import Door
from farwall.web.pages.brought import Brought, brought
from farwall.web.pages.drafts import DRAFT, draft_document, drafts_of, floor_of, has_facts
from farwall.web.pages.drawn import drawn_of, empty_drawn
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.repairs import READING, UNITS, reading_document
from farwall.web.pages.typed_lengths import length_of
from farwall.web.words import said

Json = dict[str, Any]
_LONGEST_NAME = 120


class New:
    """Houses that are begun here, and drawings that are read again."""

    def __init__(self, door: Door) -> None:
        self.door = door

    def asked(self) -> Response:
        """The form."""
        return self._page({})

    async def begun(self, request: Request) -> Response:
        """Begin a house; refused, the form comes back as it was."""
        form = await form_of(request)
        told = {key: text_of(form, key) for key in ("name", "room", "wide", "deep")}
        try:
            drawn = first_room(told)
        except Refused as error:
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, told, wrong, 422)
        name = " ".join(told["name"].split())[:_LONGEST_NAME]
        book = self.door.book

        def keep() -> str:
            job = free_id(book, slug(name)[:50] or "house")
            book.put_document(DRAFT, job, draft_document(0, name, drawn))
            return job

        return seen_elsewhere(f"{house_path(await self.door.written(keep))}/draw")

    def _page(self, told: Json, mistakes: Sequence[str] = (), code: int = 200) -> Response:
        asked = {key: told.get(key, "") for key in ("name", "room", "wide", "deep")}
        begun = drafts_of(self.door.book)
        return page("draw_new.html", code=code, told=asked, mistakes=mistakes, begun=begun)

    async def read_again(self, job: str, request: Request) -> Response:
        """Read the drawing that the house was made of once more, by another unit.

        What comes of it is a drawing to be looked at and kept; the facts stay until then.
        """
        form = await form_of(request)
        unit, book = text_of(form, "unit"), self.door.book
        if unit not in UNITS:
            raise Refused(Mistake("", said("draw-unit-unknown")))
        floor = await asyncio.to_thread(floor_of, book, job)
        kept = book.document(DRAWING, job) or floor.reading
        if kept is None or not kept.get("file"):
            raise Refused(Mistake("", said("draw-no-file")))
        content = await asyncio.to_thread(book.file, str(kept["file"]))
        name = str(kept.get("name", ""))
        storey = str(kept.get("storey", ""))
        found = await asyncio.to_thread(
            brought, content, name, scale_m_per_unit=UNITS[unit], storey=storey
        )
        drawn = await asyncio.to_thread(drawn_in, found)

        def keep() -> None:
            reading = reading_document(found.notes, unit=found.unit, facts=floor.version)
            files = {"file": kept["file"], "name": name, "storey": storey}
            book.put_document(READING, job, {**reading, **files, "stated": list(found.stated)})
            book.put_document(DRAFT, job, draft_document(floor.version, floor.name, drawn))

        await self.door.written(keep)
        return seen_elsewhere(f"{house_path(job)}/draw")


def drawn_in(found: Brought) -> Json:
    """The floor that was brought, as it is drawn."""
    from farwall.readers.job_json import job_from

    if found.facts is None:
        return found.drawn or empty_drawn()
    return drawn_of(job_from(found.facts, found.name))


def first_room(told: Json) -> Json:
    """The floor that a house begins with: empty, or a room by two lengths. Raises Refused."""
    mistakes = []
    if not told["name"]:
        mistakes.append(Mistake(said("new-name"), said("new-no-name")))
    drawn = empty_drawn()
    if told["wide"] or told["deep"]:
        sides = {key: length_of(told[key]) for key in ("wide", "deep")}
        for key, side in sides.items():
            if side is None or not 0.3 <= side <= 200:
                text = told[key] or said("new-nothing")
                mistakes.append(Mistake(said(f"new-{key}"), said("new-no-length", text=text)))
        if not mistakes:
            drawn["rooms"] = [_room(told["room"] or said("new-first-room"), sides)]
    if mistakes:
        raise Refused(*mistakes)
    return drawn


def _room(name: str, sides: dict[str, float | None]) -> Json:
    x, y = (round(side or 0.0, 4) for side in (sides["wide"], sides["deep"]))
    ring = [[0.0, 0.0], [x, 0.0], [x, y], [0.0, y], [0.0, 0.0]]
    polygon = {"type": "Polygon", "coordinates": [ring]}
    return {"id": slug(name)[:60] or "room", "name": name[:80], "polygon": polygon}


def free_id(book: Book, wish: str) -> str:
    """An id that neither a job nor a drawing has."""
    taken = set(book.documents(DRAFT))
    for number in range(1, 100_000):
        job = wish if number == 1 else f"{wish}-{number}"
        if job not in taken and not has_facts(book, job):
            return job
    raise Refused(Mistake("", said("new-no-name")))
