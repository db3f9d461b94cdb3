"""Areas on the floor that lie lighter or darker: outlines along which the floor changes throughout.

Cut the floor at a level and look at the outlines: mottle changes fast here and slowly there, a mark
changes all the way round [desolneux-2001]. An outline is weighed by its mean steepness against that
of the floor, times the root of how many places of it are independent.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32

SOFT_M = (0.012, 0.024)
LEVELS = tuple(float(level) for level in np.arange(0.0, 4.3, 0.33))
_LOCAL_M = 0.5
_HELD = 4.0
LEAST_M2, MOST_M2 = 0.0012, 1.2
_USUAL = {0.012: 3.3, 0.024: 2.5}
_MOST = 24


@dataclass(frozen=True)
class Area:
    """inside: a picture of its box, whose corner is (row, column) · sign: 1 darker, -1 lighter ·
    over: its weight by the largest in mottle · steep: mean steepness of its outline by the floor's.
    """

    row: int
    column: int
    inside: Bools
    sign: int
    over: float
    steep: float
    level: float
    soft_m: float


def areas_of(ground: Ground, mottle: Floats32, *, least: float) -> list[Area]:
    """Areas whose weight is at least `least` times the largest in `mottle`, the surest first."""
    found: list[Area] = []
    for soft_m in SOFT_M:
        null = max((area.over for area in _sought(mottle, ground, soft_m, 0.5, 1)), default=0.0)
        usual = (max(null, 0.5 * _USUAL[soft_m]) * _USUAL[soft_m]) ** 0.5
        found += [
            Area(a.row, a.column, a.inside, a.sign, a.over / usual, a.steep, a.level, soft_m)
            for a in _sought(ground.flat, ground, soft_m, least * usual, _MOST)
        ]
    return _apart(sorted(found, key=lambda area: (-area.over, area.row, area.column)))


def _sought(flat: Floats32, ground: Ground, soft_m: float, least: float, most: int) -> list[Area]:
    import cv2

    soft = blurred(flat, soft_m / ground.step_m)
    steep = _steepness(soft, ground.step_m)
    seen, step_m = ground.seen, ground.step_m
    level0 = float(np.median(soft[seen]))
    spread = float(np.percentile(abs(soft[seen] - level0), 68)) or 1.0
    near_hidden = cv2.dilate((~seen).astype(np.uint8), np.ones((3, 3), np.uint8)) > 0
    rough: list[tuple[float, Area]] = []
    for sign in (1, -1):
        lies = sign * (soft - level0) / spread
        for level in LEVELS:
            rough += [
                (weight, Area(*box, sign, weight, mean, level, soft_m))
                for box, weight, mean in _cut(lies > level, steep, near_hidden, step_m, soft_m)
                if weight >= least
            ]
    rough.sort(key=lambda pair: -pair[0])
    return _apart([area for _, area in rough[:400]])[:most]


def _steepness(soft: Floats32, step_m: float) -> Floats32:
    import cv2

    x = cv2.Sobel(soft, cv2.CV_32F, 1, 0, ksize=3, borderType=cv2.BORDER_REFLECT)
    y = cv2.Sobel(soft, cv2.CV_32F, 0, 1, ksize=3, borderType=cv2.BORDER_REFLECT)
    size = np.hypot(x, y).astype(np.float32)
    held = np.minimum(size, 3 * size.mean()) ** 2
    near = np.sqrt(np.maximum(blurred(held, _LOCAL_M / step_m), 1e-14))
    return np.asarray(np.minimum(size / np.maximum(near, 0.5 * near.mean()), _HELD), np.float32)


Box = tuple[int, int, Bools]


def _cut(
    mask: Bools, steep: Floats32, near_hidden: Bools, step_m: float, soft_m: float
) -> list[tuple[Box, float, float]]:
    """Pieces of a mask, each with its weight and the mean steepness of its rim."""
    import cv2

    part = mask.astype(np.uint8)
    count, label, stats, _ = cv2.connectedComponentsWithStats(part, connectivity=4)
    rim = (part - cv2.erode(part, np.ones((3, 3), np.uint8), borderValue=0)) > 0
    own = label[rim]
    points = np.bincount(own, minlength=count)
    mean = np.bincount(own, weights=steep[rim], minlength=count) / np.maximum(points, 1)
    lost = np.bincount(own, weights=near_hidden[rim], minlength=count) / np.maximum(points, 1)
    square_m2 = stats[:, cv2.CC_STAT_AREA] * step_m**2
    weight = (mean - 1.0) * np.sqrt(points * step_m * 1.1 / (4 * soft_m))
    good = (square_m2 > LEAST_M2) & (square_m2 < MOST_M2) & (lost < 0.04) & (weight > 0.5)
    good[0] = False
    out = []
    for n in np.flatnonzero(good):
        x, y, w, h = (int(v) for v in stats[n, :4])
        box = (y, x, label[y : y + h, x : x + w] == n)
        out.append((box, float(weight[n]), float(mean[n])))
    return out


def _apart(areas: list[Area]) -> list[Area]:
    """Of areas that lie in one another only the surest."""
    kept: list[Area] = []
    for area in areas:
        if all(_shared(area, other) < 0.3 for other in kept):
            kept.append(area)
    return kept


def _shared(one: Area, other: Area) -> float:
    """What both cover, as a share of the smaller."""
    top, left = max(one.row, other.row), max(one.column, other.column)
    low = min(one.row + one.inside.shape[0], other.row + other.inside.shape[0])
    right = min(one.column + one.inside.shape[1], other.column + other.inside.shape[1])
    if low <= top or right <= left:
        return 0.0

    def piece(of: Area) -> NDArray[np.bool_]:
        return of.inside[top - of.row : low - of.row, left - of.column : right - of.column]

    both = int((piece(one) & piece(other)).sum())
    return both / max(min(int(one.inside.sum()), int(other.inside.sum())), 1)
