"""Dimensions on a page that knows only lines and letters: a length over a line between two ticks.

A page does not say which line is a dimension's. A lettered length is taken with the piece of a
line beside it, between the two nearest lines that meet or cross that line; and such pairs are
believed only where several tell one scale.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import cos, radians, sin

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.readers.lines.lettering import CAPITAL, usual_width
from farwall.readers.lines.sheet import Measure, Role, Sheet, Stroke, Words
from farwall.readers.sizes import length_m

_BARE = re.compile(r"\d{3,5}|\d{1,2}[.,]\d{2,3}")
_MOST = 3000
_FEW_BARE = 3
_CLOSE = 0.015  # between two that tell one scale
_MIDDLE = 0.12  # of the piece: how far its lettering may stand from its middle
_BESIDE = 1.7  # heights: how far the line may lie from the middle of its lettering


@dataclass(frozen=True)
class _Lines:
    """Straight lines that may be a dimension's, with a tree to find them by."""

    strokes: Sequence[Stroke]
    tree: shapely.STRtree

    def near(self, shape: BaseGeometry, reach: float) -> list[Stroke]:
        """The lines within reach of a shape."""
        return [self.strokes[int(i)] for i in self.tree.query(shape, "dwithin", distance=reach)]


def lettered_lengths(sheet: Sheet) -> tuple[Measure, ...]:
    """The dimensions that agree with at least one other of their kind about the scale."""
    said = [(words, metres) for words in sheet.words if (metres := _said_m(words.text))][:_MOST]
    lines = [s for s in sheet.strokes if s.length > 0 and not s.curve and s.role is not Role.WALL]
    if not said or not lines:
        return ()
    drawn = _Lines(lines, shapely.STRtree([_line(s) for s in lines]))
    found = []
    for words, metres in said:
        pieces = _pieces(words, drawn)
        found += [(metres / piece.length, piece) for piece in pieces]
    return _agreeing(found)


def _said_m(text: str) -> float | None:
    """Metres in a lettered length; a bare number as custom takes it, to find which agree."""
    text = text.strip()
    if _BARE.fullmatch(text):
        value = float(text.replace(",", "."))
        return value / 1000 if text.isdigit() else value
    return length_m(text)


def _agreeing(found: Sequence[tuple[float, Measure]]) -> tuple[Measure, ...]:
    """The largest group that tells one scale, each lettering once."""
    ordered = sorted(found, key=lambda pair: pair[0])
    best: list[tuple[float, Measure]] = []
    start = 0
    for end in range(len(ordered)):
        while ordered[end][0] > ordered[start][0] * (1 + _CLOSE):
            start += 1
        group = ordered[start : end + 1]
        if len({measure.at for _, measure in group}) > len({measure.at for _, measure in best}):
            best = group
    once = {measure.at: measure for _, measure in best}
    bare = all(_BARE.fullmatch(measure.text) for measure in once.values())
    return tuple(once.values()) if len(once) >= (_FEW_BARE if bare else 2) else ()


def custom_units(measures: Sequence[Measure]) -> tuple[tuple[Measure, ...], int]:
    """Bare numbers with the unit that custom gives them: 3500 millimetres, 3.50 metres; how many.

    Common practice of metric drawings, no source; to be told wherever it is followed.
    """
    written = tuple(
        replace(one, text=f"{one.text} {'mm' if one.text.isdigit() else 'm'}")
        if _BARE.fullmatch(one.text)
        else one
        for one in measures
    )
    return written, sum(a is not b for a, b in zip(measures, written, strict=True))


def _pieces(words: Words, lines: _Lines) -> list[Measure]:
    """Lines beside a lettering that it stands at the middle of."""
    turn = radians(words.turned_deg)
    way = cos(turn), sin(turn)
    wide = usual_width(words.text) * words.height / CAPITAL
    lengths = [
        _between(words.at, line, way, lines, 0.6 * wide)
        for line in lines.near(shapely.Point(words.at), _BESIDE * words.height)
        if _runs(line, way)
    ]
    lengths.append(_broken(words, lines, way, wide))
    return [Measure(length, words.text.strip(), words.at) for length in lengths if length]


def _line(stroke: Stroke) -> shapely.LineString:
    return shapely.LineString([stroke.start, stroke.end])


def _runs(line: Stroke, way: Point) -> bool:
    dx, dy = line.end[0] - line.start[0], line.end[1] - line.start[1]
    return abs(dx * way[1] - dy * way[0]) < 0.02 * line.length


def _between(at: Point, line: Stroke, way: Point, lines: _Lines, least: float) -> float | None:
    """The piece of a line between the two marks on either side of a place."""
    own, touch = _line(line), 1e-3 * line.length
    marks = {_along(line.start, way), _along(line.end, way)}
    for other in lines.near(own, touch):
        if _runs(other, way):
            continue
        meets = own.intersection(_line(other))
        ends = [p for p in (other.start, other.end) if own.distance(shapely.Point(p)) < touch]
        if isinstance(meets, shapely.Point) and not meets.is_empty:
            ends.append((meets.x, meets.y))
        marks |= {_along(p, way) for p in ends}
    place = _along(at, way)
    for low, high in pairwise(sorted(marks)):
        if low < place < high and high - low > least:
            middle = abs((low + high) / 2 - place)
            return high - low if middle < _MIDDLE * (high - low) else None
    return None


def _broken(words: Words, lines: _Lines, way: Point, wide: float) -> float | None:
    """A dimension's line that is broken for its lettering: one half on either side of it."""
    (x, y), reach = words.at, wide / 2 + 2 * words.height
    dx, dy = way[0] * reach, way[1] * reach
    ray = shapely.LineString([(x - dx, y - dy), (x + dx, y + dy)])
    place = _along(words.at, way)
    before, after = [], []
    for line in lines.near(ray, 0.3 * words.height):
        if _runs(line, way):
            low, high = sorted(_along(p, way) for p in (line.start, line.end))
            if high < place:
                before.append((high, low))
            elif low > place:
                after.append((low, high))
    if not before or not after:
        return None
    low, high = max(before)[1], min(after)[1]
    return high - low if abs((low + high) / 2 - place) <= _MIDDLE * (high - low) else None


def _along(point: Point, way: Point) -> float:
    return point[0] * way[0] + point[1] * way[1]
