"""The figures of a lesson as they are shown: which unit, how many digits, how far it has moved."""

from __future__ import annotations

from typing import Literal

from farwall.facts.lessons import Lesson
from farwall.units import ft2_from_m2, ft2_per_gal_from_m2_per_l

Units = Literal["us", "metric"]
Moved = Literal["percent", "points", "variance", "steps"]
"""In what a lesson moves: per cent as a factor, points of a share, of the variance, steps."""
_WORDS = {"spread of ln": "of itself up or down"}
"""What no site has a unit for: a deviation of ln by 0.2 is about a fifth of the figure."""
_US = {"m2/L": "ft²/US gal", "m2/min": "ft²/min"} | _WORDS
_SI = {"m2/L": "m²/L", "m2/min": "m²/min", "h on 1,500 ft²": "h on 139 m²"} | _WORDS


def unit_shown(one: Lesson, units: Units = "us") -> str:
    """The unit in which it is shown."""
    return (_US if units == "us" else _SI).get(one.unit, one.unit)


def value_shown(one: Lesson, value: float, units: Units = "us") -> float:
    """A value of the lesson in that unit."""
    if units != "us":
        return value
    if one.unit == "m2/L":
        return ft2_per_gal_from_m2_per_l(value)
    return ft2_from_m2(value) if one.unit == "m2/min" else value


def figure(value: float) -> str:
    """A value with three digits that count."""
    return f"{value:.0f}" if abs(value) >= 100 else f"{value:.3g}"


def figures_shown(one: Lesson, units: Units = "us") -> list[str]:
    """low, likely, high of the next job; low and high of the quantity itself."""
    ends = (one.low, one.likely, one.high, one.own_low, one.own_high)
    return [figure(value_shown(one, end, units)) for end in ends]


def practice_shown(one: Lesson, units: Units = "us") -> str:
    """What common practice says of it."""
    return figure(value_shown(one, one.practice, units))


def moved(one: Lesson) -> tuple[str, Moved]:
    """By how much the likely value has moved from common practice, and in what."""
    if is_factor(one) or one.unit.startswith("spread"):
        return f"{100 * (one.likely / one.practice - 1):+.0f}", "percent"
    return moved_by(one, one.likely - one.practice)


def moved_by(one: Lesson, amount: float) -> tuple[str, Moved]:
    """What a job moved it by, and in what."""
    if is_factor(one):
        return f"{amount:+.1f}", "percent"
    if one.unit.startswith("%"):
        return f"{amount:+.1f}", "points"
    if "spread" in one.unit:
        return f"{amount:+.1f}", "variance"
    return f"{amount:+.2f}", "steps"


def is_factor(one: Lesson) -> bool:
    """Whether it moves by a factor."""
    return not one.unit.startswith(("%", "steps", "spread"))
