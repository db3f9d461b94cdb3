"""Scales printed in words: `1:50`, `1/4" = 1'-0"`, `SCALE 1/8 IN = 1 FT`, `not to scale`.

A printed scale is true only while the page has the size that it was drawn for. So it is evidence,
to be weighed against what else the page tells.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Words

_WORD = r"(?:\b(?:scale|scales|esc|escala|echelle|échelle|massstab|maßstab|schaal|scala)\b|\bM\b)"
_RATIO = re.compile(
    rf"({_WORD})?[\s.:=]*\b1\s*([:/])\s*(\d{{1,5}})\b(?!\s*[\"”″'’′/])", re.IGNORECASE
)
_IN_MARK = r"(?:[\"”″]|''|in(?:ch(?:es)?)?\b\.?)"
_INCHES = rf"(\d+\s+\d+\s*/\s*\d+|\d+\s*/\s*\d+|\d+(?:\.\d+)?)\s*{_IN_MARK}"
_MORE = rf"(?:\s*-?\s*(\d+(?:\.\d+)?)\s*{_IN_MARK})?"
_FEET = rf"(\d+(?:\.\d+)?)\s*(?:['’′]|f(?:ee|oo)?t\b\.?){_MORE}"
_IMPERIAL = re.compile(rf"{_INCHES}\s*(?:=|:|equals|to)\s*{_FEET}", re.IGNORECASE)
_METRIC = re.compile(
    r"(\d+(?:[.,]\d+)?)\s*(mm|cm)\s*(?:=|:|equals|to)\s*(\d+(?:[.,]\d+)?)\s*(m|cm)\b", re.IGNORECASE
)
_NOT = re.compile(r"\bnot\s+to\s+scale\b|\bN\.?\s?T\.?\s?S\b", re.IGNORECASE)
_METRES = {"mm": 0.001, "cm": 0.01, "m": 1.0}
_DRAWN_AT = {5, 10, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 1000}
"""Ratios taken for a scale with no such word beside them; 1:12 and 1:20 may be slopes of ramps."""
_SAME = 1e-6


@dataclass(frozen=True)
class Printed:
    """A printed scale: how many times larger the floor is than the drawing, as it is lettered."""

    text: str
    ratio: float
    at: Point


def printed_scales(words: Sequence[Words]) -> list[Printed]:
    """Each scale printed on the page once, in the order of the page."""
    found: list[Printed] = []
    for line in words:
        for text, ratio in _scales_in(line.text):
            if not any(abs(other.ratio / ratio - 1) < _SAME for other in found):
                found.append(Printed(text, ratio, line.at))
    return found


def not_to_scale(words: Sequence[Words]) -> bool:
    """Whether the page says of anything on it that it is not to scale."""
    return any(_NOT.search(line.text) for line in words)


def _scales_in(text: str) -> list[tuple[str, float]]:
    text = text[:200]
    found = []
    for match in _IMPERIAL.finditer(text):
        inches = sum((_fraction(part) for part in match[1].split(" ") if part), start=Fraction(0))
        feet = float(match[2]) * 12 + float(match[3] or 0)
        if inches > 0 and feet > 0:
            found.append((match[0].strip(), feet / float(inches)))
    for match in _METRIC.finditer(text):
        paper, floor = (float(match[i].replace(",", ".")) for i in (1, 3))
        if paper > 0 and floor > 0:
            ratio = floor * _METRES[match[4].lower()] / (paper * _METRES[match[2].lower()])
            found.append((match[0].strip(), ratio))
    if not found:
        found = [(f"1:{match[3]}", float(match[3])) for match in _RATIO.finditer(text)
                 if _is_scale(match)]  # fmt: skip
    return [(said, ratio) for said, ratio in found if 1 <= ratio <= 20_000]


def _is_scale(match: re.Match[str]) -> bool:
    """A ratio with a word for scale before it, or one that drawings have and slopes have not."""
    ratio = int(match[3])
    if match[1]:
        return ratio >= 1
    return match[2] == ":" and ratio in _DRAWN_AT


def _fraction(text: str) -> Fraction:
    try:
        return Fraction(text.replace(" ", ""))
    except (ValueError, ZeroDivisionError):
        return Fraction(0)
