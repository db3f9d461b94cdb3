"""From points of the work to places on the plan, and how much lighter a mark is in L."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground
from farwall.colour.marks.nouns import Mark, Point, Ring, Sheet

Floats = NDArray[np.float64]
_MOST = 80


def spot(sheet: Sheet, ground: Ground, at: Floats) -> Point:
    """The place on the plan [m] of a row and column of the work."""
    scale = ground.step_m / sheet.m_per_px
    x, y = sheet.place(float(at[0]) * scale, float(at[1]) * scale)
    return round(x, 3), round(y, 3)


def ring_of(sheet: Sheet, ground: Ground, outline: Floats) -> Ring:
    """An outline on the plan, of no more than 80 points or so."""
    thin = outline[:: max(len(outline) // _MOST, 1)]
    return tuple(spot(sheet, ground, at) for at in thin)


def band(points: Floats, half: float) -> Floats:
    """A band along a line, so many points wide to each side, as one outline."""
    thin = points[:: max(len(points) // 40, 1)]
    ahead = np.gradient(thin, axis=0)
    long = np.maximum(np.hypot(ahead[:, 0], ahead[:, 1]), 1e-9)[:, None]
    aside = np.stack((ahead[:, 1], -ahead[:, 0]), axis=1) / long * half
    return np.concatenate((thin + aside, (thin - aside)[::-1]))


def disc(at: tuple[float, float], radius: float) -> Floats:
    """A round outline."""
    turn = np.arange(16) * math.pi / 8
    return np.stack((at[0] + radius * np.sin(turn), at[1] + radius * np.cos(turn)), axis=1)


def lighter_by(ground: Ground, outline: Floats) -> float:
    """L that the inside of an outline lies above the 5 cm around it; darker: below 0."""
    import cv2

    pad = round(0.05 / ground.step_m) + 1
    top, left = (int(n) - pad for n in np.floor(outline.min(axis=0)))
    low, right = (int(n) + pad for n in np.ceil(outline.max(axis=0)))
    top, left = max(top, 0), max(left, 0)
    dark = ground.dark[top : low + 1, left : right + 1]
    inside = np.zeros(dark.shape, dtype=np.uint8)
    drawn = np.floor(outline[:, ::-1] - [left, top]).astype(np.int32)
    cv2.fillPoly(inside, [drawn.reshape(-1, 1, 2)], 1)
    disc_ = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * pad - 1, 2 * pad - 1))
    around = (cv2.dilate(inside, disc_) > 0) & (inside == 0)
    if not inside.any() or not around.any():
        return 0.0
    within, beside = (float(np.median(dark[mask])) for mask in (inside > 0, around))
    return 116 * (math.exp(-within / 3) - math.exp(-beside / 3))


def covered(sheet: Sheet, ground: Ground, marks: Sequence[Mark], beside_m: float) -> Bools:
    """Where the marks lie on the ground, and so far beside them."""
    import cv2

    canvas = np.zeros(ground.seen.shape, np.uint8)
    thick = 2 * round(beside_m / ground.step_m) + 1
    for one in marks:
        ring = (np.array(one.outline) - [sheet.left_m, sheet.top_m]) * [1, -1] / ground.step_m
        points = ring.round().astype(np.int32).reshape(-1, 1, 2)
        cv2.fillPoly(canvas, [points], (1,))
        cv2.polylines(canvas, [points], isClosed=True, color=(1,), thickness=thick)
    return np.asarray(canvas > 0)
