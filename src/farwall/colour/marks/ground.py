"""The floor as the finder works on it: how dark it is, flattened, its holes filled.

What stain does multiplies: a coat takes a share of the light (Beer and Lambert). So the work is
done on -ln Y, where a mark adds the same amount on a light floor and on a dark one, and where a
brighter photo only shifts all. Holes are filled from beside them by blurring what is seen and
dividing by the blurred mask [knutsson-1993], so that no edge of a hole looks like an edge of stain.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.nouns import Floats32, Sheet
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

Bools = NDArray[np.bool_]

FINEST_M = 0.005
"""Side of a working point at the finest. A guess: a lap line or the edge of tape is 1 cm wide."""
MOST_POINTS = 600_000
"""A larger floor is worked on with coarser points; keeps the time in hand. Measured here."""
LEAST_SIDE_M = 0.5
LEAST_POINTS = 96
BACKGROUND_M = 0.35
"""Width of the blur that is taken as the floor itself. A guess: wider than most marks."""
HAND_M = 0.1
"""Nothing is proposed nearer than a hand to what glare hides: there its rim looks like an edge."""
RIM_M, RIM_SHARE = 0.08, 0.05
"""Nor so near to the rim of the sheet, where the foot of a wall lies and clicks miss it."""


@dataclass(frozen=True)
class Ground:
    """dark: -ln Y, holes filled · flat: the same less its wide blur · seen: where a mark may be
    proposed · step_m: side of a point · known: where the sheet shows floor. All (rows, columns).
    """

    dark: Floats32
    flat: Floats32
    seen: Bools
    step_m: float
    known: Bools


def ground_of(sheet: Sheet) -> Ground:
    """The sheet made ready. `Refused` where it is too small, empty or not a picture."""
    _check(sheet)
    import cv2

    rows, columns = sheet.floor.shape
    step_m = max(sheet.m_per_px, FINEST_M, sheet.m_per_px * (rows * columns / MOST_POINTS) ** 0.5)
    light = np.ascontiguousarray(sheet.lab[..., 0], dtype=np.float32)
    floor = sheet.floor & np.isfinite(light)
    light = np.where(floor, light, 0).astype(np.float32)
    size = (
        max(round(columns * sheet.m_per_px / step_m), 1),
        max(round(rows * sheet.m_per_px / step_m), 1),
    )
    share = cv2.resize(floor.astype(np.float32), size, interpolation=cv2.INTER_AREA)
    known = np.asarray(share > 0.75)
    small = cv2.resize(light, size, interpolation=cv2.INTER_AREA) / np.maximum(share, 1e-6)
    luminance = np.maximum((np.clip(small, 0, 100) + 16) / 116, 0.15) ** 3
    dark = filled((-np.log(luminance)).astype(np.float32), known, step_m)
    return Ground(
        dark, dark - blurred(dark, BACKGROUND_M / step_m), seen_of(known, step_m, HAND_M), step_m,
        known,
    )  # fmt: skip


def blurred(of: Floats32, sigma: float) -> Floats32:
    """Blurred by a Gaussian of `sigma` points; a wide one is done on a smaller picture."""
    import cv2

    shrink = 2 ** max(int(np.log2(max(sigma / 4, 1))), 0)
    if shrink > 1:
        rows, columns = of.shape[:2]
        size = (max(-(-columns // shrink), 1), max(-(-rows // shrink), 1))
        small = cv2.resize(of, size, interpolation=cv2.INTER_AREA)
        wide = cv2.GaussianBlur(small, (0, 0), sigma / shrink, borderType=cv2.BORDER_REFLECT)
        back = cv2.resize(wide, (columns, rows), interpolation=cv2.INTER_LINEAR)
        return np.asarray(back, dtype=np.float32)
    out = cv2.GaussianBlur(of, (0, 0), sigma, borderType=cv2.BORDER_REFLECT)
    return np.asarray(out, dtype=np.float32)


def _check(sheet: Sheet) -> None:
    wrong = []
    if sheet.lab.ndim != 3 or sheet.lab.shape[2] != 3 or sheet.lab.shape[:2] != sheet.floor.shape:
        wrong.append(Mistake(
            "sheet", "picture and mask of the floor do not fit.", "Lay the photo on the plan anew."
        ))  # fmt: skip
    elif not (np.isfinite(sheet.m_per_px) and sheet.m_per_px > 0):
        wrong.append(Mistake("sheet", "its scale is not known.", "Mark two places on the plan."))
    else:
        sides = min(sheet.floor.shape)
        if sides * sheet.m_per_px < LEAST_SIDE_M or sides < LEAST_POINTS:
            wrong.append(Mistake(
                "sheet",
                f"it shows under {LEAST_SIDE_M} m or {LEAST_POINTS} points of floor a side.",
                "Stand further off, or send the photo in its full size.",
            ))  # fmt: skip
        if int(sheet.floor.sum()) < LEAST_POINTS**2 // 2:
            wrong.append(Mistake(
                "sheet", "almost no floor is seen.", "Shoot again without glare."
            ))  # fmt: skip
    if wrong:
        raise Refused(*wrong, about="the look at the mopped floor")


def filled(of: Floats32, known: Bools, step_m: float) -> Floats32:
    """Holes filled from beside them, from near to far. of: one picture, or up to four as layers."""
    if known.all():
        return of
    layers = of.reshape(*known.shape, -1)
    only, have = np.where(known[..., None], layers, 0).astype(np.float32), known.copy()
    filled = only.copy()
    weight = known.astype(np.float32)
    sigma = 0.02 / step_m
    while not have.all() and sigma < 4 * max(known.shape):
        share = blurred(weight, sigma)
        near = ~have & (share > 0.05)
        told = blurred(only, sigma).reshape(layers.shape)
        filled[near] = told[near] / np.maximum(share[near], 1e-6)[:, None]
        have |= near
        sigma *= 2
    filled[~have] = np.median(layers[known], axis=0)
    return filled.reshape(of.shape)


def seen_of(known: Bools, step_m: float, hand_m: float) -> Bools:
    """Where a mark may be: so far off what hides the floor, and off the walls' feet."""
    import cv2

    reach = round(hand_m / step_m)
    disc = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * reach + 1, 2 * reach + 1))
    small = round(0.02 / step_m)
    speck = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * small + 1, 2 * small + 1))
    # A lone dark speck in the mask is not glare; what is wider than a thumb is.
    hidden = cv2.morphologyEx((~known).astype(np.uint8), cv2.MORPH_OPEN, speck)
    seen = np.asarray((cv2.dilate(hidden, disc) == 0) & known)
    rows, columns = known.shape
    rim = round(min(RIM_M / step_m, RIM_SHARE * min(rows, columns)))
    inner = np.zeros_like(seen)
    inner[rim : rows - rim, rim : columns - rim] = True
    return np.asarray(seen & inner, dtype=np.bool_)
