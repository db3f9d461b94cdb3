"""What every answer needs: the book, its key and clock, and the one thread that writes."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextvars import copy_context
from dataclasses import field
from datetime import datetime
from typing import Any, TypeVar

from fastapi import Request

from farwall.errors import FarwallError, Mistake, Refused
from farwall.nouns import dataclass
from farwall.store.book import Book
from farwall.store.comings import Comings
from farwall.web.bombs import insist_bearable_json
from farwall.web.key import fits
from farwall.web.people.lasting import IDLE_S
from farwall.web.people.tries import insist_may_ask, no_key
from farwall.web.people.who import DEVICE, THE_KEY, let_in, who_in

T = TypeVar("T")
MOST_BYTES = 5_000_000
_BEARER = "Bearer "


class Closed(FarwallError):
    """Neither the key nor a device's token was shown."""


class TooLarge(FarwallError):
    """More was sent than is taken at once."""


def _one_thread() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(1, thread_name_prefix="writing")


@dataclass(frozen=True)
class Door:
    """The book and what stands before it. clock: the time now, with its offset."""

    book: Book
    key: str
    clock: Callable[[], datetime]
    writing: ThreadPoolExecutor = field(default_factory=_one_thread)

    def now(self) -> str:
        """The book's clock, ISO 8601 with offset."""
        return self.clock().isoformat(timespec="milliseconds")

    async def written(self, work: Callable[[], T]) -> T:
        """The result of work that writes, done after all that was asked for before.

        It sees who asks and in which language, as whoever asked for it.
        """
        here = copy_context()
        return await asyncio.get_running_loop().run_in_executor(self.writing, here.run, work)

    def asks_for_key(self, request: Request) -> None:
        """Note who asks, in `request.state.person`: by the book's key, or a device's token.

        Raises Closed when neither is shown, TooManyTries after many such from one address,
        NotAllowed when the device's person may not do this.
        """
        now_s, comings = self.clock().timestamp(), Comings(self.book)
        address = request.client.host if request.client else ""
        insist_may_ask(comings, address, now_s)
        shown = request.headers.get("authorization", "")
        token = shown.removeprefix(_BEARER) if shown.startswith(_BEARER) else ""
        if token and fits(token, self.key):
            let_in(request, THE_KEY)
            return
        found = comings.session(token, now_s=now_s, idle_s=IDLE_S) if token else None
        if found is None or found.kind != DEVICE:
            no_key(comings, address, now_s)
            raise Closed("This book asks for its key. Show it as `Authorization: Bearer KEY`.")
        let_in(request, who_in(found))


async def json_of(request: Request) -> Any:
    """The JSON that was sent. Raises Refused, TooLarge."""
    body = await body_of(request, MOST_BYTES)
    insist_bearable_json(body)
    try:
        return json.loads(body, parse_constant=_no_number)
    except (ValueError, RecursionError):
        raise Refused(Mistake("body", "this is no JSON.", "Send one JSON document.")) from None


def _no_number(name: str) -> float:
    raise ValueError(f"{name} is no number of JSON")


async def body_of(request: Request, most: int) -> bytes:
    """The bytes that were sent; no more than `most` are ever held. Raises TooLarge."""
    announced = request.headers.get("content-length", "0")
    if announced.isdigit() and int(announced) > most:
        raise TooLarge(f"{announced} bytes are too many: {most} at once.")
    parts, size = [], 0
    async for part in request.stream():
        size += len(part)
        if size > most:
            raise TooLarge(f"More than {most} bytes are too many at once.")
        parts.append(part)
    return b"".join(parts)
