"""What a page shows of a photo: the picture made fit for it, and what was found on it."""

from __future__ import annotations

from farwall.facts.reading import Reading
from farwall.floor.geometry import Point
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Shown:
    """A picture for a page.

    picture_base64: PNG or JPEG bytes by base64 · width_px, height_px: of it · file_px: pixels of
    the file to one of it · corners: of the sheet, in pixels of the file as it is shown, empty where
    none was seen · m_per_px: of the picture laid flat, None where nobody told the scale · at_m:
    where its upper left corner lies in the frame of the rooms · reading: of the picture laid flat.
    """

    picture_base64: str
    width_px: int
    height_px: int
    file_px: float
    corners: tuple[Point, ...] = ()
    m_per_px: float | None = None
    at_m: Point = (0.0, 0.0)
    reading: Reading | None = None
