"""What people changed, closed or took a copy of, noted as it is answered; and what was denied.

Taps on the slab are not noted here: the log of the house is their record.
"""

from __future__ import annotations

import asyncio
import logging

from fastapi import Request
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from farwall.errors import FarwallError
from farwall.store.comings import Comings
from farwall.web.door import Door
from farwall.web.people.roles import BACK_UP, CHANGE, CLOSE, need_of, route_of
from farwall.web.people.who import Who, who_asks

_NOTED = frozenset({CHANGE, CLOSE, BACK_UP})
_DENIED = 403
_MOST = 200


class Deeds:
    """Middleware: notes what was done before the answer tells that it was."""

    def __init__(self, app: ASGIApp, door: Door) -> None:
        self.app, self.door = app, door

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer, and note."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def noted(message: Message) -> None:
            if message["type"] == "http.response.start":
                await self._note(Request(scope), message["status"])
            await send(message)

        await self.app(scope, receive, noted)

    async def _note(self, request: Request, status: int) -> None:
        who = who_asks(request)
        word = _word(request, status)
        if who is None or not word:
            return
        try:
            await asyncio.to_thread(self._kept, who, word, request)
        except FarwallError:
            # The deed is done: the book that took it a moment ago takes no more.
            logging.getLogger("farwall.web").exception("a deed was not noted")

    def _kept(self, who: Who, word: str, request: Request) -> None:
        about = {"route": route_of(request)}
        about |= {key: str(told)[:_MOST] for key, told in request.path_params.items()}
        Comings(self.door.book).note(self.door.now(), who.name, word, about)


def _word(request: Request, status: int) -> str:
    """The word for what was done; "" for nothing that is noted."""
    if status == _DENIED:
        return "denied"
    need = need_of(request)
    return need if need in _NOTED and status < 400 else ""
