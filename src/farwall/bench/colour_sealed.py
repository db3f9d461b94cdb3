"""The sealed look of a floor, told from its clean wet look and from samples seen in both states."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from scipy.special import ndtri

from farwall.bench.colour_floors import PATCHES, Coat, bare_patches, floor
from farwall.colour.difference import de2000
from farwall.colour.sealed import Lab, sealing
from farwall.nouns import dataclass

COATS = ((), (Coat(0, 0.5, 0.2),), (Coat(0, 0.5, 0.2), Coat(0, 0.5, 0.2)))
"""What lies on the three samples that may have been seen in both states."""


@dataclass(frozen=True)
class Sealed:
    """CIEDE2000 of the sealed look that was told, over all floors; L held by four in five, %."""

    samples: int
    floors: int
    median: float
    p90: float
    bias: float
    held_percent: float


def score_sealed(seeds: Sequence[int]) -> tuple[Sealed, ...]:
    """With no sample sealed, with one, with three."""
    made = []
    for count in (0, 1, 3):
        rows = np.array([_one(seed, count) for seed in seeds], dtype=np.float64)
        made.append(
            Sealed(
                count, len(seeds), float(np.median(rows[:, 0])),
                float(np.quantile(rows[:, 0], 0.9)), float(np.median(rows[:, 1])),
                float(100 * rows[:, 2].mean()),
            )
        )  # fmt: skip
    return tuple(made)


def _one(seed: int, count: int) -> tuple[float, float, bool]:
    of, throws = floor(seed), np.random.Generator(np.random.PCG64([seed, 9]))
    order, pairs = throws.permutation(PATCHES), list[tuple[Lab, Lab]]()
    for n in (1, 2, 0)[:count]:
        patch = bare_patches(of, order[n : n + 1])
        for coat in COATS[n]:
            patch = patch.laid(coat, throws)
        wet, sealed = (
            look[0] + throws.normal(0.0, of.camera) + throws.normal(0.0, 0.25, 3)
            for look in (patch.wet(), patch.sealed())
        )
        pairs.append(((wet[0], wet[1], wet[2]), (sealed[0], sealed[1], sealed[2])))
    rest = bare_patches(of, order[5:]).laid(Coat(0, 0.5, 0.2), throws)
    wet = rest.wet().mean(axis=0) + throws.normal(0.0, of.camera)
    true, found = rest.sealed().mean(axis=0), sealing(pairs)
    told = found.sealed((wet[0], wet[1], wet[2]))
    off = told[0] - float(true[0])
    return float(de2000(told, true)), off, abs(off) <= ndtri(0.9) * found.spread[0]
