"""The state of the book: looked through, backed up to a file, what phones have not brought yet."""

from __future__ import annotations

import asyncio
import shutil
import tempfile
from collections.abc import Iterator
from concurrent.futures import Executor
from pathlib import Path
from typing import Any

from fastapi import APIRouter, Request, Response
from fastapi.responses import StreamingResponse

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.store.address import DATABASE
from farwall.store.book import Book
from farwall.store.devices import DeviceLine
from farwall.store.files import file_names
from farwall.store.nouns import BookFault
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import page, seen_elsewhere
from farwall.web.pages.when import zoned_told
from farwall.web.people.roles import BACK_UP
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said
from farwall.web.zipped import zipped

Json = dict[str, Any]
KINDS = ("open", "store")
"""What a backup may be: open formats, or a copy of the store's own file."""
_KEY = "book-check"
_CLOCK_S = 60.0


@dataclass(frozen=True)
class Looked:
    """What a look through the book found, and when."""

    at: str
    faults: tuple[BookFault, ...]
    devices: tuple[DeviceLine, ...]
    files: int
    files_bytes: int


def book(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the book."""
    router = guarded(sessions)
    pages = _Book(door, held)
    router.get("/book")(pages.show)
    router.get("/book/state")(pages.how_far)
    router.post("/book/check")(pages.check)
    router.post("/book/backup")(pages.backup)
    return router


class _Book:
    """The book that is looked at, and what the last look found."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.looked: Looked | None = None

    async def show(self) -> Response:
        """The page; a book that nobody looked through since the start is looked through now."""
        if self.looked is None and _KEY not in self.held.slow.trouble:
            self.held.slow.begin(_KEY, self._look)
        return await asyncio.to_thread(self._page)

    def how_far(self) -> Json:
        """Whether the book is being looked through."""
        return {"version": 0, "fresh": not self.held.slow.busy(_KEY), "no": []}

    async def check(self, request: Request) -> Response:
        """Look through it again."""
        await form_of(request)
        self.held.slow.begin(_KEY, self._look)
        return seen_elsewhere("/book")

    async def backup(self, request: Request) -> Response:
        """A backup as one file to be fetched, sent while it is packed."""
        form = await form_of(request)
        kind = text_of(form, "kind")
        if kind not in KINDS:
            raise Refused(Mistake(kind[:40], said("book-which")))
        aside = Path(tempfile.mkdtemp(prefix="farwall-backup-"))
        try:
            make = self.book.out if kind == "open" else self.book.backup
            await asyncio.to_thread(make, aside / "book")
        except BaseException:
            shutil.rmtree(aside, ignore_errors=True)
            raise
        name = f"farwall-book-{kind}-{self.door.clock():%Y-%m-%d-%H%M}"
        headers = {
            "content-disposition": f'attachment; filename="{name}.zip"',
            "cache-control": "no-store",
        }
        return StreamingResponse(_sent(aside, name), media_type="application/zip", headers=headers)

    def _look(self, _hands: Executor) -> None:
        faults = tuple(self.book.check())
        devices = tuple(self.book.devices())
        sizes = [path.stat().st_size for sha, path in file_names(self.book.where.files) if sha]
        self.looked = Looked(self.door.now(), faults, devices, len(sizes), sum(sizes))

    def _page(self) -> Response:
        units, looked, slow = firm_units(self.book), self.looked, self.held.slow
        who = who_asks()
        lines = self.book.jobs()
        harm = [] if looked is None else [one for one in looked.faults if one.harm]
        calm = [] if looked is None else [one for one in looked.faults if not one.harm]
        return page(
            "book.html", where=self.book.where.shown, waiting=slow.busy(_KEY),
            trouble=slow.trouble.get(_KEY, ""), looked=looked, harm=harm, calm=calm,
            at=zoned_told(looked.at, units) if looked else "",
            counted=_counted(self.book, lines, looked),
            devices=[_device_told(one, units) for one in looked.devices] if looked else [],
            copies=self.book.where.folder is not None,
            may=who is not None and who.may(BACK_UP),
        )  # fmt: skip


def _sent(aside: Path, name: str) -> Iterator[bytes]:
    """The pieces of the ZIP; the copy on the disk goes away with the last of them."""
    try:
        yield from zipped(aside / "book", name)
    finally:
        shutil.rmtree(aside, ignore_errors=True)


def _counted(book_: Book, lines: list[Any], looked: Looked | None) -> list[str]:
    """How many houses and entries there are, and how large it is."""
    houses, closed = len(lines), sum(one.closed for one in lines)
    entries = sum(one.entries for one in lines)
    key = "book-houses-1" if houses == 1 else "book-houses"
    told = [said(key, houses=f"{houses:,}", closed=f"{closed:,}", entries=f"{entries:,}")]
    folder = book_.where.folder
    if folder is not None and (folder / DATABASE).is_file():
        told.append(said("book-size", size=_size((folder / DATABASE).stat().st_size)))
    if looked is not None:
        told.append(said("book-files", n=f"{looked.files:,}", size=_size(looked.files_bytes)))
    return told


def _size(count: int) -> str:
    return f"{count / 1e6:,.1f} MB" if count >= 1e5 else f"{count / 1e3:,.1f} kB"


def _device_told(one: DeviceLine, units: Units) -> Json:
    """A device in a sentence, and what has not come from it; empty where nothing lacks."""
    entries = said("log-count-1") if one.entries == 1 else said("log-count", n=one.entries)
    told = said("book-device", at=zoned_told(one.heard_at, units), entries=entries)
    if one.off_s is not None and abs(one.off_s) >= _CLOCK_S:
        key = "book-ahead" if one.off_s > 0 else "book-behind"
        told += said(key, minutes=f"{abs(one.off_s) / 60:,.0f}")
    lacks = ""
    if one.missing_count:
        numbers = ", ".join(map(str, one.missing))
        more = "…" if one.missing_count > len(one.missing) else ""
        key = "book-lacks-1" if one.missing_count == 1 else "book-lacks"
        lacks = said(key, n=one.missing_count, numbers=numbers + more)
    return {"device": one.device, "told": told, "lacks": lacks}
