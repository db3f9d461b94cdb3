"""Areas on the floor that lie lighter or darker: outlines along which the floor changes throughout.

Cut the floor at a level and look at the outlines: mottle changes fast here and slowly there, a mark
changes all the way round [desolneux-2001]. An outline is weighed by its mean steepness against that
of the floor, times the root of how many places of it are independent.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools, Ground, blurred
from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

SOFT_M = (0.012, 0.024)
LEVELS = tuple(float(level) for level in np.arange(0.0, 4.3, 0.33))
_LOCAL_M = 0.5
_HELD = 4.0
LEAST_M2, MOST_M2 = 0.0012, 1.2
_USUAL = {0.012: 3.3, 0.024: 2.5}
_MOST = 24
LEAST_WEIGHT = 0.5


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
        null = _largest(mottle, ground, soft_m)
        usual = (max(null, 0.5 * _USUAL[soft_m]) * _USUAL[soft_m]) ** 0.5
        found += [
            Area(a.row, a.column, a.inside, a.sign, a.over / usual, a.steep, a.level, soft_m)
            for a in _sought(ground.flat, ground, soft_m, least * usual, _MOST)
        ]
    surest = sorted(found, key=lambda area: (-area.over, area.row, area.column))
    return _apart(surest, len(surest))


def _largest(mottle: Floats32, ground: Ground, soft_m: float) -> float:
    """The largest weight in mottle; 0 where nothing has one."""
    weights = [
        found[1]
        for _, _, mask, cut in _levels(mottle, ground, soft_m)
        if (found := next(_pieces(mask, cut, LEAST_WEIGHT), None)) is not None
    ]
    return max(weights, default=0.0)


def _sought(flat: Floats32, ground: Ground, soft_m: float, least: float, most: int) -> list[Area]:
    rough = [
        Area(*box, sign, weight, mean, level, soft_m)
        for sign, level, mask, cut in _levels(flat, ground, soft_m)
        for box, weight, mean in _pieces(mask, cut, max(least, LEAST_WEIGHT))
    ]
    rough.sort(key=lambda area: -area.over)
    return _apart(rough[:400], most)


def _levels(
    flat: Floats32, ground: Ground, soft_m: float
) -> Iterator[tuple[int, float, Bools, _Cut]]:
    """What lies beyond each level, darker and lighter."""
    import cv2

    soft = blurred(flat, soft_m / ground.step_m)
    seen = ground.seen
    level0 = float(np.median(soft[seen]))
    spread = float(np.percentile(abs(soft[seen] - level0), 68)) or 1.0
    near_hidden = cv2.dilate((~seen).astype(np.uint8), np.ones((3, 3), np.uint8)) > 0
    cut = _Cut(_steepness(soft, ground.step_m).ravel(), near_hidden.ravel(), ground.step_m, soft_m)
    for sign in (1, -1):
        lies = sign * (soft - level0) / spread
        for level in LEVELS:
            yield sign, level, lies > level, cut


def _steepness(soft: Floats32, step_m: float) -> Floats32:
    import cv2

    x = cv2.Sobel(soft, cv2.CV_32F, 1, 0, ksize=3, borderType=cv2.BORDER_REFLECT)
    y = cv2.Sobel(soft, cv2.CV_32F, 0, 1, ksize=3, borderType=cv2.BORDER_REFLECT)
    size = np.hypot(x, y).astype(np.float32)
    held = np.minimum(size, 3 * size.mean()) ** 2
    near = np.sqrt(np.maximum(blurred(held, _LOCAL_M / step_m), 1e-14))
    return np.asarray(np.minimum(size / np.maximum(near, 0.5 * near.mean()), _HELD), np.float32)


Box = tuple[int, int, Bools]


@dataclass(frozen=True)
class _Cut:
    """What pieces of any level are weighed by; place by place in a row."""

    steep: Floats32
    near_hidden: Bools
    step_m: float
    soft_m: float


def _pieces(mask: Bools, by: _Cut, least: float) -> Iterator[tuple[Box, float, float]]:
    """Pieces of a mask of at least that weight, the weightiest first, and how steep their rim is.

    Only what weighs enough is measured: how large it is, and where.
    """
    import cv2

    part = mask.astype(np.uint8)
    # Half the width takes half the time, and is wide enough where the picture is soft.
    kind = cv2.CV_16U if by.soft_m >= 2 * by.step_m else cv2.CV_32S
    count, label = cv2.connectedComponents(part, connectivity=4, ltype=kind)
    core = np.asarray(cv2.erode(part, np.ones((3, 3), np.uint8), borderValue=0), np.uint8)
    rim = np.flatnonzero((part ^ core).view(np.bool_))
    own = label.ravel()[rim]
    points = np.bincount(own, minlength=count)
    once = np.maximum(points, 1)
    mean = np.bincount(own, weights=by.steep[rim], minlength=count) / once
    lost = np.bincount(own, weights=by.near_hidden[rim], minlength=count) / once
    weight = (mean - 1.0) * np.sqrt(points * by.step_m * 1.1 / (4 * by.soft_m))
    good = (lost < 0.04) & (weight > LEAST_WEIGHT) & (weight >= least)
    good[0] = False
    mine = good[own]
    own, rows, columns = own[mine], *np.divmod(rim[mine], mask.shape[1])
    order = np.argsort(own, kind="stable")
    own, rows, columns = own[order], rows[order], columns[order]
    numbers = np.flatnonzero(good)
    starts = np.searchsorted(own, numbers)
    ends = np.append(starts[1:], len(own))
    for at in np.argsort(-weight[numbers], kind="stable"):
        n, its = numbers[at], slice(starts[at], ends[at])
        y, x = int(rows[its].min()), int(columns[its].min())
        low, right = int(rows[its].max()) + 1, int(columns[its].max()) + 1
        inside = label[y:low, x:right] == n
        if LEAST_M2 < np.count_nonzero(inside) * by.step_m**2 < MOST_M2:
            yield (y, x, inside), float(weight[n]), float(mean[n])


def _apart(areas: list[Area], most: int) -> list[Area]:
    """Of areas that lie in one another only the surest, no more than so many."""
    kept: list[Area] = []
    for area in areas:
        if all(_shared(area, other) < 0.3 for other in kept):
            kept.append(area)
        if len(kept) == most:
            break
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
