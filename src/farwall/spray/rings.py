"""A sweep cut into rings: the floor of each piece between two level lines, nearest the exit first.

The last ring before a long wall is cut once more, by the walk along it to the
exit: nobody can stand before all of it at once.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import polygons_of
from farwall.spray.bands import Ring
from farwall.spray.contours import Sheet, cut_along, sheet_of
from farwall.spray.front import Front, Ground
from farwall.spray.lattice import Floats
from farwall.spray.levels import band_levels
from farwall.spray.world import NO_LENGTH_M

_CRUMB_M2 = 0.15
_LONG = 1.35
"""The last ring is cut again where it reaches farther from the exit than so many depths."""


def rings_of(
    ground: Ground,
    front: Front,
    names: Sequence[str],
    shapes: Sequence[BaseGeometry],
    depth_m: float,
) -> tuple[list[Ring], float]:
    """The rings of a field, parts of its pieces (`names`, their floors `shapes`), and their depth.

    depth_m: the most that a ring may be deep.
    """
    levels = band_levels(ground, front, depth_m)
    rings = _cut(ground, front.late, names, shapes, _lateness(front, levels.sprayed_m2))
    last = _along_wall(ground, rings[0], names, depth_m)
    return [ring for ring in (*last, *rings[1:]) if ring], levels.depth_m


def _lateness(front: Front, sprayed_m2: Sequence[float]) -> Floats:
    """The lateness at which so much floor is sprayed."""
    order = np.argsort(front.before_m2, kind="stable")
    return np.interp(sprayed_m2, front.before_m2[order], front.late[order])


def _cut(
    ground: Ground,
    late: Floats,
    names: Sequence[str],
    shapes: Sequence[BaseGeometry],
    levels: Floats,
) -> list[Ring]:
    count = len(levels) + 1
    rings: list[Ring] = [[] for _ in range(count)]
    for number, (name, shape) in enumerate(zip(names, shapes, strict=True)):
        if not (ground.lattice.owner == number).any():
            rings[0].extend((name, part) for part in polygons_of(shape))
            continue
        sheet = sheet_of(ground.lattice, number, late)
        for level, part in _without_crumbs(cut_along(shape, sheet, levels)):
            rings[count - 1 - level].append((name, part))
    return rings


def _along_wall(ground: Ground, ring: Ring, names: Sequence[str], depth_m: float) -> list[Ring]:
    """The last ring, cut by the walk to the exit where it is long."""
    sheets: dict[str, Sheet] = {}
    farthest = 0.0
    for name in dict.fromkeys(name for name, _ in ring):
        number = list(names).index(name)
        if not (ground.lattice.owner == number).any():
            continue
        sheets[name] = sheet_of(ground.lattice, number, -ground.out_m)
        corners = np.vstack([shapely.get_coordinates(p.exterior) for n, p in ring if n == name])
        farthest = max(farthest, float(-sheets[name].at(corners).min()))
    if farthest <= _LONG * depth_m:
        return [ring]
    count = int(np.ceil(farthest / depth_m - 0.05))
    levels = np.asarray(-farthest / count * np.arange(count - 1, 0, -1), dtype=float)
    rings: list[Ring] = [[] for _ in range(count)]
    for name, shape in ring:
        if name not in sheets:
            rings[0].append((name, shape))
            continue
        for level, part in _without_crumbs(cut_along(shape, sheets[name], levels)):
            rings[count - 1 - level].append((name, part))
    return rings


def _without_crumbs(
    parts: list[tuple[int, shapely.Polygon]],
) -> list[tuple[int, shapely.Polygon]]:
    """The parts, crumbs joined to the part that they share most of their outline with."""
    crumbs = [part for part in parts if part[1].area < _CRUMB_M2]
    whole = [part for part in parts if part[1].area >= _CRUMB_M2]
    if not whole:
        return parts
    for _, crumb in crumbs:
        shared = shapely.length(shapely.intersection([part for _, part in whole], crumb.boundary))
        host = int(np.argmax(shared))
        joined = shapely.union(whole[host][1], crumb)
        if isinstance(joined, shapely.Polygon):
            whole[host] = (whole[host][0], joined)
        else:
            whole.extend((whole[host][0], part) for part in polygons_of(crumb))
    return [(level, _tidy(part)) for level, part in whole]


def _tidy(part: shapely.Polygon) -> shapely.Polygon:
    tidy = part.simplify(NO_LENGTH_M)
    return tidy if isinstance(tidy, shapely.Polygon) else part
