"""Ground that is still dry: all of it at first, less every strip that has been sprayed.

Most walks are a straight step on dry floor; that is seen without drawing the
whole dry ground. It is drawn when somebody has to walk around. Walks are kept
with the house: the second coat is walked as the first, and so is a field that is put on
the clock once more.
"""

from __future__ import annotations

from dataclasses import field, replace
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.bands import Strip
from farwall.spray.routes import Walkable, part_with
from farwall.spray.shortest import ON_M, Sights
from farwall.spray.world import KEEP_OFF_M, World, mitred

Walked = tuple[Point, ...] | None


class _Base:
    """Ground before any strip is taken from it, made ready for many questions."""

    def __init__(self, shape: BaseGeometry) -> None:
        self.shape = shape

    @cached_property
    def roomy(self) -> BaseGeometry:
        roomy = mitred(self.shape, ON_M)
        shapely.prepare(roomy)
        return roomy


@dataclass
class _Kept:
    """What was found so far on the ground of one house: sight lines, and walks by what is wet.

    after: a number for the strips that are wet, from the number before and the last of them.
    """

    sights: Sights
    after: dict[tuple[int, int], tuple[int, Strip]] = field(default_factory=dict)
    walks: dict[tuple[int, Point, Point], Walked] = field(default_factory=dict)


@dataclass(frozen=True)
class DryGround:
    """Where a body's centre may be; `wet` are strips sprayed since `base` was drawn."""

    base: _Base
    kept: _Kept
    wet: tuple[Strip, ...] = ()
    number: int = 0

    @staticmethod
    def of(world: World) -> DryGround:
        """All ground of a house, nothing sprayed yet."""
        if "dry" not in world.kept:
            base = _Base(world.standing)
            world.kept["dry"] = DryGround(base, _Kept(Sights(base.roomy)))
        found = world.kept["dry"]
        assert isinstance(found, DryGround)
        return found

    @cached_property
    def _walkables(self) -> list[Walkable]:
        return []

    @cached_property
    def shape(self) -> BaseGeometry:
        """The ground itself."""
        if not self.wet:
            return self.base.shape
        kept = shapely.union_all([strip.kept_off for strip in self.wet])
        return shapely.difference(self.base.shape, kept)

    def without(self, strip: Strip) -> DryGround:
        """The ground once this strip is wet as well."""
        after = self.kept.after
        # The strip is held beside its number, so that its identity stays its own.
        number, _ = after.setdefault((self.number, id(strip)), (len(after) + 1, strip))
        if self.wet and "shape" in self.__dict__:
            return DryGround(_Base(self.shape), self.kept, (strip,), number)
        return replace(self, wet=(*self.wet, strip), number=number)

    def walk(self, start: Point, end: Point) -> Walked:
        """The shortest dry walk, or None when there is none."""
        key = (self.number, start, end)
        if key not in self.kept.walks:
            self.kept.walks[key] = self._walk(start, end)
        return self.kept.walks[key]

    def _walk(self, start: Point, end: Point) -> Walked:
        if self.straight(start, end):
            return (start, end)
        ground = part_with(self.shape, start)
        return None if ground is None else self._walkable(ground).walk(start, end)

    def _walkable(self, ground: shapely.Polygon) -> Walkable:
        """This part of the ground made ready; several walks begin on the same one."""
        for found in self._walkables:
            if shapely.equals_identical(found.ground, ground):
                return found
        self._walkables.append(Walkable(ground, self.kept.sights))
        return self._walkables[-1]

    def straight(self, start: Point, end: Point) -> bool:
        """Whether the straight step from `start` to `end` stays on dry ground."""
        line = shapely.linestrings([start, end])
        if not shapely.covers(self.base.roomy, line):
            return False
        if not self.wet:
            return True
        away = shapely.distance([strip.shape for strip in self.wet], line)
        return bool(np.min(away) >= KEEP_OFF_M - ON_M)
