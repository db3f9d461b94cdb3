"""GeoJSON geometry as frozen values: what the files hold, and shapely beside it.

Coordinates are metres, x right, y up (RFC 7946 geometry objects in a local
metric frame). A polygon's outer ring runs counter-clockwise and closes on its
first point.
"""

from __future__ import annotations

from functools import cached_property
from typing import Literal

import shapely
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from farwall.nouns import dataclass

Point = tuple[float, float]
Ring = tuple[Point, ...]

DECIMALS = 4
"""Digits kept in files: 0.1 mm, far below the 10 mm that a replay tolerates."""


@dataclass(frozen=True)
class PolygonGeometry:
    """A GeoJSON Polygon in metres: one outer ring, then its holes."""

    coordinates: tuple[Ring, ...]
    type: Literal["Polygon"] = "Polygon"

    @cached_property
    def shape(self) -> shapely.Polygon:
        """The same polygon for reckoning."""
        return shapely.Polygon(self.coordinates[0], self.coordinates[1:])


def polygon_geometry(shape: shapely.Polygon, *, decimals: int = DECIMALS) -> PolygonGeometry:
    """The GeoJSON value of a shapely polygon, outer ring counter-clockwise, rounded."""
    oriented = orient(shape)
    rings = [oriented.exterior, *oriented.interiors]
    return PolygonGeometry(tuple(_rounded(ring.coords, decimals) for ring in rings))


def _rounded(coords: shapely.coords.CoordinateSequence, decimals: int) -> Ring:
    return tuple((round(x, decimals) + 0.0, round(y, decimals) + 0.0) for x, y in coords)


def polygons_of(shape: BaseGeometry) -> list[shapely.Polygon]:
    """The polygons inside any geometry, empty ones, lines and points left out."""
    return [
        part
        for part in shapely.get_parts(shapely.get_parts(shape)).tolist()
        if isinstance(part, shapely.Polygon) and not part.is_empty
    ]
