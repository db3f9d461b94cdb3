"""What the office side of a house is reckoned from, as the book keeps it."""

from __future__ import annotations

from typing import Any

from farwall.job.office import OfficeGround
from farwall.web.firm import lessons_of
from farwall.web.pages.price.wares import wares_of
from farwall.web.pages.shown import State
from farwall.web.pages.van import van_of


def office_ground_of(book: Any, state: State) -> OfficeGround | None:
    """Facts and plan of a house with the firm's van, prices and lessons; None without a plan."""
    shown = state.shown
    if shown is None:
        return None
    return OfficeGround(
        shown.job, shown.plan, story=shown.went.story if shown.went else None,
        kept=tuple(book.entries(state.id)), van=van_of(book), wares=wares_of(book),
        lessons=lessons_of(book),
    )  # fmt: skip
