"""The look that a photo of a sample tells: the middle of it, corrected by the target beside it.

The sample fills the middle of the photo and the target lies at its edge: edges of a sample feather,
so that its colour is read in the middle half.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused
from farwall.web.words import said

if TYPE_CHECKING:
    from farwall.readers.colour_photo.found import Values

MIDDLE = (0.25, 0.75)
"""Share of the photo's width and height that is read."""


def look_told(content: bytes, values: Values | None = None) -> dict[str, str]:
    """What the words of the log say of the middle of a photo, by key; as they are typed.

    values: of the firm's own print.

    Raises Refused where the photo cannot be read or a target lies in its middle.
    """
    from farwall.readers.apart.colours import read_colour_apart
    from farwall.readers.colour_photo.spot import spot_of

    photo = read_colour_apart(content, name="photo", own_values=values)
    rows, columns = photo.lab.shape[:2]
    low, high = MIDDLE
    box = (
        (low * columns, low * rows), (high * columns, low * rows),
        (high * columns, high * rows), (low * columns, high * rows),
    )  # fmt: skip
    if photo.target is not None and _meets(photo.target.corners_px, box):
        raise Refused(Mistake("", said("ladder-target-in-middle"), said("ladder-target-aside")))
    spot = spot_of(photo, box)
    told = {
        "lightness": f"{spot.lab[0]:.2f}", "lab_a": f"{spot.lab[1]:.2f}",
        "lab_b": f"{spot.lab[2]:.2f}", "spread_lightness": f"{spot.spread_lightness:.2f}",
    }  # fmt: skip
    return told if spot.error_de is None else {**told, "error_de": f"{spot.error_de:.2f}"}


def _meets(one: tuple[tuple[float, float], ...], other: tuple[tuple[float, float], ...]) -> bool:
    """Whether the boxes around two outlines lie over one another."""
    spans = [[(min(p[k] for p in ring), max(p[k] for p in ring)) for k in (0, 1)]
             for ring in (one, other)]  # fmt: skip
    return all(spans[0][k][0] < spans[1][k][1] and spans[1][k][0] < spans[0][k][1] for k in (0, 1))
