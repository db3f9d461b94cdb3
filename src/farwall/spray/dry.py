"""Ground that is still dry: all of it at first, less every strip that has been sprayed.

Most walks are a straight step on dry floor; that is seen without drawing the
whole dry ground. It is drawn when somebody has to walk around.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.spray.bands import Strip
from farwall.spray.routes import ON_M
from farwall.spray.world import KEEP_OFF_M, World, mitred


class _Base:
    """Ground before any strip is taken from it, made ready for many questions."""

    def __init__(self, shape: BaseGeometry) -> None:
        self.shape = shape

    @cached_property
    def roomy(self) -> BaseGeometry:
        roomy = mitred(self.shape, ON_M)
        shapely.prepare(roomy)
        return roomy


@dataclass(frozen=True)
class DryGround:
    """Where a body's centre may be; `wet` are strips sprayed since `base` was drawn."""

    base: _Base
    wet: tuple[Strip, ...] = ()

    @staticmethod
    def of(world: World) -> DryGround:
        """All ground of a house, nothing sprayed yet."""
        return DryGround(_Base(world.standing))

    @cached_property
    def shape(self) -> BaseGeometry:
        """The ground itself."""
        if not self.wet:
            return self.base.shape
        kept = shapely.union_all([strip.kept_off for strip in self.wet])
        return shapely.difference(self.base.shape, kept)

    def without(self, strip: Strip) -> DryGround:
        """The ground once this strip is wet as well."""
        if self.wet and "shape" in self.__dict__:
            return DryGround(_Base(self.shape), (strip,))
        return replace(self, wet=(*self.wet, strip))

    def straight(self, start: Point, end: Point) -> bool:
        """Whether the straight step from `start` to `end` stays on dry ground."""
        line = shapely.LineString([start, end])
        if not self.base.roomy.covers(line):
            return False
        if not self.wet:
            return True
        away = shapely.distance([strip.shape for strip in self.wet], line)
        return bool(np.min(away) >= KEEP_OFF_M - ON_M)
