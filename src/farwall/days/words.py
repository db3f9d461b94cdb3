"""Days and times in words, whatever the machine's language."""

from __future__ import annotations

from datetime import date

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def date_words(day: date) -> str:
    """`Thu 14 May`."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"
