"""Contrast of two colours."""

from __future__ import annotations

import re


def luminance(colour: str) -> float:
    """Relative luminance of `rgb(r, g, b)` or `#rrggbb` or `#rgb` [wcag22]."""
    if colour.startswith("#"):
        digits = colour[1:] if len(colour) == 7 else "".join(one * 2 for one in colour[1:])
        parts = [int(digits[at : at + 2], 16) / 255 for at in (0, 2, 4)]
    else:
        parts = [int(one) / 255 for one in re.findall(r"\d+", colour)[:3]]
    r, g, b = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(one: str, other: str) -> float:
    """From 1 to 21."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)
