"""What the server did, a JSON line each: no names of people or houses, no addresses, no secrets.

A line of an answer: `at` ISO 8601 · `id` of the request, also in its `x-request-id` · `route` the
template and never the path · `status` · `ms` · `from` loopback, private or public · `role` of who
asks. Of an exception only its kind and where it came from are told: its words may hold anything.
"""

from __future__ import annotations

import ipaddress
import json
import logging
import secrets
import sys
import time
import traceback
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from fastapi import Request
from starlette.datastructures import MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from farwall.web.people.roles import route_of
from farwall.web.people.who import who_asks

LOG = logging.getLogger("farwall.web")
_MOST_FRAMES = 8


class Told:
    """Middleware: gives each request an id, and tells how it was answered."""

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer, and tell."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        request, began = Request(scope), time.perf_counter()
        request.state.id = secrets.token_hex(8)
        status = 0

        async def noted(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                MutableHeaders(scope=message)["x-request-id"] = request.state.id
            await send(message)

        try:
            await self.app(scope, receive, noted)
        finally:
            ms = round((time.perf_counter() - began) * 1000, 1)
            LOG.info("answered", extra={"told": _told(request, status, ms)})


def _told(request: Request, status: int, ms: float) -> dict[str, Any]:
    who = who_asks(request)
    return {
        "id": request.state.id, "route": route_of(request) or f"{request.method} (none)",
        "status": status, "ms": ms, "from": _from(request), "role": who.role if who else "",
    }  # fmt: skip


def _from(request: Request) -> str:
    with suppress(ValueError):
        at = ipaddress.ip_address(request.client.host if request.client else "")
        return "loopback" if at.is_loopback else "private" if at.is_private else "public"
    return ""


class JsonLine(logging.Formatter):
    """A record as one line of JSON."""

    def format(self, record: logging.LogRecord) -> str:
        """The line, without its end."""
        at = datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds")
        line: dict[str, Any] = {"at": at, "level": record.levelname.lower(), "log": record.name}
        if record.exc_info and record.exc_info[0] is not None:
            line["what"] = "broke"
            line["kind"] = record.exc_info[0].__name__
            frames = traceback.extract_tb(record.exc_info[2])[-_MOST_FRAMES:]
            line["where"] = [f"{Path(one.filename).stem}:{one.lineno} {one.name}" for one in frames]
        else:
            line["what"] = record.getMessage()
        return json.dumps(line | getattr(record, "told", {}), ensure_ascii=False)


def log_to(target: str | None) -> None:
    """Send the log to a file, or to stderr for "-"; None: only warnings, to stderr.

    Raises OSError when the file cannot be written.
    """
    if target is None or target == "-":
        handler: logging.Handler = logging.StreamHandler(sys.stderr)
    else:
        handler = logging.FileHandler(target, encoding="utf-8", errors="replace")
    handler.setFormatter(JsonLine())
    root = logging.getLogger()
    root.handlers = [handler]
    root.setLevel(logging.WARNING)
    LOG.setLevel(logging.WARNING if target is None else logging.INFO)
