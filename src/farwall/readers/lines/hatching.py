"""Hatching, tiles and treads: many parallel strokes at one distance from each other."""

from __future__ import annotations

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.readers.lines.groups import numbered
from farwall.readers.lines.parallels import Array, Strokes

FEWEST = 6
"""Walls stand in twos; glass in threes: six at one distance are a pattern."""
_SAME_GAP, _SAME_LINE_M, _CORNER_M = 0.05, 0.008, 0.004
_TREAD_M, _FLIGHT_M = (0.2, 0.36), (0.6, 2.5)


@dataclass(frozen=True)
class Pattern:
    """Strokes at one distance; `treads` where they could be a flight of stairs."""

    strokes: frozenset[int]
    gap_m: float
    treads: bool


def find_patterns(strokes: Strokes) -> list[Pattern]:
    """Every group of at least six parallel strokes with equal gaps, by places in the strokes.

    Strokes of one length are looked at first, so that a table set on boards does not part them.
    """
    pairs = strokes.pairs
    shorter = np.minimum(strokes.lengths[pairs.first], strokes.lengths[pairs.second])
    longer = np.maximum(strokes.lengths[pairs.first], strokes.lengths[pairs.second])
    apart = np.abs(pairs.gap) > _SAME_LINE_M
    alike = _patterns_among(strokes, apart & (pairs.overlap >= 0.9 * longer))
    done = np.zeros(len(strokes.given), dtype=bool)
    done[[place for pattern in alike for place in pattern.strokes]] = True
    rest = apart & (pairs.overlap >= 0.5 * shorter) & ~done[pairs.first] & ~done[pairs.second]
    return alike + _patterns_among(strokes, rest)


def _patterns_among(strokes: Strokes, beside: Array) -> list[Pattern]:
    """The patterns of the pairs that are marked."""
    pairs = strokes.pairs
    first, second, gap = pairs.first[beside], pairs.second[beside], pairs.gap[beside]
    ahead, back = _nearest(first, second, gap), _nearest(first, second, -gap)
    gaps: dict[tuple[int, int], int] = {}
    links = []
    for index in sorted(ahead.keys() & back.keys()):
        (next_one, next_gap), (last_one, last_gap) = ahead[index], back[index]
        if abs(next_gap - last_gap) <= _SAME_GAP * max(next_gap, last_gap):
            pairs_here = [(min(index, o), max(index, o)) for o in (next_one, last_one)]
            links.append([gaps.setdefault(pair, len(gaps)) for pair in pairs_here])
    return [p for group in _groups(links, list(gaps)) if (p := _pattern(strokes, group))]


def _nearest(
    first: np.ndarray, second: np.ndarray, gap: np.ndarray
) -> dict[int, tuple[int, float]]:
    """For each stroke the nearest on one side of it, and how far that is."""
    side = gap > 0
    first, second, gap = first[side], second[side], gap[side]
    order = np.lexsort((second, gap, first))
    kept, at = np.unique(first[order], return_index=True)
    nearest = order[at]
    return {int(i): (int(second[n]), float(gap[n])) for i, n in zip(kept, nearest, strict=True)}


def _groups(links: list[list[int]], gaps: list[tuple[int, int]]) -> list[list[int]]:
    """The strokes on both sides of gaps that follow each other and are alike."""
    if not links:
        return []
    rows, columns = zip(*links, strict=True)
    labels = numbered(len(gaps), rows, columns)
    groups: dict[int, set[int]] = {}
    for label, pair in zip(labels.tolist(), gaps, strict=True):
        groups.setdefault(label, set()).update(pair)
    return [sorted(group) for group in groups.values()]


def _pattern(strokes: Strokes, group: list[int]) -> Pattern | None:
    way = strokes.ways[group[0]]
    ends = strokes.ends[group]
    aside = (ends[..., 1] * way[0] - ends[..., 0] * way[1]).mean(axis=1)
    rows = np.unique(np.round(aside / _SAME_LINE_M))
    if len(rows) < FEWEST:
        return None
    gap = float(np.median(np.diff(rows)) * _SAME_LINE_M)
    lengths = strokes.lengths[group]
    outermost = (aside < aside.min() + 0.5 * gap) | (aside > aside.max() - 0.5 * gap)
    kept = {
        g for g, out in zip(group, outermost, strict=True) if out and _in_corners(strokes, g, group)
    }
    flight = _FLIGHT_M[0] <= lengths.min() and lengths.max() <= _FLIGHT_M[1]
    treads = _TREAD_M[0] <= gap <= _TREAD_M[1] and flight and lengths.max() < 1.1 * lengths.min()
    return Pattern(frozenset(group) - kept, gap, bool(treads))


def _in_corners(strokes: Strokes, place: int, group: list[int]) -> bool:
    """Whether a stroke runs from corner to corner of others, as a wall beside a pattern does."""
    own = set(group)
    for end in strokes.ends[place]:
        near = strokes.tree.query(shapely.Point(end), predicate="dwithin", distance=_CORNER_M)
        others = [int(i) for i in near if int(i) not in own]
        corners = strokes.ends[others].reshape(-1, 2)
        if not len(corners) or np.abs(corners - end).max(axis=1).min() > _CORNER_M:
            return False
    return True
