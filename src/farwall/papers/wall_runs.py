"""Walls cut at their corners into runs that a tape can follow.

A *run* is a stretch of wall between two corners; a shallow step, such as a
door's rebate, does not end it. A *corner* is where the wall turns by more
than 20 degrees.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.floor.geometry import Point

TOLERANCE_M = 0.010
"""What lies this near to a wall lies on it: a plan is rounded to 0.1 mm, a tape read to 10 mm."""
STEP_DEPTH_M = 0.40
_CORNER_DEG = 20.0
_STEP_EDGES = 4


def runs_of_ring(ring: Sequence[Point]) -> list[tuple[Point, ...]]:
    """A closed ring of points cut into runs at its corners, the one farthest up left first."""
    points = _distinct(list(ring)[:-1])
    count = len(points)
    if count < 3:
        return []
    corners = [
        k
        for k in range(count)
        if abs(_turn_deg(points[k - 1], points[k], points[(k + 1) % count])) > _CORNER_DEG
    ] or [0]
    first = min(corners, key=lambda k: (round(points[k][0] - points[k][1], 3), points[k][0]))
    start = corners.index(first)
    corners = corners[start:] + corners[:start]
    runs = []
    for here, there in zip(corners, [*corners[1:], corners[0]], strict=True):
        steps = (there - here) % count or count
        runs.append(tuple(points[(here + k) % count] for k in range(steps + 1)))
    return _over_steps(runs)


def _distinct(points: list[Point]) -> list[Point]:
    return [p for k, p in enumerate(points) if math.dist(p, points[k - 1]) > 1e-4]


def _turn_deg(a: Point, b: Point, c: Point) -> float:
    turn = math.atan2(c[1] - b[1], c[0] - b[0]) - math.atan2(b[1] - a[1], b[0] - a[0])
    return math.degrees((turn + math.pi) % (2 * math.pi) - math.pi)


def _over_steps(runs: list[tuple[Point, ...]]) -> list[tuple[Point, ...]]:
    """Runs that go on in the same line beyond a shallow step are joined into one."""
    joined: list[tuple[Point, ...]] = []
    rest = list(runs)
    while rest:
        run = rest.pop(0)
        while (reach := _goes_on(run, rest)) is not None:
            run = (*run, *rest[reach])
            rest = rest[reach + 1 :]
        joined.append(run)
    # The last run may go on into the first, which then starts farther back.
    if len(joined) > 2:
        for back in range(1, min(_STEP_EDGES, len(joined) - 1) + 1):
            tail = joined[-back]
            if (
                back > 1
                and _goes_on(tail, [*joined[len(joined) - back + 1 :], joined[0]]) == back - 1
            ):
                return [(*tail, *joined[0]), *joined[1 : len(joined) - back]]
    return joined


def _goes_on(run: tuple[Point, ...], rest: Sequence[tuple[Point, ...]]) -> int | None:
    """Index in `rest` of the run that continues this one beyond a shallow step."""
    if not _straight(run):
        return None
    for k in range(1, min(_STEP_EDGES, len(rest))):
        other = rest[k]
        if not _straight(other):
            continue
        between = [point for step in rest[:k] for point in step]
        offsets = [abs(_offset(run, point)) for point in (*other, *between)]
        ahead = _along(run, other[0]) >= _along(run, run[-1]) - TOLERANCE_M
        same_way = _along(run, other[-1]) > _along(run, other[0])
        if (
            ahead
            and same_way
            and max(offsets[: len(other)]) < TOLERANCE_M
            and max(offsets) < STEP_DEPTH_M
        ):
            return k
    return None


def _straight(run: tuple[Point, ...]) -> bool:
    return all(abs(_offset(run, point)) < TOLERANCE_M for point in run)


def _direction(run: tuple[Point, ...]) -> Point:
    (x0, y0), (x1, y1) = run[0], run[-1]
    long = math.hypot(x1 - x0, y1 - y0) or 1.0
    return ((x1 - x0) / long, (y1 - y0) / long)


def _along(run: tuple[Point, ...], point: Point) -> float:
    """How far along a straight run a point lies, from its start. [m]"""
    dx, dy = _direction(run)
    return (point[0] - run[0][0]) * dx + (point[1] - run[0][1]) * dy


def _offset(run: tuple[Point, ...], point: Point) -> float:
    """How far a point lies to the left of a straight run. [m]"""
    dx, dy = _direction(run)
    return (point[1] - run[0][1]) * dx - (point[0] - run[0][0]) * dy
