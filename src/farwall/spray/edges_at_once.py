"""A front that no sweep can undercut, from floor that has several edges at once.

A floor is cut into blocks (`blocks`). While it is sprayed the share of each grows
from nothing to all of it, and on the way there come moments at which two or more
rectangles of blocks are part wet, part dry. In each of them the front has an edge,
and edges in rectangles that do not overlap add up. Of all ways from nothing to all the one
is sought whose most floor within a depth of the front is least: over boxes of
shares, so that nothing between them is missed. The proof is in docs/spraying.md
("Several edges at once"); rank: derived here, the least edges of a rectangle classical.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from itertools import combinations
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass
from farwall.spray.blocks import Blocks, Rectangle, blocks_of
from farwall.spray.crowding import walks_to_last
from farwall.spray.lattice import turned

if TYPE_CHECKING:
    from farwall.spray.front import Ground

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]
Ints = npt.NDArray[np.int64]

QUICK, LONG = 60_000, 3_000_000
"""So many boxes of shares take half a second, or up to half a minute."""
_MOST_BLOCKS = (4, 6, 8)
"""Few blocks have narrow boxes, many know the floor better: each is tried."""
_MOST_LEVELS = 40
_TOGETHER = 3
_HALVINGS = 12
_MOST_FAMILIES = 1500
_HAIR = 1e-9
_LEAST_M = 1e-3
_FARTHEST = 1.1


def gain_m2(rectangle: Rectangle, wet_m2: Floats, walk_m: float) -> Floats:
    """The least floor of a rectangle within a walk of a wet part of so much of it. [m2]

    The least edge of an area c is a quarter of a circle in a corner or a straight line across,
    min(sqrt(pi c), b, sqrt(pi (b l - c))); the wet part grows by it for each metre. One that is
    empty or full gains nothing.
    """
    b, whole = rectangle.short_m, rectangle.short_m * rectangle.long_m
    radius = 2 * b / np.pi
    corner = np.pi * radius**2 / 4
    far_m = rectangle.long_m + radius
    wet = np.clip(wet_m2, 0.0, whole)
    moved = np.select(
        [wet < corner, wet <= whole - corner],
        [2 * np.sqrt(wet / np.pi), radius + (wet - corner) / b],
        far_m - 2 * np.sqrt((whole - wet) / np.pi),
    )
    after = np.minimum(moved + walk_m, far_m)
    grown = np.select(
        [after < radius, after <= far_m - radius],
        [np.pi * after**2 / 4, corner + (after - radius) * b],
        whole - np.pi * (far_m - after) ** 2 / 4,
    )
    return np.where(wet <= _HAIR, 0.0, np.maximum(grown - wet, 0.0))


def levels(count: int) -> Floats:
    """Shares from 0 to 1 between which boxes lie: closest together at both ends."""
    even = np.linspace(0.0, 1.0, count + 1)
    return np.asarray((1 - np.cos(np.pi * even)) / 2)


@dataclass(frozen=True)
class Shares:
    """Boxes of shares: for each block so many stretches from dry to wet, every one with every
    other, along an axis of its own."""

    blocks: Blocks
    ends: Floats

    @property
    def shape(self) -> tuple[int, ...]:
        """As many stretches along each block's axis."""
        return (len(self.ends) - 1,) * len(self.blocks)

    def along(self, block: int, values: Floats) -> Floats:
        """Values of one block's stretches, laid along its axis."""
        shape = [1] * len(self.blocks)
        shape[block] = -1
        return values.reshape(shape)

    def wet_m2(self, block: int) -> tuple[Floats, Floats]:
        """The least and the most floor of a block that is wet in each box."""
        area = float(self.blocks.area_m2[block])
        return (
            self.along(block, self.ends[:-1] * area),
            self.along(block, self.ends[1:] * area),
        )

    def gains(self, rectangle: Rectangle, walk_m: float, *, ahead: bool) -> Floats:
        """What a rectangle gains at least anywhere in each box: its wet part within a walk, or its
        dry part, seen backward in time.

        Either rises and then falls with what is wet, so that an end of the box has the least.
        Floor that lies in no block may be wet or dry, and is not counted as gained.
        """
        ends = [self.wet_m2(block) for block in sorted(rectangle.blocks)]
        low: Floats = sum((one[0] for one in ends), np.zeros(1))
        high: Floats = sum((one[1] for one in ends), np.zeros(1)) + rectangle.loose_m2
        if not ahead:
            whole = rectangle.short_m * rectangle.long_m
            low, high = whole - high, whole - low
        least = np.minimum(gain_m2(rectangle, low, walk_m), gain_m2(rectangle, high, walk_m))
        return np.maximum(least - rectangle.loose_m2, 0.0)

    def fronts_m(self, depth_m: float) -> Floats:
        """The front that every moment in a box has at least: the best of all families of
        rectangles, less what two of them may have gained together. [m]"""
        best = np.zeros(self.shape)
        for ahead in (True, False):
            gains = [self.gains(one, depth_m, ahead=ahead) for one in self.blocks.rectangles]
            for family in families(self.blocks.rectangles):
                told = sum((gains[n] for n in family), np.zeros(1))
                for block in range(len(self.blocks)):
                    often = sum(block in self.blocks.rectangles[n].blocks for n in family)
                    if often > 1:
                        told = told - (often - 1) * self._room_m2(block, ahead=ahead)
                np.maximum(best, told, out=best)
        return best / depth_m

    def _room_m2(self, block: int, *, ahead: bool) -> Floats:
        """The most that may be gained in a block."""
        low, high = self.wet_m2(block)
        return float(self.blocks.area_m2[block]) - low if ahead else high

    @cached_property
    def dry_m2(self) -> Floats:
        """The least floor of all blocks that is dry in each box."""
        told = np.zeros(self.shape)
        for block in range(len(self.blocks)):
            told = told + float(self.blocks.area_m2[block]) - self.wet_m2(block)[1]
        return told


def families(rectangles: Sequence[Rectangle]) -> list[tuple[int, ...]]:
    """One to three rectangles none of which lies in another."""
    own = [one.blocks for one in rectangles]
    found: list[tuple[int, ...]] = []
    for count in range(1, _TOGETHER + 1):
        more = [
            family
            for family in combinations(range(len(own)), count)
            if not any(own[a] <= own[b] or own[b] <= own[a] for a, b in combinations(family, 2))
        ]
        if len(found) + len(more) > _MOST_FAMILIES:
            break
        found += more
    return found


@dataclass(frozen=True)
class LastFloor:
    """Floor about the way out, which comes last: of each block how much lies within each walk.

    walk_m: walks, rising, to floor from whichever place beside the way out is farthest from it;
    within_m2: a row a block, how much of it lies within each.
    """

    walk_m: Floats
    within_m2: Floats

    def dry_m2(self, block: int, walk_m: Floats) -> Floats:
        """How much of a block is still dry while all within these walks is."""
        number = np.searchsorted(self.walk_m, walk_m, side="right")
        told = np.concatenate([[0.0], self.within_m2[block]])
        return np.asarray(told[number])


def edges_at_once_m(
    ground: Ground, depth_m: float, *, boxes: int = QUICK, above_m: float = 0.0
) -> float:
    """The bound for bands of `depth_m`, by at most so many boxes; 0 where no floor of blocks is
    found or it is not above `above_m`. [m]"""
    best, tried = 0.0, set()
    for most in _MOST_BLOCKS:
        blocks = blocks_of(ground.lattice.floor, ground.lattice.grid.angle, most=most)
        if blocks is None or len(blocks) in tried:
            continue
        tried.add(len(blocks))
        count = min(int(boxes ** (1 / len(blocks)) + _HAIR), _MOST_LEVELS)
        shares, last = Shares(blocks, levels(count)), last_floor(ground, blocks)
        best = max(best, least_front_m(shares, depth_m, last, above_m=max(above_m, best)))
    return best


def least_front_m(
    shares: Shares, depth_m: float, last: LastFloor | None = None, *, above_m: float = 0.0
) -> float:
    """The longest front without which no way leads from all dry to all wet. [m]"""
    fronts_m = shares.fronts_m(depth_m)
    ways = _Ways.through(shares)

    def passes(front_m: float) -> bool:
        """Whether some way has fronts of no more."""
        free = fronts_m.ravel() <= front_m
        if last is not None:
            free &= _leaves_the_last(shares, last, front_m, depth_m).ravel()
        return ways.passes(free)

    low, high = max(above_m, _LEAST_M), float(fronts_m.max())
    if high <= low or passes(low):
        return 0.0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (low, middle) if passes(middle) else (middle, high)
    return low


def _leaves_the_last(shares: Shares, last: LastFloor, front_m: float, depth_m: float) -> Bools:
    """In which boxes what must come last may still be dry, for so long a front."""
    hops = np.floor(shares.dry_m2 / (front_m * depth_m) + _HAIR)
    walk_m = np.minimum(shares.dry_m2 / front_m, _FARTHEST * hops * depth_m)
    free = np.ones(shares.shape, dtype=bool)
    for block in range(len(shares.blocks)):
        low, _ = shares.wet_m2(block)
        dry = last.dry_m2(block, walk_m)
        free &= low <= float(shares.blocks.area_m2[block]) - dry + _HAIR
    return free


@dataclass(frozen=True)
class _Ways:
    """Boxes in rising order of how wet they are, those alike together, and the step along each
    axis to the box before."""

    groups: tuple[Ints, ...]
    steps: tuple[tuple[int, Bools], ...]

    @classmethod
    def through(cls, shares: Shares) -> _Ways:
        shape = shares.shape
        digits = np.indices(shape, dtype=np.int16).reshape(len(shape), -1)
        total = digits.sum(axis=0)
        order = np.argsort(total, kind="stable")
        parts = np.split(order, np.cumsum(np.bincount(total))[:-1])
        strides = [int(np.prod(shape[n + 1 :])) for n in range(len(shape))]
        return cls(tuple(parts), tuple((step, digits[n] > 0) for n, step in enumerate(strides)))

    def passes(self, free: Bools) -> bool:
        """Whether free boxes lead from the driest to the wettest."""
        reached = np.zeros(len(free), dtype=bool)
        reached[0] = free[0]
        for group in self.groups[1:]:
            mine = group[free[group]]
            found = np.zeros(len(mine), dtype=bool)
            for step, inner in self.steps:
                found |= inner[mine] & reached[mine - step]
            if not found.any():
                return False
            reached[mine] = found
        return bool(reached[-1])


def last_floor(ground: Ground, blocks: Blocks) -> LastFloor:
    """How much floor of each block lies within each walk of whichever place comes last."""
    lattice, walk_m = walks_to_last(ground)
    half_m = lattice.grid.step_m / 2
    centres = lattice.grid.centres()[lattice.column, lattice.row]
    moved = np.hypot(*(lattice.xy - centres).T) > _HAIR
    xy, order = turned(centres, -blocks.angle), np.argsort(walk_m, kind="stable")
    rows = []
    for west, south, east, north in blocks.sides_m:
        low, high = np.array([west, south]), np.array([east, north])
        inside = ((xy > low) & (xy < high)).all(axis=1) & ~moved
        sides = np.minimum(xy + half_m, high) - np.maximum(xy - half_m, low)
        own = np.where(inside, sides.prod(axis=1), 0.0)
        rows.append(np.cumsum(own[order]))
    return LastFloor(walk_m[order], np.array(rows))
