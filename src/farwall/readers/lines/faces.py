"""Nodes the bounds, closes small gaps, and cuts the plane into faces."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

import numpy as np
import shapely

from farwall.floor.geometry import Point, polygons_of
from farwall.readers.lines.bounds import GRID_M


@dataclass(frozen=True)
class Face:
    """A piece of the plane between bounds; `breadth_m` is its widest inscribed circle."""

    shape: shapely.Polygon
    breadth_m: float


def noded(lines: list[shapely.LineString]) -> shapely.Geometry:
    """The lines cut at every crossing, on a grid of a tenth of a millimetre."""
    return shapely.unary_union(shapely.MultiLineString(lines), grid_size=GRID_M)


def loose_ends(lines: list[shapely.LineString]) -> list[tuple[Point, Point]]:
    """Each end that meets no other line, with the point its line comes from."""
    pieces = shapely.get_parts(noded(lines))
    found = []
    for index, point in _loose_ends(pieces):
        coords = [(float(x), float(y)) for x, y in pieces[index].coords]
        found.append((point, coords[1] if coords[0] == point else coords[-2]))
    return found


def _loose_ends(pieces: np.ndarray) -> list[tuple[int, Point]]:
    ends: list[tuple[int, Point]] = []
    for index, piece in enumerate(pieces):
        for x, y in (piece.coords[0], piece.coords[-1]):
            ends.append((index, (float(x), float(y))))
    count = Counter(point for _, point in ends)
    return [(index, point) for index, point in ends if count[point] == 1]


def polygons_between(lines: list[shapely.LineString]) -> list[shapely.Polygon]:
    """Every bounded face between the lines, as it comes."""
    faces: shapely.GeometryCollection[shapely.Polygon] = shapely.polygonize(
        shapely.get_parts(noded(lines)).tolist()
    )
    return polygons_of(faces)


def cut_faces(lines: list[shapely.LineString]) -> list[Face]:
    """Every bounded face, largest first."""
    shapes = polygons_between(lines)
    faces = [Face(shape, breadth_m(shape)) for shape in shapes if shape.area > GRID_M**2]
    return sorted(faces, key=lambda face: (-face.shape.area, face.shape.bounds))


def breadth_m(shape: shapely.Polygon) -> float:
    """Diameter of the widest circle inside."""
    rough = 2 * shape.area / shape.length if shape.length else 0.0
    if rough * 4 < 0.05:
        return rough * 2
    circle = shapely.maximum_inscribed_circle(shape, tolerance=max(0.004, rough / 50))
    return float(2 * circle.length)
