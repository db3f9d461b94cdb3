"""What must still be dry for a body to get out of a part of a floor that is not done.

While some floor of a part is dry, a dry way leads from a stand within reach of it to the way
out (`front.kept_walkable`). Wherever that way has to go across a rectangle it leaves dry floor
there, and one stride of the front earlier all floor within a depth of it was dry (the
proof: docs/spraying.md, "Strides"). Rank: derived here.
"""

from __future__ import annotations

from functools import cached_property

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.nouns import dataclass
from farwall.spray.front import FROM_BEYOND, Ground, body_gets_everywhere
from farwall.spray.lattice import turned
from farwall.spray.parts import Parts
from farwall.spray.world import BODY_M

Floats = npt.NDArray[np.float64]

NO_WAY = -1.0
_SKIN_M, _HAIR_M = 3e-3, 1e-3
_WALL_END_M = 0.25
"""Two sides of a wall that ends between two openings lie at most so far apart."""
_NICHE_M = 0.5
_STAND_OFF = 0.75
"""A stand lies at least so much of a body and a quarter off a wall (`stands`)."""
_LEFT_OUT_M2 = 0.1
"""So little floor may be out of everybody's reach (`front`)."""
_INSIDE = 0.999


@dataclass(frozen=True)
class Passages:
    """A row for each part, a column for each rectangle.

    While less than `inner_m2` of the part is wet, at least `now_m2` of the rectangle is dry, and
    one stride of the front earlier at least `before_m2`; `NO_WAY` where no way has to lead through.
    """

    inner_m2: Floats
    now_m2: Floats
    before_m2: Floats


def passages_of(ground: Ground, parts: Parts, depth_m: float) -> Passages:
    """The passages of a floor for fronts of `depth_m`; without any where a body gets not
    everywhere."""
    shape = len(parts), len(parts.rectangles)
    inner, now, before = np.zeros(shape), np.zeros(shape), np.full(shape, NO_WAY)
    if body_gets_everywhere(ground):
        site = _Site(ground, parts, depth_m)
        for column in range(shape[1]):
            passage = _Passage(site, column)
            for row in range(shape[0]):
                found = passage.of(row)
                if found is not None:
                    inner[row, column], now[row, column], before[row, column] = found
    return Passages(inner, now, before)


@dataclass(frozen=True)
class _Site:
    """The floor, its parts, and where bodies stand when they leave."""

    ground: Ground
    parts: Parts
    depth_m: float

    @property
    def step_m(self) -> float:
        """Of the lattice."""
        return self.ground.lattice.grid.step_m

    @property
    def off_wall_m(self) -> float:
        """How far a stand is from walls at least."""
        return BODY_M - self.step_m * (1 - _STAND_OFF)

    @property
    def reach_m(self) -> float:
        """How far from a place a body may stand, a step more."""
        return FROM_BEYOND * self.depth_m + self.step_m

    @cached_property
    def exits(self) -> BaseGeometry:
        """The stands at the way out."""
        stands = self.ground.stands
        return self._points(stands.places[stands.at_exit])

    @cached_property
    def beyond(self) -> BaseGeometry:
        """Floor that may be sprayed from beyond the way out, and a step more."""
        beside = np.flatnonzero(self.ground.out_m <= self.reach_m)
        return self._points(beside).buffer(self.step_m)

    def _points(self, places: npt.NDArray[np.int64]) -> BaseGeometry:
        return shapely.MultiPoint(turned(self.ground.lattice.xy[places], -self.parts.angle))


@dataclass(frozen=True)
class _Passage:
    """A rectangle that ways may have to go through."""

    site: _Site
    column: int

    @cached_property
    def box(self) -> shapely.Polygon:
        """It, on the floor."""
        return self.site.parts.boxes[self.column]

    @cached_property
    def _rim(self) -> BaseGeometry:
        return self.box.buffer(_SKIN_M, join_style="mitre")

    @cached_property
    def _rest(self) -> list[BaseGeometry]:
        """The floor around it, by pieces that hang together."""
        rest = self.site.parts.floor.difference(self.box.buffer(_HAIR_M, join_style="mitre"))
        pieces = shapely.get_parts(rest)
        return [piece for piece in pieces if piece.area > _HAIR_M**2]

    @cached_property
    def _out(self) -> list[BaseGeometry]:
        """Those of them that the way out is in."""
        return [piece for piece in self._rest if piece.buffer(0.01).intersects(self.site.exits)]

    def of(self, row: int) -> tuple[float, float, float] | None:
        """Of a part: what of it is out of reach from beyond, and what the passage keeps dry now and
        before; None where no way from it has to lead through."""
        shape = self.site.parts.shapes[row]
        own = row in self.site.parts.rectangles[self.column].blocks
        behind = [] if own else [p for p in self._rest if p.intersection(shape).area > _HAIR_M]
        if any(piece in self._out for piece in behind):
            return None
        entry = shape if own else self._openings(behind)
        leaves = shapely.union_all(
            [self._openings(self._out), self.site.exits.intersection(self.box.buffer(0.01))]
        )
        if entry.is_empty or leaves.is_empty:
            return None
        seen_from = shape.boundary.intersection(self.site.parts.floor.buffer(-_HAIR_M))
        near = (seen_from if own else entry).buffer(self.site.reach_m)
        inner_m2 = shape.difference(near).difference(self.site.beyond).area - _LEFT_OUT_M2
        beside = [p for p in self._rest if p not in behind and p not in self._out]
        crossing = _Crossing(self, entry, leaves, [self._openings([piece]) for piece in beside])
        before_m2 = crossing.before_m2 if own else max(crossing.before_m2, crossing.round_m2)
        if inner_m2 <= 0 or (own and before_m2 <= 0):
            return None
        return inner_m2, crossing.now_m2, before_m2

    def _openings(self, pieces: list[BaseGeometry]) -> BaseGeometry:
        return shapely.union_all([piece.intersection(self._rim) for piece in pieces])

    def niche_m(self, axis: int) -> float:
        """How deep a niche beside it may swallow a body that goes along the axis, at most half."""
        aside = np.array([0.01, 0.01])
        aside[1 - axis] = -_NICHE_M
        west, south, east, north = self.box.bounds
        wider = shapely.box(west + aside[0], south + aside[1], east - aside[0], north - aside[1])
        over = self.site.parts.floor.intersection(wider).difference(self._rim)
        deep = 0.0
        for piece in shapely.get_parts(over):
            if piece.distance(self.box) <= 2 * _SKIN_M:
                ends = piece.bounds[1 - axis], piece.bounds[3 - axis]
                deep = max(
                    deep, self.box.bounds[1 - axis] - ends[0], ends[1] - self.box.bounds[3 - axis]
                )
        return min(deep, BODY_M)


@dataclass(frozen=True)
class _Crossing:
    """A way across a rectangle, from one opening to another, past openings to dead ends."""

    passage: _Passage
    entry: BaseGeometry
    leaves: BaseGeometry
    beside: list[BaseGeometry]

    @cached_property
    def _lengths_m(self) -> tuple[float, float]:
        """How far it has to go inside, along both axes: what dead ends may stand in for is not
        counted."""
        return self._length_m(0), self._length_m(1)

    def _length_m(self, axis: int) -> float:
        one, two = self.entry.bounds, self.leaves.bounds
        low, high = sorted([(one[axis], one[axis + 2]), (two[axis], two[axis + 2])])
        start, end = low[1] + 0.01, high[0] - 0.01
        length, at = 0.0, start
        spans = sorted((b.bounds[axis], b.bounds[axis + 2]) for b in self.beside if not b.is_empty)
        for from_m, to_m in spans:
            length += max(0.0, min(from_m, end) - at)
            at = max(at, to_m)
        return length + max(0.0, end - at)

    @cached_property
    def now_m2(self) -> float:
        """Dry floor under the bodies on it."""
        body_m = min(2 * BODY_M, 3 * self.passage.site.step_m)
        return max(
            length * (body_m - self.passage.niche_m(axis))
            for axis, length in enumerate(self._lengths_m)
        )

    @cached_property
    def before_m2(self) -> float:
        """Floor across which some floor under a body is within a depth."""
        site, sides = self.passage.site, _sides(self.passage.box)
        wide_m = site.depth_m + site.step_m + site.off_wall_m
        return max(
            length * min(sides[1 - axis], wide_m) for axis, length in enumerate(self._lengths_m)
        )

    @cached_property
    def round_m2(self) -> float:
        """The same round the end of a wall between both openings."""
        apart = self.entry.distance(self.leaves)
        if apart >= _WALL_END_M or not (_on_one_side(self.entry) and _on_one_side(self.leaves)):
            return 0.0
        site = self.passage.site
        middle = shapely.shortest_line(self.entry, self.leaves).centroid
        radius = site.depth_m + site.off_wall_m - apart / 2
        disc = middle.buffer(radius, 64).intersection(self.passage.box).area * _INSIDE
        # Where the way runs farther off than a depth, or near the far wall, a little less counts.
        disc = max(0.0, disc - np.pi / 2 * site.off_wall_m**2)
        far = min(
            (min(self.entry.distance(b), self.leaves.distance(b)) for b in self.beside if b),
            default=np.inf,
        )
        short = min(*_sides(self.passage.box), site.depth_m)
        return float(min(disc, far / np.sqrt(2) * short))


def _on_one_side(opening: BaseGeometry) -> bool:
    """Whether an opening is one, along one side of the rectangle."""
    return len(shapely.get_parts(opening)) == 1 and min(_sides(opening)) <= 3 * _SKIN_M


def _sides(box: BaseGeometry) -> tuple[float, float]:
    west, south, east, north = box.bounds
    return east - west, north - south
