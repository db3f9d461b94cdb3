"""Levelling: sweeps made less steep where they are steepest, until nothing is gained."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass
from farwall.spray.ball import Ball
from farwall.spray.front import Front, Ground, front_of
from farwall.spray.lattice import Floats, Ints

_HALF_BALL = 0.9
_LOWER = 0.97
_BETTER = 0.998
_IDLE = 8
_EASE = 1.003
_HOPS = 30
_SETTLED = 1e-3


@dataclass(frozen=True)
class Stage:
    """So many rounds toward slopes of `lower` times what is reached; the best `kept` go on."""

    rounds: int
    lower: float
    kept: int


def levelled_in_stages(
    ground: Ground, starts: Sequence[Front], stages: Sequence[Stage], *, enough_m: float = 0.0
) -> Front:
    """The best sweep found by levelling many starts roughly, then the best of them finely.

    A slope far below what is reached smooths a sweep as a whole and gets it out of
    where small steps are stuck; one just below it does the fine work. Each
    stage goes on from the best sweep that each start came by. Stops at a front
    of `enough_m`. Rank of the stages that are used: tried here on the shapes of the bench.
    """
    fronts = sorted(starts, key=_length)
    for stage in stages:
        if fronts[0].equivalent_m <= enough_m:
            break
        fronts = sorted(_lowered(ground, fronts, stage), key=_length)[: stage.kept]
    return fronts[0]


def _length(front: Front) -> float:
    return front.equivalent_m


def _lowered(ground: Ground, starts: Sequence[Front], stage: Stage) -> list[Front]:
    """Of each start the best sweep that the rounds of one stage come by, itself at worst."""
    best = list(starts)
    before = np.stack([front.before_m2 for front in starts])
    steep = np.array([front.equivalent_m for front in starts]) * stage.lower
    for _ in range(stage.rounds):
        for number, late in enumerate(_between(ground.ball, before, steep)):
            front = front_of(ground, late, "levelled")
            before[number] = front.before_m2
            if front.equivalent_m < best[number].equivalent_m:
                best[number] = front
            reached = front.equivalent_m * stage.lower
            steep[number] = min(steep[number] * _EASE, reached)
            if front.equivalent_m <= steep[number]:
                steep[number] = reached
    return best


def _between(ball: Ball, before: Floats, steep: Floats) -> Floats:
    """Half way between the highest surfaces below and the lowest above that are not too steep."""
    around = _within_slope(ball, np.concatenate([before, -before]), np.tile(steep, 2))
    return np.asarray((around[: len(before)] - around[len(before) :]) / 2)


def levelled(ground: Ground, starts: Sequence[Front], *, rounds: int) -> Front:
    """The best sweep found by levelling `starts`: none steeper than need be, all floor reached.

    Alternating projection: A is replaced by the mean of the steepest and the
    least steep sweep that lie within slope B of it everywhere, then put back
    to area{A < a} = a and kept walkable; B is lowered by 3 % whenever it is
    reached. Not proved to find the best: the bound beside it says how far off
    it may be.
    """
    before = np.stack([front.before_m2 for front in starts])
    best = min(starts, key=lambda front: front.equivalent_m)
    steep = np.array([front.equivalent_m for front in starts]) * _LOWER
    idle = 0
    for _ in range(rounds):
        idle += 1
        for number, late in enumerate(_between(ground.ball, before, steep)):
            front = front_of(ground, late, "levelled")
            before[number] = front.before_m2
            if front.equivalent_m < best.equivalent_m * _BETTER:
                best, idle = front, 0
            reached = front.equivalent_m * _LOWER
            easier = min(steep[number] * _EASE, reached)
            steep[number] = easier if front.equivalent_m > steep[number] else reached
        if idle >= _IDLE:
            break
    return best


def _within_slope(ball: Ball, rows: Floats, steep: Floats) -> Floats:
    """The least of each row at any place plus `steep` a metre from there, in hops of a ball.

    Row by row, whose table fits into a processor's cache: five to ten times as fast as all at once.
    """
    there = np.ascontiguousarray(ball.there.T)
    hop_m = np.maximum(ball.away_m, _HALF_BALL * ball.depth_m).T.astype(np.float32, order="C")
    return np.stack(
        [_row_within(there, hop_m * np.float32(b), row) for row, b in zip(rows, steep, strict=True)]
    )


def _row_within(there: Ints, climb: npt.NDArray[np.float32], row: Floats) -> Floats:
    near = lower = row.astype(np.float32)
    enough = _SETTLED * float(np.ptp(near))
    reached = np.empty_like(climb)
    for _ in range(_HOPS):
        np.take(near, there, out=reached, mode="clip")
        reached += climb
        lower = np.minimum(near, reached.min(axis=0))
        if float((near - lower).max()) < enough:
            break
        near = lower
    return np.asarray(lower, dtype=float)
