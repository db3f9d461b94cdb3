"""The sealed look from the clean wet one, by samples that were seen in both states.

The clean wet look is near the sealed look and is not it [common-practice]. How far a sealer moves
it, samples that were looked at wet and then sealed say; before any, nothing is known but that the
two lie near one another.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

Lab = tuple[float, float, float]

NEAR = (2.5, 1.5, 2.0)
"""How far the sealed look may lie from the wet one in L, a, b, before a sample was sealed: one
standard deviation. A guess."""
PAIR = (0.9, 0.7, 0.8)
"""What two photos and two spots of sealer leave unsure in one pair. A guess."""
HAND = (0.6, 0.4, 0.5)
"""How a floor's sealing differs from the sample's: thickness, gloss. A guess."""


@dataclass(frozen=True)
class Sealing:
    """What sealing does to the clean wet look: likely shift in L, a, b, its spread for a floor.

    pairs: how many samples were seen in both states.
    """

    shift: Lab
    spread: Lab
    pairs: int

    def sealed(self, wet: Lab) -> Lab:
        """Likely sealed look."""
        return _moved(wet, self.shift, 1.0)

    def wet(self, sealed: Lab) -> Lab:
        """Likely clean wet look of what was seen sealed alone."""
        return _moved(sealed, self.shift, -1.0)


def sealing(pairs: Sequence[tuple[Lab, Lab]]) -> Sealing:
    """From pairs of a clean wet and a sealed look of the same sample; normal beliefs add up."""
    prior, noise, hand = np.square(NEAR), np.square(PAIR), np.square(HAND)
    moved = np.array([np.subtract(sealed, wet) for wet, sealed in pairs]).reshape(-1, 3)
    left = 1 / (1 / prior + len(moved) / noise)
    shift = left * moved.sum(axis=0) / noise
    spread = np.sqrt(left + hand)
    return Sealing(_lab(shift), _lab(spread), len(moved))


def _moved(lab: Lab, shift: Lab, way: float) -> Lab:
    return lab[0] + way * shift[0], lab[1] + way * shift[1], lab[2] + way * shift[2]


def _lab(values: np.ndarray) -> Lab:
    return float(values[0]), float(values[1]), float(values[2])
