"""Two bodies on one floor: how near they come, and who sets out first so that they do not meet."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from farwall.errors import Unanswerable
from farwall.facts.plan import TimedPoint
from farwall.floor.geometry import Point
from farwall.spray.routes import length_m
from farwall.spray.schedule import paced

APART_M = 1.0
"""How far apart the bodies of two who spray stay, middle to middle: two bodies of 0.25 m and half a
metre for arms and wands. Rank: guess."""
PASS_M = 0.55
"""How far apart they stay while one of them only walks or rests: two bodies and a hand. Guess."""
_DELAY_MIN = 0.03

TimedPath = tuple[TimedPoint, ...]


def least_gap_m(one: Sequence[TimedPoint], two: Sequence[TimedPoint]) -> float:
    """The least distance of two who go these ways, each standing still before and after. [m]

    Exact: both go straight and evenly between two moments, and so does the one seen from the other.
    """
    moments = np.array(sorted({t for *_, t in (*one, *two)}))
    away = _at(two, moments) - _at(one, moments)
    if len(moments) == 1:
        return float(np.hypot(*away[0]))
    start, way = away[:-1], np.diff(away, axis=0)
    square = (way**2).sum(axis=1)
    share = np.clip(-(start * way).sum(axis=1) / np.where(square > 0, square, 1.0), 0.0, 1.0)
    return float(np.hypot(*(start + share[:, None] * way).T).min())


def _at(path: Sequence[TimedPoint], moments: npt.NDArray[np.float64]) -> npt.NDArray[np.float64]:
    rows = np.array(path)
    return np.stack([np.interp(moments, rows[:, 2], rows[:, i]) for i in (0, 1)], axis=1)


def timed(path: Sequence[Point], start: float, minutes: float) -> TimedPath:
    """The path walked evenly from `start` on; standing still where it has no length."""
    return paced(path, round(start, 4), round(start + minutes, 4))


def walks_apart(
    paths: tuple[Sequence[Point], Sequence[Point]], start: float, pace_m_min: float
) -> tuple[TimedPath, TimedPath]:
    """Both ways on the clock from `start` on, one waiting as long as it takes to keep apart.

    Of all waits tried, in steps of 0.03 min, the one with which both have arrived soonest.
    Raises `Unanswerable` where they cannot get by one another at all.
    """
    lasts = [length_m(path) / pace_m_min + 0.00005 for path in paths]
    found = []
    for waits in (0, 1):
        for step in range(math.ceil(lasts[1 - waits] / _DELAY_MIN) + 1):
            begin = [start, start]
            begin[waits] += step * _DELAY_MIN
            one, two = (timed(p, b, m) for p, b, m in zip(paths, begin, lasts, strict=True))
            if least_gap_m(one, two) >= PASS_M:
                found.append((max(one[-1][2], two[-1][2]), waits, one, two))
                break
    if not found:
        (x, y), (u, v) = paths[0][-1], paths[1][-1]
        raise Unanswerable(
            f"Two sprayers cannot get by one another on the way to ({x:.2f}, {y:.2f}) and "
            f"({u:.2f}, {v:.2f}) m."
        )
    _, _, one, two = min(found, key=lambda way: way[:2])
    return one, two
