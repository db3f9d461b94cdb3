"""The footprint curve of a space, for those that have no body."""

from __future__ import annotations

from math import isfinite

import numpy as np
import shapely

from farwall.floor.geometry import polygons_of
from farwall.readers.ifc.curves import curve_points
from farwall.readers.ifc.frame import Frame
from farwall.readers.ifc.load import Entity
from farwall.readers.ifc.tree import placement

_NAMES = {"FootPrint", "Annotation", "Plan"}
_LEAST_M2 = 0.05


def footprint_of(element: Entity, frame: Frame) -> tuple[shapely.Polygon | None, float | None]:
    """The largest closed curve of a space's footprint and its height [m]; or None twice."""
    matrix = placement(element)
    shape = getattr(element, "Representation", None)
    if matrix is None or shape is None:
        return None, None
    best: tuple[float, shapely.Polygon, float] | None = None
    for representation in shape.Representations or ():
        if str(representation.RepresentationIdentifier) not in _NAMES:
            continue
        for curve in _curves(representation):
            try:
                points = curve_points(curve)
            except (AttributeError, TypeError, ValueError, RuntimeError):
                continue
            if len(points) < 3 or not all(isfinite(v) for p in points for v in p):
                continue
            world = np.array(frame.plan(points, matrix))
            parts = polygons_of(shapely.make_valid(shapely.Polygon(world[:, :2])))
            largest = max(parts, key=lambda part: part.area, default=None)
            if largest is not None and (best is None or largest.area > best[0]):
                best = float(largest.area), largest, float(world[:, 2].min())
    if best is None or best[0] < _LEAST_M2:
        return None, None
    return best[1], best[2]


def _curves(representation: Entity) -> list[Entity]:
    found: list[Entity] = []
    for item in representation.Items or ():
        if item.is_a("IfcGeometricSet"):
            found += [one for one in item.Elements if one.is_a("IfcCurve")]
        elif item.is_a("IfcCurve"):
            found.append(item)
    return found
