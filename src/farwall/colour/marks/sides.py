"""What both sides of a strip are like: a lap has two edges, and mottle mostly none.

Where a band dried, its rim stayed; where the next one began, its fans did. So a lap is steep along
both sides, even along its length, and stands on a floor that is as dark on its left as on its
right; a cloud of mottle is steep here and there, and a shadow stands on a step. Each side is
followed by the best path within a few centimetres, for circles leave it in bows.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.boxes import Boxes
from farwall.colour.marks.ground import Bools
from farwall.colour.marks.nouns import Floats32
from farwall.colour.marks.sampled import between, slope, smoothed
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

ALONG_M, ACROSS_M = 0.02, 0.01
"""Places along a strip and across it."""
SOFT_M = (0.03, 0.01)
"""A change across is taken over so much along the strip and across it, one spread of the bell."""
REACH_M = 0.04
"""So far a side may lie off the strip's, for bows and for a width that is only guessed."""
FLANK_M, GAP_M = 0.10, 0.015
"""Floor to each side that the strip is held against, and what lies between."""
BLOCK_M = 0.24
TURN, CLIP = 0.35, 3.0
"""Cost of a turn by a place, and where answers are held, in spreads. Tuned on invented floors."""
_HALF_M = 0.28
_LEAST = 15
WEIGHTS = (-15.0, 0.0666, 2.21, 3.95, 0.239, -0.306)
"""Of one, the sum of the path, the mean of the gentler and of the steeper side, steadiness, step:
log odds of a lap line. Fitted on 570 invented floors with 373 lap lines, and brought to how many
were laps on the 217 of them that were not chosen for one; rank: measured here."""
_MOST_SUM, _MOST_STEADY = 100.0, 7.0
_BLANK = 0.3


@dataclass(frozen=True)
class Strip:
    """A strip on the floor: points (n, 2), rows and columns of the middles of points."""

    points: Floats
    width_m: float


@dataclass(frozen=True)
class Sides:
    """gentler, steeper: mean answer along each side, by the spread of changes on this floor ·
    steady: how much darker its blocks are in the mean, by their spread · step: one flank over the
    other, by the spread of half metres of this floor.
    """

    gentler: float
    steeper: float
    steady: float
    step: float


def chance_of(score: float, sides: Sides | None) -> float:
    """How many strips of such a path and such sides are lap lines, 0 to 1, on invented floors.

    score: sum of its path · sides: None where too little is seen, and nothing is proposed.
    """
    if sides is None:
        return 0.0
    one, total, gentler, steeper, steady, step = WEIGHTS
    lean = (
        one + total * min(score, _MOST_SUM) + gentler * sides.gentler + steeper * sides.steeper
        + steady * min(sides.steady, _MOST_STEADY) + step * min(sides.step, _MOST_STEADY)
    )  # fmt: skip
    return 1 / (1 + math.exp(-max(min(lean, 30.0), -30.0)))


def sides_of(
    dark: Floats32, seen: Bools, step_m: float, strips: Sequence[Strip]
) -> list[Sides | None]:
    """The sides of each strip; None for one that is seen over less than a foot.

    dark: -ln Y, holes filled · seen: where it was seen · step_m: side of its points.
    """
    if not strips or not seen[::5, ::5].any():
        return [None] * len(strips)
    cut = [_straight(dark, seen, step_m, one.points) for one in strips]
    gradient = gradient_of(dark, seen, step_m)
    boxes = [Boxes(dark, seen, step_m), Boxes(dark.T, seen.T, step_m)]
    spreads = {w: _spread(boxes, w) for w in {one.width_m for one in strips}}
    figures = [
        _figures(flat, shown, one.width_m, gradient, spreads[one.width_m])
        for one, (flat, shown) in zip(strips, cut, strict=True)
    ]
    sums = iter(best_ways([side.gain for one in figures if one for side in one.sides]))
    return [one.told([next(sums), next(sums)]) if one else None for one in figures]


@dataclass(frozen=True)
class _Side:
    """gain: of each place along a side, (places along, across) · seen: how many of them are."""

    gain: Floats
    seen: int


@dataclass(frozen=True)
class _Figures:
    sides: tuple[_Side, _Side]
    steady: float
    step: float

    def told(self, sums: Sequence[float]) -> Sides:
        means = [total / max(one.seen, 1) for total, one in zip(sums, self.sides, strict=True)]
        return Sides(min(means), max(means), self.steady, self.step)


def _figures(
    flat: Floats, shown: Bools, width_m: float, gradient: float, spread: float
) -> _Figures | None:
    body, left, right = _means(flat, shown, width_m)
    known = np.isfinite(body + left + right)
    if int(known.sum()) < _LEAST:
        return None
    darker = (body - (left + right) / 2)[known]
    count = max(len(darker) // round(BLOCK_M / ALONG_M), 2)
    blocks = np.array([part.mean() for part in np.array_split(darker, count)])
    change = slope(flat, SOFT_M[0] / ALONG_M, SOFT_M[1] / ACROSS_M) / gradient
    half = len(flat[0]) // 2
    away = round(width_m / 2 / ACROSS_M)
    return _Figures(
        (_side(change, shown, half - away), _side(-change, shown, half + away)),
        float(blocks.mean() / (blocks.std() + _BLANK * spread)),
        float(abs((right - left)[known].mean()) / spread),
    )


def _straight(dark: Floats32, seen: Bools, step_m: float, points: Floats) -> tuple[Floats, Bools]:
    """The floor unrolled along the strip, and where it was seen: (places along, across)."""
    gone = np.concatenate(([0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))))
    at = np.arange(0, gone[-1], ALONG_M / step_m)
    line = np.stack([np.interp(at, gone, points[:, n]) for n in (0, 1)], axis=1)
    calm = smoothed(line, 12.0)
    ahead = np.gradient(calm, axis=0)
    long = np.maximum(np.hypot(ahead[:, 0], ahead[:, 1]), 1e-9)[:, None]
    aside = np.stack((ahead[:, 1], -ahead[:, 0]), axis=1) / long
    count = round(_HALF_M / ACROSS_M)
    across = np.arange(-count, count + 1) * (ACROSS_M / step_m)
    rows = line[:, None, 0] + aside[:, None, 0] * across[None]
    columns = line[:, None, 1] + aside[:, None, 1] * across[None]
    high, wide = dark.shape
    r, c = rows.round().astype(np.intp), columns.round().astype(np.intp)
    inside = (r >= 0) & (r < high) & (c >= 0) & (c < wide)
    shown = seen[np.clip(r, 0, high - 1), np.clip(c, 0, wide - 1)] & inside
    return between(dark, rows, columns), shown


def _means(flat: Floats, shown: Bools, width_m: float) -> tuple[Floats, Floats, Floats]:
    """Along the strip: mean of it, of its left and of its right flank; nan where hidden."""
    count = len(flat[0]) // 2
    off = np.arange(-count, count + 1) * ACROSS_M
    near, far = width_m / 2 + GAP_M, width_m / 2 + GAP_M + FLANK_M
    parts = (
        abs(off) <= width_m / 2 - ACROSS_M, (off < -near) & (off > -far), (off > near) & (off < far)
    )  # fmt: skip
    body, left, right = (_mean(flat[:, part], shown[:, part]) for part in parts)
    return body, left, right


def _mean(of: Floats, shown: Bools) -> Floats:
    count = shown.sum(axis=1)
    total = (of * shown).sum(axis=1) / np.maximum(count, 1)
    return np.where(count > 0.5 * shown.shape[1], total, np.nan)


def gradient_of(dark: Floats32, seen: Bools, step_m: float) -> float:
    """Spread of a change across any line of this floor, by a place across."""
    along, across = SOFT_M[0] / step_m, SOFT_M[1] / step_m
    told = []
    for of, known in ((dark, seen), (np.ascontiguousarray(dark.T), seen.T)):
        told.append(slope(of, along, across, reach=3.0)[::5, ::5][known[::5, ::5]])
    every = np.concatenate(told) * (ACROSS_M / step_m)
    return middling(every)


def _spread(boxes: Sequence[Boxes], width_m: float) -> float:
    """Spread of how much darker half a metre of strip is than its flanks, anywhere."""
    halves = width_m / 2 - ACROSS_M, width_m / 2 + GAP_M, width_m / 2 + GAP_M + FLANK_M
    told = []
    for one in boxes:
        body, near, far = (2 * round(half / one.step_m) + 1 for half in halves)
        means = [one.means(wide) for wide in (body, near, far)]
        beside = (far * means[2] - near * means[1]) / (far - near)
        told.append(means[0] - beside)
    return middling(np.concatenate(told))


def middling(of: NDArray[np.floating]) -> float:
    """Spread from the middle two quarters, never nothing."""
    return max(float(np.median(np.abs(of - np.median(of)))) / 0.6745, 1e-5)


def _side(change: Floats, shown: Bools, at: int) -> _Side:
    reach = round(REACH_M / ACROSS_M)
    own = slice(at - reach, at + reach + 1)
    gain = np.where(shown[:, own], np.clip(change[:, own], -CLIP, CLIP), 0.0)
    return _Side(gain, int(shown[:, own].any(axis=1).sum()))


def best_ways(gains: Sequence[Floats]) -> list[float]:
    """Of each the sum of the best path from the first row to the last; a turn by a place costs
    `TURN`. gains: (rows, places), of as many places each."""
    if not gains:
        return []
    # A row of nothing after the last adds nothing to the best.
    rows = np.zeros((max(map(len, gains)), len(gains), gains[0].shape[1]))
    for n, gain in enumerate(gains):
        rows[: len(gain), n] = gain
    came = rows[0]
    for row in rows[1:]:
        turned = came - TURN
        np.maximum(came[:, 1:], turned[:, :-1], out=came[:, 1:])
        np.maximum(came[:, :-1], turned[:, 1:], out=came[:, :-1])
        came = came + row
    return [float(most) for most in came.max(axis=1)]
