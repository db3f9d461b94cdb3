"""Parameters drawn from what a form is believed to be after the samples.

A dose's strength and the lime are known together far better than each by itself, along a bent
ridge. A normal about the likeliest point leaves that ridge: the look it gives of a floor in the
mean is too light by half an L and its range too wide. So points are drawn from that normal, each is
weighed by how likely it is in truth, and as many are kept of it (sampling with importance weights,
then systematic resampling; both textbook).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtri, ndtri

from farwall.colour.fitting import Normal
from farwall.colour.nouns import Fit
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

POOL = 1024
"""Points that are weighed for each form."""
HOPELESS = 9.0
"""Log evidence behind the best at which a form would get no point of 512, and is left out."""


@dataclass(frozen=True)
class Pool:
    """Points about a fit, the share of each (all together 1), and the form's log evidence."""

    about: Normal
    points: Floats
    scale: Floats
    shares: Floats
    evidence: float

    def kept(self, count: int) -> Fit:
        """So many of them, each as often as its share says; `count` 0 where there are none."""
        steps = (np.arange(count) + 0.5) / max(count, 1)
        last = max(len(self.shares) - 1, 0)
        picked = np.minimum(np.searchsorted(np.cumsum(self.shares), steps), last)
        about = self.about
        return Fit(
            about.task.form, about.middle, about.spread, self.evidence,
            self.points[picked], self.scale[picked],
        )  # fmt: skip


def pools(fits: Sequence[Normal]) -> list[Pool]:
    """Of each form its points; none of a form that what was seen all but rules out."""
    best = max(one.constant for one in fits)
    return [_pool(one) if one.constant > best - HOPELESS else _none(one) for one in fits]


def _none(about: Normal) -> Pool:
    nothing = np.zeros(0)
    return Pool(about, np.zeros((0, len(about.middle))), nothing, nothing, -np.inf)


def _pool(about: Normal) -> Pool:
    """Points drawn about the likeliest and weighed by what was seen."""
    size = len(about.middle)
    even = evenly(POOL, size + 1)
    throws = ndtri(even[:, :size])
    points = about.middle + throws @ np.linalg.cholesky(about.spread).T
    gained = -0.5 * (about.task.worths(points) - (throws**2).sum(axis=1))
    best = float(gained.max())
    raw = np.exp(gained - best)
    scale = np.sqrt(about.patchy * about.patchy_of / chdtri(about.patchy_of, even[:, size]))
    evidence = about.constant + best + float(np.log(raw.mean()))
    return Pool(about, np.asarray(points), np.asarray(scale), raw / raw.sum(), evidence)


def evenly(count: int, size: int) -> Floats:
    """Numbers between 0 and 1 that fill the cube evenly, the same each time.

    Kronecker's sequence on powers of the root of x^(size + 1) = x + 1.
    """
    root = 2.0
    for _ in range(60):
        root = (1 + root) ** (1 / (size + 1))
    steps = (1 / root) ** np.arange(1, size + 1)
    even = (0.5 + np.arange(1, count + 1)[:, None] * steps) % 1
    return np.asarray(np.clip(even, 1e-9, 1 - 1e-9))
