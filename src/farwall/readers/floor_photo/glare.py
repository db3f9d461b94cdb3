"""Where the floor mirrors a light: burnt places, and what shines round them.

A light patch of the floor may be as light as a weak mirror image, so nothing is taken for glare
that does not hang together with a place where the camera ran out of light.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Mask = npt.NDArray[np.bool_]
Floats32 = npt.NDArray[np.float32]
BURNT_SHARE = 0.02
"""A cell is burnt where this share of its photo points is. Rank: guess."""
BURNT_LIGHTNESS = 97.0
"""In a photo whose own light is not known: lighter than this. Rank: guess."""
_ABOVE, _AROUND_M, _BORDER_M, _LEAST_M = 7.0, 0.8, 0.03, 0.02


def glare_on(lightness: Floats32, floor: Mask, burnt: Mask, m_per_px: float) -> Mask:
    """Cells that show a mirrored light, with a border of 3 cm (guess).

    lightness: L of CIELAB · burnt: cells where the camera ran out of light.
    """
    import cv2

    core = burnt & floor
    side = max(1, round(_LEAST_M / m_per_px))
    core = cv2.morphologyEx(
        core.astype(np.uint8), cv2.MORPH_OPEN, np.ones((side, side), np.uint8)
    ).astype(bool)  # a single sparkle of grit is no window
    if not core.any():
        return core
    calm = floor & ~core
    shining = floor & (lightness > _beside(lightness, calm, m_per_px) + _ABOVE)
    _, labels = cv2.connectedComponents((shining | core).astype(np.uint8), connectivity=8)
    touched = np.zeros(int(labels.max()) + 1, bool)
    touched[np.unique(labels[core])] = True
    touched[0] = False
    side = 2 * max(1, round(_BORDER_M / m_per_px)) + 1
    round_one = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (side, side))
    return np.asarray(cv2.dilate(touched[labels].astype(np.uint8), round_one).astype(bool) & floor)


def _beside(lightness: Floats32, calm: Mask, m_per_px: float) -> Floats32:
    """Mean lightness of the calm floor around each cell; of all calm floor where none is near."""
    import cv2

    small = 8
    high, wide = (max(1, -(-side // small)) for side in lightness.shape)
    weight = cv2.resize(calm.astype(np.float32), (wide, high), interpolation=cv2.INTER_AREA)
    light = cv2.resize(
        np.where(calm, lightness, 0).astype(np.float32), (wide, high), interpolation=cv2.INTER_AREA
    )
    sigma = _AROUND_M / (m_per_px * small)
    soft, base = (cv2.GaussianBlur(one, (0, 0), sigma) for one in (light, weight))
    usual = float(lightness[calm].mean()) if calm.any() else 50.0
    mean = np.where(base > 0.02, soft / np.maximum(base, 1e-6), usual).astype(np.float32)
    return np.asarray(
        cv2.resize(mean, lightness.shape[::-1], interpolation=cv2.INTER_LINEAR), np.float32
    )
