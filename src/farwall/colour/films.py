"""Films of colour over one another, by absorption and scattering. Source: [curtis-1997].

A film has an absorption K and a scattering S for each channel, both for unit thickness. What it
throws back and lets through follows from the two and the thickness; a film over another adds the
light that goes to and fro between them. Arrays of channels go through as they are.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from farwall.nouns import dataclass

Floats = NDArray[np.float64]

THIN = 1e-12
"""Scattering below which a film only absorbs: then R = 0 and T = exp(-K·x), the limit."""


@dataclass(frozen=True)
class Film:
    """What a film throws back (`r`) and lets through (`t`), 0 to 1, channel by channel."""

    r: Floats
    t: Floats


def film(k: ArrayLike, s: ArrayLike, thickness: ArrayLike) -> Film:
    """R and T of a film alone.

    a = 1 + K/S, b = √(a² - 1), c = a·sinh(bSx) + b·cosh(bSx), R = sinh(bSx)/c, T = b/c. K and S at
    least 0, per unit of `thickness`; thickness at least 0. R + T is at most 1, and 1 where K is 0.
    """
    absorbs = np.asarray(k, dtype=np.float64)
    scatters = np.asarray(s, dtype=np.float64)
    thick = np.asarray(thickness, dtype=np.float64)
    absorbs, scatters, thick = np.broadcast_arrays(absorbs, scatters, thick)
    # S·b = √(K² + 2KS) stays finite where S goes to nothing.
    root = np.sqrt(absorbs * (absorbs + 2 * scatters))
    depth = root * thick
    # All over cosh, so that a thick film does not overflow.
    tanh = np.tanh(depth)
    slope = np.where(depth > THIN, tanh / np.where(root > 0, root, 1.0), thick)
    below = 1 + (absorbs + scatters) * slope
    r = scatters * slope / below
    with np.errstate(over="ignore"):
        t = 1 / (np.cosh(np.minimum(depth, 700.0)) * below)
    return Film(np.asarray(r), np.asarray(t))


def over(upper: Film, backing: ArrayLike) -> Floats:
    """R of a film on something that throws back `backing`: R + T²·Rg / (1 - R·Rg)."""
    ground = np.asarray(backing, dtype=np.float64)
    return np.asarray(upper.r + upper.t**2 * ground / (1 - upper.r * ground))
