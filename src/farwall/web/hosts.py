"""Names by which this server is asked: another site's name that leads here is turned away.

A page from elsewhere may have its own name answered with our address; its script then asks us as
if we were its own site. The browser tells the name in `Host`, and by that it is seen.
"""

from __future__ import annotations

from collections.abc import Collection
from urllib.parse import urlsplit

from fastapi.responses import JSONResponse
from starlette.datastructures import Headers
from starlette.types import ASGIApp, Receive, Scope, Send

LOOPBACK = frozenset({"localhost", "127.0.0.1", "::1"})
_MISDIRECTED = 421  # [rfc9110, 15.5.20]


class KnownHosts:
    """Middleware: answers for loopback, the address it was reached at, and the names told.

    names: None for any, where somebody else stands before the app and looks.
    """

    def __init__(self, app: ASGIApp, names: Collection[str] | None) -> None:
        self.app = app
        self.names = None if names is None else frozenset(one.lower() for one in names)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer, or say that this is not our name."""
        if scope["type"] != "http" or self.names is None or self._is_ours(scope, self.names):
            await self.app(scope, receive, send)
            return
        told = {
            "error": "Farwall is not known by this name.",
            "mistakes": ["Open it by its address, or start it with `--name NAME`."],
        }
        await JSONResponse(told, _MISDIRECTED)(scope, receive, send)

    def _is_ours(self, scope: Scope, names: Collection[str]) -> bool:
        told = Headers(scope=scope).getlist("host")
        host = host_in(told[0]) if len(told) == 1 else ""
        reached = str((scope.get("server") or ("",))[0]).lower()
        return bool(host) and (host in LOOPBACK or host in names or host == reached)


def host_in(header: str) -> str:
    """The host in a Host header, without its port, in small letters; "" for none that is one."""
    if any(one in header for one in "@/\\?# "):
        return ""
    try:
        return (urlsplit(f"//{header}").hostname or "").rstrip(".")
    except ValueError:
        return ""
