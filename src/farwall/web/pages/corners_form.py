"""What the page of a photo's corners is told: places in pixels, the sheet, a scale or a length."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import isfinite
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point
from farwall.readers.hints import Hints, KnownLength
from farwall.readers.photo.papers import PAPERS_MM, paper_mm
from farwall.readers.photo.ratio import m_per_mm
from farwall.web.pages.typed_lengths import length_of
from farwall.web.words import said

Json = dict[str, Any]
CORNERS = ("ul", "ur", "lr", "ll")
"""Upper left, upper right, lower right, lower left: clockwise."""
ENDS = ("from", "to")
PLACES = (*CORNERS, *ENDS)
FIELDS = (*(f"{place}_{axis}" for place in PLACES for axis in "xy"), "paper", "drawn", "length")
PAPERS = tuple(PAPERS_MM)
_MARGIN = 0.12


def begun(photo: Mapping[str, Any]) -> dict[str, str]:
    """The fields as a page first shows them: what was told before, else what was seen."""
    told = {key: str(photo.get("told", {}).get(key, "")) for key in FIELDS}
    wide, high = float(photo["width_px"]), float(photo["height_px"])
    low, far = _MARGIN, 1 - _MARGIN
    corners = photo.get("corners") or [
        [wide * x, high * y] for x, y in ((low, low), (far, low), (far, far), (low, far))
    ]
    ends = [[wide * x, high * 0.5] for x in (0.35, 0.65)]
    for place, (x, y) in zip(PLACES, [*corners, *ends], strict=True):
        for axis, value in (("x", x), ("y", y)):
            key = f"{place}_{axis}"
            told[key] = told[key] or f"{value:.0f}"
    return told


def hints_of(told: Mapping[str, str]) -> Hints:
    """What was told. Raises Refused with every mistake."""
    mistakes: list[Mistake] = []
    corners = _places(told, CORNERS, mistakes)
    paper = ratio = None
    if told.get("paper"):
        try:
            paper = paper_mm(told["paper"])
        except Refused:
            mistakes.append(Mistake(said("corners-paper"), said("corners-paper-unknown")))
    if told.get("drawn"):
        try:
            ratio = m_per_mm(told["drawn"])
        except Refused:
            mistakes.append(Mistake(said("corners-drawn"), said("corners-drawn-unknown")))
        if paper is None:
            mistakes.append(Mistake(said("corners-drawn"), said("corners-drawn-no-paper")))
    length = _length(told, mistakes)
    if ratio is not None and length is not None:
        mistakes.append(Mistake(said("corners-length"), said("corners-scale-twice")))
    if mistakes:
        raise Refused(*mistakes)
    return Hints(ratio, tuple(corners), paper, length)


def _length(told: Mapping[str, str], mistakes: list[Mistake]) -> KnownLength | None:
    if not told.get("length"):
        return None
    metres = length_of(told["length"])
    if metres is None or not 0.1 <= metres <= 500:
        mistakes.append(Mistake(said("corners-length"), said("corners-length-none")))
        return None
    ends = _places(told, ENDS, mistakes)
    return KnownLength(ends[0], ends[1], metres) if len(ends) == 2 else None


def _places(told: Mapping[str, str], places: Sequence[str], mistakes: list[Mistake]) -> list[Point]:
    found: list[Point] = []
    for place in places:
        try:
            x, y = (float(told.get(f"{place}_{axis}", "").replace(",", ".")) for axis in "xy")
        except ValueError:
            x = y = float("nan")
        if isfinite(x) and isfinite(y) and max(abs(x), abs(y)) < 1e6:
            found.append((x, y))
        else:
            mistakes.append(Mistake(said(f"corners-{place}"), said("corners-no-place")))
    return found
