"""A floor as a photo shows it from above, and the marks that are proposed on it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.nouns import dataclass

Floats32 = NDArray[np.float32]
Point = tuple[float, float]
Ring = tuple[Point, ...]


@dataclass(frozen=True)
class Sheet:
    """A photo of a floor laid flat.

    lab: (rows, columns, 3), CIELAB, row 0 at the top · floor: (rows, columns), False where the
    picture shows no floor, glare or something standing on it · m_per_px: side of a picture point on
    the floor · left_m, top_m: place of the outer corner of the first point on the plan, x right,
    y up · true_colour: whether a target in the photo was corrected to.
    """

    lab: Floats32
    floor: NDArray[np.bool_]
    m_per_px: float
    left_m: float = 0.0
    top_m: float = 0.0
    true_colour: bool = False

    def place(self, row: float, column: float) -> Point:
        """Where a point of the picture lies on the plan."""
        return self.left_m + column * self.m_per_px, self.top_m - row * self.m_per_px


@dataclass(frozen=True)
class KnownEdge:
    """Where the run sheet says that two bands of spraying met.

    line: points on the plan, in metres, from end to end · sd_m: by how much the true edge lies
    beside it, one standard deviation · coat, band: number of the coat, and of the band that ends
    there, from 1 as the run sheet counts them.
    """

    line: Ring
    sd_m: float
    coat: int
    band: int


@dataclass(frozen=True)
class Mark:
    """What may be a fault: its kind by the name of the trade, where, how sure, how strong.

    kind: of `facts.log_colour.MARKS`, or "crack", "joint": not of the spraying and counted apart ·
    outline: ring on the plan, in metres · confidence: 0 to 1 · lighter: L that it lies above the
    floor beside it (below 0: darker) · why: what in the picture speaks for it, in words.
    """

    kind: str
    at: Point
    outline: Ring
    confidence: float
    lighter: float
    length_m: float
    width_m: float
    why: str
