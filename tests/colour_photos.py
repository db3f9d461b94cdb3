"""Invented photos of targets for tests: small, the same every time."""

from __future__ import annotations

from functools import cache

from farwall.bench.colour_photos import Hard, Shot, photograph
from farwall.bench.colour_photos_score import Laid, laid_24, laid_own, own_page

WIDE_PX = 1200


@cache
def laid(name: str) -> Laid:
    """The common target, or our own sheet."""
    return laid_24() if name == "24" else laid_own(*own_page())


@cache
def shot(name: str, light: str = "sun", seed: int = 7, hard: Hard | None = None) -> Shot:
    """A photo of it."""
    return photograph(laid(name).sheet, light, seed=seed, hard=hard, wide_px=WIDE_PX)
