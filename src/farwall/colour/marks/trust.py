"""From how sure the search is to how many such proposals meet a mark.

What speaks for a mark is added up to a number that orders proposals and is no chance: of those that
it gave 0.95 half were nothing. So what is told is the share that met a mark on invented floors
(measured here, on the tuning half, by bins; between them a straight line). On a real stained floor
nothing of this has been measured.
"""

from __future__ import annotations

import numpy as np

SURE = (0.0, 0.42, 0.6, 0.8, 1.0)
MET = (0.0, 0.06, 0.33, 0.51, 0.52)
"""Of 15 proposals below 0.5 none met a mark (told as 1 of 17), of 18 from 0.5 to 0.7 six, of 45
above 23; the last rise is nothing but the order."""


def likelihood(sure: float) -> float:
    """Share of proposals that the search is so sure of which are marks, 0 to 1; never falls."""
    return float(np.interp(sure, SURE, MET))
