"""How a page is lit: as usual, or for work in the sun; kept in a cookie of the browser."""

from __future__ import annotations

from contextvars import ContextVar

from fastapi import Request

COOKIE = "theme"
THEMES = ("usual", "sun")
"""usual: warm paper · sun: black on white, for a screen in bright light."""
THEME: ContextVar[str] = ContextVar("theme", default="usual")
"""The theme of the page that is being answered: set at the door of a page."""


def theme_of(request: Request) -> str:
    """One of `THEMES`."""
    chosen = request.cookies.get(COOKIE, "")
    return chosen if chosen in THEMES else THEMES[0]
