"""Minutes of the plan as times on the wall: `9:42`, with the day when the day changes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Literal

from farwall.facts.default_table import STARTS_AT
from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.phrasebook import told

Units = Literal["us", "metric"]
_MORNING_H, _NOON_H, _EVENING_H = 6, 12, 18
_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip


@dataclass(frozen=True)
class WallClock:
    """Turns minutes from the start into words of the local clock.

    US manner counts to twelve, with am and pm where `half_day_words` says so, and on another day;
    metric manner counts to twenty-four.
    """

    starts_at: datetime
    units: Units
    half_day_words: bool
    day_told: bool

    def at(self, minutes: float) -> datetime:
        """The moment, to the full minute; half a minute and more rounds up."""
        moment = self.starts_at + timedelta(minutes=minutes)
        return (moment + timedelta(seconds=30)).replace(second=0, microsecond=0)

    def time(self, minutes: float) -> str:
        """`9:42`; `Fri 9:42` when that is not the day of the start."""
        moment = self.at(minutes)
        return told(f"{self._day_before(moment)}{_plain(moment, self.units)}{self._half(moment)}")

    def times(self, minutes: Sequence[float]) -> list[str]:
        """Moments of one sentence, as `time`; where one is of another day than the start, each
        tells its day and, in US manner, the half of it: `Mon 4:50 pm`, `Tue 7:30 am`."""
        moments = [self.at(one) for one in minutes]
        if all(one.date() == self.starts_at.date() for one in moments):
            return [self.time(one) for one in minutes]
        return [told(f"{self._day_of(one)}{_plain(one, self.units)}{self._half_of(one)}")
                for one in moments]  # fmt: skip

    def bare(self, minutes: float) -> str:
        """`9:42` alone, where day and half of the day stand beside it."""
        return _plain(self.at(minutes), self.units)

    def span(self, start_min: float, end_min: float) -> str:
        """`9:10 to 9:42`; the day and the half of it are said once where they are the same.

        One time where both are the same to the minute.
        """
        start, end = self.at(start_min), self.at(end_min)
        if start == end:
            return self.time(start_min)
        first = f"{self._day_before(start)}{_plain(start, self.units)}"
        last = f"{_plain(end, self.units)}{self._half(end)}"
        if start.date() != end.date():
            return told(f"{first}{self._half(start)} to {self._day_before(end)}{last}")
        half = self._half(start) if self._half(start) != self._half(end) else ""
        return told(f"{first}{half} to {last}")

    def day(self) -> str:
        """The day of the start in words, or that none was set."""
        if not self.day_told:
            return "day not set"
        return day_in_words(self.starts_at, self.units)

    def hour_mark(self, moment: datetime, *, whole: bool = False) -> str:
        """What stands beside a full hour on the tape: `9`; `whole` names day and half day too."""
        hour = _plain(moment, self.units).partition(":")[0]
        return told(f"{self._day_before(moment)}{hour}{self._half(moment)}") if whole else hour

    def _half(self, moment: datetime) -> str:
        return self._half_of(moment) if self.halves(moment) else ""

    def _half_of(self, moment: datetime) -> str:
        if self.units != "us":
            return ""
        return " am" if moment.hour < _NOON_H else " pm"

    def halves(self, moment: datetime) -> bool:
        """Whether am or pm has to stand beside it: of another day nobody knows which half."""
        other_day = moment.date() != self.starts_at.date()
        return self.half_day_words or (other_day and self.units == "us")

    def _day_before(self, moment: datetime) -> str:
        days = (moment.date() - self.starts_at.date()).days
        return self._day_of(moment) if days else ""

    def _day_of(self, moment: datetime) -> str:
        days = (moment.date() - self.starts_at.date()).days
        if self.day_told:
            return f"{_DAYS[moment.weekday()][:3]} "
        return f"day {days + 1}, "


def day_in_words(day: date, units: Units) -> str:
    """`Sunday, June 28, 2026`, or `Sunday, 28 June 2026` in metric manner."""
    name, month = _DAYS[day.weekday()], _MONTHS[day.month - 1]
    if units == "metric":
        return f"{name}, {day.day} {month} {day.year}"
    return f"{name}, {month} {day.day}, {day.year}"


def _plain(moment: datetime, units: Units) -> str:
    hour = moment.hour if units == "metric" else (moment.hour - 1) % _NOON_H + 1
    return f"{hour}:{moment.minute:02d}"


def plan_clock(plan: Plan, units: Units) -> WallClock:
    """The one clock of a plan's papers, from its start to the last moment they name."""
    last = max((field.end_min for field in plan.fields), default=0.0)
    for wait in plan.clocks:
        if wait.begins_min is not None:
            continue  # days later, or the life of an edge: not a moment of this day
        ends = [field.end_min for field in plan.fields if field.coat == wait.coat]
        last = max(last, max(ends, default=0.0) + (wait.high_min or wait.low_min))
    stand_in = any(g.name == "starts_at" and g.rank == "guess" for g in plan.grounds)
    clock = wall_clock(plan.starts_at, last_min=last, units=units)
    return replace(clock, day_told=clock.day_told and not stand_in)


def wall_clock(starts_at: str, *, last_min: float, units: Units) -> WallClock:
    """A clock that runs from `starts_at` (ISO 8601) for `last_min` minutes.

    US manner counts to twelve and names am and pm only where a time could
    be taken for another: from half a day on, past midnight, or after a start
    that is not in the working day.
    """
    start = datetime.fromisoformat(starts_at)
    end = start + timedelta(minutes=last_min)
    plain_day = (
        start.date() == end.date()
        and last_min < _NOON_H * 60
        and _MORNING_H <= start.hour < _EVENING_H
    )
    return WallClock(
        starts_at=start,
        units=units,
        half_day_words=units == "us" and not plain_day,
        day_told=starts_at != STARTS_AT,
    )
