"""A floor cut into upright blocks along its walls, and the rectangles that blocks make up."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations, pairwise

import numpy as np
import numpy.typing as npt
import shapely

from farwall.spray.lattice import turned

Floats = npt.NDArray[np.float64]
Cells = npt.NDArray[np.bool_]

_INSET_M = 1e-6
_SAME_M = 1e-3


@dataclass(frozen=True)
class Rectangle:
    """Blocks that make up a rectangle, and its sides. [m]"""

    blocks: frozenset[int]
    short_m: float
    long_m: float


@dataclass(frozen=True)
class Blocks:
    """Parts of a floor that do not overlap: west, south, east, north of each [m], as the floor
    lies turned back by `angle`, and every rectangle that some of them make up."""

    angle: float
    sides_m: Floats
    rectangles: tuple[Rectangle, ...]

    def __len__(self) -> int:
        """How many blocks there are."""
        return len(self.sides_m)

    @property
    def area_m2(self) -> Floats:
        """The floor of each."""
        west, south, east, north = self.sides_m.T
        return np.asarray((east - west) * (north - south))


def blocks_of(floor: shapely.Polygon, angle: float, *, most: int) -> Blocks | None:
    """At most so many blocks along the walls that run by `angle` [rad] or across it; None where
    no whole block lies on the floor.

    Cuts are left out, the least floor lost first, until no more blocks are left.
    """
    straight = shapely.transform(floor, lambda xy: turned(xy, -angle))
    across, along = _cuts(straight)
    kept = _on_floor(straight, across, along)
    while kept.sum() > most:
        across, along, kept = _one_less(straight, across, along)
    if not kept.any():
        return None
    columns, rows = np.nonzero(kept)
    sides = np.array([across[columns], along[rows], across[columns + 1], along[rows + 1]]).T
    return Blocks(angle, sides, tuple(_rectangles(kept, across, along)))


def _cuts(straight: shapely.Polygon) -> tuple[Floats, Floats]:
    """Where walls stand that run up, and where those that run across, each once."""
    found: tuple[list[float], list[float]] = ([], [])
    for ring in [straight.exterior, *straight.interiors]:
        ends = shapely.get_coordinates(ring)
        for one, two in pairwise(ends):
            for axis in (0, 1):
                if abs(one[axis] - two[axis]) < _SAME_M < abs(one[1 - axis] - two[1 - axis]):
                    found[axis].append(float(one[axis] + two[axis]) / 2)
    return _apart(found[0]), _apart(found[1])


def _apart(places: list[float]) -> Floats:
    told: list[float] = []
    for place in sorted(places):
        if not told or place - told[-1] > _SAME_M:
            told.append(place)
    return np.array(told)


def _on_floor(straight: shapely.Polygon, across: Floats, along: Floats) -> Cells:
    """Which blocks between neighbouring cuts lie on the floor whole."""
    if min(len(across), len(along)) < 2:
        return np.zeros((max(len(across) - 1, 0), max(len(along) - 1, 0)), dtype=bool)
    west, south = across[:-1, None] + _INSET_M, along[None, :-1] + _INSET_M
    east, north = across[1:, None] - _INSET_M, along[None, 1:] - _INSET_M
    shapely.prepare(straight)
    return np.asarray(shapely.covers(straight, shapely.box(west, south, east, north)))


def _one_less(
    straight: shapely.Polygon, across: Floats, along: Floats
) -> tuple[Floats, Floats, Cells]:
    """The cuts without the one that is missed least: most floor kept, then fewest blocks."""
    tried = [(np.delete(across, n), along) for n in range(len(across))]
    tried += [(across, np.delete(along, n)) for n in range(len(along))]
    told = [(one, two, _on_floor(straight, one, two)) for one, two in tried]

    def worth(cut: tuple[Floats, Floats, Cells]) -> tuple[float, int]:
        one, two, kept = cut
        area = np.diff(one)[:, None] * np.diff(two)[None, :]
        return round(float((area * kept).sum()), 6), -int(kept.sum())

    return max(told, key=worth)


def _rectangles(kept: Cells, across: Floats, along: Floats) -> Iterator[Rectangle]:
    number = np.cumsum(kept.ravel()).reshape(kept.shape) - 1
    columns, rows = kept.shape
    for west, east in combinations(range(columns + 1), 2):
        for south, north in combinations(range(rows + 1), 2):
            if kept[west:east, south:north].all():
                sides = sorted((across[east] - across[west], along[north] - along[south]))
                own = frozenset(int(n) for n in number[west:east, south:north].ravel())
                yield Rectangle(own, float(sides[0]), float(sides[1]))
