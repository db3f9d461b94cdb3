"""What the office side of a house is reckoned from, as the book keeps it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from farwall.facts.job import Job
from farwall.job.office import OfficeGround
from farwall.web.firm import FIRM, lessons_of
from farwall.web.pages.lines import CALENDAR
from farwall.web.pages.price.wares import wares_of
from farwall.web.pages.shown import State
from farwall.web.pages.van import van_of


def office_ground_of(book: Any, state: State) -> OfficeGround | None:
    """Facts and plan of a house with the firm's van, prices and lessons; None without a plan."""
    shown = state.shown
    if shown is None:
        return None
    return OfficeGround(
        _with_newest(book, state, shown.job),
        shown.plan,
        story=shown.went.story if shown.went else None,
        kept=tuple(book.entries(state.id)),
        van=van_of(book),
        wares=wares_of(book),
        lessons=lessons_of(book),
        calendar=(book.document(CALENDAR, FIRM) or {}).get("document"),
    )


def _with_newest(book: Any, state: State, of_plan: Job) -> Job:
    """The job of the plan with what no plan hangs on as the newest facts have it.

    So a switch or a price that was just entered shows at once, while the plan is made anew.
    """
    from farwall.readers.job_json import job_from

    if state.fresh:
        return of_plan
    newest = job_from(book.facts(state.id, state.version), "The job")
    return replace(
        of_plan, supplies=newest.supplies, prices=newest.prices, firm=newest.firm,
        customer=newest.customer, builder=newest.builder, revision=newest.revision,
    )  # fmt: skip
