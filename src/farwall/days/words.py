"""Days and times in words, whatever the machine's language."""

from __future__ import annotations

from datetime import date, datetime

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def date_words(day: date) -> str:
    """`Thu 14 May`."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def clock_words(at: datetime) -> str:
    """`7:30`."""
    return f"{at.hour}:{at.minute:02d}"
