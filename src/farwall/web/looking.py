"""What a screen asks: the clock, the jobs, their facts, their log."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from fastapi import APIRouter, Depends, Request
from fastapi.responses import Response

from farwall.readers.kept_json import kept_to_dict
from farwall.web.door import Door
from farwall.web.packed import packed_json

_MOST_JOBS = 1000


def looking(door: Door) -> APIRouter:
    """The routes that only read."""
    open_ = APIRouter()
    guarded = APIRouter(dependencies=[Depends(door.asks_for_key)])
    book = door.book

    @open_.get("/api/clock")
    def clock() -> dict[str, str]:
        """The book's clock, by which a device sees how far its own is off."""
        return {"now": door.now()}

    @guarded.get("/api/jobs")
    def jobs(limit: int = 100, after: str = "") -> dict[str, Any]:
        """A page of the list of jobs, the one that came last first."""
        found = book.jobs(limit=max(1, min(limit, _MOST_JOBS)), after=after)
        return {"jobs": [asdict(one) for one in found], "places": book.last_place()}

    @guarded.get("/api/jobs/{job}")
    def facts(job: str) -> dict[str, Any]:
        """The newest facts of a job, and its versions."""
        versions = [asdict(one) for one in book.versions(job)]
        return {"id": job, "facts": book.facts(job), "versions": versions}

    @guarded.get("/api/jobs/{job}/entries")
    def entries(request: Request, job: str, after: int = 0) -> Response:
        """What the log of a job has behind a place, so that a second phone sees it too."""
        found = [kept_to_dict(one) for one in book.entries(job, after=after)]
        return packed_json(request, {"entries": found})

    open_.include_router(guarded)
    return open_
