"""A page of a PDF that is a picture of a plan: painted and read like a photo that lies flat."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np

from farwall.facts.reading import Note, Reading
from farwall.readers.hints import Hints
from farwall.readers.photo.read import lay_flat, read_laid

DOTS_PER_IN = 200
"""As fine as a scan of a drawing usually is (guess)."""
_MOST_SIDE_PX = 6000
_MM_PER_IN = 25.4


def read_scan(page: Any, hints: Hints, points_per_unit: float | None) -> Reading:
    """The floor on the picture of a page. Raises Refused for hints that do not fit it.

    Where nobody tells the paper's size the page's own is taken, so that `hints.scale_m_per_unit`
    is that of a millimetre of paper.
    """
    wide, high = (side * (points_per_unit or 1.0) / 72 for side in page.get_size())  # [in]
    dots = min(DOTS_PER_IN, _MOST_SIDE_PX / max(wide, high))
    painted = page.render(scale=dots / 72 * (points_per_unit or 1.0), grayscale=True)
    grey = np.ascontiguousarray(painted.to_numpy().reshape(painted.height, painted.width))
    paper = hints.paper_mm or (wide * _MM_PER_IN, high * _MM_PER_IN)
    told = replace(hints, paper_mm=paper)
    laid = lay_flat(grey.astype(np.uint8), told, lies_flat=True)
    reading = read_laid(laid, told, format_name="PDF")[0]
    what = f"The plan on this page is a picture; it was traced at {dots:.0f} dots to the inch."
    return replace(reading, left=(Note("scan-traced", what), *reading.left))
