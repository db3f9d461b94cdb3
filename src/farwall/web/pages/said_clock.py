"""Minutes of the plan as times, with the day's and the month's names in the page's language."""

from __future__ import annotations

from dataclasses import fields
from datetime import datetime

from farwall.papers.wall_clock import WallClock
from farwall.web.words import said

_NOON_H = 12


class SaidClock(WallClock):
    """A wall clock that asks for its words when it is read, so that it may be kept."""

    def day_word(self, moment: datetime, *, parts: int = 3) -> str:
        """`Thu 14 May`, `Thu 14`, `14` by how many parts; from the start where no day is set."""
        if not self.day_told:
            return said("day-n", n=(moment.date() - self.starts_at.date()).days + 1)
        weekday, month = said(f"weekday-{moment.weekday()}"), said(f"month-{moment.month}")[:3]
        if parts < 3:
            return f"{weekday} {moment.day}" if parts > 1 else str(moment.day)
        return said("day-short", weekday=weekday, day=moment.day, month=month)

    def half_word(self, moment: datetime) -> str:
        """` am` where that has to be told."""
        return self._half(moment)

    def span(self, start_min: float, end_min: float) -> str:
        """`9:10 to 9:42`; one time where both are the same to the minute."""
        start, end = self.at(start_min), self.at(end_min)
        if start == end:
            return self.time(start_min)
        last = self.time(end_min)
        if start.date() == end.date():
            last = f"{self.bare(end_min)}{self._half(end)}"
        return said("from-to", start=self.time(start_min), end=last)

    def _half(self, moment: datetime) -> str:
        return f" {said('am' if moment.hour < _NOON_H else 'pm')}" if self.halves(moment) else ""

    def _day_before(self, moment: datetime) -> str:
        days = (moment.date() - self.starts_at.date()).days
        if days == 0:
            return ""
        told = said(f"weekday-{moment.weekday()}") if self.day_told else said("day-n", n=days + 1)
        near = abs(days) < 6 or not self.day_told
        return f"{told} " if near else f"{told} {moment.day} "


def said_clock(clock: WallClock) -> SaidClock:
    """The same clock, its words in the page's language."""
    return SaidClock(**{one.name: getattr(clock, one.name) for one in fields(clock)})
