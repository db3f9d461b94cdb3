"""The page of the run sheet over HTTP, and the plan that it carries.

The page itself asks for no key: it holds nothing of the job. The key stands in the fragment of the
address, which a browser keeps to itself, and is shown in a header when the page asks for the plan.
"""

from __future__ import annotations

import asyncio
import hashlib
from functools import cache
from importlib.resources import files
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request
from fastapi.responses import JSONResponse, Response

from farwall.facts.job import Job
from farwall.phrasebook import LANGUAGE
from farwall.store.book import Book
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.packed import packed, packed_json
from farwall.web.pages.tongue import language_of
from farwall.web.slab.laid_anew import rest_for
from farwall.web.slab.one_file import early_script, script_hash, style_of
from farwall.web.slab.pours import pours_of, verdict_of
from farwall.web.slab.sampling_routes import sampling
from farwall.web.slab.sheet import sheet_of
from farwall.web.slab.washing import steps_of, washing_of

Json = dict[str, Any]
_TABLES = 64

KINDS = {
    "index.html": "text/html; charset=utf-8",
    "slab.js": "text/javascript; charset=utf-8",
    "samples.js": "text/javascript; charset=utf-8",
    "en.json": "application/json",
    "es.json": "application/json",
    "sw.js": "text/javascript; charset=utf-8",
    "slab.webmanifest": "application/manifest+json",
}
"""The built files, all of them, and what they are."""
POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; "
    "img-src 'self' data:; media-src blob:; manifest-src 'self'; worker-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
SAFE = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cache-Control": "no-cache",
}


@cache
def page_policy() -> str:
    """The policy of the page: this very script and style may stand in it, by SHA-256 [csp3]."""
    page = built("index.html").decode()
    begun, style = script_hash(early_script(page)), script_hash(style_of(page))
    policy = POLICY.replace("script-src 'self'", f"script-src 'self' '{begun}'")
    return policy.replace("style-src 'self'", f"style-src '{style}'")


def built(name: str) -> bytes:
    """The content of a built file."""
    return files("farwall.web.slab").joinpath("dist", name).read_bytes()


def slab(door: Door, held: Live) -> APIRouter:
    """The routes: page, its files, and the sheet of a job, which asks for the key."""
    router = APIRouter()
    tables = _Tables(door.book)

    @router.get("/slab/files/{name}")
    def file(name: str, request: Request) -> Response:
        """A built file."""
        if name not in KINDS:
            told = {"error": "There is no such file.", "mistakes": []}
            return JSONResponse(told, 404, headers=SAFE)
        return _answer(name, request)

    @router.get("/slab/{job}")
    def page(request: Request) -> Response:
        """The page, the same for every job: it reads the job from its own address."""
        return _answer("index.html", request)

    guarded = APIRouter(dependencies=[Depends(door.asks_for_key)])

    @guarded.get("/api/jobs/{job}/sheet")
    async def sheet(job: str, request: Request) -> Response:
        """What the phone carries of the plan; refused while it is being made."""
        await held.plan_soon(job)
        found = await asyncio.to_thread(held.jobs.planned, job)
        document = await asyncio.to_thread(door.book.document, "plan", job)
        washing = await asyncio.to_thread(washing_of, found.job, found.plan)
        told = sheet_of(document or {}, job, wishes=found.job.wishes, washing=washing)
        return packed_json(request, told)

    @guarded.get("/api/jobs/{job}/sheet/rest")
    async def rest(job: str, request: Request) -> Response:
        """The rest of the day as last laid anew; what was entered since has it laid again."""
        await held.plan_soon(job)
        found = await asyncio.to_thread(held.jobs.planned, job)
        told = await asyncio.to_thread(rest_for, door.book, job, found)
        if told.stale:
            held.replanning.tapped(job)
        return packed_json(request, told.for_phone)

    @guarded.get("/api/jobs/{job}/washing")
    async def washing(job: str) -> Json:
        """What each room asks for after its rinses so far, by all that the book knows."""
        await held.plan_soon(job)
        return await asyncio.to_thread(_steps, door, held, job)

    @guarded.get("/api/jobs/{job}/pours")
    async def pours(job: str, request: Request) -> Response:
        """What a phone carries of the gate, of the newest facts, in the language asked for."""
        LANGUAGE.set(language_of(request))
        return packed_json(request, await asyncio.to_thread(tables.of, job))

    @guarded.get("/api/jobs/{job}/pour")
    async def pour(
        job: str,
        request: Request,
        thing: Annotated[list[str], Query(max_length=20)] = [],  # noqa: B006
        vessel: str = "",
    ) -> Json:
        """May these be poured, in this order (`thing`, once for each), into that `vessel`."""
        LANGUAGE.set(language_of(request))
        things = [one[:200] for one in thing]
        return await asyncio.to_thread(tables.asked, job, things, vessel[:60])

    router.include_router(guarded)
    router.include_router(sampling(door, held))
    return router


class _Tables:
    """The gate for phones, of the newest facts of a job. A table is kept until they change."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._kept: dict[tuple[str, int, str], Json] = {}

    def of(self, job: str) -> Json:
        """The table of a job. Raises NoSuchJob, Refused."""
        version = self._book.versions(job)[-1].version
        key = job, version, LANGUAGE.get()
        found = self._kept.get(key)
        if found is None:
            found = pours_of(self._facts(job, version))
            if len(self._kept) >= _TABLES:
                self._kept.clear()
            self._kept[key] = found
        return found

    def asked(self, job: str, things: list[str], vessel: str) -> Json:
        """The verdict on one question. Raises NoSuchJob, Refused."""
        version = self._book.versions(job)[-1].version
        return verdict_of(self._facts(job, version), things, vessel)

    def _facts(self, job: str, version: int) -> Job:
        from farwall.readers.job_json import job_from

        return job_from(self._book.facts(job, version), f"The job {job}")


def _steps(door: Door, held: Live, job: str) -> Json:
    """`place` of the log that is known, `rooms` with what each asks for."""
    from farwall.job.story import story

    found, kept = held.jobs.planned(job), door.book.entries(job)
    place = max((one.place for one in kept), default=0)
    return {"place": place, "rooms": steps_of(found.job, found.plan, story(found.plan, kept))}


def _answer(name: str, request: Request) -> Response:
    """The file, or that it has not changed."""
    content = built(name)
    tag = f'"{hashlib.sha256(content).hexdigest()[:16]}"'
    headers = {**SAFE, "ETag": tag}
    if name == "index.html":
        headers["Content-Security-Policy"] = page_policy()
    if name == "sw.js":
        headers["Service-Worker-Allowed"] = "/slab/"
    if request.headers.get("if-none-match") == tag:
        return Response(status_code=304, headers=headers)
    return packed(request, content, media_type=KINDS[name], headers=headers)
