"""A colour in CIELAB for a screen or a printer, and in words. No screen is a floor."""

from __future__ import annotations

import math
from typing import Literal

from farwall.colour.lab import srgb_of_lab

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


def hex_of_lab(lab: Lab) -> str:
    """`#rrggbb` of sRGB that shows a colour given under D50; cut off where a screen has no more."""
    return "#" + "".join(f"{round(float(one) * 255):02x}" for one in srgb_of_lab(lab))


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
