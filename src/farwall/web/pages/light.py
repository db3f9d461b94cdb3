"""In which light the screens are looked at: warm paper, or bright sun (white, ink, larger)."""

from __future__ import annotations

from contextvars import ContextVar

from fastapi import Request

LIGHTS = ("paper", "sun")
LIGHT: ContextVar[str] = ContextVar("light", default="paper")
"""The light of the request that is being answered: set at the door of a page."""
COOKIE = "light"


def light_of(request: Request) -> str:
    """One of `LIGHTS`, as chosen here; a browser's wish for more contrast is met by the styles."""
    chosen = request.cookies.get(COOKIE, "")
    return chosen if chosen in LIGHTS else LIGHTS[0]


def other_light() -> str:
    """The one that a button offers."""
    return LIGHTS[1 - LIGHTS.index(LIGHT.get())]
