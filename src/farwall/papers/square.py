"""The address of a screen as a square that a phone's camera reads."""

from __future__ import annotations

import io
from functools import lru_cache

_KEPT = 64
"""Squares that are kept: a sheet of labels has the same few many times, and each takes 5 ms."""


@lru_cache(maxsize=_KEPT)
def square(base: str, screen: str) -> str:
    """SVG of the square for `base/screen`; empty where either is. base: address of the house in
    the firm's book."""
    if not base or not screen:
        return ""
    import segno

    made = io.BytesIO()
    segno.make_qr(f"{base}/{screen}", error="m").save(made, kind="svg", border=2, xmldecl=False)
    return made.getvalue().decode()
