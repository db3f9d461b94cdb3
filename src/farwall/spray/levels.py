"""Where one band ends and the next begins: levels of a sweep, each a band's depth on.

A band may be as deep as the wand is meant to lay from the dry floor before it,
and no deeper anywhere; where the front moves slowly on one side and fast on
the other, the slow side sets the pace.
"""

from __future__ import annotations

import math

import numpy as np

from farwall.nouns import dataclass
from farwall.spray.front import Front, Ground
from farwall.spray.lattice import Floats

_LEAST_SLOPE_M = 0.3
"""Pockets where the front all but stops: they are sprayed with the band beside them."""
_NEAR = 0.7
_HALVINGS = 7
_SCRAP = 0.05
_MOST_BANDS = 400


@dataclass(frozen=True)
class Levels:
    """Floor sprayed when each band but the last is done, rising [m2], and how deep bands come."""

    sprayed_m2: tuple[float, ...]
    depth_m: float


def band_levels(ground: Ground, front: Front, depth_m: float) -> Levels:
    """Where bands of at most `depth_m` end, as few as can be and as even as they go."""
    pace = _Pace(ground, front)
    full = pace.levels(depth_m, scrap=_SCRAP)
    if not full:
        return Levels((), depth_m)
    low, high = depth_m * len(full) / (len(full) + 1), depth_m
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if len(pace.levels(middle, scrap=0.0)) > len(full):
            low = middle
        else:
            high = middle
    even = pace.levels(high, scrap=0.0)
    if len(even) == len(full):
        return Levels(tuple(even), high)
    return Levels(tuple(full), depth_m)


class _Pace:
    """How much floor the front takes at each place for each metre that it moves on."""

    def __init__(self, ground: Ground, front: Front) -> None:
        self._ground = ground
        self._before = front.before_m2
        self._whole = ground.lattice.floor.area
        ball = ground.ball
        gain = front.before_m2[ball.there] - front.before_m2[:, None]
        good = (ball.away_m >= _NEAR * ball.depth_m) & (gain > 0)
        slope = np.where(good, gain / np.maximum(ball.away_m, 1e-9), 0.0).max(axis=1)
        near = np.where(ball.away_m > 0, gain / np.maximum(ball.away_m, 1e-9), 0.0).max(axis=1)
        self._slope = np.maximum(np.where(slope > 0, slope, near), _LEAST_SLOPE_M)

    def levels(self, depth_m: float, *, scrap: float) -> list[float]:
        half = ground_half(self._ground, self._slope)
        low = self._before - half
        # Of a place that the last band reaches into only the floor beyond it asks for a level.
        beyond = self._slope * (self._ground.out_m - depth_m * (1 + scrap))
        inner = beyond > -half
        high = self._before + np.minimum(beyond, half)
        low, high, slope = low[inner], high[inner], self._slope[inner]
        order = np.argsort(-high, kind="stable")
        low, high, slope = low[order], high[order], slope[order]
        found: list[float] = []
        here = 0.0
        while len(found) < _MOST_BANDS:
            ahead = high > here + 1e-6
            if not ahead.any():
                break
            reach = np.maximum(low[ahead], here) + slope[ahead] * depth_m
            upto = float(reach.min())
            if upto >= self._whole - 1e-6 or not math.isfinite(upto):
                break
            found.append(upto)
            here = upto
        return found


def ground_half(ground: Ground, slope: Floats) -> Floats:
    """Half of what the front takes while it crosses each place. [m2]"""
    return slope * ground.lattice.grid.step_m / 2
