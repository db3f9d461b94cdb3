"""Grid lines: long lines that cross the whole plan, alone or with a lettered circle at an end."""

from __future__ import annotations

from collections.abc import Sequence
from math import dist

import numpy as np
import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.parallels import Strokes
from farwall.readers.lines.sheet import Ring, Words

_LETTERS = 4
_CROSSED = 3
_BEYOND_M = 0.1
_TOUCH_M = 0.004


@dataclass(frozen=True)
class Bubble:
    """A circle with a letter or a number in it."""

    centre: Point
    radius: float


def find_bubbles(rings: Sequence[Ring], words: Sequence[Words]) -> list[Bubble]:
    """The circles that are lettered with no more than a few letters."""
    short = [w for w in words if 0 < len(w.text.strip()) <= _LETTERS]
    found = []
    for ring in rings:
        circle = _circle(ring) if len(ring.points) >= 12 else None
        if circle and any(
            dist(w.at, circle.centre) < 0.6 * circle.radius < 3.0 * w.height for w in short
        ):
            found.append(circle)
    return found


def _circle(ring: Ring) -> Bubble | None:
    points = np.array(ring.points)
    centre = (points.min(axis=0) + points.max(axis=0)) / 2
    away = np.hypot(*(points - centre).T)
    radius = float(away.mean())
    if radius <= 0 or float(np.ptp(away)) > 0.04 * radius:
        return None
    return Bubble((float(centre[0]), float(centre[1])), radius)


def find_grid(strokes: Strokes, bubbles: Sequence[Bubble]) -> set[int]:
    """Places of the strokes that are grid lines or the circles at their ends."""
    found: set[int] = set()
    for bubble in bubbles:
        near = strokes.tree.query(shapely.Point(bubble.centre), "dwithin", 1.1 * bubble.radius)
        for index in near.tolist():
            away = [dist(tuple(end), bubble.centre) for end in strokes.ends[index]]
            if max(away) <= 1.1 * bubble.radius:
                found.add(index)
            elif _leads_in(strokes, index, bubble):
                found |= _run(strokes, index)
    return found | _crossing_all(strokes, found)


def _leads_in(strokes: Strokes, index: int, bubble: Bubble) -> bool:
    """Whether a line ends at the circle and points at its middle."""
    ends, way = strokes.ends[index], strokes.ways[index]
    away = [dist(tuple(end), bubble.centre) for end in ends]
    x, y = bubble.centre[0] - ends[0][0], bubble.centre[1] - ends[0][1]
    aside = abs(x * way[1] - y * way[0])
    return aside < 0.1 * bubble.radius and abs(min(away) - bubble.radius) < 0.15 * bubble.radius


def _run(strokes: Strokes, start: int) -> set[int]:
    """A line and all that run on from its ends, straight."""
    found, open_ends = {start}, [start]
    while open_ends:
        index = open_ends.pop()
        for end in strokes.ends[index]:
            near = strokes.tree.query(shapely.Point(end), predicate="dwithin", distance=_TOUCH_M)
            for other in near.tolist():
                way, own = strokes.ways[other], strokes.ways[start]
                straight = abs(way[0] * own[1] - way[1] * own[0]) < 0.002
                meets = np.abs(strokes.ends[other] - end).max(axis=1).min() <= _TOUCH_M
                if other not in found and straight and meets:
                    found.add(other)
                    open_ends.append(other)
    return found


def _crossing_all(strokes: Strokes, known: set[int]) -> set[int]:
    """Lines that cross others and end in the open, at both ends, beyond all that they cross."""
    if not len(strokes.given):
        return set()
    extent = float(np.ptp(strokes.ends.reshape(-1, 2), axis=0).max())
    long = [i for i in np.flatnonzero(strokes.lengths > 0.25 * extent).tolist() if i not in known]
    return {i for i in long if _crosses_all(strokes, i)}


def _crosses_all(strokes: Strokes, index: int) -> bool:
    line, length = strokes.lines[index], float(strokes.lengths[index])
    for end in strokes.ends[index]:
        near = strokes.tree.query(shapely.Point(end), predicate="dwithin", distance=_BEYOND_M)
        if any(i != index and not _alongside(strokes, index, i) for i in near.tolist()):
            return False
    met = [i for i in strokes.tree.query(line, predicate="intersects").tolist() if i != index]
    crossed = [i for i in met if strokes.lines[i].crosses(line)]
    along = [line.project(line.intersection(strokes.lines[i])) for i in crossed
             if line.intersection(strokes.lines[i]).geom_type == "Point"]  # fmt: skip
    inside = [a for a in along if _BEYOND_M < a < length - _BEYOND_M]
    through = [i for i in crossed if _is_crossed_inside(strokes, i, line)]
    return len(inside) >= _CROSSED and len(through) >= _CROSSED


def _is_crossed_inside(strokes: Strokes, index: int, line: shapely.LineString) -> bool:
    """Whether a stroke is crossed well within itself, not near one of its ends."""
    return all(line.distance(shapely.Point(end)) > 0.02 for end in strokes.ends[index])


def _alongside(strokes: Strokes, first: int, second: int) -> bool:
    a, b = strokes.ways[first], strokes.ways[second]
    return bool(abs(a[0] * b[1] - a[1] * b[0]) < 0.002)
