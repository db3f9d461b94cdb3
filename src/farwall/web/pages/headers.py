"""Headers that every answer carries: nothing from elsewhere, nothing guessed, nobody told."""

from __future__ import annotations

from starlette.datastructures import MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

CSP = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
    "connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; "
    "form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
PICTURE_CSP = "default-src 'none'; style-src 'unsafe-inline'; sandbox"
"""For a drawing opened by itself: its one style attribute, and nothing that runs."""
_ALWAYS = (
    ("content-security-policy", CSP),
    ("x-content-type-options", "nosniff"),
    # Not `no-referrer`: with that a browser sends `Origin: null` with our own forms, and over
    # plain http no Sec-Fetch-Site either, so that nothing would tell ours from others'.
    # Other sites are told nothing by this one either.
    ("referrer-policy", "same-origin"),
)


class SafeHeaders:
    """Middleware: adds the headers that an answer does not set for itself."""

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer, with the headers."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def safely(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in _ALWAYS:
                    headers.setdefault(name, value)
            await send(message)

        await self.app(scope, receive, safely)
