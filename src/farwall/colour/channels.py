"""From CIELAB to three reflectances and back: the sharpened channels of Bradford. Light D50.

A film absorbs in each channel by itself only as far as the channels are narrow: the sharpened ones
overlap less than XYZ and stay above nothing for the colours of a floor. Sources: [cie-15] for
CIELAB, [bradford] for the channels.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

WHITE_D50: Floats = np.array([0.96422, 1.0, 0.82521])
_TO_CHANNELS: Floats = np.array(
    [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]]
)
_WHITE_CHANNELS = _TO_CHANNELS @ WHITE_D50
_FROM_CHANNELS: Floats = np.asarray(np.linalg.inv(_TO_CHANNELS), dtype=np.float64)
_TO_RATIO: Floats = _FROM_CHANNELS * _WHITE_CHANNELS / WHITE_D50[:, None]
_KNEE = 6 / 29
LEAST = 1e-4
"""A reflectance below which a channel is taken to be black."""


def channels_of_lab(lab: ArrayLike) -> Floats:
    """Reflectances 0 to 1 (white 1), last axis three channels, of colours in CIELAB."""
    given = np.asarray(lab, dtype=np.float64)
    fy = (given[..., 0] + 16) / 116
    f = np.stack((fy + given[..., 1] / 500, fy, fy - given[..., 2] / 200), axis=-1)
    ratio = np.where(f > _KNEE, f**3, 3 * _KNEE**2 * (f - 4 / 29))
    return np.asarray((ratio * WHITE_D50) @ _TO_CHANNELS.T / _WHITE_CHANNELS)


def lab_of_channels(reflected: ArrayLike) -> Floats:
    """The way back; each of L, a, b lies by itself in memory, which is quicker for many."""
    given = np.asarray(reflected, dtype=np.float64)
    fx, fy, fz = (_of_white(given, row) for row in _TO_RATIO.tolist())
    found = np.empty((3, *given.shape[:-1]))
    found[0], found[1], found[2] = 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)
    return np.moveaxis(found, 0, -1)


def lightness_of_channels(reflected: ArrayLike) -> Floats:
    """L alone of it; without the last axis."""
    given = np.asarray(reflected, dtype=np.float64)
    return np.asarray(116 * _of_white(given, _TO_RATIO[1].tolist()) - 16)


def _of_white(given: Floats, row: Sequence[float]) -> Floats:
    """Cube root of X, Y or Z against white; below the knee the straight line."""
    red, green, blue = row
    ratio = red * given[..., 0] + green * given[..., 1] + blue * given[..., 2]
    root = np.asarray(np.cbrt(ratio))
    dark = np.asarray(ratio <= _KNEE**3)
    return np.where(dark, ratio / (3 * _KNEE**2) + 4 / 29, root) if dark.any() else root
