"""What the sides of a crescent are like: each is the bow of a circle, steep all along.

A cloud of mottle may lie in the form of a crescent, but its rim is soft here and steep there. So
the floor is unrolled along the bow, each side is followed by the best path within 3 cm (a hand's
circle is none of a pair of compasses), and the gentler of both tells. How even the crescent is, how
much lighter than its flanks, what stands beyond its ends and its colour were tried as well and told
nothing more.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.crescent_forms import Form
from farwall.colour.marks.ground import Bools, Ground
from farwall.colour.marks.sampled import between, slope
from farwall.colour.marks.sides import best_ways, gradient_of

Floats = NDArray[np.float64]

ALONG_M, ACROSS_M = 0.015, 0.01
REACH_M, LOOKED_M = 0.03, 0.12
CORE = 0.8
"""Share of the arc that is judged: its ends are thin."""
CLIP = 6.0
"""Answers are held here, in spreads: a crescent is steeper than a lap."""
_LEAST = 5
_SOFT = (1.3, 1.0)
WEIGHTS = (-10.1, 0.66, 0.905)
"""Of one, the filter's answer and the gentler side: log odds of a crescent. Fitted on 208 invented
floors with 104 crescents, and brought to how many were crescents on the 100 of them that were not
chosen for one; rank: measured here."""
_MOST_ANSWER, _MOST_SIDE = 14.0, 5.0


def chance_of(answer: float, gentler: float) -> float:
    """How many places of such an answer and such a side are crescents, on invented floors; 0 to 1.

    answer: of the filter, in spreads of the floor · gentler: mean answer along the gentler side, in
    spreads of changes on this floor.
    """
    one, by_answer, by_side = WEIGHTS
    lean = one + by_answer * min(answer, _MOST_ANSWER) + by_side * min(gentler, _MOST_SIDE)
    return 1 / (1 + math.exp(-max(min(lean, 30.0), -30.0)))


def steepness_of(bare: Ground) -> float:
    """Spread of a change across any line of this floor, by a centimetre."""
    return gradient_of(bare.dark, bare.known, bare.step_m)


def gentler_side(
    bare: Ground, at: tuple[float, float], form: Form, steepness: float
) -> float | None:
    """Mean answer along the gentler side, in spreads; None where too little of it is seen."""
    off = _angles(form)
    count = round(LOOKED_M / ACROSS_M)
    out_m = np.asarray(np.arange(-count, count + 1) * ACROSS_M, np.float64)
    down, right = form.places(off[:, None], out_m[None, :])
    rows, columns = down / bare.step_m + at[0] - 0.5, right / bare.step_m + at[1] - 0.5
    shown = _shown(bare.known, rows, columns)
    if int(shown[:, count].sum()) < _LEAST:
        return None
    change = slope(between(bare.dark, rows, columns), *_SOFT) / steepness
    half = form.half_thick(off)
    sides = [_side(sign * change, shown, sign * half) for sign in (1, -1)]
    sums = best_ways([gain for gain, _ in sides])
    return min(total / count for total, (_, count) in zip(sums, sides, strict=True))


def _angles(form: Form) -> Floats:
    most = CORE * form.half_angle
    return np.linspace(-most, most, max(round(2 * most * form.radius_m / ALONG_M), 8))


def _shown(known: Bools, rows: Floats, columns: Floats) -> Bools:
    high, wide = known.shape
    r, c = rows.round().astype(np.intp), columns.round().astype(np.intp)
    inside = (r >= 0) & (r < high) & (c >= 0) & (c < wide)
    return np.asarray(known[np.clip(r, 0, high - 1), np.clip(c, 0, wide - 1)] & inside)


def _side(change: Floats, shown: Bools, side: Floats) -> tuple[Floats, int]:
    """Answers within reach of where the side should lie, angle by angle; at how many it is seen."""
    middle, reach = change.shape[1] // 2, round(REACH_M / ACROSS_M)
    at = middle + np.round(side / ACROSS_M).astype(np.intp)
    own = at[:, None] + np.arange(-reach, reach + 1)
    rows = np.arange(len(change))[:, None]
    gain = np.where(shown[rows, own], np.clip(change[rows, own], -CLIP, CLIP), 0.0)
    return gain, max(int(shown[rows, own].any(axis=1).sum()), 1)
