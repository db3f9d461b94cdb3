"""What tells the bands of the second sprayer from those of the first, in grey as well: stripes."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, PAPER

_APART, _WIDE = 9.0, 1.1
_DARK_FROM = 0.5
"""From this share of the ramp on a band is so dark that pale stripes show better."""


def stripe(sheet: Sheet, floor: BaseGeometry, *, age: float) -> None:
    """Stripes over a band of the second sprayer; `age` is its place on the ramp, 0 to 1."""
    shape = sheet.frame.shape(floor)
    x0, y0, x1, y1 = shape.bounds
    height = y1 - y0
    starts = np.arange(x0 - height, x1, _APART)
    ends = np.stack(
        [
            np.stack([starts, np.full_like(starts, y1)], 1),
            np.stack([starts + height, np.full_like(starts, y0)], 1),
        ],
        1,
    )
    colour = PAPER if age >= _DARK_FROM else INK
    for line in shapely.get_parts(shapely.intersection(shapely.linestrings(ends), shape)).tolist():
        if isinstance(line, shapely.LineString) and line.length > _WIDE:
            points = [(float(x), float(y)) for x, y in line.coords]
            sheet.svg.line(points, stroke=colour, stroke_width=_WIDE, stroke_opacity=0.45)
