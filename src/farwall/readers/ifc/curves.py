"""Points of the few curves and surfaces by which models draw footprints and boundaries."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite

import numpy as np

from farwall.readers.ifc.load import Entity
from farwall.readers.ifc.tree import axes_matrix

_DEEPEST = 6
_MOST_POINTS = 5000

Points = list[tuple[float, ...]]


def surface_points(surface: Entity | None) -> Points:
    """Corners of a connection surface in its space's own frame; none for what is not known."""
    try:
        points = _surface_points(surface)
    except (AttributeError, TypeError, ValueError, IndexError, RuntimeError, AssertionError):
        return []
    sound = [p for p in points[:_MOST_POINTS] if all(map(isfinite, p))]
    return sound if len(sound) == len(points) else []


def curve_points(curve: Entity | None, depth: int = 0) -> Points:
    """The points of a curve made of straight pieces; arcs are taken by their given points."""
    if curve is None or depth > _DEEPEST:
        return []
    if curve.is_a("IfcPolyline"):
        return [tuple(map(float, point.Coordinates)) for point in curve.Points]
    if curve.is_a("IfcIndexedPolyCurve"):
        return [tuple(map(float, row)) for row in curve.Points.CoordList]
    if curve.is_a("IfcCompositeCurve"):
        return [
            point
            for segment in curve.Segments
            for point in curve_points(getattr(segment, "ParentCurve", None), depth + 1)
        ]
    if curve.is_a("IfcTrimmedCurve"):
        return [tuple(map(float, trim.Coordinates)) for trim in (*curve.Trim1, *curve.Trim2)
                if hasattr(trim, "Coordinates")]  # fmt: skip
    return []


def _surface_points(surface: Entity | None) -> Points:
    if surface is None:
        return []
    if surface.is_a("IfcSurfaceOfLinearExtrusion"):
        base = _in(surface.Position, curve_points(surface.SweptCurve.Curve))
        way = _in(surface.Position, [tuple(map(float, surface.ExtrudedDirection.DirectionRatios))])
        origin = _in(surface.Position, [(0.0, 0.0, 0.0)])
        up = (np.array(way[0]) - np.array(origin[0])) * float(surface.Depth)
        return [*base, *(tuple((np.array(p) + up).tolist()) for p in base)]
    if surface.is_a("IfcCurveBoundedPlane"):
        return _in(surface.BasisSurface.Position, curve_points(surface.OuterBoundary))
    if surface.is_a("IfcFaceSurface"):
        return _face(surface)
    if surface.is_a("IfcFaceBasedSurfaceModel"):
        faces = [face for group in surface.FbsmFaces for face in group.CfsFaces]
        return [point for face in faces for point in _face(face)]
    return []


def _face(face: Entity) -> Points:
    return [
        tuple(map(float, point.Coordinates))
        for bound in face.Bounds
        for point in getattr(bound.Bound, "Polygon", None) or ()
    ]


def _in(position: Entity | None, points: Sequence[Sequence[float]]) -> Points:
    """Points of a position's frame in the frame around it."""
    matrix = axes_matrix(position)
    if matrix is None:
        raise ValueError("an axis placement without directions")
    flat = np.array([[*p, 0.0, 0.0][:3] for p in points], dtype=np.float64).reshape(-1, 3)
    return [tuple(row) for row in (flat @ matrix[:3, :3].T + matrix[:3, 3]).tolist()]
