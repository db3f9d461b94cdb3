"""A colour in words, for whoever cannot see the screen or should not trust it. Pure."""

from __future__ import annotations

from farwall.colour.swatch import in_words


def lab_words(lab: tuple[float, float, float]) -> str:
    """Lightness and hue: `dark, brown`."""
    return ", ".join(in_words(lab))
