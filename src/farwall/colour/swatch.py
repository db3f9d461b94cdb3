"""A colour in CIELAB for a screen or a printer, and in words. No screen is a floor."""

from __future__ import annotations

import math
from typing import Literal

import numpy as np

from farwall.colour.channels import WHITE_D50

Lab = tuple[float, float, float]
Lightness = Literal["very light", "light", "medium", "dark", "very dark"]
Hue = Literal["grey", "red", "brown", "ochre", "green", "blue-green", "blue", "violet"]

_LIGHT: tuple[tuple[float, Lightness], ...] = (
    (80, "very light"), (60, "light"), (42, "medium"), (26, "dark"),
)  # fmt: skip
_GREY = 6.0
"""Chroma below which a floor looks grey. A guess, as are the angles below."""
_HUES: tuple[tuple[float, Hue], ...] = (
    (35, "red"), (78, "brown"), (110, "ochre"), (165, "green"), (220, "blue-green"), (285, "blue"),
    (335, "violet"),
)  # fmt: skip
_XYZ_OF_SRGB = np.array(
    [
        [0.4360747, 0.3850649, 0.1430804],
        [0.2225045, 0.7168786, 0.0606169],
        [0.0139322, 0.0971045, 0.7141733],
    ]
)
_SRGB_OF_XYZ = np.linalg.inv(_XYZ_OF_SRGB)


def hex_of_lab(lab: Lab) -> str:
    """`#rrggbb` of sRGB that shows a colour given under D50; cut off where a screen has no more.

    Sources: [cie-15] for CIELAB, sRGB brought to D50 by [bradford], from memory.
    """
    f = (lab[0] + 16) / 116
    each = np.array([f + lab[1] / 500, f, f - lab[2] / 200])
    xyz = np.where(each > 6 / 29, each**3, 3 * (6 / 29) ** 2 * (each - 4 / 29)) * WHITE_D50
    linear = np.clip(_SRGB_OF_XYZ @ xyz, 0.0, 1.0)
    coded = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    return "#" + "".join(f"{round(float(one) * 255):02x}" for one in coded)


def in_words(lab: Lab) -> tuple[Lightness, Hue]:
    """How light a colour is and of which kind, so that a swatch says something in grey too."""
    lightness, a, b = lab
    darkest: Lightness = "very dark"
    light = next((word for above, word in _LIGHT if lightness >= above), darkest)
    if math.hypot(a, b) < _GREY:
        return light, "grey"
    angle = math.degrees(math.atan2(b, a)) % 360
    around: Hue = "red"
    return light, next((word for below, word in _HUES if angle < below), around)
