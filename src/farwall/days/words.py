"""Days and times in words, whatever the machine's language."""

from __future__ import annotations

from datetime import date, datetime

from farwall.units import clock_words

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def date_words(day: date) -> str:
    """`Thu 14 May`."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def at_words(at: datetime, *, us: bool) -> str:
    """`Mon 4 May 7:30 am`; us: hours by am and pm."""
    return f"{date_words(at)} {clock_words(at, us=us)}"
