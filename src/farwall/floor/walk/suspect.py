"""Which reading slipped: named first, how sure, and what cannot be told apart from it.

Each reading is left out in turn. How much better the rest then fits, and how well the slip that
this tells of fits what slips are, give the chances of the readings by Bayes' rule, one slip at a
time. An alarm is given when the best drop of the sum of squares is beyond what no slip would
reach by chance: Baarda's data snooping [baarda-1968] with the level shared out among all readings.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from math import exp, hypot, log, sqrt
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from farwall.floor.walk.adjust import Adjusted, Dropped, adjusted, dropped, length_between
from farwall.floor.walk.net import READ, Net
from farwall.floor.walk.nouns import Walk
from farwall.floor.walk.slips import likelihood, normal, slips_of
from farwall.nouns import dataclass

LEVEL = 0.05
"""Chance of an alarm over a whole walk without any slip, shared out among its readings."""
_PRIOR = 0.005
"""Chance of a slip in one reading, a guess."""
_REFITTED, _FEW_REFITTED, _MANY = 10, 6, 400
_ROUGHEST = 2.5
_ENOUGH_FREEDOM = 10.0
_SQUARE_PRIOR = 0.1
"""A corner built out of square is this much rarer than a slip of the tape, a guess."""
_SQUARE_TIMES = 8.0
"""Corners that are out of square are out by about 2 degrees, eight times the usual: a guess."""
_STICKS_OUT, _PLAY_M = 1e-4, 0.05
TOLD_APART = 0.9


@dataclass(frozen=True)
class Suspect:
    """A row that may have slipped: by how much [m], give or take, and its chance among all."""

    row: int
    slip_m: float
    sigma_m: float
    chance: float
    drop: float


@dataclass(frozen=True)
class Found:
    """What was found: the alarm, the suspects of the first slip by their chance, the solution.

    rough: how much rougher the rest of the walk is than the spread that it was told, at least 1.
    without: the solution without the first suspect, or the one handed over where no alarm is given.
    """

    alarm: bool
    suspects: tuple[Suspect, ...]
    rough: float
    without: Adjusted


def find(
    walk: Walk, net: Net, whole: Adjusted, *, out: Collection[int] = (), known: bool = True
) -> Found:
    """The suspects of one slip, beside the rows that are out already.

    known: whether the ways in which readings are misread count.
    """
    able = _able(net, whole, out)
    most = _REFITTED if net.unknowns <= _MANY else _FEW_REFITTED
    ranked = sorted(able, key=lambda i: -abs(whole.w[i]))[:most]
    fits = {i: dropped(net, whole, i) for i in ranked}
    if not fits:
        return Found(alarm=False, suspects=(), rough=1.0, without=whole)
    drops = {i: max(whole.chi2 - fit.chi2, 0.0) for i, fit in fits.items()}
    best = max(drops, key=lambda i: drops[i])
    rough = _rough(fits[best].chi2, whole.freedom - 1.0)
    scores = {
        i: 0.5 * drops[i] / rough**2 + _log_prior(walk, net, i, fit, rough=rough, known=known)
        for i, fit in fits.items()
    }
    top = max(scores.values())
    weights = {i: exp(one - top) for i, one in scores.items()}
    total = sum(weights.values())
    suspects = [
        Suspect(i, fit.off_m, rough * fit.spread_m, weights[i] / total, drops[i] / rough**2)
        for i, fit in fits.items()
    ]
    suspects.sort(key=lambda one: (-one.chance, -one.drop, one.row))
    limit = NormalDist().inv_cdf(1 - LEVEL / 2 / max(len(able), 1)) ** 2
    first = suspects[0].row
    alarm = drops[best] / rough**2 > limit
    rest = adjusted(net, without=[*out, first], start=fits[first].x) if alarm else whole
    return Found(alarm, tuple(suspects), rough, rest)


def _able(net: Net, whole: Adjusted, out: Collection[int]) -> list[int]:
    """Rows that may have slipped and that others hold."""
    return [
        i
        for i, row in enumerate(net.rows)
        if i not in out and row.kind in (*READ, "depth", "square") and whole.r[i] > 1e-4
    ]


def _rough(chi2: float, freedom: float) -> float:
    """How much rougher the rest is than told; not asked of a walk that has few checks."""
    if freedom < _ENOUGH_FREEDOM:
        return 1.0
    return min(max(sqrt(chi2 / freedom), 1.0), _ROUGHEST)


def _log_prior(walk: Walk, net: Net, i: int, fit: Dropped, *, rough: float, known: bool) -> float:
    """Log of the chance of a slip as large as the one found, up to what is the same for all rows.

    Against no slip, the evidence for one of any size is exp(drop / 2) times the density of the
    slip found, over its density where chance alone made it.
    """
    row = net.rows[i]
    slip, sigma = fit.off_m, rough * fit.spread_m
    known_m: tuple[float, ...] = ()
    if known and row.kind in READ:
        known_m = slips_of(round(row.value_m, 4), us=walk.us)
    if row.kind in READ:
        density, prior = likelihood(slip, sigma, known_m), _PRIOR
    else:
        density = normal(slip, hypot(sigma, _SQUARE_TIMES * row.sigma_m))
        prior = _PRIOR * _SQUARE_PRIOR
    if row.kind == "wall" and _sticks_out(walk, net, row.room, fit.x):
        prior *= _STICKS_OUT
    return log(prior) + log(max(density * sigma, 1e-300))


def _sticks_out(walk: Walk, net: Net, room: int, x: NDArray[np.float64]) -> bool:
    """Whether an opening of a room would then reach past the end of its wall."""
    ways, count = walk.rooms[room].ways, len(walk.rooms[room].walls)
    for way in ways:
        a = net.first[room] + 2 * way.wall
        b = net.first[room] + 2 * ((way.wall + 1) % count)
        if way.at_m + way.width_m > length_between(x, a, b) + _PLAY_M:
            return True
    return False


def by_weight(whole: Adjusted, net: Net) -> list[int]:
    """Readings by Baarda's test alone, the largest first: the plain way, for comparison."""
    able = [i for i in _able(net, whole, ()) if net.rows[i].kind in READ]
    return sorted(able, key=lambda i: -abs(whole.w[i]))


def by_danish(net: Net, *, rounds: int = 12) -> list[int]:
    """Readings by their weights after the Danish way, the lightest first.

    Weights fall as exp(-(|w| / 3)^2) beyond |w| = 2 from round to round. Source: [krarup-1980].
    """
    shares: NDArray[np.float64] = np.ones(len(net.rows))
    fit = adjusted(net)
    sigma = np.array([row.sigma_m for row in net.rows])
    for _ in range(rounds):
        w = np.abs(fit.v) / sigma
        shares = np.where(w > 2.0, np.exp(-np.minimum((w / 3.0) ** 2, 14.0)), 1.0)
        fit = adjusted(net, start=fit.x, shares=shares)
    return _by_size(net, fit)


def by_least_sum(net: Net, *, rounds: int = 25) -> list[int]:
    """Readings by what is left after the least sum of |v| / sigma, the largest first.

    Reweighted least squares, weights 1 / |w|, not below 1 / 1000. Rank: common practice.
    """
    fit = adjusted(net)
    sigma = np.array([row.sigma_m for row in net.rows])
    for _ in range(rounds):
        shares = 1.0 / np.maximum(np.abs(fit.v) / sigma, 1e-3)
        fit = adjusted(net, start=fit.x, shares=shares)
    return _by_size(net, fit)


def _by_size(net: Net, fit: Adjusted) -> list[int]:
    able = [i for i, row in enumerate(net.rows) if row.kind in READ]
    return sorted(able, key=lambda i: -abs(fit.v[i]) / net.rows[i].sigma_m)


def untold_from(suspects: Sequence[Suspect]) -> tuple[Suspect, ...]:
    """The suspects that are named together: the first, then others until nine in ten is reached."""
    named: list[Suspect] = []
    for one in suspects:
        named.append(one)
        if sum(each.chance for each in named) >= TOLD_APART:
            break
    return tuple(named)
