"""The sign of a tube with narrow bands: light greys part from squares of cool colour.

Black ink and a floor have smooth spectra, coloured inks have edges. A light of few narrow bands
tells of an edge too much or nothing, so no mixing suits both: light greys come out too green and
too yellow, blue and green squares too red and too blue, and a floor goes with the greys, three
times as far. Under lights of broad bands they go together. Rank: measured here, on invented photos
under lights that the judging ones do not have (docs/colour-photo.md).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.lab import lab_of_xyz
from farwall.readers.colour_photo.fit import Fit, Seen
from farwall.readers.colour_photo.found import Found
from farwall.readers.colour_photo.mixing import mixed, terms

LIGHT_L, COOL = 60.0, 9.0
"""Lightness from which a grey is light; green or blue of cool squares, in -a or -b."""
LEAST = 3
"""Squares of either that have to be seen."""
NARROW = 1.8
"""The sign from which it is said: tubes of three bands gave 2.3 and more, other lights 1.2."""
SAID = (
    "The light may be a tube with narrow bands: light greys come out greener and yellower against "
    "the coloured squares. Floor may be off by 4 or more (CIEDE2000), whatever error is told here. "
    "Take it again by day, by a bulb or by a white LED."
)


def narrow_bands(seen: Seen, fit: Fit, found: Found) -> bool:
    """Whether the light is likely a tube with narrow bands; never where too few squares tell it.

    seen: the usable patches of our own sheet, as `fit` was found by them, paper after them.
    """
    return found.target.lit_between and _sign(seen, fit, _greys(found, len(seen.lab))) > NARROW


def _greys(found: Found, count: int) -> NDArray[np.bool_]:
    greys = [one.grey for one, use in zip(found.target.patches, found.usable, strict=True) if use]
    return np.array([*greys, *[True] * (count - len(greys))])


def _sign(seen: Seen, fit: Fit, grey: NDArray[np.bool_]) -> float:
    """How much greener and yellower light greys come out than cool squares, mixed 3 × 3.

    Along the way of -a and b in CIELAB, between the medians; 0 where too few are seen.
    """
    greys = grey & (seen.lab[:, 0] > LIGHT_L)
    cool = ~grey & ((seen.lab[:, 1] < -COOL) | (seen.lab[:, 2] < -COOL))
    if min(greys.sum(), cool.sum()) < LEAST:
        return 0.0
    even = fit.even(seen)
    mix = mixed(even, seen.lab, "linear", np.ones(len(seen.lab)))
    off = lab_of_xyz(terms(even, "linear") @ mix) - seen.lab
    greener = (off[:, 2] - off[:, 1]) / np.sqrt(2)
    return float(np.median(greener[greys]) - np.median(greener[cool]))
