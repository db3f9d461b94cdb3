"""What a phone sends when it is back in signal: entries, questions of what arrived, photos."""

from __future__ import annotations

import asyncio
import hashlib
from dataclasses import asdict, replace
from typing import Any

from fastapi import APIRouter, Depends, Request
from fastapi.responses import Response

from farwall.errors import Mistake, Refused
from farwall.phrasebook import Language, speaking, told
from farwall.store.files import MOST_BYTES as MOST_FILE_BYTES
from farwall.web.bombs import insist_bearable_file
from farwall.web.door import Door, TooLarge, body_of, json_of
from farwall.web.pages.tongue import language_of
from farwall.web.people.who import may_tell_of_money, who_asks
from farwall.web.taking import Answer, offer_from, take

MOST_IDS = 50_000


def sync(door: Door) -> APIRouter:
    """The routes by which a queue is emptied; every one of them may be called again."""
    router = APIRouter(dependencies=[Depends(door.asks_for_key)])
    book = door.book

    @router.post("/api/entries")
    async def offered(request: Request) -> dict[str, Any]:
        """Entries of one device: what became of each, told when it is on the disk."""
        offer = replace(offer_from(await json_of(request)), money=may_tell_of_money(request))
        answer = await door.written(lambda: take(book, offer, received_at=door.now()))
        return asdict(_in_its_language(answer, language_of(request)))

    @router.post("/api/have")
    async def have(request: Request) -> dict[str, Any]:
        """Which of these ids, and of these files, the book does not have."""
        asked = await json_of(request)
        ids, files = _names(asked, "ids"), _names(asked, "files", may_lack=True)
        missing = await asyncio.to_thread(book.missing, ids)
        return {
            "missing": missing,
            "missing_files": await asyncio.to_thread(book.missing_files, files),
            "places": await asyncio.to_thread(book.last_place),
        }

    @router.put("/api/jobs/{job}/facts")
    async def put_facts(job: str, request: Request) -> dict[str, Any]:
        """Add a version of a job's facts, and the job with the first."""
        facts = _facts(job, await json_of(request))
        if (who := who_asks(request)) and who.id:
            facts["who"] = who.name
        version = await door.written(lambda: book.put_facts(job, at=door.now(), **facts))
        return {"id": job, "version": version}

    @router.put("/api/files/{sha}")
    async def put_file(sha: str, request: Request) -> dict[str, str]:
        """Keep a file under the SHA-256 of what is in it; sent twice it is one file."""
        content = await body_of(request, MOST_FILE_BYTES)
        if hashlib.sha256(content).hexdigest() != sha:
            raise Refused(Mistake("file", "what came is not what was named.", "Send it again."))
        insist_bearable_file(content)
        return {"sha256": await door.written(lambda: book.put_file(content))}

    @router.get("/api/files/{sha}")
    def file(sha: str) -> Response:
        """The content of a file, which no browser is to take for a page."""
        safe = {"X-Content-Type-Options": "nosniff", "Content-Disposition": "attachment"}
        return Response(book.file(sha), media_type="application/octet-stream", headers=safe)

    return router


def _in_its_language(answer: Answer, language: Language) -> Answer:
    """What was turned away is said to the phone as its page speaks."""
    with speaking(language):
        turned = tuple(replace(one, why=tuple(map(told, one.why))) for one in answer.turned)
    return replace(answer, turned=turned)


def _facts(job: str, data: Any) -> dict[str, Any]:
    """Facts that a job can be read from. Raises Refused with every mistake."""
    from farwall.readers.job_json import job_from

    facts = data.get("facts") if isinstance(data, dict) else None
    job_from(facts, f"The job {job}")
    return {"facts": facts, "who": str(data.get("who", "")), "name": str(data.get("name", ""))}


def _names(data: Any, key: str, *, may_lack: bool = False) -> list[str]:
    names = data.get(key, [] if may_lack else None) if isinstance(data, dict) else None
    if not isinstance(names, list) or not all(isinstance(one, str) for one in names):
        raise Refused(Mistake(key, f"it is a list of {key}.", f'Send {{"{key}": […]}}.'))
    if len(names) > MOST_IDS:
        raise TooLarge(f"{len(names)} {key} are too many at once: ask for {MOST_IDS}.")
    return names
