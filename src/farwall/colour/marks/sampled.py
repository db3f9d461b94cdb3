"""A picture read between its points, and a line made smooth: what else would need all of scipy.

To import that took a fifth of a second in each process that reads a photo. Measured here.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Floats32

Floats = NDArray[np.float64]
_REACH = 4.0
"""Spreads to which the bell is taken."""


def between(of: Floats32, rows: Floats, columns: Floats) -> Floats:
    """The picture at places between its points, by the four around; beyond its rim its rim."""
    y = np.clip(rows, 0, of.shape[0] - 1)
    x = np.clip(columns, 0, of.shape[1] - 1)
    top = np.minimum(y.astype(np.intp), max(of.shape[0] - 2, 0))
    left = np.minimum(x.astype(np.intp), max(of.shape[1] - 2, 0))
    low, right = np.minimum(top + 1, of.shape[0] - 1), np.minimum(left + 1, of.shape[1] - 1)
    down, across = y - top, x - left
    upper = of[top, left] * (1 - across) + of[top, right] * across
    lower = of[low, left] * (1 - across) + of[low, right] * across
    return np.asarray(upper * (1 - down) + lower * down, dtype=np.float64)


def smoothed(line: Floats, sigma: float) -> Floats:
    """Each column blurred along the rows by a Gaussian of `sigma` rows; beyond the ends their
    values. sigma above 0."""
    reach = int(_REACH * sigma + 0.5)
    bell = np.exp(-0.5 * (np.arange(-reach, reach + 1) / sigma) ** 2)
    padded = np.pad(line, ((reach, reach), (0, 0)), mode="edge")
    windows = np.lib.stride_tricks.sliding_window_view(padded, 2 * reach + 1, axis=0)
    return np.asarray(windows @ (bell / bell.sum()))
