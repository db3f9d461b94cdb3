"""Means over long boxes all over a floor, from one table of sums: any width costs the same."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools
from farwall.colour.marks.nouns import Floats32

SPAN_M = 0.5
"""How long a box is."""
_MOST_WIDE_M, _EVERY = 0.6, 5


class Boxes:
    """Means over boxes round every fifth point of a floor that is seen; beyond its rim mirrored."""

    def __init__(self, dark: Floats32, seen: Bools, step_m: float) -> None:
        """dark: -ln Y, holes filled · seen: where it was seen · step_m: side of its points."""
        import cv2

        self.step_m, self._known = step_m, seen[::_EVERY, ::_EVERY]
        self._pad = round(max(_MOST_WIDE_M, SPAN_M) / step_m) // 2 + 2
        wider = cv2.copyMakeBorder(
            np.ascontiguousarray(dark), *(self._pad,) * 4, borderType=cv2.BORDER_REFLECT
        )
        self._total = cv2.integral(wider, sdepth=cv2.CV_64F)

    def means(self, wide: int) -> NDArray[np.float64]:
        """Half a metre of rows, so many columns. wide: odd."""
        long = round(SPAN_M / self.step_m)
        (top, low), (left, right) = (
            (self._pad - points // 2, self._pad - points // 2 + points) for points in (long, wide)
        )
        rows, columns = (_EVERY * n for n in self._known.shape)
        corners = [
            self._total[row : row + rows : _EVERY, column : column + columns : _EVERY][
                : self._known.shape[0], : self._known.shape[1]
            ]
            for row in (top, low) for column in (left, right)
        ]  # fmt: skip
        total = corners[3] - corners[2] - corners[1] + corners[0]
        return np.asarray(total[self._known] / (long * wide), np.float64)
