"""A photo looked at from above: each cell of the floor takes the mean of what it covers.

Near the camera a cell covers many points of the photo, far from it less than one. So the photo is
made smaller by halves, and a cell takes from the two sizes between which its own lies.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import numpy.typing as npt

Picture = npt.NDArray[Any]
Floats32 = npt.NDArray[np.float32]
MOST_LEVELS = 6


def flattened(picture: Picture, at: tuple[Floats32, Floats32], px_per_cell: Floats32) -> Floats32:
    """The picture (rows, columns, channels) where `at` points, (cells, cells, channels).

    at: x and y in the picture of each cell's middle [px from the outer corner of the first point] ·
    px_per_cell: side of a cell there, in points of the picture.
    """
    import cv2

    level = np.log2(np.maximum(px_per_cell, 1.0))
    deepest = min(MOST_LEVELS, int(np.ceil(float(level.max(initial=0.0)))))
    level = np.minimum(level, deepest)
    shape = at[0].shape + picture.shape[2:]
    found = np.zeros(shape, np.float32)
    small, shrunk = picture, 1.0
    for k in range(deepest + 1):
        share = np.maximum(0.0, 1.0 - np.abs(level - k)).astype(np.float32)
        part = _around(share > 0)
        if part is not None:
            x, y = (one[part] / shrunk - 0.5 for one in at)
            seen = cv2.remap(small, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
            weight = share[part]
            found[part] += seen * (weight[..., None] if picture.ndim == 3 else weight)
        if k < deepest:
            small, shrunk = cv2.pyrDown(small), shrunk * 2
    return found


def _around(mask: npt.NDArray[np.bool_]) -> tuple[slice, slice] | None:
    rows, columns = np.flatnonzero(mask.any(axis=1)), np.flatnonzero(mask.any(axis=0))
    if not len(rows):
        return None
    return slice(int(rows[0]), int(rows[-1]) + 1), slice(int(columns[0]), int(columns[-1]) + 1)


def drawn(
    rings: Sequence[Sequence[tuple[float, float]]], shape: tuple[int, int],
    corner: tuple[float, float], m_per_px: float,
) -> npt.NDArray[np.bool_]:  # fmt: skip
    """Where a polygon with holes covers cells; `corner`: left and top of the first cell. [m]"""
    import cv2

    found = np.zeros(shape, np.uint8)
    fine = 16  # sixteenths of a cell: cv2 counts the middle of the first cell as zero
    points = [
        np.round(
            ((np.array(ring) - corner) * (1 / m_per_px, -1 / m_per_px) - 0.5) * fine
        ).astype(np.int32)
        for ring in rings
    ]  # fmt: skip
    cv2.fillPoly(found, points, (1,), lineType=cv2.LINE_8, shift=4)
    return found.astype(bool)
