"""What is not known of a day's fumes, each with its range, rank and source; and the cases to try.

One case has everything at its likely value; each unknown is then tried alone at its two ends.
Most of it nobody has measured for stain on a slab: those are guesses, and wide ones.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import numpy.typing as npt

from farwall.evidence import Rank
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Doubt:
    """An unknown: its key, its ends in its own unit, and what it rests on."""

    key: str
    low: float
    likely: float
    high: float
    unit: str
    rank: Rank
    source: str


LIME_HALF_MIN = Doubt("lime", 2.0, 6.0, 20.0, "min", Rank.GUESS, "house-guess")
"""Minutes in which the lime of the slab eats half of the acid of the film: it fizzes for minutes,
quickly on an open slab, slowly on a burnished or old one. Nobody measured it on a floor."""
SALTS_COUNT = Doubt("salts", 0.0, 0.5, 1.0, "", Rank.GUESS, "house-guess")
"""Share of the metals' chloride that presses acid out: copper and iron bind a part of theirs."""
MIST = Doubt("mist", 0.0003, 0.002, 0.01, "", Rank.GUESS, "house-guess")
"""Share of what is sprayed that stays in the air: a coarse fan at low pressure drops nearly all."""
OPEN = Doubt("open-time", -1.0, 0.0, 1.0, "", Rank.GUESS, "house-guess")
"""Where between its ends the open time lies; the film counts as drunk when the sheen goes."""
STRENGTH = Doubt("strength", -1.0, 0.0, 1.0, "", Rank.GUESS, "stain-sheets")
"""Where between its ends the strength of the stain lies."""
TRANSFER = Doubt("transfer", 0.6, 1.0, 1.4, "", Rank.PUBLISHED, "hover-2020")
"""True evaporation may differ from the estimate by 40 %, and the acid's with it."""
AIR = Doubt("air", 1 / 3, 1.0, 3.0, "", Rank.GUESS, "house-guess")
"""Air changes against the reckoned ones."""
DOORS = Doubt("doors", 0.05, 0.3, 1.5, "K", Rank.GUESS, "house-guess")
"""How much warmer one room is than the next: it drives air through open doors."""
BY_PERSON = Doubt("by-person", 0.5, 1.0, 2.0, "", Rank.GUESS, "house-guess")
"""Air that passes by the one who sprays, against half of the free surface times its speed."""

DOUBTS = (STRENGTH, LIME_HALF_MIN, SALTS_COUNT, OPEN, MIST, TRANSFER, AIR, DOORS, BY_PERSON)


@dataclass(frozen=True)
class Cases:
    """Values of every unknown by case: case 0 is likely, then low and high of each in turn.

    `extra` cases follow, likely in everything; their air is set by who asked for them.
    """

    values: Mapping[str, Array]
    extra: int

    def __getitem__(self, doubt: Doubt) -> Array:
        return self.values[doubt.key]

    def __len__(self) -> int:
        return 1 + 2 * len(DOUBTS) + self.extra

    @property
    def first_extra(self) -> int:
        """Index of the first extra case."""
        return 1 + 2 * len(DOUBTS)


def cases(extra: int = 0) -> Cases:
    """The cases of all unknowns."""
    count = 1 + 2 * len(DOUBTS) + extra
    values = {doubt.key: np.full(count, doubt.likely) for doubt in DOUBTS}
    for n, doubt in enumerate(DOUBTS):
        values[doubt.key][1 + 2 * n] = doubt.low
        values[doubt.key][2 + 2 * n] = doubt.high
    return Cases(values, extra)


def ends(found: Array) -> tuple[Array, Array, Array]:
    """Low, likely and high of a figure, from its cases (first axis).

    How far each unknown moves the logarithm up and down, added in squares: as if they had nothing
    to do with one another (a guess).
    """
    known = np.log(np.maximum(found[: 1 + 2 * len(DOUBTS)], 1e-12))
    pairs = (known[1:] - known[0]).reshape(len(DOUBTS), 2, *known.shape[1:])
    up = np.sqrt((np.maximum(pairs.max(axis=1), 0.0) ** 2).sum(axis=0))
    down = np.sqrt((np.minimum(pairs.min(axis=1), 0.0) ** 2).sum(axis=0))
    likely: Array = found[0]
    return likely * np.exp(-down), likely, likely * np.exp(up)
