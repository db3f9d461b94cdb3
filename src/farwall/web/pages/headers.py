"""Headers that every answer carries: nothing from elsewhere, nothing guessed, nobody told."""

from __future__ import annotations

from starlette.datastructures import Headers, MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from farwall.web.hosts import LOOPBACK, host_in

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
    ("cross-origin-opener-policy", "same-origin"),
    ("cross-origin-resource-policy", "same-origin"),
    ("cache-control", "no-store"),
)
_NOTHING = "microphone=(), geolocation=(), payment=(), usb=(), serial=()"
_HTTPS_ONLY = "max-age=2592000"
"""Thirty days. Rank: guess; long enough between two visits, short enough to be undone."""


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
                for name, value in (*_ALWAYS, *_here(scope)):
                    headers.setdefault(name, value)
            await send(message)

        await self.app(scope, receive, safely)


def _here(scope: Scope) -> list[tuple[str, str]]:
    """What hangs on the page and on how it is asked: only the phone's page may use the camera."""
    camera = "(self)" if scope["path"].startswith("/slab/") else "()"
    found = [("permissions-policy", f"camera={camera}, {_NOTHING}")]
    host = host_in(Headers(scope=scope).get("host", ""))
    # Not for this machine's own name, under which other programs answer too.
    if scope["scheme"] == "https" and host not in LOOPBACK:
        found.append(("strict-transport-security", _HTTPS_ONLY))
    return found
