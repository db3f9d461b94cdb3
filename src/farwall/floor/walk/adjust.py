"""Least squares of a walk: corners, corrections, and how well each reading is held by the others.

Corrections v = adjusted - read. Redundancy number r of a reading: the share of a slip in it that
its own correction shows, 0 (held by nothing) to 1. w = v / (sigma sqrt(r)), standard normal where
no reading slipped. Source: [baarda-1968].
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.floor.walk.net import Net, matrix

_FAINT_M = 200.0
"""Each unknown is held this faintly about its place, so that what nobody measured stays finite."""
_ROUNDS, _STILL_M = 12, 1e-6
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
    x = start
    sigma = np.array([row.sigma_m for row in net.rows])
    weights = (1.0 if shares is None else shares) / sigma**2
    if without:
        weights[list(without)] = 0.0
    rounds = _ROUNDS if any(row.corners is not None for row in net.rows) else 2
    for _ in range(rounds):
        a, b = matrix(net, x)
        weighted = a * weights[:, None]
        normal = a.T @ weighted + np.eye(net.unknowns) / _FAINT_M**2
        right = weighted.T @ b + (0.0 if x is None else x / _FAINT_M**2)
        new = np.linalg.solve(normal, right)
        moved = np.inf if x is None else float(np.max(np.abs(new - x)))
        x = new
        if moved < _STILL_M:
            break
    assert x is not None
    return _judged(x, *matrix(net, x), weights, sigma)


def _judged(
    x: NDArray[np.float64],
    a: NDArray[np.float64],
    b: NDArray[np.float64],
    weights: NDArray[np.float64],
    sigma: NDArray[np.float64],
) -> Adjusted:
    normal = a.T @ (weights[:, None] * a) + np.eye(len(x)) / _FAINT_M**2
    inverse = np.linalg.inv(normal)
    v = a @ x - b
    fitted = np.sum((a @ inverse) * a, axis=1)
    r = np.where(weights > 0, np.clip(1.0 - fitted * weights, 0.0, 1.0), 0.0)
    held = r > _HELD
    w = np.where(held, v / (sigma * np.sqrt(np.where(held, r, 1.0))), 0.0)
    chi2 = float(np.sum(weights * v**2))
    return Adjusted(x, v, r, w, chi2, float(np.sum(r[weights > 0])), weights, inverse, a)
