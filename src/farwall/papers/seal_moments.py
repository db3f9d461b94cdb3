"""Moments of a seal day's papers: hours near the day, days alone where the hour says nothing."""

from __future__ import annotations

from datetime import datetime

from farwall.days.words import date_words
from farwall.papers.wall_clock import WallClock

DAYS_MIN = 4 * 24 * 60.0
"""Beyond it the hour of a wait says nothing."""
_NOON_H = 12


def day_moment(clock: WallClock, minutes: float, *, hour: bool = True) -> str:
    """`Thu 21 May 9:00 am`: a moment days on; `day 3` where no day was told. In English, for what
    is said with it is told whole."""
    moment = clock.at(minutes)
    days = (moment.date() - clock.starts_at.date()).days
    day = date_words(moment) if clock.day_told else f"day {days + 1}"
    if not hour:
        return day
    half = "" if clock.units == "metric" else " am" if moment.hour < _NOON_H else " pm"
    return f"{day}{' ' if clock.day_told else ', '}{clock.bare(minutes)}{half}"


def moment_at(moment: str, clock: WallClock) -> str:
    """The same of a moment in ISO 8601."""
    return day_moment(clock, minutes_of(moment, clock))


def minutes_of(moment: str, clock: WallClock) -> float:
    """Minutes from the first stroke to a moment in ISO 8601."""
    return (datetime.fromisoformat(moment) - clock.starts_at).total_seconds() / 60
