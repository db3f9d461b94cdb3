"""How old an edge is where one band meets another, exactly.

A point is sprayed at the moment when the path is nearest to it. Along a
straight edge the nearest feature of a path (a leg, or a corner between two)
changes only where two squared distances are equal: at roots of quadratics.
Between those the moment is linear in the place, and so is the difference of two
moments: its extremes lie at the break points, come upon from either side. Where
features tie along a stretch every nearest moment counts, so that the age is
never told too small; a tie at a single place, with nothing beside it, has no
floor of its own and is left out.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise, product
from math import hypot, sqrt

import numpy as np
from numpy.typing import NDArray

from farwall.spray.check.nouns import Path

TIE_M = 1e-7
"""Legs nearer to each other than this are equally near."""
THIN = 1e-9
"""Shares of an edge that are too short to hold a place of their own."""

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Leg:
    """One straight leg of a path: start, direction, length, first and last moment."""

    x: float
    y: float
    ex: float
    ey: float
    length: float
    t0: float
    t1: float

    def moments(self, along: float) -> tuple[float, ...]:
        """When the body passes the point nearest to a place `along` metres from the start."""
        if self.length == 0.0:
            return (self.t0, self.t1)
        share = min(max(along / self.length, 0.0), 1.0)
        return (self.t0 + share * (self.t1 - self.t0),)


@dataclass(frozen=True)
class Oldest:
    """The oldest place found: its age in minutes, and where and when it is met."""

    age_min: float
    x: float
    y: float
    met_min: float


def legs_of(path: Path, *, only: NDArray[np.bool_] | slice = slice(None)) -> list[Leg]:
    """The legs of a path that `only` marks, all without it; one of no length is a wait."""
    found = []
    ends = zip(path[:-1][only].tolist(), path[1:][only].tolist(), strict=True)
    for (x0, y0, t0), (x1, y1, t1) in ends:
        length = hypot(x1 - x0, y1 - y0)
        ex, ey = ((x1 - x0) / length, (y1 - y0) / length) if length else (0.0, 0.0)
        found.append(Leg(x0, y0, ex, ey, length, t0, t1))
    return found


@dataclass(frozen=True, eq=False)
class Reach:
    """For each edge and each leg: whether it may be nearest, and its moments at both ends.

    `first` and `last` are for each edge the moments of its start, end and
    middle: a place passed more than once has a first and a last one.
    """

    may: NDArray[np.bool_]
    early: Array
    late: Array
    first: Array
    last: Array

    def earliest(self) -> Array:
        """A bound from below on every edge's moments."""
        return np.asarray(np.where(self.may, self.early, np.inf).min(axis=1))

    def latest(self) -> Array:
        """A bound from above on every edge's moments."""
        return np.asarray(np.where(self.may, self.late, -np.inf).max(axis=1))


def reach_of(edges: Array, path: Path) -> Reach:
    """Which legs of a path may be nearest to some place of each edge (rows of two points).

    A distance changes by at most a metre a metre, and distance from a straight
    leg is convex: both bounds are sure.
    """
    start, end = edges[:, 0], edges[:, 1]
    half = np.hypot(*(end - start).T)[:, None] / 2
    away, moments = _to_legs(np.stack([start, end, (start + end) / 2]), path)
    surely_within = np.maximum(away[0], away[1]).min(axis=1, keepdims=True)
    wait = np.hypot(*np.diff(path[:, :2], axis=0).T) == 0
    early = np.where(wait, path[:-1, 2], moments)
    late = np.where(wait, path[1:, 2], moments)
    tied = away <= away.min(axis=2, keepdims=True) + 2 * TIE_M
    return Reach(
        may=away[2] - half <= surely_within + 1e-6,
        early=np.minimum(early[0], early[1]),
        late=np.maximum(late[0], late[1]),
        first=np.where(tied, early, np.inf).min(axis=2).T,
        last=np.where(tied, late, -np.inf).max(axis=2).T,
    )


def _to_legs(points: Array, path: Path) -> tuple[Array, Array]:
    """Distance from each point to each leg, and the moment at its nearest place."""
    start, way = path[:-1, :2], np.diff(path[:, :2], axis=0)
    square = np.maximum((way**2).sum(axis=1), 1e-300)
    away = points[..., None, :] - start
    share = np.clip((away * way).sum(axis=-1) / square, 0.0, 1.0)
    gap = away - share[..., None] * way
    moments = path[:-1, 2] + share * np.diff(path[:, 2])
    return np.hypot(gap[..., 0], gap[..., 1]), moments


def line_of(edge: Array) -> Line:
    """The straight edge between two points, given as rows."""
    (ax, ay), (bx, by) = edge.tolist()
    return Line(ax, ay, bx - ax, by - ay)


def oldest_on(edge: Array, later: list[Leg], earlier: list[Leg]) -> Oldest:
    """The oldest place on an edge between two bands, given the legs that may be nearest."""
    line = line_of(edge)
    breaks = sorted({0.0, 1.0, *line.breaks(later), *line.breaks(earlier)})
    best = Oldest(-1.0, line.x, line.y, 0.0)
    for u, v in pairwise(breaks):
        if v - u < THIN:
            continue
        middle = (u + v) / 2
        pairs = product(line.nearest(later, middle), line.nearest(earlier, middle))
        for one, other in pairs:
            for w in (u, v):
                best = max(best, line.oldest(one, other, w), key=lambda found: found.age_min)
    return best


@dataclass(frozen=True)
class Line:
    """A straight edge: places are `(x, y) + u * (dx, dy)` for u from 0 to 1."""

    x: float
    y: float
    dx: float
    dy: float

    def along(self, leg: Leg, u: float) -> float:
        """How far along a leg, or before or beyond it, a place lies. [m]"""
        return (self.x + u * self.dx - leg.x) * leg.ex + (self.y + u * self.dy - leg.y) * leg.ey

    def oldest(self, later: Leg, earlier: Leg, u: float) -> Oldest:
        """The age at a place when these legs are nearest, either band being the first."""
        met = later.moments(self.along(later, u))
        begun = earlier.moments(self.along(earlier, u))
        age, when = max((abs(one - other), max(one, other)) for one, other in product(met, begun))
        return Oldest(age, self.x + u * self.dx, self.y + u * self.dy, when)

    def nearest(self, legs: list[Leg], u: float) -> list[Leg]:
        """The legs that are nearest to a place, all of them at a tie."""
        distances = [sqrt(max(_value(self.square(leg, u), u), 0.0)) for leg in legs]
        least = min(distances)
        return [leg for leg, d in zip(legs, distances, strict=True) if d <= least + TIE_M]

    def breaks(self, legs: list[Leg]) -> set[float]:
        """Where the nearest feature can change."""
        ends = {u for leg in legs for u in self.leg_ends(leg) if 0 < u < 1}
        found = set(ends)
        for u, v in pairwise(sorted({0.0, 1.0, *ends})):
            squares = [self.square(leg, (u + v) / 2) for leg in legs]
            for index, one in enumerate(squares):
                for other in squares[index + 1 :]:
                    found.update(root for root in _roots(one, other) if u < root < v)
        return found

    def leg_ends(self, leg: Leg) -> Iterator[float]:
        """Where the nearest place on a leg becomes one of its ends."""
        slope = self.dx * leg.ex + self.dy * leg.ey
        if abs(slope) > THIN:
            before = self.along(leg, 0.0)
            yield -before / slope
            yield (leg.length - before) / slope

    def square(self, leg: Leg, u: float) -> tuple[float, float, float]:
        """Squared distance from the leg, as a quadratic in u that holds around `u`."""
        along = self.along(leg, u)
        if 0.0 < along < leg.length:
            fixed = (self.x - leg.x) * leg.ey - (self.y - leg.y) * leg.ex
            rate = self.dx * leg.ey - self.dy * leg.ex
            return (rate * rate, 2 * fixed * rate, fixed * fixed)
        end = leg.length if along > 0.0 else 0.0
        px, py = self.x - leg.x - end * leg.ex, self.y - leg.y - end * leg.ey
        return (
            self.dx * self.dx + self.dy * self.dy,
            2 * (self.dx * px + self.dy * py),
            px * px + py * py,
        )


def _value(square: tuple[float, float, float], u: float) -> float:
    a, b, c = square
    return (a * u + b) * u + c


def _roots(one: tuple[float, float, float], other: tuple[float, float, float]) -> list[float]:
    """Where two quadratics are equal."""
    a, b, c = (p - q for p, q in zip(one, other, strict=True))
    if abs(a) < 1e-14:
        return [-c / b] if abs(b) > 1e-14 else []
    inside = b * b - 4 * a * c
    if inside < 0:
        return []
    q = -(b + (sqrt(inside) if b >= 0 else -sqrt(inside))) / 2
    return [q / a, c / q] if q else [0.0]
