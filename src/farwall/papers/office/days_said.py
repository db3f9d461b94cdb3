"""Days on a paper, in its language: `Thursday, May 14, 2026`, `Thu 14 May`."""

from __future__ import annotations

from datetime import date, datetime

from farwall.papers.days_words import time_words
from farwall.papers.wall_clock import Units
from farwall.phrasebook import Language

_DAYS: dict[Language, tuple[str, ...]] = {
    "en": ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
    "es": ("lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"),
}
_MONTHS: dict[Language, tuple[str, ...]] = {
    "en": (
        "January", "February", "March", "April", "May", "June", "July", "August", "September",
        "October", "November", "December",
    ),
    "es": (
        "enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre",
        "octubre", "noviembre", "diciembre",
    ),
}  # fmt: skip


def whole_day(day: date, units: Units, language: Language) -> str:
    """`Thursday, May 14, 2026`; `Thursday, 14 May 2026`; `jueves 14 de mayo de 2026`."""
    name, month = _DAYS[language][day.weekday()], _MONTHS[language][day.month - 1]
    if language == "es":
        return f"{name} {day.day} de {month} de {day.year}"
    if units == "metric":
        return f"{name}, {day.day} {month} {day.year}"
    return f"{name}, {month} {day.day}, {day.year}"


def short_day(day: date, language: Language) -> str:
    """`Thu 14 May`, `jue 14 may`."""
    name, month = _DAYS[language][day.weekday()], _MONTHS[language][day.month - 1]
    return f"{name[:3]} {day.day} {month[:3]}"


def dated(day: date, units: Units, language: Language) -> str:
    """`May 14, 2026`, `14 May 2026`, `14 may 2026`: for what lies weeks away."""
    month = _MONTHS[language][day.month - 1][:3]
    if language == "en" and units == "us":
        return f"{month} {day.day}, {day.year}"
    return f"{day.day} {month} {day.year}"


def short_moment(at: datetime, units: Units, language: Language) -> str:
    """`Thu 14 May, 2:15 pm`."""
    return f"{short_day(at.date(), language)}, {time_words(at, units)}"
