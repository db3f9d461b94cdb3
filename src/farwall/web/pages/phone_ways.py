"""Onto the phone: the address as a square to read, and three ways with their steps."""

from __future__ import annotations

import asyncio
import ipaddress
from pathlib import Path
from typing import Any
from urllib.parse import quote

import segno
from fastapi import APIRouter, Depends, Request, Response
from markupsafe import Markup

from farwall.nouns import dataclass
from farwall.phrasebook import speaking
from farwall.store.nouns import NoSuchJob
from farwall.web.addresses import addresses
from farwall.web.authority import known_authority
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.live_jobs import NotPlanned, Planned
from farwall.web.pages.guard import asks_for_session
from farwall.web.pages.paper import PageRoute, house_path, page
from farwall.web.people.links import link_for_phone
from farwall.web.people.who import Who, who_asks
from farwall.web.session import Sessions
from farwall.web.slab.one_file import one_file
from farwall.web.slab.pours import pours_of
from farwall.web.slab.sheet import sheet_of
from farwall.web.slab.washing import washing_of
from farwall.web.words import said

AUTHORITY_PATH = "/authority.crt"


@dataclass(frozen=True)
class Code:
    """A square that a phone's camera reads. address: what it holds, without its secret part."""

    square: Markup
    address: str
    safe: bool


def phone_ways(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes: the page and the file ask for a session, the authority's public part for none."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(route_class=PageRoute, include_in_schema=False)
    guarded = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    ways = _Ways(door, held, sessions)
    router.get(AUTHORITY_PATH)(ways.authority)
    guarded.get("/houses/{job}/phone")(ways.page)
    guarded.get("/houses/{job}/slab.html")(ways.file)
    router.include_router(guarded)
    return router


class _Ways:
    """What is answered."""

    def __init__(self, door: Door, held: Live, sessions: Sessions) -> None:
        self.door, self.held, self.sessions = door, held, sessions
        self.folder = Path(door.book.where.files).parent

    async def page(self, job: str, request: Request) -> Response:
        """The page of a house. Raises NoSuchJob."""
        await self.held.plan_soon(job)
        planned = await asyncio.to_thread(self._planned, job)
        base, loopback = phone_base(request)
        known = known_authority(self.folder)
        values: dict[str, Any] = {
            "house": self.door.book.facts(job).get("name") or job, "path": house_path(job),
            "planned": planned is not None, "loopback": loopback, "commands": _commands(job),
            "scan": None, "authority": None,
        }  # fmt: skip
        if base:
            sheet = f"{base}/slab/{quote(job, safe='')}"
            secret = await asyncio.to_thread(self._secret, base, job, who_asks(request))
            square = _square(secret, said("onto-code-alt"))
            values["scan"] = Code(square, sheet, base.startswith("https:"))
        if known is not None:
            alt = said("onto-2-alt")
            square = _square(f"{base or 'https://localhost'}{AUTHORITY_PATH}", alt)
            values["authority"] = {"square": square, "fingerprint": known.fingerprint}
        return page("phone_ways.html", **values)

    def file(self, job: str) -> Response:
        """The run sheet of a house as one file, with its paper. Raises NoSuchJob, NotPlanned."""
        from farwall.papers.run_sheet.pages import run_sheet_pages

        found = self.held.jobs.planned(job)
        document = self.door.book.document("plan", job) or {}
        wishes = found.job.wishes
        pages = run_sheet_pages(
            found.plan, job_name=found.plan.job or job, units=wishes.units, notes=wishes.notes,
            language=wishes.language,
        )  # fmt: skip
        washing = washing_of(found.job, found.plan)
        sheet = sheet_of(document, job, wishes=wishes, washing=washing)
        with speaking(wishes.language):
            sheet["pours"] = pours_of(found.job)
        content = one_file(sheet, pages)
        headers = {
            "content-disposition": 'attachment; filename="slab.html"',
            "cache-control": "private, no-store",
        }
        return Response(content, media_type="text/html; charset=utf-8", headers=headers)

    def authority(self) -> Response:
        """The authority's public part, as phones take it in."""
        known = known_authority(self.folder)
        if known is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        headers = {"content-disposition": 'attachment; filename="authority.crt"'}
        content = known.public.read_bytes()
        return Response(content, media_type="application/x-x509-ca-cert", headers=headers)

    def _secret(self, base: str, job: str, who: Who | None) -> str:
        """What lets the phone in: as the person who shows it, once; never the key to a person."""
        if who is not None and who.id:
            now_s = self.door.clock().timestamp()
            path = link_for_phone(self.door.book, now_s, self.sessions.person(who.id))
            return f"{base}{path}?to={quote(job, safe='')}"
        return f"{base}/slab/{quote(job, safe='')}#{quote(self.door.key, safe='')}"

    def _planned(self, job: str) -> Planned | None:
        try:
            return self.held.jobs.planned(job)
        except NoSuchJob:
            raise
        except NotPlanned:
            return None


def phone_base(request: Request) -> tuple[str, str]:
    """Scheme and place by which a phone reaches us, and the name that only this machine knows.

    As the browser got here, else by this machine's first address; empty where it has none.
    """
    host = request.url.hostname or ""
    if not _only_here(host):
        return f"{request.url.scheme}://{request.url.netloc}", ""
    found = next(iter(addresses()), "")
    if not found:
        return "", host
    place = f"[{found}]" if ":" in found else found
    port = f":{request.url.port}" if request.url.port else ""
    return f"{request.url.scheme}://{place}{port}", host


def _only_here(host: str) -> bool:
    if host == "localhost" or host.endswith(".localhost"):
        return True
    try:
        return ipaddress.ip_address(host.strip("[]")).is_loopback
    except ValueError:
        return False


def _square(text: str, alt: str) -> Markup:
    """The text as a square of modules [iso18004], as SVG without any style of its own."""
    drawn = segno.make_qr(text, error="m").svg_inline(
        border=4, dark="#000", light="#fff", omitsize=True, svgclass=None, lineclass=None
    )
    named = Markup('<svg role="img" aria-label="{}" ').format(alt)
    # what segno draws holds the text as modules only, never as letters
    return Markup(drawn.replace("<svg ", named, 1))


def _commands(job: str) -> dict[str, str]:
    return {
        "network": "farwall serve --host 0.0.0.0",
        "hosted": "farwall serve --host 0.0.0.0 --port 443 --certificate FILE --key FILE",
        "authority": "farwall authority",
        "local": "farwall serve --host 0.0.0.0 --local-certificate",
        "evening": f"farwall log {job} --from logged-….jsonl",
    }
