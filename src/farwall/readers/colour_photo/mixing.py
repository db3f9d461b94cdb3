"""How the channels of a photo are mixed to XYZ: three gains, 3 × 3, or the root polynomial.

The root polynomial of the second degree keeps the ratio of its terms when the light changes
[finlayson-2015]. A mixing is the one that leaves the smallest differences of CIELAB to the first
order, which makes it a linear least-squares problem.
"""

from __future__ import annotations

from typing import Literal, TypeVar

import numpy as np
from numpy.typing import NDArray

from farwall.colour.lab import XYZ_OF_SRGB, xyz_of_lab

Real = NDArray[np.float64]
Kind = TypeVar("Kind", np.float32, np.float64)
Mixing = Literal["grey", "linear", "root polynomial"]
_LINEAR_HOLD, _ROOT_HOLD = 0.01, 0.06
"""How firmly a mixing is held to what it begins from, sRGB and the linear one. Rank: guess."""


def terms(light: NDArray[Kind], mixing: Mixing) -> NDArray[Kind]:
    """What is mixed: the channels, and for the root polynomial the roots of their products."""
    if mixing != "root polynomial":
        return light
    r, g, b = (np.maximum(light[..., k], 0) for k in range(3))
    return np.stack((r, g, b, np.sqrt(r * g), np.sqrt(g * b), np.sqrt(r * b)), axis=-1)


def scaled(miss_xyz: Real, lab: Real) -> Real:
    """Differences of XYZ as those of L, a, b to the first order, chroma's counting less."""
    ratio = xyz_of_lab(lab) / _WHITE
    slope = np.where(ratio > 0.008856, np.cbrt(np.maximum(ratio, 1e-9)) ** -2 / 3, 7.787)
    f = slope * miss_xyz / _WHITE
    less = 1 / (1 + 0.035 * np.hypot(lab[:, 1], lab[:, 2]))
    return np.stack(
        (116 * f[:, 1], less * 500 * (f[:, 0] - f[:, 1]), less * 200 * (f[:, 1] - f[:, 2])), axis=1
    )


_WHITE = xyz_of_lab((100.0, 0.0, 0.0))


def mixed(even: Real, lab: Real, mixing: Mixing, trust: Real) -> Real:
    """The mixing that leaves the smallest differences of CIELAB, to the first order."""
    if mixing == "grey":
        return gains(even, lab, trust)
    base = terms(even, mixing)
    count = base.shape[1]
    system = np.zeros((3 * len(lab), 3 * count))
    for axis in range(3):
        unit = np.zeros(3)
        unit[axis] = 1.0
        weight = scaled(np.broadcast_to(unit, (len(lab), 3)), lab) * trust[:, None]
        part = weight[:, :, None] * base[:, None, :]
        system[:, axis * count : (axis + 1) * count] = part.reshape(-1, count)
    aim = (scaled(xyz_of_lab(lab), lab) * trust[:, None]).ravel()
    if mixing == "linear":
        plain, hold = _plain(even, lab), _LINEAR_HOLD
    else:
        plain, hold = np.zeros((count, 3)), _ROOT_HOLD
        plain[:3] = mixed(even, lab, "linear", trust)
    held = (hold * np.abs(system).mean()) ** 2 * len(aim)
    square = system.T @ system + held * np.eye(system.shape[1])
    found = np.linalg.solve(square, system.T @ aim + held * plain.T.ravel())
    return np.asarray(found.reshape(3, count).T)


def _plain(even: Real, lab: Real) -> Real:
    """The mixing of sRGB at the photo's own exposure: what is held to where patches say little."""
    level = np.median(xyz_of_lab(lab)[:, 1] / np.maximum(even @ XYZ_OF_SRGB[1], 1e-6))
    return np.asarray(XYZ_OF_SRGB.T * level)


def gains(even: Real, lab: Real, trust: Real) -> Real:
    """Three gains only, from the greys; the channels are taken to be those of sRGB."""
    wanted = xyz_of_lab(lab) @ np.linalg.inv(XYZ_OF_SRGB).T
    share = trust[:, None] / np.maximum(wanted, 0.02)
    gains = (share**2 * even * wanted).sum(axis=0) / (share**2 * even**2).sum(axis=0)
    return np.asarray(gains[:, None] * XYZ_OF_SRGB.T)
