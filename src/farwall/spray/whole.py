"""A strip's floor as the one polygon that a band in a file has."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of


def one_polygon(shape: BaseGeometry) -> shapely.Polygon:
    """Parts that meet under a door with a drawn wall between them, joined by a hair's breadth.

    The largest part where they are further apart than that.
    """
    if isinstance(shape, shapely.Polygon):
        return shape
    for width in (0.0002, 0.001, 0.006, 0.012):
        joined = shape.buffer(width, join_style="mitre").buffer(-width, join_style="mitre")
        if isinstance(joined, shapely.Polygon):
            return joined
    return max(polygons_of(shape), key=lambda part: part.area)
