"""Where the outlines of two cells run along each other."""

from __future__ import annotations

from itertools import pairwise
from math import dist, hypot

import shapely

from farwall.readers.told.doorways import Line

_TOUCH_M = 0.005
_NARROW_M = 0.3
"""A stretch that is shorter lets nobody through (guess)."""
_KINK_M = 0.001


def shared_stretches(first: shapely.Polygon, second: shapely.Polygon) -> list[Line]:
    """The straight stretches that both outlines share to a few millimetres, along the first."""
    others = _edges(second)
    tree = shapely.STRtree([shapely.LineString(edge) for edge in others])
    found: list[Line] = []
    for edge in _edges(first):
        near = shapely.LineString(edge).buffer(_TOUCH_M)
        for index in sorted(tree.query(near, predicate="intersects").tolist()):
            stretch = _overlap(edge, others[index])
            if stretch is not None:
                found.append(stretch)
    return found


def _edges(outline: shapely.Polygon) -> list[Line]:
    rings = [outline.exterior, *outline.interiors]
    return [
        ((float(a[0]), float(a[1])), (float(b[0]), float(b[1])))
        for ring in rings
        for a, b in pairwise(shapely.simplify(ring, _KINK_M).coords)
        if dist(a, b) > _NARROW_M
    ]


def _overlap(edge: Line, other: Line) -> Line | None:
    """What two edges share of the first one's line; None when they are not on one line."""
    (x1, y1), (x2, y2) = edge
    long = hypot(x2 - x1, y2 - y1)
    ux, uy = (x2 - x1) / long, (y2 - y1) / long
    places = []
    for x, y in other:
        if abs((x - x1) * -uy + (y - y1) * ux) > 2 * _TOUCH_M:
            return None
        places.append((x - x1) * ux + (y - y1) * uy)
    low, high = max(0.0, min(places)), min(long, max(places))
    if high - low < _NARROW_M:
        return None
    return (x1 + ux * low, y1 + uy * low), (x1 + ux * high, y1 + uy * high)
