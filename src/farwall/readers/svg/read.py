"""From the bytes of an SVG to a reading: screen, gather, calibrate, and read the sheet."""

from __future__ import annotations

from farwall.facts.reading import Reading
from farwall.readers.lines.page import read_page
from farwall.readers.svg.gather import gather
from farwall.readers.svg.tree import open_tree


def read_svg(data: bytes, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor in an SVG file.

    `scale_m_per_unit` [m] overrules what the drawing shows of its scale; a unit is a user unit of
    the outermost drawing. A reading without rooms means that no floor is in the file. Raises
    Refused when the bytes are no sound SVG.
    """
    page = gather(open_tree(data))
    return read_page(page, scale_m_per_unit=scale_m_per_unit)
