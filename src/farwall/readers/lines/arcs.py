"""Which pieces of a drawn line lie on one circle: arcs are the ways of doors' leaves."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import atan2, degrees, dist, hypot, pi

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

_ROUND = 0.006  # of the radius: how far a point may lie from its circle
_TURN_DEG = (1.0, 31.0)  # from chord to chord of an arc that was cut into straight pieces
_FEWEST_CHORDS = 5


@dataclass(frozen=True)
class Arc:
    """A piece of a circle; `sweep_deg` is positive, `ends` are its first and last point."""

    centre: Point
    radius: float
    sweep_deg: float
    ends: tuple[Point, Point]


def arc_through(points: Sequence[Point]) -> Arc | None:
    """The circle's piece that points in order lie on, or None; a whole circle is no arc."""
    if len(points) < 3 or points[0] == points[-1]:
        return None
    circle = _circle(points[0], points[len(points) // 2], points[-1])
    if circle is None:
        return None
    centre, radius = circle
    if any(abs(dist(centre, point) - radius) > _ROUND * radius for point in points):
        return None
    turns = [_turn(centre, a, b) for a, b in pairwise(points)]
    if not (all(t > 0 for t in turns) or all(t < 0 for t in turns)):
        return None
    sweep = degrees(abs(sum(turns)))
    return Arc(centre, radius, sweep, (points[0], points[-1])) if sweep < 355 else None


def joined_arcs(first: Arc, second: Arc) -> Arc | None:
    """Two arcs as one where the second goes on along the circle of the first."""
    near = 0.02 * first.radius
    if dist(first.centre, second.centre) > near or abs(first.radius - second.radius) > near:
        return None
    if dist(first.ends[1], second.ends[0]) > near:
        return None
    sweep = first.sweep_deg + second.sweep_deg
    if sweep >= 355:
        return None
    return Arc(first.centre, first.radius, sweep, (first.ends[0], second.ends[1]))


def chords(points: Sequence[Point]) -> list[tuple[int, int]]:
    """Stretches (first, last index) of a polyline that are arcs cut into straight pieces."""
    found: list[tuple[int, int]] = []
    start, last = 0, len(points) - 1
    while start + _FEWEST_CHORDS <= last:
        end = _like_turns(points, start)
        if end - start >= _FEWEST_CHORDS and arc_through(points[start : end + 1]):
            found.append((start, end))
            start = end
        else:
            start += 1
    return found


def _like_turns(points: Sequence[Point], start: int) -> int:
    """The last point up to which chords from `start` on turn by one angle and are alike long."""
    first = _bend(points, start)
    length = dist(points[start], points[start + 1])
    if not _TURN_DEG[0] <= abs(first) <= _TURN_DEG[1] or length == 0:
        return start
    end = start + 1
    while end + 1 < len(points):
        bend = _bend(points, end - 1)
        if abs(bend - first) > 0.2 * abs(first) + 0.2:
            break
        if abs(dist(points[end], points[end + 1]) / length - 1) > 0.2:
            break
        end += 1
    return end


def _bend(points: Sequence[Point], start: int) -> float:
    """Degrees between the chord from `start` and the one after it."""
    if start + 2 >= len(points):
        return 0.0
    (ax, ay), (bx, by), (cx, cy) = points[start : start + 3]
    ux, uy, vx, vy = bx - ax, by - ay, cx - bx, cy - by
    return degrees(atan2(ux * vy - uy * vx, ux * vx + uy * vy))


def _circle(a: Point, b: Point, c: Point) -> tuple[Point, float] | None:
    bx, by, cx, cy = b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]
    turn = 2 * (bx * cy - by * cx)
    longest = max(bx * bx + by * by, cx * cx + cy * cy)
    if abs(turn) < 1e-3 * longest:
        return None
    bb, cc = bx * bx + by * by, cx * cx + cy * cy
    x, y = (cy * bb - by * cc) / turn, (bx * cc - cx * bb) / turn
    return (a[0] + x, a[1] + y), hypot(x, y)


def _turn(centre: Point, a: Point, b: Point) -> float:
    start = atan2(a[1] - centre[1], a[0] - centre[0])
    end = atan2(b[1] - centre[1], b[0] - centre[0])
    return (end - start + pi) % (2 * pi) - pi
