"""pH of tap water with acid left in it: the carbonate of the water is what holds it up."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

PK1 = 6.35
"""First dissociation of carbonic acid at 25 °C [from-memory]: textbooks give 6.35 to 6.37."""
TAP_MEQ_L = 2.0
"""Alkalinity of tap water, 100 mg/L as CaCO3; towns lie between 0.5 and 5: from memory."""
TAP_PH = 7.5
"""Taken where nobody read the tap: a guess, towns lie between 6.5 and 9."""

Numbers = NDArray[Any]


def rinse_ph(acid: Numbers | float, *, tap_ph: float = TAP_PH) -> Numbers:
    """pH of rinse water. acid: mol of acid left in a litre over the water's alkalinity, 0 or more.

    Below 1 bicarbonate is turned to carbonic acid that stays: pH = pK1 + log10((1 - a)/(a + c)),
    c such that none left gives the tap's own pH; from 1 on what is over is free. Closed to the
    air, activity left out: on an open floor carbon dioxide leaves and pH rises by some tenths.
    Monotone: more acid is never a higher pH. Source: mass action and charge balance.
    """
    a = np.asarray(acid, dtype=float)
    own = 10.0 ** (PK1 - tap_ph)
    alkali = TAP_MEQ_L / 1000
    # The root of (h + alkali*(1-a)... ) in h joins both branches without a kink: what bicarbonate
    # cannot take is free acid h, and h itself frees carbonic acid by mass action.
    total = alkali * (1 + own)
    k1 = 10.0**-PK1
    over = alkali * (a - 1)
    # charge: h + alkali = alkali*a + bicarbonate, bicarbonate = total*k1/(k1 + h)
    half = k1 - over
    root = np.sqrt(half**2 + 4 * k1 * (over + total))
    # the stable form of the positive root, whichever sign `half` has
    free = np.where(half >= 0, 2 * k1 * (over + total) / (half + root), (root - half) / 2)
    return np.asarray(-np.log10(np.maximum(free, 1e-14)))
