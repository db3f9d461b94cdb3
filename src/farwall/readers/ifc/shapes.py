"""Bodies of elements as triangles in metres, and what of them counts in plan."""

from __future__ import annotations

from collections.abc import Sequence
from math import dist

import numpy as np
import numpy.typing as npt
import shapely

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point, polygons_of
from farwall.nouns import dataclass
from farwall.readers.ifc.load import Entity, Model, ifc_library

Array = npt.NDArray[np.float64]

_FLAT = 0.95
"""Least share of the upright in the normal of a face that one walks on."""
_LEVEL_M = 0.02
_LEAST_FLOOR_M2 = 0.05
_STEP_M, _STEP_M2 = 0.45, 0.5
"""A second level of one space: not a seat or a sill, but floor. Rank: guess."""
_CRACK_M = 1e-4
_SETTINGS = ("use-world-coords", "no-normals", "disable-opening-subtractions")
_ON = True
_SAGITTA_M = 0.0003
"""Chords of arcs stay so near: a round room of 0.4 m keeps its area to 0.05 %."""


@dataclass(frozen=True)
class Body:
    """A body in world coordinates [m]: corners (n, 3) and triangles (m, 3) of their places."""

    corners: Array
    triangles: npt.NDArray[np.int64]

    @property
    def low_m(self) -> float:
        """Height of its lowest corner."""
        return float(self.corners[:, 2].min())

    @property
    def high_m(self) -> float:
        """Height of its highest corner."""
        return float(self.corners[:, 2].max())


@dataclass(frozen=True)
class FloorFound:
    """The floor of a body in plan, largest part first; `levels_m`: heights it lies at."""

    parts: tuple[shapely.Polygon, ...]
    levels_m: tuple[float, ...]
    sloped: bool = False


def bodies_of(model: Model, elements: Sequence[Entity], factor: float) -> dict[int, Body]:
    """The bodies of elements by their number in the file, by tessellation in one thread.

    factor: metres that come out of a metre as the file says it; 1, but for a user's own scale.
    Elements without a body, or whose body cannot be built, are missing.
    """
    if not elements:
        return {}
    library = ifc_library()
    settings = library.geom.settings()
    for name in _SETTINGS:
        settings.set(name, _ON)
    settings.set("mesher-linear-deflection", _SAGITTA_M)
    found: dict[int, Body] = {}
    try:
        iterator = library.geom.iterator(settings, model, 1, include=list(elements))
        if not iterator.initialize():
            return found
        for _ in range(50 * len(elements) + 1000):
            shape = iterator.get()
            body = _body(shape.geometry, factor)
            if body is not None:
                found.setdefault(int(shape.id), body)
            if not iterator.next():
                return found
        raise RuntimeError("a number that stands for two things gave bodies without end")
    except (RuntimeError, MemoryError) as error:
        what = "The bodies of this model cannot be built."
        raise Refused(Mistake("DATA", what, "Export the floor plan as DXF.")) from error


def _body(geometry: Entity, factor: float) -> Body | None:
    corners = np.asarray(geometry.verts, dtype=np.float64).reshape(-1, 3) * factor
    triangles = np.asarray(geometry.faces, dtype=np.int64).reshape(-1, 3)
    if not len(corners) or not len(triangles) or not np.isfinite(corners).all():
        return None
    return Body(corners, triangles)


def floor_of(body: Body) -> FloorFound | None:
    """The lowest faces of a body in plan: what is walked on. None when it has none.

    A second level up to 0.45 m above the lowest counts too where nothing of the first lies under
    it; a body without any level face is taken by its outline in plan.
    """
    tris = body.corners[body.triangles]
    normals = np.cross(tris[:, 1] - tris[:, 0], tris[:, 2] - tris[:, 0])
    long = np.linalg.norm(normals, axis=1)
    sound = long > 1e-10
    level = sound & (np.abs(normals[:, 2]) >= _FLAT * np.where(sound, long, 1.0))
    heights = tris[:, :, 2].mean(axis=1)
    flat_area = np.abs(normals[:, 2]) / 2
    lowest = _lowest_level(heights[level], flat_area[level])
    if lowest is None or lowest > body.low_m + _STEP_M:
        outline = _union(tris[sound & (flat_area > 1e-8)])
        return FloorFound(tuple(outline), (body.low_m,), sloped=True) if outline else None
    at_lowest = level & (np.abs(heights - lowest) <= _LEVEL_M)
    floor = shapely.union_all(_union(tris[at_lowest]))
    levels = [lowest]
    above = level & (heights > lowest + _LEVEL_M) & (heights <= lowest + _STEP_M)
    for height in sorted({round(float(value), 2) for value in heights[above]}):
        step = shapely.union_all(_union(tris[above & (np.abs(heights - height) <= _LEVEL_M)]))
        free = step.difference(floor.buffer(_LEVEL_M))
        if free.area >= _STEP_M2:
            floor = shapely.union(floor, step.difference(floor))
            levels.append(height)
    parts = sorted(polygons_of(floor), key=lambda part: -part.area)
    return FloorFound(tuple(parts), tuple(levels)) if parts else None


def _lowest_level(heights: Array, areas: Array) -> float | None:
    """The lowest height at which faces of some size lie."""
    for place in np.argsort(heights, kind="stable"):
        if areas[np.abs(heights - heights[place]) <= _LEVEL_M].sum() >= _LEAST_FLOOR_M2:
            return float(heights[place])
    return None


def _union(triangles: Array) -> list[shapely.Polygon]:
    if not len(triangles):
        return []
    rings = np.concatenate([triangles[:, :, :2], triangles[:, :1, :2]], axis=1)
    whole = shapely.union_all(shapely.polygons(rings))
    if len(shapely.get_parts(whole)) > 1:  # parts that only rounding holds apart
        closed = whole.buffer(_CRACK_M, join_style="mitre").buffer(-_CRACK_M, join_style="mitre")
        if len(shapely.get_parts(closed)) < len(shapely.get_parts(whole)):
            whole = closed
    return polygons_of(whole)


def line_of(body: Body, width_m: float | None, along: Point) -> tuple[Point, Point] | None:
    """The line of a door or window in plan: in the middle of the depth, as wide as told.

    The side of its rectangle that is as long as `width_m` runs along the wall; `along` (the
    element's own x axis) decides where both are, and where no width is told the longer side does.
    """
    hull = shapely.MultiPoint(body.corners[:, :2]).convex_hull
    if not isinstance(hull, shapely.Polygon):
        ends = [(float(x), float(y)) for x, y in hull.coords] if not hull.is_empty else []
        return (ends[0], ends[-1]) if len(ends) > 1 else None
    box = hull.minimum_rotated_rectangle
    a, b, c, _ = [(float(x), float(y)) for x, y in shapely.get_coordinates(box)[:4]]
    middle = ((a[0] + c[0]) / 2, (a[1] + c[1]) / 2)
    sides = [(a, b), (b, c)]
    lengths = [dist(*side) for side in sides]
    way = sides[_along_wall(sides, lengths, width_m, along)]
    long = dist(*way)
    told = width_m is not None and 0.3 * long <= width_m <= 1.5 * long
    half = (width_m if told and width_m else long) / 2
    ux, uy = (way[1][0] - way[0][0]) / long, (way[1][1] - way[0][1]) / long
    return (
        (middle[0] - ux * half, middle[1] - uy * half),
        (middle[0] + ux * half, middle[1] + uy * half),
    )


def _along_wall(
    sides: list[tuple[Point, Point]], lengths: list[float], width_m: float | None, along: Point
) -> int:
    if width_m is not None and abs(lengths[0] - lengths[1]) > 0.1 * max(lengths):
        return min((0, 1), key=lambda i: abs(lengths[i] - width_m))
    if width_m is None:
        return 0 if lengths[0] >= lengths[1] else 1

    def turned(place: int) -> float:
        (ax, ay), (bx, by) = sides[place]
        return abs((bx - ax) * along[0] + (by - ay) * along[1]) / max(lengths[place], 1e-9)

    return 0 if turned(0) >= turned(1) else 1
