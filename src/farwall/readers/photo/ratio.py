"""The scale printed on a sheet, in words of the trade, as metres to a millimetre of paper."""

from __future__ import annotations

import re
from fractions import Fraction

from farwall.errors import Mistake, Refused

_RATIO = re.compile(r"\s*1\s*:\s*(\d{1,4}(?:\.\d+)?)\s*")
_TO_THE_FOOT = re.compile(
    r"\s*(?:(\d{1,2})\s+)?(\d{1,2}(?:\s*/\s*\d{1,2})?)\s*(?:in|\"|″|”)"
    r"(?:\s*=\s*1\s*(?:ft|'|′|’)(?:\s*-?\s*0\s*(?:in|\"|″|”))?)?\s*"
)
_MOST, _LEAST = 2000.0, 1.0


def m_per_mm(text: str) -> float:
    """Metres of house to a millimetre of paper: `1:50` is 0.05, `1/4in` (to the foot) 0.048.

    Raises Refused for other words.
    """
    ratio = _ratio(text)
    if ratio is None or not _LEAST <= ratio <= _MOST:
        what = f"“{text[:40]}” is no scale of a drawing."
        raise Refused(
            Mistake("--drawn", what, "Write 1:50, or 1/4in for a quarter inch to a foot.")
        )
    return ratio / 1000


def _ratio(text: str) -> float | None:
    plain = _RATIO.fullmatch(text)
    if plain:
        return float(plain[1])
    feet = _TO_THE_FOOT.fullmatch(text)
    if not feet:
        return None
    part = feet[2].replace(" ", "")
    if part.endswith("/0"):
        return None
    inches = Fraction(feet[1] or 0) + Fraction(part)
    return float(12 / inches) if inches else None
