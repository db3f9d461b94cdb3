"""CIEDE2000 written out, for where loading the library takes longer than the work. [ciede2000]

`difference.de2000` stays what callers are answered with; a test holds the two together.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]
_OPPOSITE_DEG = 1e-9


def quick_de2000(one: ArrayLike, other: ArrayLike) -> Floats:
    """CIEDE2000 between colours in CIELAB, last axis L, a, b; shapes are broadcast."""
    first, second = np.broadcast_arrays(
        np.asarray(one, dtype=np.float64), np.asarray(other, dtype=np.float64)
    )
    l1, a1, b1 = np.moveaxis(first, -1, 0)
    l2, a2, b2 = np.moveaxis(second, -1, 0)
    mean_c7 = ((np.hypot(a1, b1) + np.hypot(a2, b2)) / 2) ** 7
    stretch = 1.5 - 0.5 * np.sqrt(mean_c7 / (mean_c7 + 25.0**7))
    c1, c2 = np.hypot(stretch * a1, b1), np.hypot(stretch * a2, b2)
    h1 = np.degrees(np.arctan2(b1, stretch * a1)) % 360
    h2 = np.degrees(np.arctan2(b2, stretch * a2)) % 360
    dark, light = l2 - l1, (l1 + l2) / 2
    gap, hue = _hues(h1, h2, c1 * c2 == 0)
    turn = 2 * np.sqrt(c1 * c2) * np.sin(np.radians(gap) / 2)
    chroma = (c1 + c2) / 2
    sl = 1 + 0.015 * (light - 50) ** 2 / np.sqrt(20 + (light - 50) ** 2)
    sc, sh = 1 + 0.045 * chroma, 1 + 0.015 * chroma * _uneven(hue)
    c7 = chroma**7
    blue = 60 * np.exp(-(((hue - 275) / 25) ** 2))
    bound = -2 * np.sqrt(c7 / (c7 + 25.0**7)) * np.sin(np.radians(blue))
    x, y, z = dark / sl, (c2 - c1) / sc, turn / sh
    return np.asarray(np.sqrt(np.maximum(x * x + y * y + z * z + bound * y * z, 0.0)))


def _hues(h1: Floats, h2: Floats, grey: NDArray[np.bool_]) -> tuple[Floats, Floats]:
    """Signed gap and mean of two hue angles [deg]; of a grey the other's angle is the mean."""
    gap = h2 - h1
    apart = np.abs(gap)
    across = apart > 180 + _OPPOSITE_DEG
    gap = np.where(grey, 0.0, np.where(across, gap - np.copysign(360.0, gap), gap))
    total = h1 + h2
    over = np.where(total < 360, total + 360, total - 360)
    mean = np.where(grey, total, np.where(across, over, total) / 2)
    return gap, mean


def _uneven(hue: Floats) -> Floats:
    angle = np.radians(hue)
    return np.asarray(
        1
        - 0.17 * np.cos(angle - np.radians(30))
        + 0.24 * np.cos(2 * angle)
        + 0.32 * np.cos(3 * angle + np.radians(6))
        - 0.20 * np.cos(4 * angle - np.radians(63))
    )
