"""Patches of sun: where the light of a window falls on the floor, by parallel rays.

A ray through the glass at height z meets the floor z / tan(elevation) farther along the sun's
bearing. So a window throws a parallelogram: its own width one way, its height over the tangent the
other. It has to pass the wall at both its faces, which narrows the patch by the depth of the
wall (the reveal), and no inner wall may stand in its way. Doorways are taken to stand open to
their full height.

Left out, each of which makes true patches smaller: eaves, screens, trees, neighbours, frames, the
head of a doorway, all furniture. The sun's half degree of width would blur an edge by a
hundredth of its way.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.air.sun import LOWEST_DEG
from farwall.floor.geometry import Point, polygons_of
from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]

_GRAZING = 0.02
"""Cosine between sun and wall below which the glass shows its edge: about one degree."""
_OFF_WALL_M = 0.02
"""Walls nearer to the glass than this are the window's own."""
_SLIVER_M2 = 0.01


@dataclass(frozen=True)
class Glazing:
    """A window as the sun meets it: its line on the wall's inner face, its outward side. [m]

    `outward` has length 1 and stands square on the line.
    """

    line: tuple[Point, Point]
    outward: Point
    sill_m: float
    height_m: float
    reveal_m: float = 0.0

    @property
    def width_m(self) -> float:
        """Its breadth along the wall."""
        return math.dist(*self.line)


@dataclass(frozen=True)
class Ground:
    """The rooms that light may reach, and the walls that stop it."""

    rooms: dict[str, BaseGeometry]
    walls: BaseGeometry


def whole_patches(glazing: Glazing, elevation_deg: Floats, bearing_deg: Floats) -> Floats:
    """Corners (n, 4, 2) of the patch on an endless floor; nan where none falls. [m]

    bearing_deg: where the sun stands, clockwise from the plan's up (north_deg + azimuth).
    """
    along, beyond, corner, axis, ray = _spans(glazing, elevation_deg, bearing_deg)
    return _quads(corner, axis, ray, along, beyond)


def lit(
    glazing: Glazing, ground: Ground, elevation_deg: Floats, bearing_deg: Floats
) -> list[BaseGeometry]:
    """What the window lights of all rooms at each moment, before it is parted by room. [m]"""
    along, beyond, corner, axis, ray = _spans(glazing, elevation_deg, bearing_deg)
    quads = _quads(corner, axis, ray, along, beyond)
    there = np.flatnonzero(~np.isnan(quads[:, 0, 0]))
    nothing = shapely.Polygon()
    found: list[BaseGeometry] = [nothing] * len(quads)
    if not len(there):
        return found
    patches = shapely.polygons(quads[there])
    facing = -ray[there] @ np.array(glazing.outward)
    start = _OFF_WALL_M / np.maximum(facing, _GRAZING)
    beams = shapely.polygons(
        _quads(corner, axis, ray[there], along[there], np.column_stack([start, beyond[there, 1]]))
    )
    stops = shapely.intersection(beams, ground.walls)
    for place, patch, stop in zip(there, np.asarray(patches), np.asarray(stops), strict=True):
        way = ray[place] * (beyond[place, 1] + 1.0)
        found[place] = shapely.difference(patch, _shadow(stop, way)) if stop.length else patch
    return found


def by_room(light: BaseGeometry, ground: Ground) -> dict[str, list[shapely.Polygon]]:
    """Light parted by the rooms that it falls into; slivers left out."""
    if light.is_empty:
        return {}
    found = {}
    for room, floor in ground.rooms.items():
        if not floor.intersects(light):
            continue
        parts = [one for one in polygons_of(shapely.intersection(floor, light))
                 if one.area > _SLIVER_M2]  # fmt: skip
        if parts:
            found[room] = parts
    return found


def _spans(
    glazing: Glazing, elevation_deg: Floats, bearing_deg: Floats
) -> tuple[Floats, Floats, Floats, Floats, Floats]:
    """From, to along the wall; from, to along the ray; a corner; the wall's way; the rays."""
    a, b = (np.array(end) for end in glazing.line)
    axis = (b - a) / max(glazing.width_m, 1e-9)
    bearing = np.radians(np.asarray(bearing_deg, dtype=float))
    toward = np.column_stack([np.sin(bearing), np.cos(bearing)])
    facing = toward @ np.array(glazing.outward)
    high = np.asarray(elevation_deg, dtype=float)
    shines = (facing > _GRAZING) & (high >= LOWEST_DEG)
    far = 1 / np.tan(np.radians(np.where(shines, high, 45.0)))  # metres of way for one of height
    face = np.where(shines, facing, 1.0)
    slant = glazing.reveal_m * (toward @ axis) / face
    low = np.maximum(0.0, -slant)
    top = np.minimum(glazing.width_m, glazing.width_m - slant)
    near = far * glazing.sill_m
    end = far * (glazing.sill_m + glazing.height_m) - glazing.reveal_m / face
    shines &= (top - low > 1e-6) & (end - near > 1e-6)
    along = np.where(shines[:, None], np.column_stack([low, top]), np.nan)
    beyond = np.where(shines[:, None], np.column_stack([near, end]), np.nan)
    return along, beyond, a, axis, -toward


def _quads(corner: Floats, axis: Floats, ray: Floats, along: Floats, beyond: Floats) -> Floats:
    """Parallelograms between these ends along the wall and along the rays."""
    corners = [(0, 0), (1, 0), (1, 1), (0, 1)]
    return np.stack(
        [corner + along[:, [i]] * axis + beyond[:, [j]] * ray for i, j in corners], axis=1
    )


def _shadow(stop: BaseGeometry, way: Floats) -> BaseGeometry:
    """What walls keep the light from: each of their pieces moved along the ray."""
    quads = []
    for line in shapely.get_parts(stop):
        points = shapely.get_coordinates(line)
        if len(points) < 2:
            continue
        first, last = points[:-1], points[1:]
        quads.append(np.stack([first, last, last + way, first + way], axis=1))
    if not quads:
        return shapely.Polygon()
    return shapely.union_all(shapely.make_valid(shapely.polygons(np.concatenate(quads))))


def glazing_at(
    line: Sequence[Point],
    room: BaseGeometry,
    *,
    sill_m: float,
    height_m: float,
    reveal_m: float,
) -> Glazing:
    """A window drawn somewhere in its wall, brought to the inner face of that wall.

    Its outward side is the one away from the room. A line that lies deeper in the wall than the
    reveal makes the reveal as deep.
    """
    a, b = (np.asarray(end, dtype=float) for end in line)
    middle, way = (a + b) / 2, (b - a) / max(float(np.hypot(*(b - a))), 1e-9)
    normal = np.array([way[1], -way[0]])
    sides = [
        room.distance(shapely.Point(middle + turn * (reveal_m + 0.3) * normal)) for turn in (1, -1)
    ]
    outward = normal if sides[0] > sides[1] else -normal
    depth = room.distance(shapely.Point(middle))
    inner = [tuple((end - depth * outward).tolist()) for end in (a, b)]
    return Glazing(
        (inner[0], inner[1]),
        (float(outward[0]), float(outward[1])),
        sill_m,
        height_m,
        max(reveal_m, depth),
    )


def ground_of(rooms: dict[str, BaseGeometry], openings: Sequence[Sequence[Point]]) -> Ground:
    """Rooms and their walls, the walls open where these lines between two rooms lie."""
    edges = shapely.union_all([floor.boundary for floor in rooms.values()])
    gaps = [shapely.LineString(line).buffer(_OFF_WALL_M, cap_style="flat") for line in openings]
    walls = shapely.difference(edges, shapely.union_all(gaps)) if gaps else edges
    return Ground(rooms, walls)
