"""Shares of a floor in whole hundredths of a square metre, and what strides ask of them.

Every row is rounded to the side that lets more fit.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import field
from itertools import pairwise
from typing import TYPE_CHECKING

import numpy as np

from farwall.nouns import dataclass
from farwall.spray.blocks import Rectangle
from farwall.spray.edges_at_once import gain_m2
from farwall.spray.passages import NO_WAY
from farwall.spray.strides import MOMENTS, Floor

if TYPE_CHECKING:
    from ortools.sat.python.cp_model import (
        BoundedLinearExpression,
        CpModel,
        IntVar,
        LinearExpr,
        LiteralT,
    )

UNIT_M2 = 0.01
_EVERY = 10
_ENDS = (1, 2, 4, 7, 12, 20, 30)
"""Rows stand at so many units from empty and from full, where gains change most, and at every
tenth unit between."""
_HAIR = 1e-9
_SOME_M2 = 1e-8


def down(area_m2: float) -> int:
    """The whole units that are there at least."""
    return math.floor(area_m2 / UNIT_M2 - _HAIR)


def up(area_m2: float) -> int:
    """The whole units that may be there."""
    return math.floor(area_m2 / UNIT_M2 + _HAIR)


def _grown_m2(one: Rectangle, area_m2: float, depth_m: float) -> float:
    return area_m2 + float(gain_m2(one, np.array([area_m2]), depth_m)[0])


@dataclass
class Question:
    """Shares at all moments, as unknowns: `wet[k][p]` whole units of part p at moment k, the floor
    in no part last; `told[k][r]` those of a rectangle's parts together."""

    model: CpModel
    floor: Floor
    front_m: float
    wet: list[list[IntVar]] = field(default_factory=list)
    told: list[list[IntVar]] = field(default_factory=list)
    _known: dict[tuple[int, int], LiteralT] = field(default_factory=dict)

    def ask(self) -> None:
        """Says it all to the solver's model."""
        self._shares()
        self._nothing_dries()
        self._growth()
        self._passages()
        self._gains()

    @property
    def _rectangles(self) -> Sequence[Rectangle]:
        return self.floor.parts.rectangles

    @property
    def _moments(self) -> range:
        return range(len(self.wet))

    def _area_m2(self, rectangle: int) -> float:
        """Of the parts of a rectangle."""
        return float(self.floor.inside[rectangle] @ self.floor.parts.area_m2)

    def _shares(self) -> None:
        """Together they are what is wet, each less than a unit above its number."""
        model = self.model
        area = [*self.floor.parts.area_m2, self.floor.other_m2]
        for wet_m2 in self.floor.moments_m2(self.front_m):
            wet = [model.new_int_var(0, up(one), "") for one in area]
            told = [
                model.new_int_var(0, up(self._area_m2(n)), "") for n in range(len(self._rectangles))
            ]
            self.wet.append(wet)
            self.told.append(told)
            for part, most in enumerate(self.floor.not_last_m2(wet_m2, self.front_m)):
                model.add(wet[part] <= up(max(float(most), 0.0)))
            self._adds_up(wet, wet_m2)
            for number, one in enumerate(self._rectangles):
                own = [wet[part] for part in sorted(one.blocks)]
                rest = [var for part, var in enumerate(wet) if part not in one.blocks]
                model.add(told[number] >= sum(own))
                model.add(told[number] <= sum(own) + len(own) - 1)
                self._adds_up([told[number], *rest], wet_m2)

    def _adds_up(self, shares: Sequence[IntVar], wet_m2: float) -> None:
        self.model.add(sum(shares) <= up(wet_m2))
        self.model.add(sum(shares) >= down(wet_m2) - len(shares) + 1)

    def _nothing_dries(self) -> None:
        for rows in (self.wet, self.told):
            for now, then in pairwise(rows):
                for one, two in zip(now, then, strict=True):
                    self.model.add(two >= one)

    def _at_least(self, var: IntVar, units: int) -> LiteralT:
        """The literal that says so."""
        key = var.index, units
        if key not in self._known:
            said = self.model.new_bool_var("")
            self.model.add(var >= units).only_enforce_if(said)
            self.model.add(var <= units - 1).only_enforce_if(~said)
            self._known[key] = said
        return self._known[key]

    def _growth(self) -> None:
        """What was wet has grown a stride later, and what is dry was dry farther around before."""
        for number, one in enumerate(self._rectangles):
            whole, loose = one.short_m * one.long_m, one.loose_m2
            depth, most = self.floor.depth_m, up(self._area_m2(number))
            rows = _rows(most)
            later = {v: down(_grown_m2(one, v * UNIT_M2, depth) - loose) for v in rows}
            dry = {v: whole - v * UNIT_M2 - loose for v in rows}
            before = {
                v: up(max(whole - _grown_m2(one, d, depth), 0.0))
                for v, d in dry.items()
                if d > _SOME_M2
            }
            for k in self._moments[: len(self.wet) - MOMENTS]:
                now, then = self.told[k][number], self.told[k + MOMENTS][number]
                for units in rows:
                    if later[units] > units:
                        self._where([self._at_least(now, units)], then >= min(later[units], most))
                    if units in before:
                        self._where([~self._at_least(then, units)], now <= before[units])

    def _where(self, said: Sequence[LiteralT], row: BoundedLinearExpression | bool) -> None:  # noqa: FBT001
        self.model.add(row).only_enforce_if(*said)

    def _passages(self) -> None:
        """A part that is not done keeps its way out dry, now and a stride before."""
        passages, area = self.floor.passages, self.floor.parts.area_m2
        for part, number in np.argwhere(passages.inner_m2 > 0):
            one, done = self._rectangles[number], down(float(passages.inner_m2[part, number]))
            if not 0 < done <= up(float(area[part])):
                continue
            room = one.short_m * one.long_m
            now = float(passages.now_m2[part, number])
            before = float(passages.before_m2[part, number])
            led = _grown_m2(one, max(now - one.loose_m2, _SOME_M2), self.floor.depth_m)
            for k in self._moments:
                not_done = [~self._at_least(self.wet[k][part], done)]
                if now > 0:
                    self._where(not_done, self.told[k][number] <= up(room + one.loose_m2 - now))
                if before > NO_WAY and k >= MOMENTS:
                    kept = max(led, before - one.loose_m2)
                    earlier = self.told[k - MOMENTS][number]
                    self._where(not_done, earlier <= up(max(room - kept, 0.0)))

    def _gains(self) -> None:
        """What all rectangles gain in the stride to come, or gained in the last: one at most."""
        stride = up(self.front_m * self.floor.depth_m)
        for ahead in (True, False):
            for k in self._moments:
                gains = [self._gain(k, n, ahead=ahead) for n in range(len(self._rectangles))]
                for family in self.floor.families:
                    twice = np.maximum(self.floor.inside[list(family)].sum(axis=0) - 1, 0).astype(
                        int
                    )
                    room = sum(
                        int(twice[part]) * self._room(k, int(part), ahead=ahead)
                        for part in np.flatnonzero(twice)
                    )
                    self.model.add(sum(gains[n] for n in family) - room <= stride)

    def _room(self, k: int, part: int, *, ahead: bool) -> LinearExpr:
        """What a part may gain at most."""
        wet = self.wet[k][part]
        return up(float(self.floor.parts.area_m2[part])) + 1 - wet if ahead else wet + 1

    def _gain(self, k: int, number: int, *, ahead: bool) -> IntVar:
        """What a rectangle gains at least: between two rows no less than at one of both."""
        one, most = self._rectangles[number], up(self._area_m2(number))
        whole, loose = one.short_m * one.long_m, one.loose_m2
        gain = self.model.new_int_var(0, up(whole) + 1, "")
        rows = [0, *_rows(most), most + 1]
        for low, high in pairwise(rows):
            ends = np.array([low * UNIT_M2, high * UNIT_M2 + loose])
            told = gain_m2(one, ends if ahead else whole - ends, self.floor.depth_m)
            units = down(float(told.min()) - loose)
            if units > 0:
                wet = self.told[k][number]
                said = [self._at_least(wet, low)] if low else []
                if high <= most:
                    said.append(~self._at_least(wet, high))
                self._where(said, gain >= units)
        return gain


def _rows(most: int) -> list[int]:
    """At which whole units from 1 to `most` rows stand."""
    ends = [n for end in _ENDS for n in (end, most - end)]
    return sorted({n for n in [*ends, most, *range(_EVERY, most, _EVERY)] if 0 < n <= most})
