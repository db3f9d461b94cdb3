"""In which light the screens are looked at: warm paper, or bright sun (white, ink, larger)."""

from __future__ import annotations

from contextvars import ContextVar

from fastapi import Request

from farwall.papers.lettering import SCREEN_LETTERING

LIGHTS = ("paper", "sun")
LIGHT: ContextVar[str] = ContextVar("light", default="paper")
"""The light of the request that is being answered: set at the door of a page."""
COOKIE = "light"
_SUN_SMALL_PX = 15.0


def light_of(request: Request) -> str:
    """One of `LIGHTS`, as chosen here; a browser's wish for more contrast is met by the styles."""
    chosen = request.cookies.get(COOKIE, "")
    return chosen if chosen in LIGHTS else LIGHTS[0]


def small_widen() -> float:
    """By how much small words of a drawing run wider than measured, in the light of the request.

    In bright sun they are set larger (`firm.css`).
    """
    larger = _SUN_SMALL_PX / SCREEN_LETTERING.small if LIGHT.get() == "sun" else 1.0
    return SCREEN_LETTERING.widen * larger


def other_light() -> str:
    """The one that a button offers."""
    return LIGHTS[1 - LIGHTS.index(LIGHT.get())]
