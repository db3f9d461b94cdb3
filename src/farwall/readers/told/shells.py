"""The floor of a room out of the faces of its shell."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import hypot

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of
from farwall.nouns import dataclass
from farwall.readers.told.storeys import STOREY_RISE_M

Point3 = tuple[float, float, float]
Face = tuple[Sequence[Point3], Sequence[Sequence[Point3]]]
"""An outer loop and its holes [m]; first and last point need not be the same."""

_UPRIGHT = 0.9
"""A face is floor or ceiling when its normal is within 26 degrees of the plumb line (guess)."""
_STEP_M = 0.6
"""Faces within three steep risers are one level (guess)."""
_LEVEL_M = 0.02
_ADDS_UP = 0.005
_SMALL_M2 = 1e-4
_PART_M2 = 1.0
"""A piece of floor that lies apart is told as a piece from this size on (guess)."""
_SLIGHT = 0.05
_OPEN_BELOW = 0.8
"""So much of a higher face must have nothing beneath it to be floor (guess)."""


@dataclass(frozen=True)
class Plan:
    """A room's floor: `shape` in plan, the height of most of it, clear height over it [m].

    `steps` are other heights at which parts of it lie, with their areas [m, m2]. `parts` are
    pieces that lie apart, or a storey higher or lower; `apart_m2` what was too small for one.
    """

    shape: shapely.Polygon
    floor_m: float
    height_m: float | None = None
    steps: tuple[tuple[float, float], ...] = ()
    parts: tuple[Plan, ...] = ()
    apart_m2: float = 0.0

    @property
    def area_m2(self) -> float:
        """The area of the floor and of its pieces apart."""
        return float(self.shape.area) + sum(part.area_m2 for part in self.parts)


@dataclass(frozen=True)
class _Flat:
    z: float
    shape: BaseGeometry
    up: bool


@np.errstate(all="ignore")  # sums of areas divide by nothing on some slivers, and say so
def floor_of(faces: Iterable[Face], *, stated_m2: float | None = None) -> Plan | None:
    """The lowest faces of a shell, projected to plan; nothing when it has none.

    The lowest level of flat faces is floor. A higher level is floor where no face lies beneath it
    and its faces look the way that floors do in this shell; all the rest is ceiling. When the
    faces that look so add up to the stated area [m2], the look alone decides: a gallery may hang
    over the same room's floor.
    """
    flats = sorted(_flats(faces), key=lambda flat: flat.z)
    if not flats:
        return None
    floors = _floors(flats, stated_m2)
    if not floors:
        return None
    main = max(floors, key=lambda plan: float(plan.shape.area))
    others = [plan for plan in floors if plan is not main]
    parts = tuple(p for p in others if p.shape.area >= _PART_M2 and _walked(p, main))
    lost = [p for p in others if p not in parts and abs(p.floor_m - main.floor_m) <= _STEP_M]
    return Plan(
        main.shape,
        main.floor_m,
        _height(main, flats),
        main.steps,
        tuple(Plan(p.shape, p.floor_m, _height(p, flats), p.steps) for p in parts),
        float(sum(p.shape.area for p in lost)),
    )


def _walked(plan: Plan, main: Plan) -> bool:
    """Whether a piece can be floor: on the level of the main one, or a storey away; else a sill."""
    away = abs(plan.floor_m - main.floor_m)
    return away <= _STEP_M or away >= STOREY_RISE_M


@np.errstate(all="ignore")
def outline_of(faces: Iterable[Face]) -> shapely.Polygon | None:
    """The plan of everything flat in a shell, at any height; nothing when there is none."""
    flats = [flat.shape for flat in _flats(faces)]
    parts = _pieces(shapely.union_all(flats)) if flats else []
    return max(parts, key=lambda part: float(part.area), default=None)


def _floors(flats: Sequence[_Flat], stated_m2: float | None) -> list[Plan]:
    """The pieces of floor, level by level from the lowest."""
    levels = _levels(flats)
    most = max(_area(level) for level in levels)
    look = _floors_look_up(flats)
    sure = look is not None and _adds_up(flats, stated_m2, up=look)
    covered: BaseGeometry = shapely.Polygon()
    found: list[Plan] = []
    for level in levels:
        if not found and _area(level) < min(_PART_M2, _SLIGHT * most):
            continue  # a niche or a slip below the floor
        own = level if (not found and not sure) or look is None else _looking(level, up=look)
        if sure:
            covered = shapely.Polygon()
        new: list[_Flat] = []
        for flat in own:
            rest = flat.shape.difference(covered)
            if found and rest.area < _OPEN_BELOW * flat.shape.area:
                continue  # a ceiling that reaches over the walls
            if rest.area > _SMALL_M2:
                new.append(_Flat(flat.z, rest, flat.up))
                covered = covered.union(flat.shape)
        found += [_plan(piece, new) for piece in _pieces(shapely.union_all([f.shape for f in new]))]
    return found


def _looking(flats: Sequence[_Flat], *, up: bool) -> list[_Flat]:
    return [flat for flat in flats if flat.up is up]


def _adds_up(flats: Sequence[_Flat], stated_m2: float | None, *, up: bool) -> bool:
    if not stated_m2:
        return False
    return abs(_area(_looking(flats, up=up)) / stated_m2 - 1) < _ADDS_UP


def _plan(piece: shapely.Polygon, flats: Sequence[_Flat]) -> Plan:
    heights = [(float(flat.shape.intersection(piece).area), flat.z) for flat in flats]
    floor_m = max(heights)[1]
    steps: dict[float, float] = {}
    for area, z in heights:
        if abs(z - floor_m) > _LEVEL_M and area > 0.01:
            steps[round(z, 3)] = steps.get(round(z, 3), 0.0) + area
    return Plan(piece, floor_m, steps=tuple(sorted(steps.items())))


def _levels(flats: Sequence[_Flat]) -> list[list[_Flat]]:
    levels: list[list[_Flat]] = []
    for flat in flats:
        if levels and flat.z - levels[-1][0].z <= _STEP_M:
            levels[-1].append(flat)
        else:
            levels.append([flat])
    return levels


def _floors_look_up(flats: Sequence[_Flat]) -> bool | None:
    """Whether the normals of floors point up in this shell; None when all look the same way."""
    means = {}
    for up in (True, False):
        own = _looking(flats, up=up)
        if own:
            means[up] = sum(f.z * float(f.shape.area) for f in own) / _area(own)
    return min(means, key=lambda up: means[up]) if len(means) == 2 else None


def _height(plan: Plan, flats: Sequence[_Flat]) -> float | None:
    """From the floor to the highest flat face over it [m]; None without one in head height."""
    over = [
        flat.z - plan.floor_m
        for flat in flats
        if flat.z - plan.floor_m > 1.0 and flat.shape.intersection(plan.shape).area > _SMALL_M2
    ]
    return max(over, default=None)


def _area(level: Sequence[_Flat]) -> float:
    return sum(float(flat.shape.area) for flat in level)


def _pieces(shape: BaseGeometry) -> list[shapely.Polygon]:
    """The polygons of a shape; hairlines between faces that meet but for rounding are closed."""
    if shape.is_empty:
        return []
    parts = polygons_of(shapely.set_precision(shape, 1e-6))
    return [part for part in parts if part.area > _SMALL_M2]


def _flats(faces: Iterable[Face]) -> Iterable[_Flat]:
    for outer, holes in faces:
        up = _normal_z(outer) if len(outer) > 2 else 0.0
        if abs(up) < _UPRIGHT:
            continue
        shape = shapely.Polygon(
            [(x, y) for x, y, _ in outer],
            [[(x, y) for x, y, _ in hole] for hole in holes if len(hole) > 2],
        )
        sound = shapely.make_valid(shape, method="structure", keep_collapsed=False)
        if sound.area > _SMALL_M2:
            yield _Flat(sum(z for _, _, z in outer) / len(outer), sound, up > 0)


def _normal_z(loop: Sequence[Point3]) -> float:
    """The upright part of a loop's unit normal. Source: Newell's method (from memory)."""
    x0, y0, z0 = loop[0]
    near = [(x - x0, y - y0, z - z0) for x, y, z in loop]
    nx = ny = nz = 0.0
    for (x1, y1, z1), (x2, y2, z2) in zip(near, [*near[1:], near[0]], strict=True):
        nx += (y1 - y2) * (z1 + z2)
        ny += (z1 - z2) * (x1 + x2)
        nz += (x1 - x2) * (y1 + y2)
    length = hypot(nx, ny, nz)
    return nz / length if length > 0 else 0.0
