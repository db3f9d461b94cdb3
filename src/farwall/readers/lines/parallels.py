"""Strokes that run beside each other: what wall faces do in twos and hatching in dozens."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.readers.lines.sheet import Stroke

REACH_M = 0.65
_TURN = 0.02
"""Sine of the angle that still counts as parallel, about 1 degree."""
_WALL_M = (0.04, 0.45)
Array = np.ndarray


@dataclass(frozen=True)
class Strokes:
    """Strokes in arrays: ends [m], ways of unit length, lengths [m]."""

    given: Sequence[Stroke]

    @cached_property
    def ends(self) -> Array:
        """Shape (strokes, 2 ends, 2 coordinates)."""
        return np.array([(s.start, s.end) for s in self.given], dtype=float).reshape(-1, 2, 2)

    @cached_property
    def lengths(self) -> Array:
        """One for each stroke."""
        across = self.ends[:, 1] - self.ends[:, 0]
        found: Array = np.hypot(across[:, 0], across[:, 1])
        return found

    @cached_property
    def ways(self) -> Array:
        """Unit vectors from start to end."""
        lengths = np.where(self.lengths > 0, self.lengths, 1.0)
        found: Array = (self.ends[:, 1] - self.ends[:, 0]) / lengths[:, None]
        return found

    @cached_property
    def lines(self) -> Array:
        """The strokes as shapely lines."""
        found: Array = np.asarray(shapely.linestrings(self.ends), dtype=object)
        return found

    @cached_property
    def tree(self) -> shapely.STRtree:
        """To ask which strokes are near."""
        return shapely.STRtree(self.lines)

    @cached_property
    def pairs(self) -> Parallels:
        """All strokes that run beside each other within reach."""
        return _parallels(self)


@dataclass(frozen=True)
class Parallels:
    """Pairs of places in the strokes, each pair both ways round; `gap` is signed [m].

    `overlap` is how far the second runs beside the first [m].
    """

    first: Array
    second: Array
    gap: Array
    overlap: Array


def _parallels(strokes: Strokes) -> Parallels:
    long = np.flatnonzero(strokes.lengths > 0.02)
    tree = shapely.STRtree(strokes.lines[long])
    first, second = tree.query(strokes.lines[long], predicate="dwithin", distance=REACH_M)
    first, second = long[first], long[second]
    way, other = strokes.ways[first], strokes.ways[second]
    turn = way[:, 0] * other[:, 1] - way[:, 1] * other[:, 0]
    keep = (np.abs(turn) < _TURN) & (first != second)
    first, second, way = first[keep], second[keep], way[keep]
    base = strokes.ends[first, 0]
    from_base = strokes.ends[second] - base[:, None, :]
    along = from_base[..., 0] * way[:, None, 0] + from_base[..., 1] * way[:, None, 1]
    aside = from_base[..., 1] * way[:, None, 0] - from_base[..., 0] * way[:, None, 1]
    low = np.maximum(along.min(axis=1), 0.0)
    high = np.minimum(along.max(axis=1), strokes.lengths[first])
    overlap = high - low
    keep = overlap > 1e-6
    return Parallels(first[keep], second[keep], aside.mean(axis=1)[keep], overlap[keep])


def has_partner(strokes: Strokes) -> Array:
    """For each stroke, whether half of it has another at a wall's depth beside it."""
    pairs = strokes.pairs
    wall = (np.abs(pairs.gap) >= _WALL_M[0]) & (np.abs(pairs.gap) <= _WALL_M[1])
    beside = np.zeros(len(strokes.given))
    np.add.at(beside, pairs.first[wall], pairs.overlap[wall])
    found: Array = beside >= 0.5 * strokes.lengths
    return found


def in_twos(strokes: Strokes) -> bool:
    """Whether the walls of this drawing have two faces: most of its longer strokes run in twos."""
    long = strokes.lengths >= 0.8
    whole = float(strokes.lengths[long].sum())
    both = float(strokes.lengths[long & has_partner(strokes)].sum())
    return whole > 0 and both > 0.5 * whole
