"""A colour as a screen shows it, about: CIELAB under light D50 to the colours of a web page."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from farwall.colour.library import science


@lru_cache(maxsize=512)
def hex_of(lab: tuple[float, float, float]) -> str:
    """`#7a5a48`; what lies outside of what a screen can show is brought to its edge.

    By colour-science, D50 to the screen's D65 by Bradford. No screen is measured here: the words
    beside a swatch count, and a sample in the hand more than both.
    """
    colour = science()
    white = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D50"]
    xyz = colour.Lab_to_XYZ(np.array(lab), white)
    rgb = colour.XYZ_to_sRGB(xyz, white, chromatic_adaptation_transform="Bradford")
    whole = np.rint(np.clip(rgb, 0, 1) * 255).astype(int)
    return "#" + "".join(f"{one:02x}" for one in whole)
