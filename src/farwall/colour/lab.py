"""Between CIELAB under D50, XYZ and the linear channels of sRGB. Pure, on whole pictures at once.

Sources: [cie-15] for CIELAB, [iec-61966-2-1] for sRGB, brought to D50 by [bradford].
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farwall.colour.channels import WHITE_D50

Floats = NDArray[np.float64]

XYZ_OF_SRGB: Floats = np.array(
    [
        [0.4360747, 0.3850649, 0.1430804],
        [0.2225045, 0.7168786, 0.0606169],
        [0.0139322, 0.0971045, 0.7141733],
    ]
)
"""Linear sRGB to XYZ under D50, white to `WHITE_D50`."""
_KNEE = 6 / 29


def lab_of_xyz(xyz: ArrayLike) -> Floats:
    """CIELAB of XYZ under D50, white Y 1; last axis three, any shape; below nothing as black."""
    ratio = np.asarray(xyz, dtype=np.float64) / WHITE_D50
    f = np.where(ratio > _KNEE**3, np.cbrt(ratio), ratio / (3 * _KNEE**2) + 4 / 29)
    return np.stack(
        (116 * f[..., 1] - 16, 500 * (f[..., 0] - f[..., 1]), 200 * (f[..., 1] - f[..., 2])),
        axis=-1,
    )


def xyz_of_lab(lab: ArrayLike) -> Floats:
    """The way back."""
    given = np.asarray(lab, dtype=np.float64)
    fy = (given[..., 0] + 16) / 116
    f = np.stack((fy + given[..., 1] / 500, fy, fy - given[..., 2] / 200), axis=-1)
    return np.asarray(np.where(f > _KNEE, f**3, 3 * _KNEE**2 * (f - 4 / 29)) * WHITE_D50)


def xyz_of_xyy(x: float, y: float, luminance: float) -> tuple[float, float, float]:
    """XYZ of a chromaticity and its luminance; y above 0."""
    return x / y * luminance, luminance, (1 - x - y) / y * luminance


def linear_of_srgb(coded: ArrayLike) -> Floats:
    """Linear channels 0 to 1 of what a file of sRGB holds, 0 to 1."""
    given = np.asarray(coded, dtype=np.float64)
    return np.where(given <= 0.04045, given / 12.92, ((given + 0.055) / 1.055) ** 2.4)


def srgb_of_linear(linear: ArrayLike) -> Floats:
    """What a file of sRGB holds, 0 to 1; beyond the range is cut off."""
    given = np.clip(np.asarray(linear, dtype=np.float64), 0, 1)
    return np.where(given <= 0.0031308, given * 12.92, 1.055 * given ** (1 / 2.4) - 0.055)


def lab_of_srgb(coded: ArrayLike) -> Floats:
    """CIELAB under D50 of sRGB 0 to 1, as the file says it."""
    return lab_of_xyz(linear_of_srgb(coded) @ XYZ_OF_SRGB.T)


def srgb_of_lab(lab: ArrayLike) -> Floats:
    """sRGB 0 to 1 that shows a colour; what lies outside is cut off at the channel."""
    return srgb_of_linear(xyz_of_lab(lab) @ np.linalg.inv(XYZ_OF_SRGB).T)


def triple(values: Floats) -> tuple[float, float, float]:
    """Three numbers of an array as plain ones: L*, a*, b*."""
    return float(values[0]), float(values[1]), float(values[2])
