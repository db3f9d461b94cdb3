"""A front that no sweep of the field can undercut.

For a *swept* field: A(x) is the floor sprayed before x, and E the least number
with |A(x) - A(y)| <= E w for all x, y that see each other within a band's depth
w (`front`). Proved in docs/spraying.md:

1. Crowding (`crowding`). Floor within a short walk of the way out, which comes last, of a
   cut that a body leaves for the last time, of any place.
2. Rectangle. Of all sets that fill half of a rectangle b x l (b <= l) none has a
   shorter edge inside it than b, and the edge is shorter than b only where the
   set or the rest is smaller than a quarter disc of radius 2 b / pi. While the
   front moves on by w it takes at least b w - pi t^2 / 2 of the floor in the
   rectangle, with t = max(0, (w - l + 2 b / pi) / 2): E >= b - pi t^2 / (2 w).

3. Convex rooms (`convex`), and floors that have several edges at once (`edges_at_once`).

Rank: derived here; the isoperimetric sets of a rectangle (quarter discs,
straight lines) are classical, from memory.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.convex import convex_inside, front_of_convex_m
from farwall.spray.crowding import crowding_m, exit_last_m
from farwall.spray.edges_at_once import QUICK, edges_at_once_m
from farwall.spray.front import Ground
from farwall.spray.lattice import turned, without_niches

_FINE = 24
_LEAST_STEP_M = 0.1
_INSET_M = 1e-6
_SQUARE = 1e-4

Floats = npt.NDArray[np.float64]


def strongest_bound_m(ground: Ground, depth_m: float, *, boxes: int = QUICK) -> float:
    """The largest of all bounds that are known, for bands of `depth_m`: a second or two. [m]

    boxes: as in `edges_at_once.edges_at_once_m`.
    """
    found = max(
        least_front_m(ground, depth_m), crowding_m(ground, depth_m), convex_m(ground, depth_m)
    )
    return max(found, edges_at_once_m(ground, depth_m, boxes=boxes, above_m=found))


def convex_m(ground: Ground, depth_m: float) -> float:
    """The best bound by a room whose middle, without niches, is convex; 0 when none is. [m]"""
    inside = [convex_inside(without_niches(piece)) for piece in ground.lattice.pieces]
    return max((front_of_convex_m(one, depth_m) for one in inside if one is not None), default=0.0)


def least_front_m(ground: Ground, depth_m: float) -> float:
    """The largest of the bounds that are quickly told, for bands of `depth_m`. [m]"""
    lattice = ground.lattice
    bounds = [exit_last_m(ground, depth_m), 0.0]
    middles = [without_niches(piece) for piece in lattice.pieces]
    plain = [_rectangle_sides(middle) for middle in middles]
    bounds += [
        float(front_of_rectangle_m(sides[:1], sides[1:], depth_m)[0])
        for sides in plain
        if sides is not None
    ]
    if len(plain) > 1 or plain[0] is None:
        bounds.append(rectangle_m(lattice.floor, lattice.grid.angle, depth_m))
    return max(bounds)


def _rectangle_sides(shape: BaseGeometry) -> Floats | None:
    """Both sides of a shape that is a rectangle, a hair less; None when it is none. [m]"""
    box = shapely.minimum_rotated_rectangle(shape)
    if not isinstance(shape, shapely.Polygon) or shape.is_empty or shape.interiors:
        return None
    if shape.area < (1 - _SQUARE) * box.area:
        return None
    sides = np.hypot(*np.diff(shapely.get_coordinates(box)[:3], axis=0).T)
    return np.asarray(sides * (1 - _SQUARE))


def rectangle_m(floor: shapely.Polygon, angle: float, depth_m: float) -> float:
    """The best bound of any rectangle found inside the floor, along its main direction. [m]

    Every rectangle inside gives a valid bound; the search looks at those made
    of squares of a grid that lie on the floor whole.
    """
    inside, wide, deep = _squares(floor, angle)
    run: npt.NDArray[np.int_] = np.zeros(inside.shape, dtype=int)
    for number, column in enumerate(inside):
        run[number] = np.where(column, run[number - 1] + 1 if number else 1, 0)
    widest = []
    narrow: npt.NDArray[np.int_] = run
    # A wider rectangle of the same depth has no smaller bound: only the widest is asked.
    for more in range(run.shape[1]):
        narrow = np.minimum(narrow[:, : run.shape[1] - more], run[:, more:])
        if not narrow.any():
            break
        widest.append(int(narrow.max()))
    one = np.asarray(np.array(widest) * wide, dtype=float)
    other = np.asarray((np.arange(len(widest)) + 1) * deep, dtype=float)
    return float(front_of_rectangle_m(one, other, depth_m).max(initial=0.0))


def front_of_rectangle_m(one: Floats, other: Floats, depth_m: float) -> Floats:
    """The bound of rectangles with these sides [m], for bands of `depth_m`."""
    short, long = np.minimum(one, other), np.maximum(one, other)
    quarter = 2 * short / np.pi
    lost = np.maximum(0.0, (depth_m - long + quarter) / 2)
    return np.where(lost <= quarter, short - np.pi * lost**2 / (2 * depth_m), 0.0)


def _squares(floor: shapely.Polygon, angle: float) -> tuple[npt.NDArray[np.bool_], float, float]:
    """A grid over the floor's box: which of its squares lie on the floor, and their sides."""
    straight = shapely.transform(floor, lambda xy: turned(xy, -angle))
    x0, y0, x1, y1 = straight.bounds
    step = max(_LEAST_STEP_M, min(x1 - x0, y1 - y0) / _FINE)
    columns, rows = max(1, int((x1 - x0) / step)), max(1, int((y1 - y0) / step))
    wide, deep = (x1 - x0) / columns, (y1 - y0) / rows
    x = x0 + wide * np.arange(columns)[:, None]
    y = y0 + deep * np.arange(rows)[None, :]
    shapely.prepare(straight)
    squares = shapely.box(x + _INSET_M, y + _INSET_M, x + wide - _INSET_M, y + deep - _INSET_M)
    return np.asarray(shapely.covers(straight, squares)), wide, deep
