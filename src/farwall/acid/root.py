"""Where a function comes to nothing between two places: Brent's method [brent-1973].

Step by step as `scipy.optimize.brentq` takes it, and so with the same answers, without loading
scipy's optimisers: that alone took a short command a seventh of its time.
"""

from __future__ import annotations

from collections.abc import Callable
from math import isnan

MOST_STEPS = 100
RELATIVE = 4 * 2.0**-52
"""The finest relative width that makes sense in double precision."""
_At = tuple[float, float]
"""A place and what is told there."""


def root_between(
    told: Callable[[float], float],
    low: float,
    high: float,
    *,
    width: float,
    relative: float = RELATIVE,
) -> float:
    """A place where `told` is 0, to `width` and `relative` times itself.

    `told` is 0 at one end, or below 0 at one and above 0 at the other; else ValueError. Raises
    ArithmeticError where it tells no number, or 100 steps do not do.
    """
    before, here = (low, _number(told(low))), (high, _number(told(high)))
    if before[1] == 0:
        return low
    if here[1] == 0:
        return high
    if (before[1] < 0) == (here[1] < 0):
        raise ValueError(f"there may be no root between {low:g} and {high:g}")
    other, last, step = before, 0.0, 0.0
    for _ in range(MOST_STEPS):
        if (before[1] < 0) != (here[1] < 0):
            other = before
            last = step = here[0] - before[0]
        if abs(other[1]) < abs(here[1]):
            before, here, other = here, other, here
        near = (width + relative * abs(here[0])) / 2
        half = (other[0] - here[0]) / 2
        if here[1] == 0 or abs(half) < near:
            return here[0]
        last, step = _steps(before, here, other, (last, step), (half, near))
        to = here[0] + (step if abs(step) > near else near if half > 0 else -near)
        before, here = here, (to, _number(told(to)))
    raise ArithmeticError(f"no root within {MOST_STEPS} steps between {low:g} and {high:g}")


def _steps(
    before: _At, here: _At, other: _At, steps: tuple[float, float], widths: tuple[float, float]
) -> tuple[float, float]:
    """The step before and the next one: along the line or parabola, else the half."""
    last, step = steps
    half, near = widths
    if abs(last) > near and abs(here[1]) < abs(before[1]):
        tried = _tried(before, here, other)
        if 2 * abs(tried) < min(abs(last), 3 * abs(half) - near):
            return step, tried
    return half, half


def _tried(before: _At, here: _At, other: _At) -> float:
    """The step to where the line, or the turned parabola, comes to nothing."""
    if before[0] == other[0]:
        return -here[1] * (here[0] - before[0]) / (here[1] - before[1])
    by_before = (before[1] - here[1]) / (before[0] - here[0])
    by_other = (other[1] - here[1]) / (other[0] - here[0])
    part = other[1] * by_other - before[1] * by_before
    return -here[1] * part / (by_other * by_before * (other[1] - before[1]))


def _number(value: float) -> float:
    if isnan(value):
        raise ArithmeticError("no number is told")
    return float(value)
