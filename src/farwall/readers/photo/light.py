"""Evens the light of a flattened sheet: shadow and folds out, ink left."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.readers.photo.opening import Grey

Even = npt.NDArray[np.float32]
Mask = npt.NDArray[np.uint8]
_GROUND_SHARE = 0.016
"""Ink wider than this share of the sheet is taken for shadow. Rank: guess."""
_SMALL_PX = 700
THIN_INK = 0.78


def even_light(grey: Grey) -> Even:
    """The light of each pixel as a share of the bare paper there: 1 is paper, ink is less.

    The paper is what a closing by a square wider than any wall leaves; it keeps a shadow's edge
    where it is.
    """
    import cv2

    high, wide = grey.shape
    factor = min(1.0, 2.4 * _SMALL_PX / max(high, wide))
    small = cv2.resize(grey, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    small = cv2.medianBlur(small, 3)
    side = max(5, round(_GROUND_SHARE * max(small.shape))) | 1
    ground = cv2.morphologyEx(small, cv2.MORPH_CLOSE, np.ones((side, side), np.uint8))
    ground = cv2.GaussianBlur(ground, (0, 0), 1.5)
    whole = cv2.resize(ground, (wide, high), interpolation=cv2.INTER_LINEAR)
    even = grey.astype(np.float32) / np.maximum(whole.astype(np.float32), 8.0)
    return np.minimum(even, 1.0)


def ink_level(even: Even, mask: Mask) -> float:
    """The light of solid ink."""
    return float(np.median(even[mask > 0])) if mask.any() else 0.3


def inked(even: Even, cut: float) -> Mask:
    """1 where there is more ink than that."""
    return (even < cut).astype(np.uint8)
