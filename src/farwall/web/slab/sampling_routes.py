"""The sample day over HTTP: of the newest facts, with the clocks of the plan where there is one."""

from __future__ import annotations

import asyncio
from datetime import datetime
from typing import Any

from fastapi import APIRouter, Depends, Request
from fastapi.responses import Response

from farwall.facts.default_table import STARTS_AT
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.live_jobs import NotPlanned
from farwall.web.packed import packed_json
from farwall.web.slab.sampling import sample_day_of

Json = dict[str, Any]


def sampling(door: Door, held: Live) -> APIRouter:
    """The route: samples come before there is a plan, so that none is waited for."""
    router = APIRouter(dependencies=[Depends(door.asks_for_key)])

    @router.get("/api/jobs/{job}/sample-day")
    async def sample_day(job: str, request: Request) -> Response:
        """The steps of the sample day as a phone carries them, and how it stands by the book."""
        return packed_json(request, await asyncio.to_thread(day_for, door, held, job))

    return router


def day_for(door: Door, held: Live, job: str) -> Json:
    """The day of a job of the book. Raises NoSuchJob, Refused."""
    from farwall.readers.job_json import job_from

    newest = door.book.versions(job)[-1]
    facts = job_from(door.book.facts(job, newest.version), f"The job {job}")
    try:
        plan = held.jobs.planned(job).plan
    except NotPlanned:
        plan = None
    starts = datetime.fromisoformat(facts.starts_at or STARTS_AT)
    at_min = (door.clock() - starts).total_seconds() / 60
    kept = door.book.entries(job)
    return sample_day_of(facts, plan, kept, name=newest.name or job, at_min=at_min)
