"""Lengths and numbers as SVG writes them, in user units (96 px to the inch: [css-values] 6.2)."""

from __future__ import annotations

import re
from math import isfinite

PX_PER_IN = 96.0
M_PER_IN = 0.0254
PAPER_UNITS = {"mm", "cm", "in", "pt", "pc", "q"}
"""Units that tell a length on paper; px may come from a program that took 72 to the inch."""
_PX = {"": 1.0, "px": 1.0, "pt": 96 / 72, "pc": 16.0, "in": 96.0, "mm": 96 / 25.4,
       "cm": 96 / 2.54, "q": 96 / 101.6}  # fmt: skip
_LENGTH = re.compile(r"\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*([a-zA-Z%]*)\s*")


def length(text: str, *, whole: float = 0.0, font_size: float = 16.0) -> float | None:
    """Pixels in a written length; `whole` is what 100 % stands for; None where it is no length."""
    match = _LENGTH.fullmatch(text)
    if not match:
        return None
    value, unit = float(match[1]), match[2].lower()
    if unit == "%":
        px = value / 100 * whole
    elif unit in {"em", "rem"}:
        px = value * font_size
    elif unit in {"ex", "ch"}:
        px = value * font_size / 2
    elif unit in _PX:
        px = value * _PX[unit]
    else:
        return None
    return px if isfinite(px) else None


def unit_of(text: str) -> str:
    """The unit behind a written length, in small letters."""
    match = _LENGTH.fullmatch(text)
    return match[2].lower() if match else ""


def number(text: str, otherwise: float) -> float:
    """A plain number or a percentage as a share."""
    match = _LENGTH.fullmatch(text)
    if not match or match[2] not in {"", "%"}:
        return otherwise
    value = float(match[1]) / (100 if match[2] else 1)
    return value if isfinite(value) else otherwise
