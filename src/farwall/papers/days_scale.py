"""The scale of the tape of days: a week along a length, nights and weekends folded narrow."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from farwall.nouns import dataclass

_DAY_FROM_MIN, _DAY_TO_MIN = 390.0, 1140.0
_NIGHT_SHARE, _WEEKEND_SHARE = 0.14, 0.3


@dataclass(frozen=True)
class Week:
    """A week of the tape: minutes since its Monday's midnight to places along `width`."""

    monday: datetime
    width: float

    def x(self, at: datetime) -> float:
        """Where a moment lies; before the week 0, after it the width."""
        minutes = (at - self.monday).total_seconds() / 60
        if minutes <= 0:
            return 0.0
        day = int(minutes // 1440)
        if day > 6:
            return self.width
        unit = self.width / (5 + 2 * _WEEKEND_SHARE)
        before = unit * (min(day, 5) + _WEEKEND_SHARE * max(0, day - 5))
        wide = unit * (1 if day < 5 else _WEEKEND_SHARE)
        return before + wide * _share(minutes - 1440 * day)

    @property
    def sunday_ends(self) -> datetime:
        """The end of the week."""
        return self.monday + timedelta(days=7)


def _share(of_day_min: float) -> float:
    """How far along its day a minute lies: mornings and nights are folded."""
    night = _NIGHT_SHARE / 2
    if of_day_min < _DAY_FROM_MIN:
        return night * of_day_min / _DAY_FROM_MIN
    if of_day_min > _DAY_TO_MIN:
        return 1 - night * (1440 - of_day_min) / (1440 - _DAY_TO_MIN)
    return night + (1 - 2 * night) * (of_day_min - _DAY_FROM_MIN) / (_DAY_TO_MIN - _DAY_FROM_MIN)


def mondays(houses: Sequence[Mapping[str, Any]]) -> list[datetime]:
    """The Mondays of the weeks in which something happens."""
    found = set()
    for house in houses:
        for step in house["steps"]:
            for key in ("starts_at", "ends_at"):
                at = datetime.fromisoformat(step[key])
                monday = at.date() - timedelta(days=at.weekday())
                found.add(datetime.combine(monday, datetime.min.time(), at.tzinfo))
    return sorted(found)


def wedge_outline(
    week: Week, low: datetime, likely: datetime, high: datetime
) -> list[tuple[float, float]]:
    """Places and heights (0 to 1) of a wedge inside the week."""

    def height(at: datetime) -> float:
        if at <= likely:
            span = (likely - low).total_seconds()
            return 1.0 if span <= 0 else max(0.0, (at - low).total_seconds() / span)
        span = (high - likely).total_seconds()
        return 0.0 if span <= 0 else max(0.0, (high - at).total_seconds() / span)

    first, last = max(low, week.monday), min(high, week.sunday_ends)
    moments = sorted({first, min(max(likely, first), last), last})
    return [(week.x(at), height(at)) for at in moments]
