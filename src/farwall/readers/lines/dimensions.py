"""Dimension lines drawn as loose strokes: known by their number, their ticks and their witnesses.

A dimension line runs along a lettered number and ends, at both ends, in a tick, an arrow head, a
dot, or on a witness line that stands square to it and stops in the open just past it. Sizes are
reckoned in heights of the number's letters, so that no unit need be known.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from math import cos, radians, sin

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Measure, Role, Sheet, Stroke, Words
from farwall.readers.sizes import door_code, length_m

_NUMBER = re.compile(r"\d{1,6}(?:[.,]\d{1,3})?")
_BESIDE, _TICK, _PAST, _ON = 2.2, 2.5, 3.5, 0.2  # in heights of the lettering
"""From number to line; length of a tick; how far a witness runs past the line; what touches."""
_ALONG, _SQUARE = 0.996, 0.09


@dataclass(frozen=True)
class Dimensions:
    """What loose dimensions say, and the places of their strokes among the sheet's."""

    measures: tuple[Measure, ...]
    strokes: frozenset[int]


def loose_dimensions(sheet: Sheet) -> Dimensions:
    """The dimensions that are drawn as loose strokes on layers that could hold them.

    A stroke on a layer of doors, casework or, beside other layers, walls is none.
    """
    numbers = [w for w in sheet.words if w.height > 0 and _is_length(w.text)]
    if not numbers:
        return Dimensions((), frozenset())
    roles = {s.role for s in sheet.strokes}
    could = roles if roles == {Role.WALL} else {Role.OTHER, Role.PAPER}
    places = [i for i, s in enumerate(sheet.strokes) if s.role in could]
    found = _Search([sheet.strokes[i] for i in places]).run(numbers)
    return Dimensions(found.measures, frozenset(places[i] for i in found.strokes))


def _is_length(text: str) -> bool:
    bare = text.strip()
    return bool(_NUMBER.fullmatch(bare)) or length_m(bare) is not None


class _Search:
    def __init__(self, strokes: Sequence[Stroke]) -> None:
        self.strokes = strokes
        self.lines = [shapely.LineString([s.start, s.end]) for s in strokes]
        self.tree = shapely.STRtree(self.lines)

    def run(self, numbers: Sequence[Words]) -> Dimensions:
        measures, taken = [], set()
        for words in numbers:
            for index in self._beside(words):
                found = self._dimension(words, index)
                if found:
                    measures.append(found[0])
                    taken |= found[1]
                    break
        return Dimensions(tuple(measures), frozenset(taken))

    def _beside(self, words: Words) -> list[int]:
        """Strokes along the number, under or over its middle, the nearest first."""
        at, reach = shapely.Point(words.at), _BESIDE * words.height
        turn = radians(words.turned_deg)
        way = cos(turn), sin(turn)
        found = []
        for index in self.tree.query(at, predicate="dwithin", distance=reach).tolist():
            stroke = self.strokes[index]
            if stroke.length > 2 * words.height and abs(_cosine(stroke, way)) > _ALONG:
                along = _along(stroke, words.at)
                if 0.05 < along / stroke.length < 0.95:
                    found.append((float(self.lines[index].distance(at)), index))
        return [index for _, index in sorted(found)]

    def _dimension(self, words: Words, index: int) -> tuple[Measure, set[int]] | None:
        """The length between the marks on both sides of the number, with all strokes of it."""
        stroke, middle = self.strokes[index], _along(self.strokes[index], words.at)
        marks = self._marks(index, words.height)
        if door_code(words.text) and not self._ticked(index, marks):
            return None
        before = [m for m in marks if m[0] <= middle]
        after = [m for m in marks if m[0] > middle]
        if not before or not after:
            return None
        start, end = max(before)[0], min(after)[0]
        if end - start <= words.height or not _at_ends(marks, stroke, words.height):
            return None
        place = (start + end) / 2 / stroke.length
        at = (
            stroke.start[0] + place * (stroke.end[0] - stroke.start[0]),
            stroke.start[1] + place * (stroke.end[1] - stroke.start[1]),
        )
        own = {index, *(i for _, group in marks for i in group)}
        return Measure(end - start, words.text.strip(), at), own

    def _ticked(self, index: int, marks: Sequence[tuple[float, tuple[int, ...]]]) -> bool:
        """Whether slanted strokes mark the ends; by a door's size all lines are square."""
        way = _way(self.strokes[index])
        slanted = [
            any(_SQUARE < abs(_cosine(self.strokes[i], way)) < _ALONG for i in group)
            for _, group in marks
        ]
        return sum(slanted) >= 2

    def _marks(self, index: int, height: float) -> list[tuple[float, tuple[int, ...]]]:
        """How far along the line each mark is, with its strokes."""
        stroke = self.strokes[index]
        way = _way(stroke)
        found: dict[float, list[int]] = {}
        near = self.tree.query(self.lines[index], predicate="dwithin", distance=_ON * height)
        for other_index in near.tolist():
            other = self.strokes[other_index]
            if other_index == index:
                continue
            place = self._mark(stroke, other, way, height)
            if place is not None:
                key = next((k for k in found if abs(k - place) < _ON * height), place)
                found.setdefault(key, []).append(other_index)
        return [(place, tuple(group)) for place, group in sorted(found.items())]

    def _mark(self, line: Stroke, other: Stroke, way: Point, height: float) -> float | None:
        """Where a stroke marks an end on the line: a short tick or head, or a witness."""
        turn = abs(_cosine(other, way))
        ends = [_along(line, p) for p in (other.start, other.end)]
        aside = [_aside(line, p) for p in (other.start, other.end)]
        if other.length <= _TICK * height and _SQUARE < turn < _ALONG:
            if aside[0] * aside[1] < 0:  # a tick across the line
                share = aside[0] / (aside[0] - aside[1])
                return ends[0] + share * (ends[1] - ends[0])
            tip = min((0, 1), key=lambda i: abs(aside[i]))  # half an arrow head
            return ends[tip]
        if turn < _SQUARE and other.length > height:
            nearer = min(map(abs, aside))
            crosses = aside[0] * aside[1] < 0 and nearer > 0.5 * _ON * height
            if crosses and nearer < _PAST * height and self._stops_free(other, line, height):
                return sum(ends) / 2
        return None

    def _stops_free(self, witness: Stroke, line: Stroke, height: float) -> bool:
        """Whether the end just past the line touches nothing but the line."""
        tip = min((witness.start, witness.end), key=lambda p: abs(_aside(line, p)))
        near = self.tree.query(shapely.Point(tip), predicate="dwithin", distance=0.02 * height)
        others = [self.strokes[i] for i in near.tolist()]
        return all(
            s is witness
            or s is line
            or s.length <= _TICK * height
            or self._is_next(s, line, height)
            for s in others
        )

    def _is_next(self, other: Stroke, line: Stroke, height: float) -> bool:
        """Whether a stroke runs on where the line ends, as dimensions in a row do."""
        on_line = abs(_aside(line, other.start)) < 0.02 * height
        return on_line and abs(_cosine(other, _way(line))) > _ALONG


def _at_ends(marks: Sequence[tuple[float, tuple[int, ...]]], line: Stroke, height: float) -> bool:
    """Whether the first and the last mark are near the line's own ends."""
    reach = _PAST * height
    return marks[0][0] < reach and marks[-1][0] > line.length - reach


def _way(stroke: Stroke) -> Point:
    length = stroke.length or 1.0
    return (stroke.end[0] - stroke.start[0]) / length, (stroke.end[1] - stroke.start[1]) / length


def _cosine(stroke: Stroke, way: Point) -> float:
    x, y = _way(stroke)
    return x * way[0] + y * way[1]


def _along(stroke: Stroke, point: Point) -> float:
    x, y = _way(stroke)
    return (point[0] - stroke.start[0]) * x + (point[1] - stroke.start[1]) * y


def _aside(stroke: Stroke, point: Point) -> float:
    x, y = _way(stroke)
    return -(point[0] - stroke.start[0]) * y + (point[1] - stroke.start[1]) * x


def without_dimensions(sheet: Sheet) -> tuple[Sheet, int]:
    """The sheet with its loose dimensions as measures, not strokes, and how many there were."""
    found = loose_dimensions(sheet)
    if not found.measures:
        return sheet, 0
    kept = tuple(s for i, s in enumerate(sheet.strokes) if i not in found.strokes)
    measures = (*sheet.measures, *found.measures)
    return replace(sheet, strokes=kept, measures=measures), len(found.measures)
