"""The walls of a flattened sheet as one solid mask, whichever way they are drawn.

Filled walls are what is left when pens are opened away. Walls of two lines are the long narrow
spaces between lines, filled. Walls of one line have no body and are told by neither.
"""

from __future__ import annotations

from typing import Literal

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass
from farwall.readers.photo.light import THIN_INK, Even, Mask, ink_level, inked

_FILLED_SHARE = 0.2
"""Of all ink, that a pen does not reach: walls are filled above this. Rank: guess."""
_LEAST_LONG = 2.5
_FAINT_PX = 2.0
_BREADTH_SHARE = 0.02
"""No wall is drawn broader than this share of the sheet, but a filled one. Rank: guess."""
_FRAME_SHARE = 0.8


@dataclass(frozen=True)
class Solid:
    """`mask` of the walls, how deep they are and how wide the pen is [px], and the cut of light.

    `style` says where a wall's face lies: at the edge of ink, or in the middle of a line.
    """

    mask: Mask
    style: Literal["filled", "double", "single"]
    deep_px: float
    pen_px: float
    cut: float


def find_solid(even: Even) -> Solid:
    """The walls of a sheet whose light is even and whose lines are level."""
    ink = without_frame(inked(even, 0.6))
    pen = _pen_px(ink)
    thick = _opened(ink, 2.5 * pen)
    if thick.sum() > _FILLED_SHARE * max(1, int(ink.sum())):
        return _filled(even, thick, pen)
    fine = without_frame(inked(even, THIN_INK))
    between, deep = _narrow(fine)
    if deep > 0:
        reach = round(pen + 1) * 2 + 1
        body = _dilated(between, reach) & (fine | between)
        mask = _opened(body, max(3.0, 0.8 * deep))
        return Solid(mask, "double", deep + pen, pen, 0.6)
    # On a large sheet pens are fainter than a pixel, and what looked like the pen was the wall.
    thick = _opened(ink, 2.5 * _FAINT_PX)
    if thick.sum() > _FILLED_SHARE * max(1, int(ink.sum())):
        return _filled(even, thick, _FAINT_PX)
    return Solid(ink, "single", 0.0, pen, 0.6)


def _filled(even: Even, thick: Mask, pen: float) -> Solid:
    deep = _deep_px(thick)
    level = ink_level(even, _opened(thick, 0.6 * deep))
    cut = (1 + level) / 2
    mask = _opened(inked(even, cut), max(3.0, 0.55 * deep))
    return Solid(without_frame(mask), "filled", deep, pen, cut)


def without_frame(ink: Mask) -> Mask:
    """The ink without what runs round nearly the whole sheet or hangs on its edge."""
    import cv2

    high, wide = ink.shape
    count, labels, stats, _ = cv2.connectedComponentsWithStats(ink, connectivity=8)
    away = np.zeros(count, bool)
    for k in range(1, count):
        x, y, w, h = (int(v) for v in stats[k][:4])
        around = w > _FRAME_SHARE * wide and h > _FRAME_SHARE * high
        edge = x <= 1 or y <= 1 or x + w >= wide - 1 or y + h >= high - 1
        away[k] = around or edge
    if not away.any():
        return ink
    kept = ink.copy()
    kept[away[labels]] = 0
    return kept


def _pen_px(ink: Mask) -> float:
    """How wide most thin lines are: a low quantile of the runs of ink along rows."""
    runs = np.concatenate([_runs(ink), _runs(np.ascontiguousarray(ink.T))])
    runs = runs[runs > 1]
    return float(np.clip(np.quantile(runs, 0.2), 2.0, 12.0)) if len(runs) else 2.0


def _runs(ink: Mask) -> npt.NDArray[np.int64]:
    edges = np.diff(np.pad(ink, ((0, 0), (1, 1))).astype(np.int8), axis=1)
    starts, ends = np.flatnonzero(edges == 1), np.flatnonzero(edges == -1)
    return np.asarray(ends - starts)


def _deep_px(thick: Mask) -> float:
    """How deep walls are: the middle of the runs across them, by the ink that they hold."""
    runs = np.sort(np.concatenate([_runs(thick), _runs(np.ascontiguousarray(thick.T))]))
    short = runs[: max(1, int(0.9 * len(runs)))]
    return float(np.median(short)) if len(short) else 0.0


def _narrow(ink: Mask) -> tuple[Mask, float]:
    """The long narrow spaces between lines, and how broad most of them are; 0 where none is."""
    import cv2

    space = 1 - ink
    far = cv2.distanceTransform(space, cv2.DIST_L2, 3)
    count, labels, stats, _ = cv2.connectedComponentsWithStats(space, connectivity=4)
    far = np.minimum(far, float(max(ink.shape)))  # a picture without ink has no nearest line
    widest = np.zeros(count)
    np.maximum.at(widest, np.asarray(labels, np.int64).ravel(), far.ravel())
    breadth, area = 2 * widest - 1, stats[:, cv2.CC_STAT_AREA].astype(np.float64)
    long = area / np.maximum(breadth, 1.0)
    most = _BREADTH_SHARE * max(ink.shape)
    fits = (
        (breadth >= 3)
        & (breadth <= most)
        & (long >= _LEAST_LONG * breadth)
        & (long > 0.01 * max(ink.shape))
    )
    fits[0] = False
    if not fits.any():
        return np.zeros_like(ink), 0.0
    order = np.argsort(breadth[fits])
    run = np.cumsum(long[fits][order])
    if run[-1] < 0.5 * max(ink.shape):
        return np.zeros_like(ink), 0.0
    deep = float(breadth[fits][order][np.searchsorted(run, run[-1] / 2)])
    walls = fits & (breadth > 0.4 * deep) & (breadth < 2.2 * deep)
    return walls[labels].astype(np.uint8), deep


def _opened(mask: Mask, side: float) -> Mask:
    import cv2

    k = max(2, round(side))
    return np.asarray(cv2.morphologyEx(mask, cv2.MORPH_OPEN, np.ones((k, k), np.uint8)), np.uint8)


def _dilated(mask: Mask, side: int) -> Mask:
    import cv2

    return np.asarray(cv2.dilate(mask, np.ones((side, side), np.uint8)), np.uint8)
