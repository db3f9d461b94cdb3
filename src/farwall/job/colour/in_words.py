"""A colour in words, for whoever cannot see the screen or should not trust it. Pure."""

from __future__ import annotations

import math

_LIGHTNESS = ((25, "very dark"), (40, "dark"), (55, "middle"), (70, "light"), (101, "very light"))
_GREY, _GREYISH = 2.5, 7.0
"""Chroma below which a hue is not named, and below which it is called greyish."""
_HUES = (
    (35, "red"), (58, "reddish brown"), (75, "brown"), (95, "yellowish brown"),
    (125, "olive"), (170, "green"), (235, "blue-green"), (300, "blue"), (340, "purple"),
    (361, "red"),
)  # fmt: skip
"""Ends of hue angles in degrees; words of a stained floor, where yellow and orange are browns."""


def lab_words(lab: tuple[float, float, float]) -> str:
    """Lightness and hue: `dark, reddish brown`. Bounds: our own, a guess."""
    lightness = next(word for end, word in _LIGHTNESS if lab[0] < end)
    chroma = math.hypot(lab[1], lab[2])
    if chroma < _GREY:
        return f"{lightness}, grey"
    angle = math.degrees(math.atan2(lab[2], lab[1])) % 360
    hue = next(word for end, word in _HUES if angle < end)
    return f"{lightness}, {'greyish ' if chroma < _GREYISH else ''}{hue}"
