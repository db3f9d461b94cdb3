"""Takes from a sheet what lies beyond any sheet: places that are no numbers, or absurdly far off.

A pen of any format may let one through, and one is enough to stop the search for neighbours.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import chain
from math import isfinite
from operator import attrgetter

import numpy as np

from farwall.floor.geometry import Point
from farwall.readers.lines.sheet import Sheet, Stroke

FARTHEST = 1e11
"""Drawing units; a hundred thousand kilometres in millimetres."""
_MANY = 2000


def in_reach(sheet: Sheet) -> Sheet:
    """The sheet without such things, which are counted among what could not be read.

    Of a stroke that is there many times two are left.
    """
    strokes = sheet.strokes if _all_near(sheet.strokes) else _near_ones(sheet.strokes)
    kept = replace(
        sheet,
        strokes=_twice_at_most(strokes),
        swings=tuple(one for one in sheet.swings if _near(one.centre, *one.ends)),
        rings=tuple(one for one in sheet.rings if _near(*one.points)),
        bands=tuple(one for one in sheet.bands if _near(*one.points) and isfinite(one.width)),
        words=tuple(one for one in sheet.words if _near(one.at) and isfinite(one.height)),
        measures=tuple(one for one in sheet.measures if isfinite(one.length)),
        blocks=tuple(one for one in sheet.blocks if _near(one.low, one.high)),
    )
    far = len(sheet.strokes) - len(strokes) + _beside(sheet) - _beside(kept)
    if not far:
        return sheet if len(kept.strokes) == len(sheet.strokes) else kept
    return replace(kept, skipped=(*kept.skipped, ("thing far beyond any sheet", far)))


def _all_near(strokes: tuple[Stroke, ...]) -> bool:
    """The common case, looked at in one sweep."""
    ends = chain.from_iterable(chain.from_iterable((one.start, one.end) for one in strokes))
    far = np.abs(np.fromiter(ends, float, 4 * len(strokes)))
    return bool((far <= FARTHEST).all())


def _near_ones(strokes: tuple[Stroke, ...]) -> tuple[Stroke, ...]:
    return tuple(one for one in strokes if _near(one.start, one.end))


def _twice_at_most(strokes: tuple[Stroke, ...]) -> tuple[Stroke, ...]:
    """A stroke drawn a thousand times is a neighbour of itself a million times."""
    if len(strokes) < _MANY:
        return strokes
    places = Counter(map(attrgetter("start", "end"), strokes))
    if max(places.values()) <= 2:
        return strokes
    seen: Counter[Stroke] = Counter()
    kept: list[Stroke] = []
    for stroke in strokes:
        seen[stroke] += 1
        if seen[stroke] <= 2:  # so that it is still told that it was drawn twice
            kept.append(stroke)
    return tuple(kept)


def _near(*points: Point) -> bool:
    return all(abs(x) <= FARTHEST and abs(y) <= FARTHEST for x, y in points)


def _beside(sheet: Sheet) -> int:
    """How much there is beside the strokes."""
    parts = (sheet.swings, sheet.rings, sheet.bands, sheet.words, sheet.measures, sheet.blocks)
    return sum(map(len, parts))
