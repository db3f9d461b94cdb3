"""Drips: dark round dots that stand out of the floor's own specks.

Sand and pinholes are dark round dots too, and there are many. So their own tail is drawn on to
where less than one of them would be expected, and only what lies beyond is proposed.
"""

from __future__ import annotations

import math

import numpy as np

from farwall.colour.marks.ground import Ground, blurred
from farwall.colour.marks.nouns import Floats32
from farwall.nouns import dataclass

SIGMAS_M = (0.006, 0.011)
_MANY, _FEW = 60, 10
_BEYOND = 4.2
"""Powers of e beyond the dot that is expected once. Chosen on tuning floors."""
_ROUND = 0.45


@dataclass(frozen=True)
class Dot:
    """Where (row, column), how large, how far beyond the floor's own specks, how dark."""

    at: tuple[float, float]
    wide_m: float
    beyond: float
    darker: float


def dots_of(ground: Ground, *, most: int = 8) -> list[Dot]:
    """Dark dots beyond the floor's own specks, the surest first."""
    found: list[Dot] = []
    for sigma_m in SIGMAS_M:
        if sigma_m / ground.step_m >= 0.9:
            found += _beyond(ground, sigma_m)
    kept: list[Dot] = []
    for dot in sorted(found, key=lambda dot: (-dot.beyond, dot.at)):
        near = 0.04 / ground.step_m
        if all(math.hypot(dot.at[0] - k.at[0], dot.at[1] - k.at[1]) > near for k in kept):
            kept.append(dot)
    return kept[:most]


def _beyond(ground: Ground, sigma_m: float) -> list[Dot]:
    import cv2

    sigma = sigma_m / ground.step_m
    answer = _answer(ground.dark, sigma)
    top = cv2.dilate(answer, np.ones((7, 7), np.uint8))
    peaks = np.argwhere((answer >= top) & (answer > 0) & ground.seen)
    heights = answer[tuple(peaks.T)]
    order = np.argsort(-heights, kind="stable")[: 4 * _MANY]
    if len(order) < _MANY:
        return []
    logs = np.log(heights[order])
    base = float(logs[_MANY - 1])
    tail = max(float(np.mean(logs[_FEW : _MANY - 1] - base)), 0.02)
    once = base + tail * math.log(_MANY)
    found = []
    for n in order[:_FEW]:
        row, column = (int(v) for v in peaks[n])
        beyond = (math.log(float(heights[n])) - once) / tail
        if beyond < _BEYOND or float(heights[n]) < 0.04:
            continue
        if _roundness(ground.dark, row, column, sigma) < _ROUND:
            continue
        found.append(Dot((row + 0.5, column + 0.5), 3 * sigma_m, beyond, 2 * float(heights[n])))
    return found


def _answer(dark: Floats32, sigma: float) -> Floats32:
    """How much darker a dot is than its surrounds."""
    return np.asarray(blurred(dark, sigma) - blurred(dark, 2.2 * sigma), dtype=np.float32)


def _roundness(dark: Floats32, row: int, column: int, sigma: float) -> float:
    """The lesser curvature by the greater: 1 for a dot, 0 for a line."""
    reach = round(4 * sigma) + 2
    if min(row, column, dark.shape[0] - row, dark.shape[1] - column) <= reach:
        return 0.0
    soft = blurred(
        np.ascontiguousarray(
            dark[row - reach : row + reach + 1, column - reach : column + reach + 1]
        ),
        sigma,
    )
    n = reach
    d = max(round(sigma), 1)
    yy = float(soft[n + d, n] + soft[n - d, n] - 2 * soft[n, n])
    xx = float(soft[n, n + d] + soft[n, n - d] - 2 * soft[n, n])
    xy = (
        float(soft[n + d, n + d] + soft[n - d, n - d] - soft[n + d, n - d] - soft[n - d, n + d]) / 4
    )
    half, root = (xx + yy) / 2, math.hypot((xx - yy) / 2, xy)
    least, most = half + root, half - root
    return least / most if most < 0 and least < 0 else 0.0
