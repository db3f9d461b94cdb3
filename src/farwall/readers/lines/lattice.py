"""Lines of a column grid: long lines both ways, each crossing every one of the other way.

They are told by their crossings, not by a layer's name. Walls end at walls and break at doors;
lines of a grid run on through everything.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Stroke

_FEWEST = 3
_LONG = 0.3  # of the longer side of all that is drawn
_SAME = 0.004  # of the same: ends of a family lie on one line
_MOST = 4000


@dataclass(frozen=True)
class _Line:
    place: float
    low: float
    high: float
    stroke: Stroke


def lattice_lines(strokes: Sequence[Stroke]) -> list[Stroke]:
    """The strokes of a grid that lies square on the sheet; nothing where there is none."""
    points = [p for s in strokes for p in (s.start, s.end)]
    if not points:
        return []
    whole = max(max(p[axis] for p in points) - min(p[axis] for p in points) for axis in (0, 1))
    upright = _families(strokes, 0, whole)
    level = _families(strokes, 1, whole)
    for first in upright:
        for second in level:
            if _all_cross(first, second, _SAME * whole):
                return [line.stroke for line in (*first, *second)]
    return []


def _families(strokes: Sequence[Stroke], axis: int, whole: float) -> list[list[_Line]]:
    """Long lines that stand at one `axis` place each and begin and end alike, three or more."""
    lines = []
    for stroke in strokes:
        a, b = stroke.start, stroke.end
        along = sorted((a[1 - axis], b[1 - axis]))
        if abs(a[axis] - b[axis]) < 1e-4 * whole and along[1] - along[0] > _LONG * whole:
            lines.append(_Line((a[axis] + b[axis]) / 2, along[0], along[1], stroke))
    families: list[list[_Line]] = []
    for line in sorted(lines[:_MOST], key=lambda line: (line.low, line.high, line.place)):
        for family in families[-8:]:
            first = family[0]
            if max(abs(line.low - first.low), abs(line.high - first.high)) < _SAME * whole:
                family.append(line)
                break
        else:
            families.append([line])
    return [f for f in families if _apart(f) >= _FEWEST]


def _apart(family: Sequence[_Line]) -> int:
    """How many lines of a family lie well apart: two faces of one wall count as one."""
    places = sorted(line.place for line in family)
    length = family[0].high - family[0].low
    return 1 + sum(b - a > 0.05 * length for a, b in pairwise(places))


def _all_cross(first: Sequence[_Line], second: Sequence[_Line], slack: float) -> bool:
    """Whether each line meets each of the other family, and most run on beyond them."""
    meet = all(
        b.low - slack <= a.place <= b.high + slack and a.low - slack <= b.place <= a.high + slack
        for a in first
        for b in second
    )
    if not meet:
        return False
    beyond = [
        first[0].low < min(b.place for b in second) - slack,
        first[0].high > max(b.place for b in second) + slack,
        second[0].low < min(a.place for a in first) - slack,
        second[0].high > max(a.place for a in first) + slack,
    ]
    return sum(beyond) >= 2
