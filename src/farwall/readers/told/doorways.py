"""Lines in plan for openings that a model draws as areas or as upright faces."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations
from math import dist, hypot

import shapely

from farwall.floor.geometry import Point

Line = tuple[Point, Point]
_PROBE_M = 0.08


def farthest(points: Sequence[Point]) -> Line | None:
    """The two points that are farthest apart; nothing when all are one."""
    distinct = list(dict.fromkeys(points))
    if len(distinct) > 60:
        hull = shapely.MultiPoint(distinct).convex_hull
        distinct = (
            [(float(x), float(y)) for x, y in hull.coords]
            if (hull.geom_type == "LineString")
            else [(float(x), float(y)) for x, y in getattr(hull, "exterior", hull).coords][:200]
        )
    pairs = combinations(distinct, 2)
    best = max(pairs, key=lambda pair: dist(*pair), default=None)
    return best if best is not None and dist(*best) > 1e-6 else None


def middle_line(door: shapely.Polygon, spaces: Sequence[shapely.Polygon]) -> Line:
    """The line in the middle of a door drawn as an area, across the way through it.

    Of the two middles of its smallest rectangle the one that has different spaces before and
    behind; the longer one when neither or both have.
    """
    corners = _corners(door)
    middles = [_between(corners, first) for first in (0, 1)]
    middles.sort(key=lambda pair: -dist(*pair[0]))
    parted = [line for line, deep in middles if _parts(line, deep, spaces)]
    return parted[0] if len(parted) == 1 else middles[0][0]


def _corners(door: shapely.Polygon) -> list[Point]:
    box = shapely.oriented_envelope(door)
    ring = box.exterior.coords if isinstance(box, shapely.Polygon) else box.coords
    found = [(float(x), float(y)) for x, y in list(ring)[:4]]
    return (found * 4)[:4]


def _between(corners: Sequence[Point], first: int) -> tuple[Line, float]:
    """One middle line of a rectangle, and how deep the rectangle is across it."""
    a, b, c, d = corners[first:] + corners[:first]  # type: ignore[operator]
    start = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    end = (c[0] + d[0]) / 2, (c[1] + d[1]) / 2
    return (start, end), dist(a, b)


def _parts(line: Line, deep: float, spaces: Sequence[shapely.Polygon]) -> bool:
    (x1, y1), (x2, y2) = line
    length = hypot(x2 - x1, y2 - y1)
    if length < 1e-9:
        return False
    across = -(y2 - y1) / length, (x2 - x1) / length
    away = deep / 2 + _PROBE_M
    sides = []
    for sign in (1, -1):
        middle = shapely.Point(
            (x1 + x2) / 2 + sign * away * across[0], (y1 + y2) / 2 + sign * away * across[1]
        )
        sides.append(next((i for i, s in enumerate(spaces) if s.covers(middle)), None))
    return sides[0] != sides[1]
