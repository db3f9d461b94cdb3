"""Days and moments of a calendar in words: `Thu 14 May`, `7:30`, `7:30 am` where it matters."""

from __future__ import annotations

from datetime import date, datetime

from farwall.units import clock_words

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day_words(day: date) -> str:
    """`Thu 14 May`, whatever the machine's language."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def time_words(at: datetime, units: str) -> str:
    """`2:15 pm` in US manner, `14:15` in metric."""
    return clock_words(at, us=units == "us")


def moment_words(at: datetime, units: str) -> str:
    """`Thu 14 May, 2:15 pm`."""
    return f"{day_words(at)}, {time_words(at, units)}"
