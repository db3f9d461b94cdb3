"""What an area is like: how long, how wide, how bent, how closed, how much lighter."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.areas import Area
from farwall.colour.marks.ground import Bools, Ground
from farwall.nouns import dataclass

BESIDE_M = 0.05


@dataclass(frozen=True)
class Shape:
    """length_m and width_m of the area straightened out · box_m: sides of the narrowest box ·
    solid: share of its hull · closed: share of what its outer outline holds that is a hole ·
    bend: height of its middle over its chord, by the chord · darker: -ln Y over the floor beside,
    by the spread of that floor in `clear`.
    """

    length_m: float
    width_m: float
    box_m: tuple[float, float]
    area_m2: float
    solid: float
    closed: float
    bend: float
    darker: float
    clear: float
    even: float
    outline: NDArray[np.float64]


def shape_of(ground: Ground, area: Area) -> Shape:
    """The figures of an area; outline: rows and columns of its outer rim."""
    import cv2

    pad = round(BESIDE_M / ground.step_m) + 2
    inside = np.pad(area.inside, pad).astype(np.uint8)
    outlines, _ = cv2.findContours(inside, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    rim = max(outlines, key=len)
    full = np.zeros_like(inside)
    cv2.drawContours(full, [rim], -1, 1, -1)
    step = ground.step_m
    points = float(inside.sum())
    round_m = cv2.arcLength(rim, closed=True) * step
    area_m2 = points * step**2
    hull = cv2.contourArea(cv2.convexHull(rim)) + len(rim) / 2 + 1
    sides = sorted((side + 1) * step for side in cv2.minAreaRect(rim)[1])
    holes = 1 - points / max(float(full.sum()), 1.0)
    filled_m2 = float(full.sum()) * step**2
    half = round_m / 4
    width = half - np.sqrt(max(half**2 - min(filled_m2, half**2), 0.0))
    length = max(filled_m2 / max(width, step), sides[1])
    darker, clear, even = _contrast(ground, area, inside > 0, full > 0, pad)
    outline = rim[:, 0, ::-1].astype(np.float64) - pad + [area.row, area.column]
    return Shape(
        float(length), float(filled_m2 / length), (sides[1], sides[0]), area_m2,
        float(min(filled_m2 / step**2 / max(hull, 1.0), 1.0)), float(holes), _bend(full > 0),
        darker, clear, even, outline + 0.5,
    )  # fmt: skip


def _contrast(
    ground: Ground, area: Area, inside: Bools, full: Bools, pad: int
) -> tuple[float, float, float]:
    import cv2

    reach = round(BESIDE_M / ground.step_m)
    disc = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * reach + 1, 2 * reach + 1))
    ring = (cv2.dilate(full.astype(np.uint8), disc) > 0) & ~full
    rows, columns = ground.dark.shape
    row, column = area.row - pad, area.column - pad
    top, left = max(row, 0), max(column, 0)
    low, right = min(row + inside.shape[0], rows), min(column + inside.shape[1], columns)
    cut = (slice(top - row, low - row), slice(left - column, right - column))
    dark = ground.dark[top:low, left:right]
    within, beside = dark[inside[cut]], dark[ring[cut]]
    if not len(within) or not len(beside):
        return 0.0, 0.0, 1.0
    gap = float(np.median(within) - np.median(beside))
    spread = float(np.std(beside)) or 1e-6
    return gap, gap / spread, float(np.std(within)) / spread


def _bend(full: Bools) -> float:
    """How far the middle of the long side stands off its chord, by the chord."""
    at = np.argwhere(full).astype(np.float64)
    if len(at) < 8:
        return 0.0
    at -= at.mean(axis=0)
    _, vectors = np.linalg.eigh(at.T @ at)
    along, across = at @ vectors[:, 1], at @ vectors[:, 0]
    fit = np.polyfit(along, across, 2)
    chord = float(np.ptp(along)) + 1
    return float(abs(fit[0]) * chord / 4)
