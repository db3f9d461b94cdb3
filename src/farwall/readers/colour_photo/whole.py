"""A fit laid on every point of a photo."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.channels import WHITE_D50
from farwall.readers.colour_photo.fit import Fit, straight
from farwall.readers.colour_photo.mixing import terms
from farwall.readers.colour_photo.samples import LINEAR

Real = NDArray[np.float64]
Floats32 = NDArray[np.float32]
_STRIP = 128
_MOST_LIE = 0.7
"""Of the logarithm: light is evened by a factor of two at most, for far off it is not known."""
_KNEE = 6 / 29


def lab_of_photo(
    rgb: NDArray[np.uint8], fit: Fit, lie: tuple[Real, Real, float] | None = None
) -> Floats32:
    """CIELAB under D50 of every point, rows from the top.

    lie: the map from the photo to places -1 to 1 on the target, the slope of the light's logarithm
    by place and distance, and its value where it counts as 1; None: nothing is evened.
    """
    table = straight(LINEAR, fit.tones).astype(np.float32)
    mix = fit.mix.astype(np.float32)
    found = np.empty(rgb.shape, np.float32)
    for top in range(0, rgb.shape[0], _STRIP):
        strip = rgb[top : top + _STRIP]
        light = table[strip]
        if lie is not None:
            light /= _lit(rgb.shape, top, strip.shape[0], lie)[..., None]
        found[top : top + _STRIP] = _lab(terms(light, fit.mixing) @ mix)
    return found


def _lit(shape: tuple[int, ...], top: int, rows: int, lie: tuple[Real, Real, float]) -> Floats32:
    back, slope, zero = lie
    high, wide = shape[:2]
    u, v = np.meshgrid(
        np.arange(wide, dtype=np.float32) + 0.5, np.arange(top, top + rows, dtype=np.float32) + 0.5
    )
    x, y, w = (
        np.float32(back[k, 0]) * u + np.float32(back[k, 1]) * v + np.float32(back[k, 2])
        for k in range(3)
    )
    far = ((u - wide / 2) ** 2 + (v - high / 2) ** 2) / np.float32((wide**2 + high**2) / 4)
    # A plane seen aslant has a horizon; beyond it nothing of this is true.
    w = np.where(np.abs(w) < 1e-6, np.float32(1e-6), w)
    log = slope[0] * x / w + slope[1] * y / w + slope[2] * far - zero
    return np.asarray(np.exp(np.clip(log, -_MOST_LIE, _MOST_LIE)), np.float32)


def _lab(xyz: NDArray[np.float32]) -> Floats32:
    """As `colour.lab.lab_of_xyz`, in half the width and cut off at black."""
    ratio = np.maximum(xyz / WHITE_D50.astype(np.float32), 0)
    f = np.where(
        ratio > _KNEE**3,
        np.cbrt(ratio),
        ratio * np.float32(1 / (3 * _KNEE**2)) + np.float32(4 / 29),
    )
    return np.stack(
        (116 * f[..., 1] - 16, 500 * (f[..., 0] - f[..., 1]), 200 * (f[..., 1] - f[..., 2])),
        axis=-1,
    ).astype(np.float32)
