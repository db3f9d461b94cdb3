"""The rows of a walk as matrices: straight rows once, diagonals by their tangents at a solution."""

from __future__ import annotations

from functools import lru_cache
from math import hypot

import numpy as np
from numpy.typing import NDArray

from farwall.floor.walk.net import Net


@lru_cache(maxsize=8)
def still(net: Net) -> tuple[NDArray[np.float64], NDArray[np.float64], tuple[int, ...]]:
    """What stays the same from solution to solution: A, b, and the numbers of the diagonals."""
    a = np.zeros((len(net.rows), net.unknowns))
    b = np.array([row.value_m for row in net.rows])
    for i, row in enumerate(net.rows):
        for key, part in row.parts.items():
            a[i, key] += part
    return a, b, tuple(i for i, row in enumerate(net.rows) if row.corners is not None)


def matrix(
    net: Net, x: NDArray[np.float64] | None
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """The system (A, b) about a solution x; before there is one, diagonals say nothing.

    A diagonal stands for its tangent at x, told for x itself and not for the change of x.
    """
    straight, told, diagonals = still(net)
    a, b = straight.copy(), told.copy()
    for i in diagonals:
        if x is None:
            b[i] = 0.0
            continue
        places, row, value = tangent(net, i, x)
        a[i, places], b[i] = row, value
    return a, b


def tangent(
    net: Net, i: int, x: NDArray[np.float64]
) -> tuple[list[int], NDArray[np.float64], float]:
    """A diagonal about x: numbers of its unknowns, their coefficients, and what they should give.

    Raises ValueError for a row that is no diagonal.
    """
    corners = net.rows[i].corners
    if corners is None:
        raise ValueError(f"row {i} is no diagonal")
    p, q = corners
    dx, dy = x[q] - x[p], x[q + 1] - x[p + 1]
    far = hypot(dx, dy) or 1e-9
    row = np.array([-dx / far, -dy / far, dx / far, dy / far])
    # Told for x itself and not for its change: the tangent meets the diagonal's length at x.
    return [p, p + 1, q, q + 1], row, net.rows[i].value_m + float(dx * row[2] + dy * row[3]) - far
