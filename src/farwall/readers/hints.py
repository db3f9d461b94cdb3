"""What a person tells beside a file so that it can be read: of the drawing, or of its photo."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.floor.geometry import Point


@dataclass(frozen=True)
class KnownLength:
    """Two places in a picture [px, from its upper left], and how far apart they are [m]."""

    start: Point
    end: Point
    length_m: float


@dataclass(frozen=True)
class Hints:
    """All that can be told; readers take what concerns them.

    `scale_m_per_unit` [m]: one unit of the drawing. Of a picture: a millimetre of paper where
    `paper_mm` (or a marker beside the drawing) tells the size of the sheet, else a pixel of the
    flattened picture. `corners` [px, from the upper left of the picture as it is shown]: of the
    sheet, clockwise from the one that is its upper left. `paper_mm`: two sides of the sheet.
    `marker_mm`: the measured side of a printed marker in the picture. `page`: of a PDF, from 1.
    """

    scale_m_per_unit: float | None = None
    corners: tuple[Point, ...] = ()
    paper_mm: tuple[float, float] | None = None
    length: KnownLength | None = None
    marker_mm: float | None = None
    page: int = 1
