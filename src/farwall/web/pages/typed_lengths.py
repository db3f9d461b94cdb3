"""Lengths as people type them, for forms without script.

`web/office/draw/pure/lengths.ts` is its twin; the same cases try both.
"""

from __future__ import annotations

import re
from fractions import Fraction

from farwall.units import M_PER_FT, M_PER_IN

_NUMBER = r"\d+(?:[.,]\d+)?|[.,]\d+"
_FEET = r"'|′|’|ft\b\.?|feet\b|foot\b|ft(?=\d)|pies?\b"
_INCHES = r"\"|″|”|''|in\b\.?|inch\b|inches\b|pulg(?:adas?)?\b\.?"
_SHARE = r"\d+\s*/\s*\d+|[⅛¼⅜½⅝¾⅞]"
_PARTS = {"⅛": 1 / 8, "¼": 1 / 4, "⅜": 3 / 8, "½": 1 / 2, "⅝": 5 / 8, "¾": 3 / 4, "⅞": 7 / 8}
_METRIC = {"m": 1.0, "cm": 0.01, "mm": 0.001}
_FEET_TOLD = re.compile(
    rf"(?:({_NUMBER}) ?(?:{_FEET}))?"
    rf"(?: ?-? ?(?:({_NUMBER})?(?: ?-? ?({_SHARE}))? ?({_INCHES})?))?"
)
_LONGEST_M = 5000.0


def length_of(text: str, *, us: bool = True) -> float | None:
    """Metres of a typed length: `12' 6 1/2"`, `12ft6`, `3.81 m`; None for none.

    us: whether a bare number is feet, else it is metres.
    """
    told = " ".join(text.lower().split())[:60]
    found = _metric(told)
    if found is None:
        found = _bare(told, M_PER_FT if us else 1.0)
    if found is None:
        found = _feet(told)
    return found if found is not None and 0 <= found <= _LONGEST_M else None


def _number(text: str) -> float:
    return float(text.replace(",", "."))


def _metric(told: str) -> float | None:
    found = re.fullmatch(rf"({_NUMBER}) ?(mm|cm|m)\.?", told)
    return None if found is None else _number(found[1]) * _METRIC[found[2]]


def _bare(told: str, unit_m: float) -> float | None:
    found = re.fullmatch(rf"({_NUMBER})", told)
    return None if found is None else _number(found[1]) * unit_m


def _feet(told: str) -> float | None:
    found = _FEET_TOLD.fullmatch(told)
    if found is None or (found[1] is None and found[4] is None):
        return None
    if found[1] is None and found[2] is None and found[3] is None:
        return None
    share = _share(found[3])
    if share is None:
        return None
    return _number(found[1] or "0") * M_PER_FT + (_number(found[2] or "0") + share) * M_PER_IN


def _share(text: str | None) -> float | None:
    if text is None:
        return 0.0
    if text in _PARTS:
        return _PARTS[text]
    above, below = (int(part) for part in text.split("/"))
    return float(Fraction(above, below)) if below else None
