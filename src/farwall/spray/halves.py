"""A band for two: cut across its middle, each half with the way its sprayer walks.

Both stand before the whole band, on ground that stays dry, as one would; neither
ever stands behind the other's wet floor. A band that is too short for two, or
that does not fall into two even halves, stays whole and is sprayed by one.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
import shapely.ops

from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point, polygons_of
from farwall.nouns import dataclass
from farwall.spray.apart import APART_M, least_gap_m, timed
from farwall.spray.bands import Strip
from farwall.spray.passes import Pass
from farwall.spray.whole import one_polygon

_SPARE_M = 0.02
"""More than they must be apart, for paths are rounded."""
_LEAST_SHARE = 0.3
_HALVINGS = 7
_TANGENT_M = 0.05
_CUT_BEYOND_M = 0.5
_SAME_M2 = 0.002


@dataclass(frozen=True)
class Half:
    """Half of a band; `path` goes from its outer end to the middle of the band."""

    strip: Strip
    path: tuple[Point, ...]


def halves_of(each: Pass, path: Sequence[Point], tools: PlanTools) -> tuple[Half, Half] | None:
    """Both halves of a pass walked along `path`, the half at its beginning first.

    None where two have no room side by side or the band does not part evenly.
    """
    if len(path) < 2:
        return None
    line = shapely.LineString(path)
    if line.length < APART_M + 2 * _SPARE_M:
        return None
    middle = _even_middle(each.strip, line, tools.reach_m)
    parts = _parted(each.strip, line, middle, tools.reach_m)
    ways = _ways_apart(line, middle)
    if parts is None or ways is None:
        return None
    found = (Half(parts[0], ways[0]), Half(parts[1], ways[1]))
    smaller = min(half.strip.area_m2 for half in found)
    if smaller < _LEAST_SHARE * each.strip.area_m2:
        return None
    if not all(Pass(half.strip, half.path, 0.0).within(tools.reach_m) for half in found):
        return None
    return found


def apart_all_along(
    halves: tuple[Half, Half], minutes: tuple[float, float], *, inward: bool
) -> bool:
    """Whether both stay apart when they begin together, at the ends or in the middle."""
    ways = [half.path if inward else half.path[::-1] for half in halves]
    one, two = (timed(way, 0.0, m) for way, m in zip(ways, minutes, strict=True))
    return least_gap_m(one, two) >= APART_M


def _even_middle(strip: Strip, line: shapely.LineString, reach_m: float) -> float:
    """How far along the path a cut across leaves as much floor on either side. [m]"""
    low, high = 0.0, line.length
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        first, _ = _sides(strip, line, middle, reach_m)
        if 2 * sum(part.area for _, part in first) < strip.area_m2:
            low = middle
        else:
            high = middle
    return (low + high) / 2


Parts = tuple[tuple[str, shapely.Polygon], ...]


def _sides(
    strip: Strip, line: shapely.LineString, middle: float, reach_m: float
) -> tuple[Parts, Parts]:
    """The floor before and beyond a cut straight across the path."""
    cut = _across(line, middle, reach_m)
    sides: tuple[list[tuple[str, shapely.Polygon]], list[tuple[str, shapely.Polygon]]] = ([], [])
    for name, shape in strip.parts:
        for piece in polygons_of(shapely.ops.split(shape, cut)):
            beyond = line.project(shapely.centroid(piece)) > middle
            sides[beyond].append((name, piece))
    return tuple(sides[0]), tuple(sides[1])


def _across(line: shapely.LineString, at_m: float, reach_m: float) -> shapely.LineString:
    here = np.array(line.interpolate(at_m).coords[0])
    before = np.array(line.interpolate(max(0.0, at_m - _TANGENT_M)).coords[0])
    after = np.array(line.interpolate(min(line.length, at_m + _TANGENT_M)).coords[0])
    along = after - before
    normal = np.array([-along[1], along[0]]) / max(float(np.hypot(*along)), 1e-9)
    far = (reach_m + _CUT_BEYOND_M) * normal
    return shapely.LineString([here - far, here + far])


def _parted(
    strip: Strip, line: shapely.LineString, middle: float, reach_m: float
) -> tuple[Strip, Strip] | None:
    """Two strips, each of one piece."""
    found = []
    for parts in _sides(strip, line, middle, reach_m):
        half = Strip(parts, strip.level)
        if not parts or abs(one_polygon(half.shape).area - half.area_m2) > _SAME_M2:
            return None
        found.append(half)
    return found[0], found[1]


def _ways_apart(
    line: shapely.LineString, middle: float
) -> tuple[tuple[Point, ...], tuple[Point, ...]] | None:
    """Both parts of the path, cut short so that their ends in the middle are apart."""
    off = APART_M / 2 + _SPARE_M
    while off <= min(middle, line.length - middle):
        one, two = line.interpolate(middle - off), line.interpolate(middle + off)
        if one.distance(two) >= APART_M + _SPARE_M:
            first = shapely.ops.substring(line, 0.0, middle - off)
            second = shapely.ops.substring(line, line.length, middle + off)
            return _rounded(first), _rounded(second)
        off += _SPARE_M
    return None


def _rounded(line: shapely.geometry.base.BaseGeometry) -> tuple[Point, ...]:
    return tuple((round(float(x), 4), round(float(y), 4)) for x, y in line.coords)
