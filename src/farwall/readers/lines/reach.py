"""Takes from a sheet what lies beyond any sheet: places that are no numbers, or absurdly far off.

A pen of any format may let one through, and one is enough to stop the search for neighbours.
"""

from __future__ import annotations

from dataclasses import replace
from math import isfinite

from farwall.floor.geometry import Point
from farwall.readers.lines.sheet import Sheet

FARTHEST = 1e11
"""Drawing units; a hundred thousand kilometres in millimetres."""


def in_reach(sheet: Sheet) -> Sheet:
    """The sheet without such things, which are counted among what could not be read."""
    kept = replace(
        sheet,
        strokes=tuple(one for one in sheet.strokes if _near(one.start, one.end)),
        swings=tuple(one for one in sheet.swings if _near(one.centre, *one.ends)),
        rings=tuple(one for one in sheet.rings if _near(*one.points)),
        bands=tuple(one for one in sheet.bands if _near(*one.points) and isfinite(one.width)),
        words=tuple(one for one in sheet.words if _near(one.at) and isfinite(one.height)),
        measures=tuple(one for one in sheet.measures if isfinite(one.length)),
        blocks=tuple(one for one in sheet.blocks if _near(one.low, one.high)),
    )
    lost = _count(sheet) - _count(kept)
    if not lost:
        return sheet
    return replace(kept, skipped=(*kept.skipped, ("thing far beyond any sheet", lost)))


def _near(*points: Point) -> bool:
    return all(abs(x) <= FARTHEST and abs(y) <= FARTHEST for x, y in points)


def _count(sheet: Sheet) -> int:
    parts = (sheet.strokes, sheet.swings, sheet.rings, sheet.bands, sheet.words, sheet.measures)
    return sum(map(len, parts)) + len(sheet.blocks)
