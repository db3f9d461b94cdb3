"""What glare, cracks and joints leave of the floor for small marks: cut out and filled from beside.

The reader leaves out what is burnt. Beside it lie streaks and sparkles that burned nothing out, and
are brighter than any mark: where they stay they set the scale of the whole floor, and a plain
crescent a metre away is held for nothing. So what is bright and hangs on a hole, or is larger than
any crescent, is cut out with its halo; what stands alone stays, for it may be a mark. All
bounds are guesses that were tried on invented floors.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import BACKGROUND_M, Bools, Ground, blurred, filled, seen_of

BRIGHT, HALO = 3.5, 1.8
"""So many spreads lighter than the floor beside it is glare, where it hangs on a hole; and its
halo."""
LARGEST_M2 = 0.07
"""No crescent is larger than this: two circles of 0.34 m with 11 cm between them leave 0.06 m²."""
CLOSED_M, TOUCHES_M, HALO_M, GROWN_M = 0.03, 0.03, 0.08, 0.015
THUMB_M = 0.02
NEAREST_M = 0.05
"""A small mark is sought no nearer than this to what was cut out."""
_LEAST_SHARE = 0.1


def unglared(ground: Ground, own: Ground, slab: Bools, shine: Bools) -> Ground:
    """The floor for small marks.

    own: with mottle thinned · slab: where cracks and joints lie · shine: of `shine_on`.
    """
    known = ground.known & ~shine
    if known.mean() < _LEAST_SHARE:
        known = ground.known
    seen = seen_of(known, ground.step_m, NEAREST_M) & ~slab
    shown = known & ~slab
    if not shown.any():
        return replace(own, seen=np.zeros_like(known))
    # A crescent runs on across a joint, so what is filled in there counts as floor.
    dark = filled(own.dark, shown, ground.step_m)
    return replace(
        own, dark=dark, flat=dark - blurred(dark, BACKGROUND_M / ground.step_m), seen=seen,
        known=known,
    )  # fmt: skip


def shine_on(ground: Ground) -> Bools:
    """What is bright and hangs on a hole of the sheet, or is too large for a mark, and its halo."""
    import cv2

    step_m = ground.step_m
    soft = blurred(ground.flat, 0.01 / step_m)
    told = ground.flat[::5, ::5][ground.known[::5, ::5]]
    if not told.size:
        return np.zeros(soft.shape, np.bool_)
    spread = max(float(np.median(np.abs(told - np.median(told)))) / 0.6745, 1e-4)
    bright = ((soft < -BRIGHT * spread) & ground.known).astype(np.uint8)
    hidden = _morphed((~ground.known).astype(np.uint8), cv2.MORPH_OPEN, THUMB_M / step_m)
    closed = _morphed(bright, cv2.MORPH_CLOSE, CLOSED_M / step_m)
    count, label, figures, _ = cv2.connectedComponentsWithStats(closed, connectivity=8)
    beside = _grown(hidden, TOUCHES_M / step_m) > 0
    bad = np.bincount(label[beside], minlength=count) > 0
    bad |= figures[:, cv2.CC_STAT_AREA] * step_m**2 > LARGEST_M2
    bad[0] = False
    core = bad[label].astype(np.uint8)
    halo = (_grown(core | hidden, HALO_M / step_m) > 0) & (soft < -HALO * spread)
    rest = _morphed(halo.astype(np.uint8), cv2.MORPH_OPEN, 0.008 / step_m)
    return np.asarray(_grown(core | rest, GROWN_M / step_m) > 0)


Bytes = NDArray[np.uint8]


def _grown(of: Bytes, points: float) -> Bytes:
    import cv2

    return np.asarray(cv2.dilate(of, _disc(points)), np.uint8)


def _morphed(of: Bytes, how: int, points: float) -> Bytes:
    import cv2

    return np.asarray(cv2.morphologyEx(of, how, _disc(points)), np.uint8)


def _disc(points: float) -> Bytes:
    import cv2

    reach = round(points)
    size = (2 * reach + 1, 2 * reach + 1)
    return np.asarray(cv2.getStructuringElement(cv2.MORPH_ELLIPSE, size), np.uint8)
