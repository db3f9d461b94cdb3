"""A floor in few parts: its blocks, those alike put together, and the rectangles they make up."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
import shapely

from farwall.nouns import dataclass
from farwall.spray.blocks import Blocks, Rectangle, blocks_of
from farwall.spray.edges_at_once import LastFloor, last_floor
from farwall.spray.front import Ground
from farwall.spray.lattice import turned

Floats = npt.NDArray[np.float64]

_MOST_BLOCKS = 8
_LEAST_SHARE = 0.02
"""A block of less than this share of the floor is left out: it may be wet or dry."""
_SKIN_M = 1e-4


@dataclass(frozen=True)
class Parts:
    """Parts of a floor: their shapes on the floor turned back by `angle`, their areas, every
    rectangle that some of them make up (with its own shape), and what comes last."""

    angle: float
    floor: shapely.Polygon
    shapes: tuple[shapely.Polygon, ...]
    area_m2: Floats
    rectangles: tuple[Rectangle, ...]
    boxes: tuple[shapely.Polygon, ...]
    last: LastFloor

    def __len__(self) -> int:
        """How many parts there are."""
        return len(self.shapes)


def parts_of(ground: Ground) -> Parts | None:
    """The blocks of a floor, those put together that the same widest rectangles go over; None
    where there are none."""
    lattice = ground.lattice
    blocks = blocks_of(lattice.floor, lattice.grid.angle, most=_MOST_BLOCKS)
    if blocks is None:
        return None
    groups = [
        group
        for group in _alike(blocks)
        if sum(float(blocks.area_m2[n]) for n in group) >= _LEAST_SHARE * lattice.floor.area
    ]
    shapes = tuple(_shape(blocks, group) for group in groups)
    told = [found for one in blocks.rectangles if (found := _by_parts(blocks, one, groups))]
    boxes = tuple(_box(shapes, one) for one in told)
    last = last_floor(ground, blocks)
    rows = np.array([sum(last.within_m2[n] for n in group) for group in groups])
    straight = shapely.transform(lattice.floor, lambda xy: turned(xy, -blocks.angle))
    area = np.array([sum(float(blocks.area_m2[n]) for n in group) for group in groups])
    last = LastFloor(last.walk_m, rows)
    return Parts(blocks.angle, straight, shapes, area, tuple(told), boxes, last)


def _alike(blocks: Blocks) -> list[frozenset[int]]:
    """Blocks that make up a rectangle and lie in the same widest rectangles, put together."""
    every = {one.blocks for one in blocks.rectangles}
    widest = [one for one in every if not any(one < other for other in every)]
    groups = [frozenset([n]) for n in range(len(blocks))]
    member = {
        n: frozenset(k for k, one in enumerate(widest) if n in one) for n in range(len(blocks))
    }
    for group in sorted(every, key=lambda one: (-len(one), sorted(one))):
        inside = [one for one in groups if one <= group]
        if len({member[n] for n in group}) == 1 and frozenset().union(*inside) == group:
            groups = [one for one in groups if one not in inside] + [group]
    return sorted(groups, key=sorted)


def _by_parts(blocks: Blocks, one: Rectangle, groups: list[frozenset[int]]) -> Rectangle | None:
    """A rectangle told by parts; None when a part sticks out of it, or it has none."""
    if any(one.blocks & group and not one.blocks >= group for group in groups):
        return None
    inside = [number for number, group in enumerate(groups) if group <= one.blocks]
    left = one.blocks - frozenset().union(*(groups[number] for number in inside))
    loose = one.loose_m2 + sum(float(blocks.area_m2[n]) for n in left)
    return Rectangle(frozenset(inside), one.short_m, one.long_m, loose) if inside else None


def _shape(blocks: Blocks, group: frozenset[int]) -> shapely.Polygon:
    sides = blocks.sides_m[sorted(group)]
    low, high = sides[:, :2].min(axis=0) + _SKIN_M, sides[:, 2:].max(axis=0) - _SKIN_M
    return shapely.Polygon([low, (high[0], low[1]), high, (low[0], high[1])])


def _box(shapes: tuple[shapely.Polygon, ...], one: Rectangle) -> shapely.Polygon:
    west, south, east, north = shapely.total_bounds([shapes[number] for number in one.blocks])
    return shapely.Polygon([(west, south), (east, south), (east, north), (west, north)])
