"""The sealed look from the clean wet one: another face over the same body.

The clean wet look is near the sealed look and is not it [common-practice]. A face throws back part
of the light that comes from below ([saunderson-1942]): water a share of 0.47, a film of refractive
index 1.5 of 0.60 (both from memory); a sealer fills the pores less than the one and covers them
more than the other, so it is believed to lie between. The body stays what it is. Samples that were
looked at wet and then sealed say where this sealer lies.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.channels import channels_of_lab, lab_of_channels
from farwall.colour.dose import INNER, OUTER
from farwall.colour.lab import triple
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Lab = tuple[float, float, float]

SEALED_INNER, SEALED_SPREAD = 0.52, 0.06
"""Share that a sealed face throws back inside, before a sample was sealed, and one standard
deviation. A guess between water and a film of resin."""
PAIR = (0.9, 0.7, 0.8)
"""What two photos and two spots of sealer leave unsure in L, a, b of one pair. A guess."""
HAND = (0.6, 0.4, 0.5)
"""How a floor's sealing differs from the sample's: thickness, gloss. A guess."""
MID_TONE: Lab = (42.0, 6.0, 11.0)
"""Clean wet look at which a spread is told where no sample was sealed."""
_SHARES: Floats = np.linspace(0.2, 0.84, 321)


@dataclass(frozen=True)
class Sealing:
    """What sealing does to the clean wet look, and its spread in L, a, b for a floor.

    inner: likely share that the sealed face throws back inside, 0 to 1 · pairs: how many samples
    were seen in both states.
    """

    inner: float
    spread: Lab
    pairs: int

    def sealed(self, wet: Lab) -> Lab:
        """Likely sealed look."""
        return triple(_other_face(np.array(wet), INNER, np.array(self.inner)))

    def wet(self, sealed: Lab) -> Lab:
        """Likely clean wet look of what was seen sealed alone."""
        return triple(_other_face(np.array(sealed), self.inner, np.array(INNER)))


def sealing(pairs: Sequence[tuple[Lab, Lab]]) -> Sealing:
    """From pairs of a clean wet and a sealed look of the same sample."""
    far = ((_SHARES - SEALED_INNER) / SEALED_SPREAD) ** 2
    for wet, sealed in pairs:
        would = _other_face(np.array(wet), INNER, _SHARES[:, None])
        far = far + np.square((would - np.array(sealed)) / np.array(PAIR)).sum(axis=1)
    likely = np.exp(-0.5 * (far - far.min()))
    likely /= likely.sum()
    inner = float(likely @ _SHARES)
    left = float(np.sqrt(likely @ (_SHARES - inner) ** 2))
    at = np.mean([wet for wet, _ in pairs], axis=0) if pairs else np.array(MID_TONE)
    low, high = (_other_face(at, INNER, np.array(inner + way * left)) for way in (-1, 1))
    return Sealing(inner, triple(np.hypot((high - low) / 2, HAND)), len(pairs))


def _other_face(seen: Floats, from_inner: float, to_inner: Floats) -> Floats:
    """Lab under a face that throws back `to_inner`, of what shows that Lab under another."""
    channels = channels_of_lab(seen)
    body = channels / ((1 - OUTER) * (1 - from_inner) + from_inner * channels)
    return lab_of_channels((1 - OUTER) * (1 - to_inner) * body / (1 - to_inner * body))
