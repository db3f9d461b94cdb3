"""Drawn bars: a row of numbers with a unit over a ticked line, each number at its own tick.

A bar grows and shrinks with its page, so it outlives a change of the page's size, which a printed
scale does not.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from math import cos, radians, sin

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.groups import numbered
from farwall.readers.lines.sheet import Sheet, Stroke, Words

_NUMBER = re.compile(r"(\d{1,5}(?:[.,]\d{1,3})?)\s*(\D{0,12})")
_UNITS = (
    (0.3048, re.compile(r"(?:feet|foot|ft)\b\.?|['’′]$", re.IGNORECASE)),
    (0.0254, re.compile(r"(?:inches|inch|in)\b\.?$|[\"”″]$", re.IGNORECASE)),
    (0.001, re.compile(r"(?:millimet(?:er|re)s?|mm)\b", re.IGNORECASE)),
    (0.01, re.compile(r"(?:centimet(?:er|re)s?|cm)\b", re.IGNORECASE)),
    (1.0, re.compile(r"(?:met(?:er|re)s?|metros|meter|m)\b\.?$", re.IGNORECASE)),
)
_IN_WORDS = {0.3048: "feet", 0.0254: "inches", 0.001: "mm", 0.01: "cm", 1.0: "metres"}
_FIT = 0.015  # of the bar: how far a tick may lie from where its number says
_NEAR = 0.35  # of the space between two numbers: how far a number may stand from its tick
_REACH = 6.0  # heights of a number: how far off the bar may lie
_MET = 0.1  # heights of a number: strokes so near hang together
_MOST_WORDS = 4000


@dataclass(frozen=True)
class Bar:
    """A drawn bar: its figure, its words, and the strokes and lettering that it is made of."""

    m_per_unit: float
    source: str
    strokes: tuple[Stroke, ...]
    words: frozenset[Words]


@dataclass(frozen=True)
class _Number:
    value: float
    tail: str
    along: float
    up: float
    words: Words


def find_bars(sheet: Sheet) -> list[Bar]:
    """The drawn bars of a sheet."""
    found = []
    for turned, numbers in _by_turning(sheet.words).items():
        for row in _rows(numbers):
            for part in _climbing(row):
                bar = _bar(sheet, part, turned)
                if bar:
                    found.append(bar)
    return found


def without(sheet_strokes: Sequence[Stroke], bars: Sequence[Bar]) -> tuple[Stroke, ...]:
    """The strokes that belong to no bar."""
    taken = {id(stroke) for bar in bars for stroke in bar.strokes}
    return tuple(stroke for stroke in sheet_strokes if id(stroke) not in taken)


def _by_turning(words: Sequence[Words]) -> dict[int, list[_Number]]:
    found: dict[int, list[_Number]] = {}
    for line in words[:_MOST_WORDS]:
        match = _NUMBER.fullmatch(line.text.strip())
        if match:
            turned = round(line.turned_deg) % 360
            along, up = _frame(line.at, turned)
            value = float(match[1].replace(",", "."))
            found.setdefault(turned, []).append(_Number(value, match[2].strip(), along, up, line))
    return found


def _rows(numbers: Sequence[_Number]) -> list[list[_Number]]:
    """Numbers on one line, from left to right."""
    rows: list[list[_Number]] = []
    for number in sorted(numbers, key=lambda n: n.up):
        if rows and number.up - rows[-1][-1].up < 0.5 * number.words.height:
            rows[-1].append(number)
        else:
            rows.append([number])
    return [sorted(row, key=lambda n: n.along) for row in rows if len(row) > 1]


def _climbing(row: Sequence[_Number]) -> list[list[_Number]]:
    """Parts of a row that begin at nought and climb."""
    parts: list[list[_Number]] = []
    for number in row:
        if number.value == 0:
            parts.append([number])
        elif parts and number.value > parts[-1][-1].value:
            parts[-1].append(number)
    return [part for part in parts if len(part) > 1]


def _bar(sheet: Sheet, numbers: Sequence[_Number], turned: int) -> Bar | None:
    first, last = numbers[0], numbers[-1]
    span = last.along - first.along
    unit = _unit(sheet.words, numbers, turned, span)
    if unit is None or span <= 0 or not _is_even(numbers):
        return None
    near = _strokes_near(sheet.strokes, numbers, turned, span)
    for piece in _pieces(near, _MET * first.words.height):
        ticks = sorted({round(_frame(p, turned)[0], 6) for s in piece for p in (s.start, s.end)})
        ends = _ends(ticks, numbers)
        if ends:
            return _measured(piece, numbers, unit, ends)
    return None


def _measured(
    own: Sequence[Stroke], numbers: Sequence[_Number], unit: float, ends: tuple[float, float]
) -> Bar:
    length = ends[1] - ends[0]
    figures = "-".join(f"{number.value:g}" for number in numbers)
    source = f"the drawn bar {figures} {_IN_WORDS[unit]}"
    words = frozenset(number.words for number in numbers)
    return Bar(numbers[-1].value * unit / length, source, tuple(own), words)


def _pieces(strokes: Sequence[Stroke], met: float) -> list[list[Stroke]]:
    """The strokes that hang together, the largest piece first."""
    if not strokes:
        return []
    lines = [shapely.LineString([s.start, s.end]) for s in strokes]
    first, second = shapely.STRtree(lines).query(lines, predicate="dwithin", distance=met)
    labels = numbered(len(lines), first.tolist(), second.tolist())
    pieces: dict[int, list[Stroke]] = {}
    for label, stroke in zip(labels.tolist(), strokes, strict=True):
        pieces.setdefault(label, []).append(stroke)
    return sorted(pieces.values(), key=len, reverse=True)


def _is_even(numbers: Sequence[_Number]) -> bool:
    """Whether the numbers stand where their values say, as well as lettering can."""
    first, last = numbers[0], numbers[-1]
    per = (last.along - first.along) / last.value
    away = [abs(first.along + n.value * per - n.along) for n in numbers]
    gap = min(b.along - a.along for a, b in pairwise(numbers))
    return gap > 0 and max(away) < _NEAR * gap


def _unit(
    words: Sequence[Words], numbers: Sequence[_Number], turned: int, span: float
) -> float | None:
    """Metres of the unit lettered behind the last number, else of one that stands by the bar."""
    for number in reversed(numbers):
        for metres, spelt in _UNITS:
            if number.tail and spelt.search(number.tail):
                return metres
    mine = {id(number.words) for number in numbers}
    middle = (numbers[0].along + numbers[-1].along) / 2
    by = []
    for line in words[:_MOST_WORDS]:
        along, up = _frame(line.at, turned)
        aside = abs(along - middle)
        if id(line) in mine or aside > span or len(line.text) > 40:
            continue
        if abs(up - numbers[0].up) < 2 * _REACH * numbers[0].words.height:
            by += [(aside, metres) for metres, spelt in _UNITS if spelt.search(line.text.strip())]
    return min(by)[1] if by else None


def _strokes_near(
    strokes: Sequence[Stroke], numbers: Sequence[_Number], turned: int, span: float
) -> list[Stroke]:
    reach = _REACH * numbers[0].words.height
    low, high = numbers[0].along - _NEAR * span, numbers[-1].along + _NEAR * span
    up = numbers[0].up
    near = []
    for stroke in strokes:
        ends = [_frame(point, turned) for point in (stroke.start, stroke.end)]
        if all(low <= along <= high and abs(rise - up) <= reach for along, rise in ends):
            near.append(stroke)
    return near


def _ends(ticks: Sequence[float], numbers: Sequence[_Number]) -> tuple[float, float] | None:
    """The ticks of the first and the last number, so that every number between has its own."""
    gap = min(b.along - a.along for a, b in pairwise(numbers))
    first, last = numbers[0], numbers[-1]
    starts = [t for t in ticks if abs(t - first.along) < _NEAR * gap]
    stops = [t for t in ticks if abs(t - last.along) < _NEAR * gap]
    found = []
    for start in starts[:20]:
        for stop in stops[:20]:
            per = (stop - start) / last.value
            wanted = [start + n.value * per for n in numbers]
            missed = [min(abs(t - place) for t in ticks) for place in wanted]
            if per > 0 and max(missed) <= _FIT * gap:
                off = abs(start - first.along) + abs(stop - last.along)
                found.append((off, start, stop))
    return min(found)[1:] if found else None


def _frame(point: Point, turned: int) -> Point:
    """How far along and how far up a point lies for lettering that is turned so."""
    turn = radians(turned)
    x, y = point
    return x * cos(turn) + y * sin(turn), -x * sin(turn) + y * cos(turn)
