"""A picture read between its points, smoothed, its slope taken: what else would need all of scipy.

To import that took 0.3 s of the processor in each process that reads a photo. Measured here.
"""

from __future__ import annotations

from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Floats32

Floats = NDArray[np.float64]
Picture = TypeVar("Picture", Floats, Floats32)
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


def smoothed(of: Floats, sigma: float, axis: int = 0) -> Floats:
    """Blurred along an axis by a Gaussian of `sigma` places; beyond the ends their values.

    sigma above 0.
    """
    bell = _bell(sigma, int(_REACH * sigma + 0.5))
    reach = len(bell) // 2
    first = np.moveaxis(of, axis, 0)
    padded = np.pad(first, ((reach, reach), *((0, 0),) * (of.ndim - 1)), mode="edge")
    windows = np.lib.stride_tricks.sliding_window_view(padded, len(bell), axis=0)
    return np.asarray(np.moveaxis(windows @ bell, 0, axis), np.float64)


def slope(of: Picture, along: float, across: float, *, reach: float = _REACH) -> Picture:
    """How fast a picture rises from column to column, by a column; beyond its rim its rim.

    along, across: spreads of the Gaussian by which it is taken, in rows and in columns · reach:
    spreads to which that is taken.
    """
    import cv2

    rows, columns = _bell(along, int(reach * along + 0.5)), _bell(across, int(reach * across + 0.5))
    off = np.arange(len(columns)) - len(columns) // 2
    rises = columns * off / across**2
    out = cv2.sepFilter2D(of, -1, rises, rows, borderType=cv2.BORDER_REPLICATE)
    return np.asarray(out, of.dtype)


def _bell(sigma: float, reach: int) -> Floats:
    bell = np.exp(-0.5 * (np.arange(-reach, reach + 1) / sigma) ** 2)
    return np.asarray(bell / bell.sum(), np.float64)
