"""The page of the hours: every task with its range as a line, days, hours by room."""

from __future__ import annotations

from typing import Any

from farwall.job.office import Office, OfficeGround
from farwall.job.office.hours import TaskHours
from farwall.papers.words import area, names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.web.pages.price.lines import Scale, range_line, scale_of
from farwall.web.pages.told import told_on_page
from farwall.web.words import said


def hours_told(ground: OfficeGround, office: Office) -> dict[str, Any]:
    """All that the template shows, in words."""
    found, units = office.hours, ground.job.wishes.units
    low, likely, high = found.days
    with speaking(LANGUAGE.get(), names_in(ground.plan)):
        scale = scale_of((0.0, *(one.high_h for one in found.tasks)))
        return {
            "all": said(
                "price-hours-all", hours=f"{found.likely_h:.0f}", low=f"{found.low_h:.0f}",
                high=f"{found.high_h:.0f}",
            ),
            "days": said(
                "price-hours-days", days=likely, low=low, high=high, people=found.people,
                visits=found.visits[1], of=told_on_page(found.days_from),
            ),
            "tasks": [_task(scale, one) for one in found.tasks],
            "rooms": [
                (one.name, area(one.area_m2, units), f"{one.hours:.1f} h") for one in found.rooms
            ],
            "warnings": [told_on_page(one) for one in found.warnings],
        }  # fmt: skip


def _task(scale: Scale, one: TaskHours) -> dict[str, Any]:
    words = said(
        "price-hours-range", low=f"{one.low_h:.1f}", likely=f"{one.likely_h:.1f}",
        high=f"{one.high_h:.1f}",
    )  # fmt: skip
    return {
        "name": told_on_page(one.task),
        "likely": f"{one.likely_h:.1f} h",
        "between": f"{one.low_h:.1f} – {one.high_h:.1f}",
        "line": range_line(scale, one.low_h, one.likely_h, one.high_h, said=words),
        "rule": told_on_page(one.rule),
        "rank": told_on_page(one.rank),
    }
