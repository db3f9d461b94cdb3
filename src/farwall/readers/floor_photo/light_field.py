"""The light on a floor evened lightly: a surface of the second degree, no more.

Such a surface has one hump and bends over the whole room, so that it takes the fall of light from
a window and leaves every mark, which is small beside the room. Rank: guess.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Mask = npt.NDArray[np.bool_]
Floats32 = npt.NDArray[np.float32]
_SMALL = 8
_LEAST, _MOST = 0.5, 2.0
_ROUNDS, _OUT = 4, 2.5


def evened(lab: Floats32, floor: Mask) -> Floats32:
    """CIELAB with the broad fall of its light taken out, the mean of the floor kept.

    A light k times as bright makes Y k times as large, and L + 16, a and b the cube root of k times
    ([cie-15]; exact above L 8).
    """
    light = _light(lab)
    surface = _surface(light, floor)
    if surface is None:
        return lab
    root = np.cbrt(np.clip(np.exp(-surface), _LEAST, _MOST)).astype(np.float32)
    found = lab * root[..., None]
    found[..., 0] = (lab[..., 0] + 16) * root - 16
    return np.asarray(found, np.float32)


def _light(lab: Floats32) -> Floats32:
    return np.asarray(3 * np.log(np.maximum(lab[..., 0] + 16, 17.0) / 116), np.float32)


def _surface(light: Floats32, floor: Mask) -> Floats32 | None:
    """Logarithm of the light above the floor's mean; None where too little floor is seen."""
    import cv2

    high, wide = (max(1, -(-side // _SMALL)) for side in light.shape)
    share = cv2.resize(floor.astype(np.float32), (wide, high), interpolation=cv2.INTER_AREA)
    mean = cv2.resize(
        np.where(floor, light, 0).astype(np.float32), (wide, high), interpolation=cv2.INTER_AREA
    )
    use = share > 0.9
    if use.sum() < 100:
        return None
    y, x = np.nonzero(use)
    told = (mean[use] / share[use]).astype(np.float64)
    terms = _terms(x / wide, y / high)
    kept = np.ones(len(told), bool)
    numbers: npt.NDArray[np.floating] = np.zeros(6)
    for _ in range(_ROUNDS):
        use_terms = terms[kept]
        square, pull = use_terms.T @ use_terms, use_terms.T @ told[kept]
        numbers = np.linalg.lstsq(square, pull, rcond=None)[0]
        off = np.abs(terms @ numbers - told)
        kept = off <= _OUT * 1.4826 * max(float(np.median(off)), 1e-4)
    level = float(np.mean(terms @ numbers))
    gx, gy = np.meshgrid((np.arange(wide) + 0.0) / wide, (np.arange(high) + 0.0) / high)
    small = (_terms(gx.ravel(), gy.ravel()) @ numbers - level).reshape(high, wide)
    return np.asarray(
        cv2.resize(small.astype(np.float32), light.shape[::-1], interpolation=cv2.INTER_LINEAR),
        np.float32,
    )


def _terms(x: npt.NDArray[np.float64], y: npt.NDArray[np.float64]) -> npt.NDArray[np.float64]:
    return np.column_stack([np.ones_like(x), x, y, x * x, x * y, y * y])
