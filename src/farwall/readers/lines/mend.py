"""Brings together wall lines that just miss each other, or run a hair too far.

Two ends that miss go to where their lines cross; an end that misses the middle of a line goes to
that line. Nothing moves farther than the snap distance, which is less than any wall is deep.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import dist

import numpy as np
import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.bounds import Bounds, line, lines_of
from farwall.readers.lines.sheet import Stroke

SNAP_M = 0.03
"""A gap that no door fits through and no wall is as thin as: closed without asking."""
_MET_M = 0.0005


@dataclass(frozen=True)
class Mended:
    """The strokes with their ends brought together, and each place with the gap there [m]."""

    strokes: tuple[Stroke, ...]
    places: tuple[tuple[Point, float], ...]


@dataclass(frozen=True)
class _Move:
    gap_m: float
    ends: tuple[tuple[int, int], ...]
    to: Point


def mend(strokes: Sequence[Stroke]) -> Mended:
    """The strokes, loose ends within the snap distance of another line joined to it."""
    if not strokes:
        return Mended((), ())
    tree = shapely.STRtree(lines_of(strokes))
    loose = _loose(strokes, tree)
    moves = [move for end in sorted(loose) if (move := _best(strokes, end, loose, tree))]
    ends: dict[tuple[int, int], Point] = {}
    places = []
    for move in sorted(moves, key=lambda move: (-len(move.ends), move.gap_m, move.ends)):
        if any(end in ends for end in move.ends):
            continue
        ends.update(dict.fromkeys(move.ends, move.to))
        places.append((move.to, move.gap_m))
    mended = [
        replace(s, start=ends.get((i, 0), s.start), end=ends.get((i, 1), s.end))
        for i, s in enumerate(strokes)
    ]
    return Mended(tuple(s for s in mended if s.length > _MET_M), tuple(places))


def joined(bounds: Bounds) -> Bounds:
    """The bounds with their wall lines brought together."""
    mended = mend(bounds.strong)
    return replace(bounds, strong=mended.strokes, gaps=mended.places)


def _point(strokes: Sequence[Stroke], end: tuple[int, int]) -> Point:
    stroke = strokes[end[0]]
    return stroke.end if end[1] else stroke.start


def _near(tree: shapely.STRtree, point: Point, reach: float, index: int) -> list[int]:
    hits = tree.query(shapely.Point(point), predicate="dwithin", distance=reach)
    return [int(hit) for hit in hits if int(hit) != index]


def _loose(strokes: Sequence[Stroke], tree: shapely.STRtree) -> set[tuple[int, int]]:
    """The ends that meet no other stroke, found in one sweep."""
    loose = set()
    for which in (0, 1):
        points = shapely.points([_point(strokes, (index, which)) for index in range(len(strokes))])
        own, other = tree.query(points, predicate="dwithin", distance=_MET_M)
        met = np.zeros(len(strokes), dtype=bool)
        met[own[own != other]] = True
        loose |= {(index, which) for index in np.flatnonzero(~met).tolist()}
    return loose


def _best(
    strokes: Sequence[Stroke],
    end: tuple[int, int],
    loose: set[tuple[int, int]],
    tree: shapely.STRtree,
) -> _Move | None:
    """The nearest place to bring a loose end to: another loose end first, else a line."""
    point = _point(strokes, end)
    near = _near(tree, point, SNAP_M, end[0])
    partners = [(index, which) for index in near for which in (0, 1) if (index, which) in loose]
    moves = [move for other in partners if (move := _together(strokes, end, other))]
    if moves:
        return min(moves, key=lambda move: (move.gap_m, move.ends))
    onto = [move for index in near if (move := _onto(strokes, end, index))]
    return min(onto, key=lambda move: (move.gap_m, move.to), default=None)


def _together(
    strokes: Sequence[Stroke], first: tuple[int, int], second: tuple[int, int]
) -> _Move | None:
    a, b = _point(strokes, first), _point(strokes, second)
    gap = dist(a, b)
    if gap > 1.5 * SNAP_M:
        return None
    middle = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    cross = _crossing(strokes[first[0]], strokes[second[0]]) or middle
    to = cross if max(dist(cross, a), dist(cross, b)) <= SNAP_M else middle
    return _Move(gap, tuple(sorted((first, second))), to)


def _onto(strokes: Sequence[Stroke], end: tuple[int, int], index: int) -> _Move | None:
    point, other = _point(strokes, end), line(strokes[index])
    foot = other.interpolate(other.project(shapely.Point(point)))
    to = float(foot.x), float(foot.y)
    cross = _crossing(strokes[end[0]], strokes[index])
    if cross and dist(cross, point) <= SNAP_M and other.distance(shapely.Point(cross)) < _MET_M:
        to = cross
    return _Move(dist(point, to), (end,), to)


def _crossing(first: Stroke, second: Stroke) -> Point | None:
    """Where two endless lines cross, or None when they run alongside each other."""
    (ax, ay), (bx, by) = first.start, first.end
    (cx, cy), (dx, dy) = second.start, second.end
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    turn = ux * vy - uy * vx
    if abs(turn) < 0.05 * first.length * second.length:
        return None
    along = ((cx - ax) * vy - (cy - ay) * vx) / turn
    return ax + along * ux, ay + along * uy
