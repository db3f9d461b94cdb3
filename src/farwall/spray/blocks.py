"""A floor cut into upright blocks along its walls, and the rectangles that blocks make up."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, pairwise

import numpy as np
import numpy.typing as npt
import shapely

from farwall.nouns import dataclass
from farwall.spray.lattice import turned

Floats = npt.NDArray[np.float64]
Cells = npt.NDArray[np.bool_]

_INSET_M = 1e-6
_SAME_M = 4e-4
"""Less than the width that walls of no thickness are drawn with: their sides are two cuts."""
NONE: tuple[list[float], list[float]] = ([], [])
_LEAST_SIDE_M = 0.02
"""Narrower strips are floor but no blocks, as that under an opening in such a wall."""


@dataclass(frozen=True)
class Rectangle:
    """A rectangle on the floor: the blocks that make it up, its sides [m], and how much of it lies
    in strips too narrow to be blocks. [m2]"""

    blocks: frozenset[int]
    short_m: float
    long_m: float
    loose_m2: float = 0.0


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


def blocks_of(
    floor: shapely.Polygon, angle: float, *, most: int, more: tuple[list[float], list[float]] = NONE
) -> Blocks | None:
    """At most so many blocks along the walls that run by `angle` [rad] or across it; None where
    no whole block lies on the floor.

    Cuts are left out, the least floor lost first, until no more blocks are left. Then those are cut
    once `more`, at these places of the floor turned back by the angle (across it, and along). [m]
    """
    straight = shapely.transform(floor, lambda xy: turned(xy, -angle))
    across, along = _cuts(straight)
    kept = _blocks_on(straight, across, along)
    while kept.sum() > most:
        across, along, kept = _one_less(straight, across, along)
    if not kept.any():
        return None
    if any(more):
        across, along = _apart([*across, *more[0]]), _apart([*along, *more[1]])
        kept = _blocks_on(straight, across, along)
    columns, rows = np.nonzero(kept)
    sides = np.array([across[columns], along[rows], across[columns + 1], along[rows + 1]]).T
    return Blocks(angle, sides, tuple(_rectangles(straight, kept, across, along)))


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


def _blocks_on(straight: shapely.Polygon, across: Floats, along: Floats) -> Cells:
    """Which cells between neighbouring cuts are blocks: wide enough and whole on the floor."""
    if min(len(across), len(along)) < 2:
        return np.zeros((max(len(across) - 1, 0), max(len(along) - 1, 0)), dtype=bool)
    west, south, east, north = (
        across[:-1, None],
        along[None, :-1],
        across[1:, None],
        along[None, 1:],
    )
    wide = np.minimum(east - west, north - south) >= _LEAST_SIDE_M
    return wide & _on_floor(straight, west, south, east, north)


def _on_floor(
    straight: shapely.Polygon, west: Floats, south: Floats, east: Floats, north: Floats
) -> Cells:
    """Which upright boxes lie on the floor whole."""
    shapely.prepare(straight)
    inner = west + _INSET_M, south + _INSET_M, east - _INSET_M, north - _INSET_M
    return np.asarray(shapely.covers(straight, shapely.box(*inner)))


def _one_less(
    straight: shapely.Polygon, across: Floats, along: Floats
) -> tuple[Floats, Floats, Cells]:
    """The cuts without the one that is missed least: most floor kept, then fewest blocks."""
    tried = [(np.delete(across, n), along) for n in range(len(across))]
    tried += [(across, np.delete(along, n)) for n in range(len(along))]
    told = [(one, two, _blocks_on(straight, one, two)) for one, two in tried]

    def worth(cut: tuple[Floats, Floats, Cells]) -> tuple[float, int]:
        one, two, kept = cut
        area = np.diff(one)[:, None] * np.diff(two)[None, :]
        return round(float((area * kept).sum()), 6), -int(kept.sum())

    return max(told, key=worth)


def _rectangles(
    straight: shapely.Polygon, kept: Cells, across: Floats, along: Floats
) -> Iterator[Rectangle]:
    """Every rectangle between cuts that is floor throughout and has a block."""
    number = np.cumsum(kept.ravel()).reshape(kept.shape) - 1
    area = np.where(kept, np.diff(across)[:, None] * np.diff(along)[None, :], 0.0)
    columns, rows = kept.shape
    ends = [
        (west, south, east, north)
        for west, east in combinations(range(columns + 1), 2)
        for south, north in combinations(range(rows + 1), 2)
    ]
    west, south, east, north = np.array(ends).T
    whole = _on_floor(straight, across[west], along[south], across[east], along[north])
    for west, south, east, north in np.array(ends)[whole]:
        here = (slice(west, east), slice(south, north))
        own = frozenset(int(n) for n in number[here][kept[here]])
        short, long = sorted((across[east] - across[west], along[north] - along[south]))
        loose = float(short * long - area[here].sum())
        if own:
            yield Rectangle(own, float(short), float(long), max(loose, 0.0))
