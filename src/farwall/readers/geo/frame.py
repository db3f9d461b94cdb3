"""From the coordinates of a GeoJSON file to local metres: degrees, map metres, other units."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from math import atan, cos, degrees, radians, sin, sinh, sqrt
from typing import Any

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.told.scale import GRID_DECIMALS, unit_named

WGS84_A_M = 6378137.0
WGS84_F = 1 / 298.257223563
"""Semi-major axis and flattening of the WGS 84 ellipsoid. Source: [nima-tr8350], table 3.1."""
_VILLAGE_DEG = 0.2
_UNITS = {
    "m": 1.0, "meters": 1.0, "metres": 1.0, "cm": 0.01, "mm": 0.001, "ft": 0.3048, "feet": 0.3048,
    "in": 0.0254, "inches": 0.0254,
}  # fmt: skip
_MERCATOR_CODES = {3857, 900913, 102100, 3785}
_METRIC_CODES = {2056, 2154, 3035, 21781, 27700, 28992, 31466, 31467, 31468, 31469}
_CODE = re.compile(r"EPSG:{1,2}(?:[\d.]*:)?(\d+)|^(\d{4,6})$", re.I)


@dataclass(frozen=True)
class Frame:
    """How a point becomes metres: `mercator` first to degrees, then `origin` off, times `scale`.

    `turned`: longitudes west of the date line were counted on past 180 degrees.
    """

    unit: str
    origin: Point
    scale: Point
    mercator: bool = False
    turned: bool = False
    said: str = ""
    mended: tuple[Note, ...] = ()
    asks: tuple[Note, ...] = ()

    def at(self, point: Point) -> Point:
        """A point of the file in local metres."""
        x, y = from_mercator(point) if self.mercator else point
        if self.turned and x < 0:
            x += 360.0
        east, north = (x - self.origin[0]) * self.scale[0], (y - self.origin[1]) * self.scale[1]
        return round(east, GRID_DECIMALS), round(north, GRID_DECIMALS)


def metres_per_degree(latitude_deg: float) -> Point:
    """Metres in a degree of longitude and of latitude there, good within a few kilometres.

    Radii of curvature of the WGS 84 ellipsoid in the prime vertical and the meridian.
    Source: [nima-tr8350] (the ellipsoid); [snyder-1395], chapter 4 (the radii; from memory).
    """
    e2 = WGS84_F * (2 - WGS84_F)
    bulge = 1 - e2 * sin(radians(latitude_deg)) ** 2
    across = WGS84_A_M / sqrt(bulge)
    along = WGS84_A_M * (1 - e2) / bulge**1.5
    return radians(across * cos(radians(latitude_deg))), radians(along)


def from_mercator(point: Point) -> Point:
    """Longitude and latitude of a point in web Mercator metres, which stretch off the equator.

    Source: the inverse of the spherical Mercator, [snyder-1395], equations 7-4 and 7-5 (from
    memory).
    """
    x, y = (max(-3e7, min(3e7, value)) for value in point)
    return degrees(x / WGS84_A_M), degrees(atan(sinh(y / WGS84_A_M)))


def frame_of(
    collection: Mapping[str, Any], points: Sequence[Point], scale_m_per_unit: float | None
) -> Frame:
    """The frame of a file's points; `scale_m_per_unit` [m] is the user's own word."""
    if scale_m_per_unit is not None:
        own = unit_named(scale_m_per_unit)
        return Frame(own, (0.0, 0.0), (scale_m_per_unit, scale_m_per_unit))
    unit = _UNITS.get(str(collection.get("units", "")).strip().lower())
    name, code = _crs(collection)
    if unit is not None:
        return Frame(unit_named(unit), (0.0, 0.0), (unit, unit), said=str(collection["units"]))
    if code in _MERCATOR_CODES and not _are_degrees(points):
        return _mercator(points, name)
    turned = _crosses_date_line(points)
    counted = [(x + 360.0 if x < 0 else x, y) for x, y in points] if turned else points
    if _are_degrees(counted):
        return _degrees(counted[0], name, turned=turned)
    return _metres(name, code)


def _degrees(origin: Point, name: str, *, turned: bool = False, mercator: bool = False) -> Frame:
    scale = metres_per_degree(origin[1])
    what = (
        f"Degrees were brought into metres about longitude {origin[0]:.6f}, latitude "
        f"{origin[1]:.6f} (WGS 84; {scale[0]:.1f} m and {scale[1]:.1f} m a degree)."
    )
    notes = [Note("degrees-to-metres", what, (0.0, 0.0))]
    if turned:
        what = "The floor lies across the date line; western longitudes were counted on past 180°."
        notes.append(Note("date-line", what, (0.0, 0.0)))
    return Frame("degree", origin, scale, mercator, turned, name, tuple(notes))


def _mercator(points: Sequence[Point], name: str) -> Frame:
    frame = _degrees(from_mercator(points[0]), name, mercator=True)
    what = "Web Mercator metres are longer than true ones; they were brought back by degrees."
    note = Note("mercator", what, (0.0, 0.0))
    return replace(frame, unit="m", mended=(note, *frame.mended))


def _metres(name: str, code: int | None) -> Frame:
    frame = Frame("m", (0.0, 0.0), (1.0, 1.0), said=name)
    if code is not None and not _is_metric(code):
        ask = f"How long is one unit of the frame {name}? Some map frames count in feet: --scale."
        return replace(frame, asks=(Note("scale", ask),))
    told = f"The file names the frame {name}; m" if name else "The file tells no unit of length; m"
    what = f"{told}etres were taken, for degrees of one building would be smaller numbers."
    return replace(frame, mended=(Note("unit-metres", what),))


def _is_metric(code: int) -> bool:
    """Whether a code is a frame in metres: universal transverse Mercator, and some of countries.

    Source: the EPSG register's ranges for WGS 84 and ETRS89 zones (from memory).
    """
    zones = 32601 <= code <= 32660 or 32701 <= code <= 32760 or 25828 <= code <= 25838
    return zones or code in _METRIC_CODES


def _crs(collection: Mapping[str, Any]) -> tuple[str, int | None]:
    crs = collection.get("crs")
    properties = crs.get("properties") if isinstance(crs, dict) else None
    name = properties.get("name") if isinstance(properties, dict) else crs
    if not isinstance(name, str):
        return "", None
    found = _CODE.search(name.strip()[:200])
    return name.strip()[:80], int(found[1] or found[2]) if found else None


def _crosses_date_line(points: Sequence[Point]) -> bool:
    xs = [x for x, _ in points]
    return max(map(abs, xs)) <= 180 and max(xs) - min(xs) > 180


def _are_degrees(points: Sequence[Point]) -> bool:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    on_earth = max(map(abs, xs)) <= 360 and max(map(abs, ys)) <= 90
    return on_earth and max(max(xs) - min(xs), max(ys) - min(ys)) < _VILLAGE_DEG
