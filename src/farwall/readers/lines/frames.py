"""The sheet's own border and title block: what is drawn around a plan and not of it."""

from __future__ import annotations

import re
from collections.abc import Sequence

import numpy as np
import shapely

from farwall.readers.lines.groups import numbered
from farwall.readers.lines.mend import SNAP_M
from farwall.readers.lines.parallels import Strokes, in_twos
from farwall.readers.lines.sheet import Swing, Words

_MET_M = 0.006
_CLEAR_M, _CLEAR_SHARE = 0.7, 0.02
"""Nothing stands so near inside a border; the inner face of an outer wall does."""
_PLAN_SHARE, _PLAN_STROKES = 0.015, 8
_SIDE = 0.9
_TITLE = re.compile(
    r"\b(SCALE|DATE|DRAWN|CHECKED|APPROVED|SHEET|PROJECT|REV|REVISION|DWG|DRAWING|TITLE|JOB|CLIENT|"
    r"ESCALA|FECHA|DIBUJO|PLANO|REVISO|MASSSTAB|MASSTAB|DATUM|GEZEICHNET|ECHELLE|DESSIN)\b",
    re.IGNORECASE,
)


def connected(strokes: Strokes, within_m: float = _MET_M) -> np.ndarray:
    """For each stroke the number of the piece of drawing it hangs together with."""
    count = len(strokes.given)
    first, second = strokes.tree.query(strokes.lines, predicate="dwithin", distance=within_m)
    ahead = first < second
    return numbered(count, first[ahead].tolist(), second[ahead].tolist())


def find_frame(strokes: Strokes, swings: Sequence[Swing]) -> set[int]:
    """Places of the strokes of a border, with all that hangs on it or lies outside it."""
    if len(strokes.given) < 4 + _PLAN_STROKES:
        return set()
    labels = connected(strokes, SNAP_M)
    low, high = extremes(strokes, labels)
    whole = np.ptp(strokes.ends.reshape(-1, 2), axis=0)
    sizes = high - low
    large = [int(i) for i in np.flatnonzero((sizes > 0.6 * whole).all(axis=1))]
    for piece in sorted(large, key=lambda i: float(np.prod(sizes[i]))):
        inside = ((low > low[piece]) & (high < high[piece])).all(axis=1)
        if _is_frame(strokes, labels, piece, inside, swings):
            return set(np.flatnonzero(~inside[labels]).tolist())
    return set()


def extremes(strokes: Strokes, labels: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The lower left and the upper right corner of each piece, shape (pieces, 2)."""
    low = np.full((int(labels.max()) + 1, 2), np.inf)
    high = -low
    for end in (0, 1):
        np.minimum.at(low, labels, strokes.ends[:, end])
        np.maximum.at(high, labels, strokes.ends[:, end])
    return low, high


def _is_frame(
    strokes: Strokes,
    labels: np.ndarray,
    piece: int,
    inside: np.ndarray,
    swings: Sequence[Swing],
) -> bool:
    own, held = labels == piece, inside[labels]
    if held.sum() < _PLAN_STROKES or not _is_boxed(strokes, own):
        return False
    border, plan = strokes.ends[own].reshape(-1, 2), strokes.ends[held].reshape(-1, 2)
    low, high = border.min(axis=0), border.max(axis=0)
    plan_low, plan_high = plan.min(axis=0), plan.max(axis=0)
    clear = max(_CLEAR_M, _CLEAR_SHARE * float((high - low).max()))
    sides = int((plan_low - low > clear).sum() + (high - plan_high > clear).sum())
    share = float(np.prod(plan_high - plan_low) / np.prod(high - low))
    if in_twos(_some(strokes, own)):
        return False
    if not (
        in_twos(_some(strokes, held))
        or any(_is_within(swing, plan_low, plan_high) for swing in swings)
    ):
        return False
    at_border = any(_is_on(swing, strokes.lines[own]) for swing in swings)
    return sides >= 3 and share > _PLAN_SHARE and not at_border


def _some(strokes: Strokes, which: np.ndarray) -> Strokes:
    return Strokes([s for s, kept in zip(strokes.given, which, strict=True) if kept])


def _is_within(swing: Swing, low: np.ndarray, high: np.ndarray) -> bool:
    return bool((low <= swing.centre).all() and (swing.centre <= high).all())


def _is_on(swing: Swing, lines: np.ndarray) -> bool:
    """A door that hangs on it makes it a wall."""
    return bool((shapely.distance(lines, shapely.Point(swing.centre)) < 0.12).any())


def _is_boxed(strokes: Strokes, own: np.ndarray) -> bool:
    """Whether strokes run along all four sides of the upright box around them."""
    ends = strokes.ends[own]
    low, high = ends.reshape(-1, 2).min(axis=0), ends.reshape(-1, 2).max(axis=0)
    size = high - low
    for axis in (0, 1):
        for edge in (low[axis], high[axis]):
            on_edge = (np.abs(ends[..., axis] - edge) < _MET_M).all(axis=1)
            spans = np.sort(ends[on_edge][..., 1 - axis], axis=1)
            if _covered(spans) < _SIDE * size[1 - axis]:
                return False
    return True


def _covered(spans: np.ndarray) -> float:
    """The length of a line that spans cover, one over the other or not."""
    total, reach = 0.0, -np.inf
    for start, end in sorted(map(tuple, spans)):
        total += max(0.0, end - max(start, reach))
        reach = max(reach, end)
    return float(total)


def find_title(strokes: Strokes, words: Sequence[Words], swings: Sequence[Swing]) -> set[int]:
    """Places of the strokes of a title block: a table lettered SCALE, DATE, SHEET and the like."""
    told = [w for w in words if _TITLE.search(w.text)]
    if len(told) < 2 or not len(strokes.given):
        return set()
    labels = connected(strokes)
    found: set[int] = set()
    for piece in range(int(labels.max()) + 1):
        own = np.flatnonzero(labels == piece)
        if len(own) < 4:
            continue
        points = strokes.ends[own].reshape(-1, 2)
        box = shapely.box(*points.min(axis=0), *points.max(axis=0))
        in_box = [w for w in told if box.covers(shapely.Point(w.at))]
        door = any(box.buffer(0.1).covers(shapely.Point(s.centre)) for s in swings)
        if len(in_box) >= 2 and not door and _square_share(strokes, own) > 0.95:
            found |= set(own.tolist())
    return found


def _square_share(strokes: Strokes, own: np.ndarray) -> float:
    ways, lengths = np.abs(strokes.ways[own]), strokes.lengths[own]
    return float(lengths[ways.min(axis=1) < 0.01].sum() / lengths.sum())
