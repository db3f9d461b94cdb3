"""Moments of a calendar in words: `7:30`, `7:30 am` where it matters, `Thu 14 May, 2:15 pm`."""

from __future__ import annotations

from datetime import datetime

from farwall.days.words import date_words
from farwall.units import clock_words


def time_words(at: datetime, units: str) -> str:
    """`2:15 pm` in US manner, `14:15` in metric."""
    return clock_words(at, us=units == "us")


def moment_words(at: datetime, units: str) -> str:
    """`Thu 14 May, 2:15 pm`."""
    return f"{date_words(at)}, {time_words(at, units)}"
