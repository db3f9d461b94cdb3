"""A house set aside and brought back, by a form of its page."""

from __future__ import annotations

import asyncio
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.job.aside import Hand, bring_back, of_the_floor, set_aside, standing_aside
from farwall.store.book import Book
from farwall.store.new_id import new_id
from farwall.store.nouns import NoSuchJob
from farwall.web.door import Door
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_keep import DEVICE
from farwall.web.pages.paper import house_path, seen_elsewhere
from farwall.web.people.who import name_of_who
from farwall.web.session import Sessions

_MOST_WHY = 500


def aside(door: Door, sessions: Sessions) -> APIRouter:
    """The route by which a house leaves the lists, and comes again."""
    router = guarded(sessions)
    book = door.book

    async def moved(job: str, request: Request) -> Response:
        """`do`: aside or back; asked twice it is done once."""
        form = await form_of(request)
        to_aside, why = text_of(form, "do") != "back", text_of(form, "why").strip()[:_MOST_WHY]
        now, who = door.now(), name_of_who()

        def keep() -> None:
            kept, hand = book.entries(job), Hand(who, DEVICE, now, new_id)
            entries = set_aside(job, kept, hand, why=why) if to_aside else ()
            entries = entries if to_aside else bring_back(job, kept, hand)
            if entries:
                book.keep(entries, received_at=now)

        await asyncio.to_thread(book.versions, job)  # raises NoSuchJob
        await door.written(keep)
        return seen_elsewhere("/" if to_aside else house_path(job))

    router.post("/houses/{job}/aside")(moved)
    return router


def aside_told(book: Book, job: str) -> dict[str, Any]:
    """Whether a house is set aside, why, and how many entries its log has."""
    try:
        kept = book.entries(job)
    except NoSuchJob:
        return {"is": False, "why": "", "entries": 0}
    by = standing_aside(kept)
    why = next((str(one.entry.about.get("why", "")) for one in kept if one.entry.id in by), "")
    return {"is": bool(by), "why": why, "entries": len(of_the_floor(kept))}
