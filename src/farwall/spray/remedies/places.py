"""Where a floor could be cut: straight lines from wall to wall, and how to say where they are."""

from __future__ import annotations

import numpy as np
import shapely
import shapely.ops
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point, polygons_of
from farwall.floor.nouns import SawCut
from farwall.units import length_words

Line = tuple[Point, Point]

_ALONG = (0.5, 0.4, 0.6, 1 / 3, 2 / 3)
_APART_M = 0.2
_SHORTEST_M = 0.5
_LEAST_SHARE = 0.15
"""A cut that parts off less of the floor than this shortens no front worth the saw. Guess."""


def long_way_m(shape: BaseGeometry) -> float:
    """Length of a floor along its long way. [m]"""
    corners = shapely.get_coordinates(shapely.minimum_rotated_rectangle(shape))
    return float(np.hypot(*np.diff(corners, axis=0).T).max())


def middle_cut(shape: BaseGeometry) -> SawCut:
    """A straight cut through the middle of a floor's box, across its long way."""
    low, along, across, size = _axes(shape)
    middle = low + size[0] / 2 * along
    return SawCut((_point(middle), _point(middle + size[1] * across)), id="proposed cut")


def cut_places(shape: BaseGeometry, *, most: int) -> list[Line]:
    """Places for a straight cut from wall to wall, the most even halves first, at most `most`.

    Tried are a few places along the long way, the middle of the short one, and lines on from
    each corner that stands out into the floor. Fixtures are looked over.
    """
    whole = max(polygons_of(shape), key=lambda part: part.area)
    whole = shapely.Polygon(whole.exterior)
    low, along, across, size = _axes(whole)
    found: list[tuple[float, Line]] = []
    wanted = [(low + share * size[0] * along, across) for share in _ALONG]
    wanted.append((low + size[1] / 2 * across, along))
    wanted += [(corner, way) for corner in _standing_out(whole) for way in (across, along)]
    for start, way in wanted:
        for line in _chords(whole, start, way, 2 * float(size.sum())):
            parts = polygons_of(shapely.ops.split(whole, _longer(line)))
            share = max(part.area for part in parts) / whole.area
            told = any(_beside(line, other) for _, other in found)
            if len(parts) > 1 and share <= 1 - _LEAST_SHARE and not told:
                found.append((round(share, 3), line))
    return [line for _, line in sorted(found, key=lambda one: one[0])[:most]]


def where_words(shape: BaseGeometry, line: Line, *, us: bool) -> str:
    """How long a cut is and how far from the wall, in words: `9' 2" (2.80 m) long, … `.

    us: feet are told first.
    """
    (x0, y0), (x1, y1) = line
    length_m = float(np.hypot(x1 - x0, y1 - y0))
    side, away_m = _from_wall(shape, line)
    long, away = length_words(length_m, us=us), length_words(away_m, us=us)
    return f"{long} long, {away} from the wall at the {side} of the plan"


def _from_wall(shape: BaseGeometry, line: Line) -> tuple[str, float]:
    (x0, y0), (x1, y1) = line
    normal = np.array([y1 - y0, x0 - x1]) / max(float(np.hypot(x1 - x0, y1 - y0)), 1e-9)
    if normal[int(np.argmax(np.abs(normal)))] < 0:
        normal = -normal
    reach = shapely.get_coordinates(shape) @ normal
    at = float(np.array([x0, y0]) @ normal)
    upright = abs(normal[0]) >= abs(normal[1])
    sides = ("left", "right") if upright else ("bottom", "top")
    before, after = at - float(reach.min()), float(reach.max()) - at
    return (sides[0], before) if before <= after else (sides[1], after)


def _axes(shape: BaseGeometry) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """A corner of the floor's box, unit vectors along and across its long way, its two sizes."""
    corners = shapely.get_coordinates(shapely.minimum_rotated_rectangle(shape))
    legs = np.diff(corners, axis=0)[:2]
    sizes = np.hypot(*legs.T)
    first = 0 if sizes[0] >= sizes[1] else 1
    long, short = legs[first] / sizes[first], legs[1 - first] / sizes[1 - first]
    return corners[0 if first == 0 else 1], long, _inward(first, short), sizes[[first, 1 - first]]


def _inward(first: int, short: np.ndarray) -> np.ndarray:
    """Across the box from the corner where its long side begins."""
    return short if first == 0 else -short


def _standing_out(whole: shapely.Polygon) -> list[np.ndarray]:
    """Corners at which a wall stands out into the floor."""
    ring = shapely.get_coordinates(shapely.orient_polygons(whole).exterior.simplify(0.02))[:-1]
    before, after = ring - np.roll(ring, 1, axis=0), np.roll(ring, -1, axis=0) - ring
    turn = before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]
    return [xy for xy, bend in zip(ring, turn, strict=True) if bend < -1e-3]


def _chords(whole: shapely.Polygon, start: np.ndarray, way: np.ndarray, far: float) -> list[Line]:
    line = shapely.LineString([start - far * way, start + far * way])
    parts = shapely.get_parts(shapely.intersection(whole, line)).tolist()
    ends = [shapely.get_coordinates(part) for part in parts if part.length >= _SHORTEST_M]
    return [(_point(xy[0]), _point(xy[-1])) for xy in ends]


def _longer(line: Line, by: float = 1e-3) -> shapely.LineString:
    one, two = np.asarray(line[0]), np.asarray(line[1])
    reach = by * (two - one) / max(float(np.hypot(*(two - one))), 1e-9)
    return shapely.LineString([one - reach, two + reach])


def _beside(one: Line, two: Line) -> bool:
    return bool(
        shapely.hausdorff_distance(shapely.LineString(one), shapely.LineString(two)) < _APART_M
    )


def _point(xy: np.ndarray) -> Point:
    return (round(float(xy[0]), 3), round(float(xy[1]), 3))
