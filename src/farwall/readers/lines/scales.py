"""What a sheet tells of its own scale: each piece of evidence as metres that one unit stands for.

Lettered dimensions, stated room sizes, door size codes beside swings, and whatever the reader of
the file format adds (a printed scale, a drawn bar) are weighed against each other, never added up.
A difference counts when it is larger than 1 % and larger than the lettering's own rounding.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from itertools import permutations
from math import hypot, isfinite

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.rays import free_spans
from farwall.readers.lines.sheet import Role, Sheet, Words
from farwall.readers.sizes import door_code, length_m, rounding_m, stated_size

METRES = {"in": 0.0254, "ft": 0.3048, "mm": 0.001, "cm": 0.01, "m": 1.0}
APART = 0.01
"""Two scales that differ by more are both shown."""
_BARE = re.compile(r"\d{1,6}(?:[.,]\d{1,3})?")
_CLOSE = 0.02  # within one kind: a drawn length and its lettering differ by rounding only
_MOST_CODES, _CALIBRATION = 5, 3  # weights: many doors are one habit, a scale is set on purpose
_FEW_BARE = 3


@dataclass(frozen=True)
class Estimate:
    """One lettered length over the length drawn for it; `rounding_m` is half its last digit."""

    kind: str
    said_m: float
    drawn: float
    rounding_m: float = 0.0
    text: str = ""
    at: Point | None = None

    @property
    def m_per_unit(self) -> float:
        """The scale that it tells."""
        return self.said_m / self.drawn


@dataclass(frozen=True)
class Evidence:
    """Estimates of one kind that agree, or one calibration; `slack` is their rounding, a share."""

    kind: str
    m_per_unit: float
    weight: float
    slack: float
    source: str
    members: tuple[Estimate, ...] = ()


def unit_near(m_per_unit: float, within: float) -> str:
    """The unit of length that a scale is, or nothing."""
    near = [(abs(metres / m_per_unit - 1), unit) for unit, metres in METRES.items()]
    return min(near)[1] if min(near)[0] <= within else ""


def find_evidence(sheet: Sheet) -> list[Evidence]:
    """All evidence on the sheet but its header's word and what is merely likely."""
    found = [
        Evidence("calibration", c.m_per_unit, _CALIBRATION, 0.0, c.source)
        for c in sheet.calibrations
        if isfinite(c.m_per_unit) and c.m_per_unit > 0
    ]
    found += _agreeing([e for e in map(_dimension, _lettered(sheet)) if e])
    found += _agreeing(_stated(sheet))[:2]
    codes = [e for words in sheet.words for e in _codes(sheet, words)]
    return found + _agreeing(codes)[:1]


def bare_scale(sheet: Sheet) -> Evidence | None:
    """What numbers without a unit tell by custom: four digits are millimetres, 3.50 is metres.

    Common practice of metric drawings, no source; to be told wherever it is followed.
    """
    found = []
    for text, length, at in _lettered(sheet):
        if _BARE.fullmatch(text):
            unit = 0.001 if re.fullmatch(r"\d{4,5}", text) else 1.0
            if unit == 0.001 or re.fullmatch(r"\d{1,2}[.,]\d{2,3}", text):
                said = float(text.replace(",", "."))
                found.append(Estimate("bare", said * unit, length, unit / 2, text, at))
    groups = _agreeing(found, fewest=_FEW_BARE)
    return groups[0] if groups else None


def _lettered(sheet: Sheet) -> list[tuple[str, float, Point | None]]:
    return [(m.text.strip(), m.length, m.at) for m in sheet.measures if m.length > 0]


def _dimension(lettered: tuple[str, float, Point | None]) -> Estimate | None:
    text, length, at = lettered
    if _BARE.fullmatch(text):
        said = float(text.replace(",", "."))
        return _bare("dimension", said, length, text, at)
    said_m = length_m(text)
    if not said_m:
        return None
    return Estimate("dimension", said_m, length, rounding_m(text), text, at)


def _bare(kind: str, said: float, drawn: float, text: str, at: Point | None) -> Estimate | None:
    """A number without a unit: when it differs from the drawn length, one pair of units fits.

    `3.50` over a line of 3500 units: metres lettered, millimetres drawn.
    """
    for drawn_unit, lettered_unit in permutations(METRES, 2):
        ratio = METRES[drawn_unit] / METRES[lettered_unit]
        if said > 0 and abs(said / drawn / ratio - 1) < _CLOSE / 2:
            metres = METRES[lettered_unit]
            return Estimate(kind, said * metres, drawn, _CLOSE * drawn * metres, text, at)
    return None


def _stated(sheet: Sheet) -> list[Estimate]:
    """Stated room sizes against the free spans between the walls around, where both sides fit."""
    found = []
    for words in sheet.words:
        size = stated_size(words.text)
        sides = (size.sides_m or size.bare) if size else None
        spans = free_spans(sheet, words.at, words.turned_deg) if sides else None
        if size and sides and spans:
            pairs = [zip(said, spans, strict=True) for said in (sides, sides[::-1])]
            both = [
                [_side(*pair, words, bare=size.bare is not None) for pair in two] for two in pairs
            ]
            fits = [two for two in both if two[0] and two[1] and _agree(two[0], two[1])]
            found += [one for one in fits[0] if one] if fits else []
    return found


def _side(said: float, span: float, words: Words, *, bare: bool) -> Estimate | None:
    if not said > 0 or not span > 0:
        return None
    if not bare:
        rounding = rounding_m(words.text)
        return Estimate("stated size", said, span, rounding, words.text, words.at)
    return _bare("stated size", said, span, words.text, words.at)


def _agree(first: Estimate, second: Estimate) -> bool:
    return abs(first.m_per_unit / second.m_per_unit - 1) < _CLOSE


def _codes(sheet: Sheet, words: Words) -> list[Estimate]:
    """Every width that a size code can mean, over the radius of each swing beside it."""
    code = door_code(words.text)
    if not code:
        return []
    near = [
        s for s in sheet.swings if s.role is not Role.FIXTURE and _beside(s.centre, words, s.radius)
    ]
    return [
        Estimate("size code", width, swing.radius, 0.0127, words.text, words.at)
        for swing in near
        for width, _ in code.sizes_m
    ]


def _beside(point: Point, words: Words, radius: float) -> bool:
    return 0 < hypot(point[0] - words.at[0], point[1] - words.at[1]) < 1.5 * radius


def _agreeing(estimates: Sequence[Estimate], *, fewest: int = 2) -> list[Evidence]:
    """Groups of one kind that agree within rounding, the largest first.

    A group smaller than `fewest` counts only where it measures a unit of length.
    """
    rest = sorted((e for e in estimates if 1e-9 < e.m_per_unit < 1e9), key=lambda e: e.m_per_unit)
    found: list[Evidence] = []
    while rest:
        low, high = _largest(rest)
        group, rest = rest[low:high], rest[:low] + rest[high:]
        one = _evidence(group)
        if len(group) >= fewest or unit_near(one.m_per_unit, _CLOSE) or one.kind == "dimension":
            found.append(one)
    return sorted(found, key=lambda e: (-e.weight, e.m_per_unit))


def _largest(ordered: Sequence[Estimate]) -> tuple[int, int]:
    """The longest run of estimates that are as good as one."""
    best, end = (0, 1), 0
    for start, first in enumerate(ordered):
        end = max(end, start)
        while end < len(ordered) and ordered[end].m_per_unit <= first.m_per_unit * (1 + _CLOSE):
            end += 1
        if end - start > best[1] - best[0]:
            best = start, end
    return best


def _evidence(group: Sequence[Estimate]) -> Evidence:
    said, drawn = sum(e.said_m for e in group), sum(e.drawn for e in group)
    kind, count = group[0].kind, len(group)
    if kind == "stated size":
        count = max(1, count // 2)
    slack = sum(e.rounding_m for e in group) / said
    weight = min(count, _MOST_CODES) if kind == "size code" else count
    return Evidence(kind, said / drawn, weight, slack, _counted(kind, count), tuple(group))


def _counted(kind: str, count: int) -> str:
    names = {
        "dimension": ("lettered dimension", "lettered dimensions"),
        "bare": ("lettered number without a unit", "lettered numbers without a unit"),
        "size code": ("door size code", "door size codes"),
        "stated size": ("stated room size", "stated room sizes"),
    }
    return f"{count} {names[kind][count != 1]}"


@dataclass(frozen=True)
class Scale:
    """Evidence of one scale, all its kinds together."""

    evidence: tuple[Evidence, ...]

    @property
    def weight(self) -> float:
        """How much speaks for it."""
        return sum(e.weight for e in self.evidence)

    @property
    def slack(self) -> float:
        """The rounding of its most exact evidence, as a share."""
        return min(e.slack for e in self.evidence)

    @property
    def m_per_unit(self) -> float:
        """The figure of its first evidence: calibrations stand before what is lettered."""
        return self.evidence[0].m_per_unit

    @property
    def words(self) -> str:
        """What speaks for it."""
        return ", ".join(e.source for e in self.evidence)

    def is_near(self, other: float, slack: float = 0.0) -> bool:
        """Whether another scale differs by no more than 1 % or rounding."""
        return abs(other / self.m_per_unit - 1) <= max(APART, self.slack + slack)


def grouped(evidence: Iterable[Evidence]) -> list[Scale]:
    """Evidence that agrees, brought together; the weightiest scale first."""
    scales: list[Scale] = []
    for one in evidence:
        for index, scale in enumerate(scales):
            if scale.is_near(one.m_per_unit, one.slack):
                scales[index] = Scale((*scale.evidence, one))
                break
        else:
            scales.append(Scale((one,)))
    return sorted(scales, key=lambda s: (-s.weight, s.m_per_unit))
