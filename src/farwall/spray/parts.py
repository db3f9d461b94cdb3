"""A floor in few parts: its blocks, those alike put together, and the rectangles they make up."""

from __future__ import annotations

from collections.abc import Sequence

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
_OPEN_M = 1e-3


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


def parts_of(ground: Ground, *, reach_m: float = np.inf) -> Parts | None:
    """The blocks of a floor, those put together that the same widest rectangles go over; None
    where there are none.

    reach_m: a part that opens on one side only, a dead end, is cut in two so far from there.
    """
    lattice = ground.lattice
    blocks = blocks_of(lattice.floor, lattice.grid.angle, most=_MOST_BLOCKS)
    if blocks is None:
        return None
    parts = _parts(ground, blocks, [])
    ends = [end for shape in parts.shapes if (end := _far_end(parts.floor, shape, reach_m))]
    if not ends:
        return parts
    more = [end.cut_m for end in ends if not end.axis], [end.cut_m for end in ends if end.axis]
    finer = blocks_of(lattice.floor, lattice.grid.angle, most=_MOST_BLOCKS, more=more)
    return parts if finer is None else _parts(ground, finer, [end.shape for end in ends])


def _parts(ground: Ground, blocks: Blocks, ends: Sequence[shapely.Polygon]) -> Parts:
    """The parts that blocks make up; those in a far end are not put with others."""
    floor = ground.lattice.floor
    groups = [
        group
        for group in _alike(blocks, ends)
        if sum(float(blocks.area_m2[n]) for n in group) >= _LEAST_SHARE * floor.area
    ]
    shapes = tuple(_shape(blocks, group) for group in groups)
    told = [found for one in blocks.rectangles if (found := _by_parts(blocks, one, groups))]
    boxes = tuple(_box(shapes, one) for one in told)
    last = last_floor(ground, blocks)
    rows = np.array([sum(last.within_m2[n] for n in group) for group in groups])
    straight = shapely.transform(floor, lambda xy: turned(xy, -blocks.angle))
    area = np.array([sum(float(blocks.area_m2[n]) for n in group) for group in groups])
    last = LastFloor(last.walk_m, rows)
    return Parts(blocks.angle, straight, shapes, area, tuple(told), boxes, last)


@dataclass(frozen=True)
class _FarEnd:
    """What of a dead end lies farther in than a cut, across the floor (axis 0) or along it. [m]"""

    axis: int
    cut_m: float
    shape: shapely.Polygon


def _far_end(floor: shapely.Polygon, shape: shapely.Polygon, reach_m: float) -> _FarEnd | None:
    """The far end of a part that opens on one side only, out of reach from there."""
    opens = shape.boundary.intersection(floor.buffer(-_OPEN_M))
    if opens.is_empty or not np.isfinite(reach_m):
        return None
    sides, ends = np.array(shape.bounds), np.array(opens.bounds)
    for side in range(4):
        axis, inward = side % 2, 1 if side < 2 else -1
        if abs(ends[axis] - sides[side]) + abs(ends[axis + 2] - sides[side]) > _OPEN_M:
            continue
        cut = float(sides[side] + inward * reach_m)
        far = sides.copy()
        far[side] = cut
        if abs(sides[(side + 2) % 4] - sides[side]) > 2 * reach_m:
            return _FarEnd(axis, cut, shapely.box(*far))
    return None


def _alike(blocks: Blocks, ends: Sequence[shapely.Polygon]) -> list[frozenset[int]]:
    """Blocks that make up a rectangle and lie in the same widest rectangles, and in the same far
    ends, put together."""
    every = {one.blocks for one in blocks.rectangles}
    widest = [one for one in every if not any(one < other for other in every)]
    groups = [frozenset([n]) for n in range(len(blocks))]
    middle = (blocks.sides_m[:, :2] + blocks.sides_m[:, 2:]) / 2
    member = {
        n: (
            frozenset(k for k, one in enumerate(widest) if n in one),
            tuple(bool(shapely.contains_xy(end, *middle[n])) for end in ends),
        )
        for n in range(len(blocks))
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
