"""Boxes of shares: of each part of a floor from how much to how much of it may be wet."""

from __future__ import annotations

from itertools import product

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

SLACK = 5e-6
"""By so much one box may miss another and still fit: rows are told to a millionth."""
_HAIR = 1e-9
_WIDER = 1.01


@dataclass(frozen=True)
class Boxes:
    """At one moment, what may be wet: of each part from `low` to `high`, a row a box, and of each
    rectangle from `least` to `most`, as far as its parts go. [m2]"""

    low: Floats
    high: Floats
    least: Floats
    most: Floats

    def __len__(self) -> int:
        return len(self.low)

    def those(self, kept: Bools) -> Boxes:
        """Some of them."""
        return Boxes(self.low[kept], self.high[kept], self.least[kept], self.most[kept])

    def halved(self, side_m2: float, wet_m2: float, other_m2: float) -> tuple[Floats, Floats]:
        """From how much to how much of each part, cut in halves along every part that is wider than
        a side; those left out that cannot hold while so much floor is wet, `other_m2` of it in no
        part."""
        low, high = self.low, self.high
        for part in range(low.shape[1]):
            wide = high[:, part] - low[:, part] > side_m2 * _WIDER
            middle = (low[wide, part] + high[wide, part]) / 2
            upper, lower = low[wide].copy(), high.copy()
            upper[:, part] = middle
            lower[wide, part] = middle
            low, high = np.concatenate([low, upper]), np.concatenate([lower, high[wide]])
            kept = may_hold(low, high, wet_m2, other_m2)
            low, high = low[kept], high[kept]
        return low, high


def boxes_of(area_m2: Floats, side_m2: float) -> tuple[Floats, Floats]:
    """Boxes of about so many square metres a part, two at least, that cover every share of each."""
    ends = [np.linspace(0.0, area, max(2, int(np.ceil(area / side_m2))) + 1) for area in area_m2]
    low = np.array(list(product(*(one[:-1] for one in ends))))
    high = np.array(list(product(*(one[1:] for one in ends))))
    return low, high


def may_hold(low: Floats, high: Floats, wet_m2: float, other_m2: float) -> Bools:
    """Which boxes may hold while so much floor is wet, up to `other_m2` of it in no part."""
    told = (low.sum(axis=1) <= wet_m2 + _HAIR) & (high.sum(axis=1) + other_m2 >= wet_m2 - _HAIR)
    return np.asarray(told)


def above_any(low: Floats, rows: Floats) -> Bools:
    """Which rows have some row of `low` nowhere above them, but for a hair."""
    low = np.unique(low.round(6), axis=0)
    low = low[np.argsort(low.sum(axis=1), kind="stable")]
    rows = rows + SLACK
    found = np.zeros(len(rows), dtype=bool)
    left = np.arange(len(rows))
    for one in low:
        if not len(left):
            break
        mine = left
        for column, value in enumerate(one):
            mine = mine[rows[mine, column] >= value]
            if not len(mine):
                break
        if len(mine):
            found[mine] = True
            left = left[~found[left]]
    return found
