"""A front that no sweep of a convex floor can undercut: how short an edge can part off an area.

Of all sets of one area inside a convex polygon the one with the shortest edge within
it is bounded by one circular arc (or straight line) that meets two of its sides, or
one twice, at right angles (rank: classical, from memory). So the arc's middle lies
where the lines of those sides meet. While a front moves on by a depth the floor behind it
grows at least by that edge; the proof is in docs/spraying.md ("Convex floor").
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]

_CELLS = 600
_INSET = 1e-3
_CHORD_M = 0.02
_PARALLEL = 1e-9
_HAIR = 1e-6
_CONVEX = 1e-6


@dataclass(frozen=True)
class Arcs:
    """All arcs from one side to another about the spot where both lines meet.

    turn: their angle [rad], 0 for straight lines between parallel sides; beyond_m2: what
    lies between that spot and the floor; radius_m: the least and the largest that meet
    both sides; straight_m: the length of lines between parallel sides.
    """

    turn: float
    beyond_m2: float
    radius_m: tuple[float, float]
    straight_m: float = 0.0

    def least_m(self, low_m2: Floats, high_m2: Floats) -> Floats:
        """The shortest arc that parts off between two areas on its inner side; infinite where
        none does. [m]"""
        if not self.turn:
            return np.full(len(low_m2), self.straight_m)
        inner, outer = (self.turn * r**2 / 2 - self.beyond_m2 for r in self.radius_m)
        length = np.sqrt(2 * self.turn * np.maximum(low_m2 + self.beyond_m2, 0.0))
        meets = (high_m2 >= inner - _HAIR) & (low_m2 <= outer + _HAIR)
        return np.where(meets, length, np.inf)


def convex_inside(shape: BaseGeometry) -> shapely.Polygon | None:
    """A convex polygon a hair inside a convex shape, round walls as chords; None of any other."""
    hull = shapely.convex_hull(shape)
    if hull.area <= 0 or shape.area <= (1 - _CONVEX) * hull.area:
        return None
    middle = hull.centroid.coords[0]
    less = shapely.transform(hull, lambda xy: middle + (1 - _INSET) * (xy - middle))
    few = shapely.orient_polygons(shapely.simplify(less, _CHORD_M))
    if not isinstance(few, shapely.Polygon) or few.is_empty:
        return None
    return few if shapely.covers(shape, few) else None


def front_of_convex_m(polygon: shapely.Polygon, depth_m: float) -> float:
    """The bound by a convex polygon on the floor, for bands of `depth_m`. [m]"""
    ends = np.linspace(0.0, polygon.area, _CELLS + 1)
    taken_m = np.concatenate([[0.0], np.cumsum(np.diff(ends) / least_edges_m(polygon, ends))])
    after = np.interp(taken_m + depth_m, taken_m, ends)
    return float((after - ends).max() / depth_m)


def least_edges_m(polygon: shapely.Polygon, ends_m2: Floats) -> Floats:
    """The shortest edge inside a convex polygon (counter-clockwise) that parts off an area
    between each two of `ends_m2` and the next, never told too long. [m]"""
    low, high, whole = ends_m2[:-1], ends_m2[1:], polygon.area
    best = np.sqrt(2 * np.pi * np.minimum(low, whole - high).clip(0.0))
    for arcs in arcs_of(polygon):
        best = np.minimum(best, arcs.least_m(low, high))
        best = np.minimum(best, arcs.least_m(whole - high, whole - low))
    return np.maximum(best, _HAIR)


def arcs_of(polygon: shapely.Polygon) -> list[Arcs]:
    """The arcs between every two sides of a convex polygon, counter-clockwise."""
    corners = shapely.get_coordinates(polygon)[:-1]
    count = len(corners)
    found = [
        _arcs_between(corners, one, two) for one in range(count) for two in range(one + 1, count)
    ]
    return [arcs for arcs in found if arcs is not None]


def _arcs_between(corners: Floats, one: int, two: int) -> Arcs | None:
    """Arcs between the sides that begin at two corners; None where no radius meets both."""
    count = len(corners)
    a, b = corners[one], corners[(one + 1) % count]
    c, d = corners[two], corners[(two + 1) % count]
    along, back = _unit(b - a), _unit(d - c)
    cross = float(along[0] * back[1] - along[1] * back[0])
    if abs(cross) < _PARALLEL:
        if along @ back > 0:
            return None  # two parts of one wall
        apart_m = abs(float(along[0] * (c - a)[1] - along[1] * (c - a)[0]))
        return Arcs(0.0, 0.0, (0.0, 0.0), apart_m)
    gap = c - a
    spot = a + along * float(gap[0] * back[1] - gap[1] * back[0]) / cross
    turn = float(np.arccos(np.clip(-(along @ back), -1.0, 1.0)))
    ranges = [sorted(float(np.hypot(*(end - spot))) for end in side) for side in ((a, b), (c, d))]
    radius = max(r[0] for r in ranges), min(r[1] for r in ranges)
    if radius[0] > radius[1] + _HAIR:
        return None
    # From the spot along the corners between both sides, on the side where their lines meet.
    order = range(one + 1, two + 1) if cross > 0 else range(two + 1, one + count + 1)
    chain = np.array([spot, *(corners[k % count] for k in order)])
    return Arcs(turn, _area(chain), radius)


def _unit(leg: Floats) -> Floats:
    return np.asarray(leg / np.hypot(*leg))


def _area(ring: Floats) -> float:
    x, y = ring.T
    return abs(float(x @ np.roll(y, -1) - y @ np.roll(x, -1))) / 2
