"""Days and spans as people type them: `11 Feb 2027`, `2/28/2027`, `3 months`, `un año`."""

from __future__ import annotations

import re
import unicodedata
from datetime import date

_NAMES = (
    "jan ene", "feb", "mar", "apr abr", "may", "jun", "jul", "aug ago", "sep set", "oct", "nov",
    "dec dic",
)  # fmt: skip
_MONTH = {one: n for n, both in enumerate(_NAMES, 1) for one in both.split()}
_MONTHS = {"month": 1.0, "mo": 1.0, "mes": 1.0, "year": 12.0, "yr": 12.0, "ano": 12.0}
_MONTHS |= {"week": 7 / 30.44, "wk": 7 / 30.44, "semana": 7 / 30.44}
_ONE = {"a": "1", "an": "1", "one": "1", "un": "1", "una": "1", "uno": "1"}


def plain(text: str) -> str:
    """A day as `2027-02-11` or a span as its months, `3`; a text that is neither stays as it is.

    A day in figures of which two days could be meant (`2/11/2027`) stays too: who reads it asks.
    """
    told = unicodedata.normalize("NFKD", text.lower())
    told = "".join(one for one in told if not unicodedata.combining(one))
    words = re.findall(r"[a-z]+|\d+(?:[.,]\d+)?(?![/.,\d])|\d+", told)
    day = _by_name(words) or _by_figures(told)
    return day.isoformat() if day is not None else _span(words) or text


def _span(words: list[str]) -> str:
    """Months of `3 months`, `half a year` is none; empty where it is no span."""
    words = [_ONE.get(one, one) for one in words if one not in {"ago", "hace", "since", "desde"}]
    if len(words) != 2:
        return ""
    number, unit = words
    months = _MONTHS.get(unit) or _MONTHS.get(unit.removesuffix("s")) or _MONTHS.get(unit[:-2])
    if months is None or not number[0].isdigit():
        return ""
    return f"{float(number.replace(',', '.')) * months:.4g}"


def _by_name(words: list[str]) -> date | None:
    """The day of `11 Feb 2027`, `February 11, 2027`, `11 de febrero de 2027`."""
    words = [one for one in words if one not in {"de", "del", "of", "th", "st", "nd", "rd"}]
    named = [n for one in words if one.isalpha() and (n := _MONTH.get(one[:3]))]
    figures = [one for one in words if one.isdigit()]
    if len(words) != 3 or len(named) != 1 or len(figures) != 2:
        return None
    day, year = figures
    return _day(year, named[0], day)


def _by_figures(told: str) -> date | None:
    """The day of figures that can mean one day only: the year first, or a day beyond 12."""
    found = re.fullmatch(r"\s*(\d{1,4})[-/. ](\d{1,2})[-/. ](\d{1,4})\s*", told)
    if found is None:
        return None
    first, second, last = found.groups()
    if len(first) == 4:
        return _day(first, int(second), last)
    days = {_day(last, int(second), first), _day(last, int(first), second)} - {None}
    return days.pop() if len(days) == 1 and len(last) == 4 else None


def _day(year: str, month: int, day: str) -> date | None:
    try:
        return date(int(year), month, int(day))
    except ValueError:
        return None
