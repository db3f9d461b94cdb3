"""Days and times as a screen says them, in the language of the request."""

from __future__ import annotations

from datetime import date, datetime

from farwall.papers.wall_clock import Units
from farwall.units import clock_words
from farwall.web.words import said


def day_told(day: date) -> str:
    """`Thu 14 May`."""
    return said(
        "firm-day", weekday=said(f"weekday-{day.weekday()}"), day=day.day,
        month=said(f"firm-month-{day.month}"),
    )  # fmt: skip


def date_told(day: date) -> str:
    """`14 May 2026`."""
    month = said(f"firm-month-{day.month}")
    return said("firm-date", day=day.day, month=month, year=day.year)


def clock_told(at: datetime, units: Units = "us") -> str:
    """`2:15 pm`, `14:15`, `2:15 p. m.` in Spanish."""
    return halves_told(clock_words(at, us=units == "us"))


def halves_told(words: str) -> str:
    """Words with `am` or `pm` behind a time, that half of the day in the language asked for."""
    for half in ("am", "pm"):
        words = words.replace(f" {half}", f" {said(half)}")
    return words


def moment_told(at: datetime, units: Units = "us") -> str:
    """`Thu 14 May, 2:15 pm`."""
    return f"{day_told(at)}, {clock_told(at, units)}"


def stamp_told(at: str, units: Units = "us") -> str:
    """A moment in ISO 8601 as `Thu 14 May 2026, 2:15 pm`; what is none as it stands."""
    try:
        moment = datetime.fromisoformat(at)
    except ValueError:
        return at
    return f"{said(f'weekday-{moment.weekday()}')} {date_told(moment)}, {clock_told(moment, units)}"


def zoned_told(at: str, units: Units = "us") -> str:
    """As `stamp_told`, with its zone behind it: for moments of the firm, which has no house's."""
    try:
        zone = datetime.fromisoformat(at).tzname()
    except ValueError:
        zone = None
    return " ".join([stamp_told(at, units), *([zone] if zone else [])])
