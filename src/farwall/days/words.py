"""Days and times in words, whatever the machine's language."""

from __future__ import annotations

from datetime import date, datetime

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_NOON_H = 12
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def date_words(day: date) -> str:
    """`Thu 14 May`."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def clock_words(at: datetime, *, us: bool = False) -> str:
    """`7:30`; `7:30 pm` in US manner."""
    if us:
        return f"{(at.hour - 1) % 12 + 1}:{at.minute:02d} {'am' if at.hour < _NOON_H else 'pm'}"
    return f"{at.hour}:{at.minute:02d}"
