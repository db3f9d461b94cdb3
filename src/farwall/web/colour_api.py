"""The next coat over HTTP: the same JSON as `farwall colour next --json`."""

from __future__ import annotations

import asyncio
from typing import Any

from fastapi import APIRouter, Depends

from farwall.web.door import Door
from farwall.web.live import Live

Json = dict[str, Any]


def colour_api(door: Door, held: Live) -> APIRouter:
    """The route."""
    router = APIRouter(dependencies=[Depends(door.asks_for_key)])

    @router.get("/api/jobs/{job}/colour")
    async def colour(job: str, room: str = "", coat: str = "", stain: str = "") -> Json:
        """What to do now with the colour of a house; `room`, `coat`, `stain` narrow it."""
        await held.plan_soon(job)
        narrowed = {"room": room, "coat": coat, "stain": stain}
        return await asyncio.to_thread(_answer, door, held, job, narrowed)

    return router


def _answer(door: Door, held: Live, job: str, narrowed: dict[str, str]) -> Json:
    """Raises NoSuchJob, NotPlanned, Refused, Unanswerable."""
    from farwall.job.colour.asked import Asked
    from farwall.job.colour.document import next_document
    from farwall.job.colour.next_coat import colour_next

    found = held.jobs.planned(job)
    asked = Asked(
        found.job, found.plan, tuple(door.book.entries(job)), held.jobs.lessons(), **narrowed
    )
    return next_document(found.job, colour_next(asked))
