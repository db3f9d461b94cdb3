"""Least squares of a walk: corners, corrections, and how well each reading is held by the others.

Corrections v = adjusted - read. Redundancy number r of a reading: the share of a slip in it that
its own correction shows, 0 (held by nothing) to 1. w = v / (sigma sqrt(r)), standard normal where
no reading slipped. Source: [baarda-1968].
"""

from __future__ import annotations

from collections.abc import Collection
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from farwall.floor.walk.net import Net
from farwall.floor.walk.system import matrix, still, tangent
from farwall.nouns import dataclass

_FAINT_M = 200.0
"""Each unknown is held this faintly about its place, so that what nobody measured stays finite."""
_ROUNDS, _SLOW_ROUNDS, _STILL_M, _NEAR_M = 12, 6, 1e-6, 5e-5
_HELD = 1e-6


@dataclass(frozen=True)
class Adjusted:
    """A solution. x [m] by unknown; v [m], r and w by row; chi2 of all rows that were kept.

    inverse: of the normal matrix, the cofactors of x; design: the rows' coefficients at x.
    """

    x: NDArray[np.float64]
    v: NDArray[np.float64]
    r: NDArray[np.float64]
    w: NDArray[np.float64]
    chi2: float
    freedom: float
    weights: NDArray[np.float64]
    inverse: NDArray[np.float64]
    design: NDArray[np.float64]


def adjusted(
    net: Net,
    *,
    without: Collection[int] = (),
    start: NDArray[np.float64] | None = None,
    shares: NDArray[np.float64] | None = None,
) -> Adjusted:
    """The least-squares solution of a net, some rows left out, weights times `shares` if given."""
    sigma = np.array([row.sigma_m for row in net.rows])
    weights = (1.0 if shares is None else shares) / sigma**2
    if without:
        weights[list(without)] = 0.0
    straight = _of_straight(net, weights, without, whole=shares is None)
    x = _solved(net, straight, weights, start, _ROUNDS)
    return _judged(x, *matrix(net, x), weights, sigma)


Normal = tuple[NDArray[np.float64], NDArray[np.float64]]


def _of_straight(
    net: Net, weights: NDArray[np.float64], without: Collection[int], *, whole: bool
) -> Normal:
    """The normal equations of all rows but the diagonals. whole: weights are full but `without`."""
    straight, told, diagonals = still(net)
    if not whole:
        weights = weights.copy()
        weights[list(diagonals)] = 0.0
        weighted = straight * weights[:, None]
        return straight.T @ weighted + np.eye(net.unknowns) / _FAINT_M**2, weighted.T @ told
    normal, right = (one.copy() for one in _of_all_straight(net))
    for i in set(without) - set(diagonals):
        full = 1.0 / net.rows[i].sigma_m ** 2
        places = list(net.rows[i].parts)
        row = straight[i, places]
        normal[np.ix_(places, places)] -= full * np.outer(row, row)
        right[places] -= full * told[i] * row
    return normal, right


@lru_cache(maxsize=4)
def _of_all_straight(net: Net) -> Normal:
    weights = np.array([1.0 / row.sigma_m**2 for row in net.rows])
    return _of_straight(net, weights, (), whole=False)


def _solved(
    net: Net,
    straight: Normal,
    weights: NDArray[np.float64],
    start: NDArray[np.float64] | None,
    rounds: int,
) -> NDArray[np.float64]:
    """The corners and jambs: straight rows once, diagonals by their tangents round after round."""
    _, _, diagonals = still(net)
    kept = [i for i in diagonals if weights[i] > 0]
    x = start
    for _ in range(rounds if kept else 1):
        n, g = straight[0].copy(), straight[1].copy()
        if x is not None:
            g += x / _FAINT_M**2
            for i in kept:
                places, row, told = tangent(net, i, x)
                n[np.ix_(places, places)] += weights[i] * np.outer(row, row)
                g[places] += weights[i] * told * row
        new = np.asarray(np.linalg.solve(n, g), dtype=np.float64)
        moved = np.inf if x is None else float(np.max(np.abs(new - x)))
        x = new
        if moved < _STILL_M:
            break
    assert x is not None
    return x


@dataclass(frozen=True)
class Dropped:
    """A solution without one row more. off_m: how much the row is too long against the others,
    give or take spread_m (its own spread and theirs).
    """

    x: NDArray[np.float64]
    chi2: float
    off_m: float
    spread_m: float


def dropped(net: Net, whole: Adjusted, i: int) -> Dropped:
    """What a solution becomes without row i, to the tenth of a millimetre; its r must be above 0.

    The cofactors follow by the formula of Sherman and Morrison; diagonals are gone after by steps
    along the same cofactors. Rank: textbook algebra, held against `adjusted` by a test.
    """
    weights = whole.weights.copy()
    weights[i] = 0.0
    along = whole.inverse @ whole.design[i]
    own = float(whole.design[i] @ along)
    rest = 1.0 / whole.weights[i] - own
    x = whole.x
    for _ in range(_ROUNDS):
        a, b = matrix(net, x)
        pull = a.T @ (weights * (b - a @ x))
        step = whole.inverse @ pull + along * float(along @ pull) / rest
        x = x + step
        if float(np.max(np.abs(step))) < _NEAR_M:
            break
    else:  # a slip so large that the same cofactors lead nowhere
        out = [k for k, weight in enumerate(weights) if weight == 0]
        x = _solved(net, _of_straight(net, weights, out, whole=True), weights, None, _SLOW_ROUNDS)
    a, b = matrix(net, x)
    v = a @ x - b
    spread = own + own**2 / rest
    sigma = net.rows[i].sigma_m
    return Dropped(
        x, float(np.sum(weights * v**2)), -float(v[i]), float(np.sqrt(sigma**2 + max(spread, 0.0)))
    )


def length_between(x: NDArray[np.float64], p: int, q: int) -> float:
    """From corner to corner, by the numbers of their x [m]."""
    return float(np.hypot(x[q] - x[p], x[q + 1] - x[p + 1]))


def _judged(
    x: NDArray[np.float64],
    a: NDArray[np.float64],
    b: NDArray[np.float64],
    weights: NDArray[np.float64],
    sigma: NDArray[np.float64],
) -> Adjusted:
    normal = a.T @ (weights[:, None] * a) + np.eye(len(x)) / _FAINT_M**2
    inverse = np.asarray(np.linalg.inv(normal), dtype=np.float64)
    v = a @ x - b
    fitted = np.sum((a @ inverse) * a, axis=1)
    r = np.where(weights > 0, np.clip(1.0 - fitted * weights, 0.0, 1.0), 0.0)
    held = r > _HELD
    w = np.where(held, v / (sigma * np.sqrt(np.where(held, r, 1.0))), 0.0)
    chi2 = float(np.sum(weights * v**2))
    return Adjusted(x, v, r, w, chi2, float(np.sum(r[weights > 0])), weights, inverse, a)
