"""The look that a photo of a sample tells: the middle of it, corrected by the target beside it.

The sample fills the middle of the photo and the target lies at its edge: edges of a sample feather,
so that its colour is read in the middle half.
"""

from __future__ import annotations

import importlib
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.web.words import said

MIDDLE = (0.25, 0.75)
"""Share of the photo's width and height that is read."""


def look_told(content: bytes) -> dict[str, str]:
    """What the words of the log say of the middle of a photo, by key; as they are typed.

    Raises Refused where the photo cannot be read or a target lies in its middle.
    """
    reader = _reader()
    if reader is None:
        raise Refused(Mistake("", said("ladder-no-reader"), said("ladder-type-lab")))
    photo = reader.read_colour_apart(content, name="photo")
    rows, columns = photo.lab.shape[:2]
    low, high = MIDDLE
    box = (
        (low * columns, low * rows), (high * columns, low * rows),
        (high * columns, high * rows), (low * columns, high * rows),
    )  # fmt: skip
    if photo.target is not None and _meets(photo.target.corners_px, box):
        raise Refused(Mistake("", said("ladder-target-in-middle"), said("ladder-target-aside")))
    spot = importlib.import_module("farwall.readers.colour_photo.spot").spot_of(photo, box)
    told = {
        "lightness": f"{spot.lab[0]:.2f}", "lab_a": f"{spot.lab[1]:.2f}",
        "lab_b": f"{spot.lab[2]:.2f}", "spread_lightness": f"{spot.spread_lightness:.2f}",
    }  # fmt: skip
    if photo.target is not None:
        told["error_de"] = f"{photo.target.error_de:.2f}"
    return told


def _reader() -> Any:
    """Whoever reads colours of photos apart from this process; None while nobody does."""
    try:
        return importlib.import_module("farwall.readers.apart.colours")
    except ModuleNotFoundError:
        return None


def _meets(one: tuple[tuple[float, float], ...], other: tuple[tuple[float, float], ...]) -> bool:
    """Whether the boxes around two outlines lie over one another."""
    spans = [[(min(p[k] for p in ring), max(p[k] for p in ring)) for k in (0, 1)]
             for ring in (one, other)]  # fmt: skip
    return all(spans[0][k][0] < spans[1][k][1] and spans[1][k][0] < spans[0][k][1] for k in (0, 1))
