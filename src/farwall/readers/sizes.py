"""Sizes as people write them on drawings, turned into metres.

Stated room sizes (`13'8 x 14'`), areas (`148 sq ft`), lengths (`58'-0"`) and
the size codes of doors and windows (`2668`: 2 ft 6 in wide, 6 ft 8 in high;
common practice of US drawings, no source).
"""

from __future__ import annotations

import re

from farwall.nouns import dataclass
from farwall.units import M2_PER_FT2, M_PER_FT, M_PER_IN

_FRACTION = r"\d+\s*/\s*\d+"
_FEET = (
    r"(?P<ft>\d{1,3})\s*['’′]\s*-?\s*"
    rf"(?:(?P<inch>\d{{1,2}}(?:\.\d+)?)(?:[\s-]+(?P<part>{_FRACTION}))?|(?P<only>{_FRACTION}))?"
    r"\s*(?:[\"”″]|'')?"
)
_INCHES = rf"(?P<in2>\d{{1,4}}(?:\.\d+)?)(?:[\s-]+(?P<part2>{_FRACTION}))?\s*(?:[\"”″]|'')"
_PLAIN = r"(?P<number>\d{1,5}(?:[.,]\d{1,3})?)\s*(?P<unit>mm|cm|m)?"
_LENGTH = re.compile(rf"\s*(?:{_FEET}|{_INCHES}|{_PLAIN})\s*", re.IGNORECASE)
_AREA = re.compile(
    r"(?P<number>\d[\d,]*(?:\.\d+)?)\s*"
    r"(?P<unit>m2|m²|sq\.?\s*m\b|sqm\b|sq\.?\s*ft\b|sqft\b|s\.?f\.?(?![a-z])|ft2|ft²)",
    re.IGNORECASE,
)
_CODE = re.compile(r"^\s*(?P<digits>\d{4,6})(?P<words>[\s\-].*|)$")
_METRES = {"mm": 0.001, "cm": 0.01, "m": 1.0}
_LONGEST_ROOM_M = 100.0


@dataclass(frozen=True)
class StatedSize:
    """A size written in a room: sides in metres, or None where no unit is written (`bare`)."""

    text: str
    sides_m: tuple[float, float] | None = None
    area_m2: float | None = None
    bare: tuple[float, float] | None = None


@dataclass(frozen=True)
class DoorCode:
    """A size code of a door or window: every way to read its digits, metres, then its words."""

    text: str
    sizes_m: tuple[tuple[float, float], ...]
    words: str


def length_m(text: str) -> float | None:
    """Metres in a written length such as `58'-0"` or `17.68 m`; None without a unit."""
    match = _LENGTH.fullmatch(text)
    return _metres(match) if match else None


def rounding_m(text: str) -> float:
    """Half of the last digit [m] of a written length: half an inch of `58'-0"`, 5 mm of 4.00 m."""
    metric = re.search(r"\d(?:[.,](?P<part>\d{1,3}))?\s*(?P<unit>mm|cm|m)\b", text, re.IGNORECASE)
    if metric:
        return _METRES[metric["unit"].lower()] / 2 / float(10 ** len(metric["part"] or ""))
    part = re.search(r"/\s*(\d+)", text)
    return M_PER_IN / 2 / (max(1, int(part[1])) if part else 1)


def stated_size(text: str) -> StatedSize | None:
    """The room size written in `text`, or None when it is no size."""
    cleaned = text.strip()
    area = _AREA.search(cleaned)
    if area:
        number = float(area["number"].replace(",", ""))
        metric = "m" in area["unit"].lower()
        return StatedSize(cleaned, area_m2=number * (1.0 if metric else M2_PER_FT2))
    return _sides(cleaned)


def door_code(text: str) -> DoorCode | None:
    """A door or window size code and the words behind it, or None."""
    match = _CODE.match(text)
    if not match:
        return None
    sizes = tuple(_sizes_of(match["digits"]))
    return DoorCode(text.strip(), sizes, match["words"].strip()) if sizes else None


def _sides(text: str) -> StatedSize | None:
    first = _LENGTH.match(text)
    if not first:
        return None
    cross = re.match(r"[xX×*]|by\b", text[first.end() :])
    if not cross:
        return None
    second = _LENGTH.match(text[first.end() + cross.end() :])
    if not second or len(text) - first.end() - cross.end() - second.end() > 2:
        return None
    sides = _metres(first), _metres(second)
    if sides[0] is not None and sides[1] is not None:
        return StatedSize(text, sides_m=(sides[0], sides[1]))
    if first["number"] and second["number"]:
        return _bare(text, (_plain(first), _plain(second)))
    return None


def _bare(text: str, numbers: tuple[float, float]) -> StatedSize | None:
    if min(numbers) <= 0:
        return None
    if min(numbers) >= 1000:  # four digits and no mark: millimetres
        return StatedSize(text, sides_m=(numbers[0] / 1000, numbers[1] / 1000))
    return StatedSize(text, bare=numbers) if max(numbers) < _LONGEST_ROOM_M else None


def _plain(match: re.Match[str]) -> float:
    return float(match["number"].replace(",", "."))


def _metres(match: re.Match[str]) -> float | None:
    if match["ft"]:
        inches = float(match["inch"] or 0) + _part(match["part"]) + _part(match["only"])
        return float(match["ft"]) * M_PER_FT + inches * M_PER_IN
    if match["in2"]:
        return (float(match["in2"]) + _part(match["part2"])) * M_PER_IN
    if match["unit"]:
        return _plain(match) * _METRES[match["unit"].lower()]
    return None


def _part(text: str | None) -> float:
    if not text:
        return 0.0
    above, below = text.split("/")
    return int(above) / int(below) if int(below) else 0.0


def _sizes_of(digits: str) -> list[tuple[float, float]]:
    """Every split of the digits into feet-inches by feet-inches that a door could have."""
    return [
        (width, height)
        for cut in range(2, len(digits) - 1)
        for width in _feet_inches(digits[:cut])
        for height in _feet_inches(digits[cut:])
        if 0.25 <= width <= 7.5 and 0.25 <= height <= 3.7
    ]


def _feet_inches(digits: str) -> list[float]:
    found = []
    for cut in range(1, len(digits)):
        feet, inches = digits[:cut], digits[cut:]
        if len(inches) <= 2 and int(inches) < 12 and not (len(inches) == 2 and int(inches) < 10):
            found.append(int(feet) * M_PER_FT + int(inches) * M_PER_IN)
    return found
