"""The days that the firm's calendar gives a house, as minutes of its plan."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

Days = Mapping[str, tuple[float, float]]
"""From and to of a step of the calendar's chain, by its id, in minutes of the plan."""
_FIRST_COAT = "coat-1"


def days_of(calendar: Mapping[str, Any] | None, job: str, starts_at: datetime) -> Days:
    """The steps of a house in the calendar; none where it is not in it, or coats another day.

    calendar: the document of `days.document`. starts_at: of the plan.
    """
    houses = calendar.get("houses", ()) if calendar is not None else ()
    steps = next((one["steps"] for one in houses if one["id"] == job), ())
    found = {one["id"]: _stretch(one, starts_at) for one in steps}
    coat = next((one for one in steps if one["id"] == _FIRST_COAT), None)
    if coat is None:
        return {}
    day = datetime.fromisoformat(coat["starts_at"]).astimezone(starts_at.tzinfo).date()
    return found if day == starts_at.date() else {}


def _stretch(step: Mapping[str, Any], starts_at: datetime) -> tuple[float, float]:
    ends = (datetime.fromisoformat(step[key]) for key in ("starts_at", "ends_at"))
    first, last = ((one - starts_at).total_seconds() / 60 for one in ends)
    return first, last
