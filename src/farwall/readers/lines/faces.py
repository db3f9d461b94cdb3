"""Nodes the bounds, closes small gaps, and cuts the plane into faces."""

from __future__ import annotations

import numpy as np
import shapely

from farwall.floor.geometry import Point, polygons_of
from farwall.nouns import dataclass
from farwall.readers.lines.bounds import GRID_M

_BROAD_M = 1.2
"""Broader than anything that is told apart by its breadth."""
_BODY_M = 0.06, 0.44
"""Of a face in between nothing more is asked: broader than a leaf, narrower than any room."""


@dataclass(frozen=True)
class Face:
    """A piece of the plane between bounds; `breadth_m` as below, of a wall's body it is at least
    that and less than any room's.
    """

    shape: shapely.Polygon
    breadth_m: float


class Nets:
    """Lines cut at every crossing, on a grid of a tenth of a millimetre.

    It is the dearest step of a large plan, so the same lines are cut once.
    """

    def __init__(self) -> None:
        self._known: dict[bytes, shapely.Geometry] = {}

    def of(self, lines: list[shapely.LineString]) -> shapely.Geometry:
        """The lines as one net."""
        points, line = shapely.get_coordinates(lines, return_index=True)
        key = points.tobytes() + line.tobytes()
        if key not in self._known:
            self._known[key] = noded(lines)
        return self._known[key]


def noded(lines: list[shapely.LineString]) -> shapely.Geometry:
    """The lines cut at every crossing, on a grid of a tenth of a millimetre."""
    return shapely.unary_union(shapely.MultiLineString(lines), grid_size=GRID_M)


def loose_ends(net: shapely.Geometry) -> list[tuple[Point, Point]]:
    """Each end that meets no other line of a net, with the point its line comes from."""
    pieces = shapely.get_parts(net)
    coords, piece = shapely.get_coordinates(pieces, return_index=True)
    if not len(coords):
        return []
    first = np.flatnonzero(np.diff(piece, prepend=-1))
    last = np.append(first[1:], len(coords)) - 1
    ends = np.stack([first, last], axis=1).reshape(-1)
    before = np.stack([first + 1, last - 1], axis=1).reshape(-1)
    _, place, count = np.unique(coords[ends], axis=0, return_inverse=True, return_counts=True)
    loose = np.flatnonzero(count[place.reshape(-1)] == 1)
    return [(_point(coords[ends[i]]), _point(coords[before[i]])) for i in loose.tolist()]


def _point(pair: np.ndarray) -> Point:
    return float(pair[0]), float(pair[1])


def polygons_between(lines: list[shapely.LineString]) -> list[shapely.Polygon]:
    """Every bounded face between the lines, as it comes."""
    return polygons_in(noded(lines))


def polygons_in(net: shapely.Geometry) -> list[shapely.Polygon]:
    """Every bounded face of a net, as it comes."""
    faces: shapely.GeometryCollection[shapely.Polygon] = shapely.polygonize(
        shapely.get_parts(net).tolist()
    )
    return polygons_of(faces)


def cut_faces(net: shapely.Geometry) -> list[Face]:
    """Every bounded face of a net, largest first."""
    shapes = polygons_in(net)
    faces = [Face(shape, _told_apart_m(shape)) for shape in shapes if shape.area > GRID_M**2]
    return sorted(faces, key=lambda face: (-face.shape.area, face.shape.bounds))


def _told_apart_m(shape: shapely.Polygon) -> float:
    """As `breadth_m`; for a wall's body, which may have a thousand corners, what it reaches."""
    least, most = _BODY_M
    rough = 2 * shape.area / shape.length if shape.length else 0.0
    if least < rough < most and shape.buffer(-most / 2).is_empty:
        return rough
    return breadth_m(shape)


def breadth_m(shape: shapely.Polygon) -> float:
    """Diameter of the widest circle inside; for broad shapes a figure that it reaches at least.

    Area over half the edge is never more than that diameter (plane geometry: the circle's radius
    times the edge is at least the area).
    """
    rough = 2 * shape.area / shape.length if shape.length else 0.0
    if rough > _BROAD_M:
        return rough
    if rough * 4 < 0.05:
        return rough * 2
    if (short := _short_side_m(shape)) is not None:
        return short
    circle = shapely.maximum_inscribed_circle(shape, tolerance=max(0.004, rough / 50))
    return float(2 * circle.length)


def _short_side_m(shape: shapely.Polygon) -> float | None:
    """Of a rectangle, which needs no search for its circle; None for all else."""
    box = shapely.oriented_envelope(shape)
    if not isinstance(box, shapely.Polygon) or shape.area < box.area * (1 - 1e-6):
        return None
    sides = np.hypot(*np.diff(shapely.get_coordinates(box)[:3], axis=0).T)
    return float(sides.min())
