"""Frames inside frames: transforms, view boxes, and where a length of the page ends up."""

from __future__ import annotations

from functools import lru_cache
from math import isfinite

from farwall.nouns import dataclass
from farwall.readers.lines.matrices import IDENTITY, Matrix


@lru_cache(maxsize=4096)
def transform(text: str) -> Matrix:
    """The matrix of a `transform` attribute. Raises ValueError where it cannot be read."""
    if not text.strip():
        return IDENTITY
    from svgelements import Matrix as Reader

    try:
        read = Reader(text)
        matrix = tuple(float(value) for value in (read.a, read.b, read.c, read.d, read.e, read.f))
    except (ValueError, TypeError, AttributeError, IndexError, KeyError, OverflowError) as error:
        raise ValueError("a transform that cannot be read") from error
    if not all(map(isfinite, matrix)):
        raise ValueError("a transform beyond all numbers")
    a, b, c, d, e, f = matrix
    return a, b, c, d, e, f


@dataclass(frozen=True)
class Box:
    """A view box: its corner and its size in the frame inside."""

    x: float
    y: float
    wide: float
    high: float


def view_box(text: str) -> Box | None:
    """The four numbers of a `viewBox`, or None."""
    try:
        numbers = [float(part) for part in text.replace(",", " ").split()]
    except ValueError:
        return None
    if len(numbers) != 4 or not all(map(isfinite, numbers)) or min(numbers[2:]) <= 0:
        return None
    return Box(*numbers)


def fitted(box: Box, size: tuple[float, float], aspect: str) -> Matrix:
    """From the frame inside a view box to a viewport of that size [svg-11] 7.8."""
    across, down = size[0] / box.wide, size[1] / box.high
    align = (aspect.split() or ["xMidYMid"])[0]
    if align != "none":
        across = down = max(across, down) if "slice" in aspect else min(across, down)
    spare = size[0] - across * box.wide, size[1] - down * box.high
    shift_x = {"xMin": 0.0, "xMax": 1.0}.get(align[:4], 0.5) * (spare[0] if align != "none" else 0)
    shift_y = {"YMin": 0.0, "YMax": 1.0}.get(align[4:8], 0.5) * (spare[1] if align != "none" else 0)
    return across, 0.0, 0.0, down, shift_x - across * box.x, shift_y - down * box.y
