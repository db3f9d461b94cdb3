"""Photographs of an invented floor for tests: small, quick, the same every time."""

from __future__ import annotations

from functools import cache

from farwall.bench.houses import houses
from farwall.bench.sheet_drawn import Drawn, Style, draw_sheet
from farwall.bench.sheet_photo import HARDSHIPS, Photo, photograph

HARDSHIP = {one.name: one for one in HARDSHIPS}
A3_MM, RATIO = (420.0, 297.0), 0.05


@cache
def sheet(style: Style = "filled") -> Drawn:
    """The first house of the bench on A3 at 1:50."""
    floor = houses()[0].job.floor
    return draw_sheet(floor, style=style, paper_mm=A3_MM, ratio=RATIO, long_px=2600)


@cache
def photo(hardship: str, style: Style = "filled", seed: int = 3) -> Photo:
    """That sheet photographed."""
    drawn = sheet(style)
    return photograph(drawn.grey, drawn.px_per_mm, HARDSHIP[hardship], seed, wide_px=2400)
