"""Amounts of money: Decimal, two places on a document, half away from zero.

Source: [en16931] rules BR-DEC (at most two decimals) and BR-CO-17; half is rounded away from
zero, for amounts below zero as well.
"""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_HALF_UP, Decimal

CENT = Decimal("0.01")
NOTHING = Decimal(0)


def amount(text: str) -> Decimal:
    """The amount that a text says. Raises ArithmeticError where it says none."""
    found = Decimal(text)
    if not found.is_finite():
        raise ArithmeticError(f"{text} is no amount")
    return found


def rounded(value: Decimal, step: Decimal = CENT) -> Decimal:
    """To a whole number of steps, half away from zero; the step's own places are kept."""
    if step <= 0:
        raise ArithmeticError(f"{step} is no step")
    return (value / step).quantize(Decimal(1), ROUND_HALF_UP) * step


def share(value: Decimal, percent: Decimal | float | str) -> Decimal:
    """Per cent of an amount, not rounded; a float is read by its shortest digits."""
    return value * Decimal(str(percent)) / 100


def added(values: Iterable[Decimal]) -> Decimal:
    """Their sum, exactly."""
    return sum(values, start=NOTHING)


def written(value: Decimal) -> str:
    """Two decimals, as documents have them; never `-0.00`."""
    return f"{rounded(value) + NOTHING:.2f}"


def figure_said(text: str) -> str:
    """`7,820`, cents where there are any: an amount as it is told, its currency apart."""
    value = rounded(amount(text)) + NOTHING
    whole = value == value.to_integral_value()
    return f"{value:,.0f}" if whole else f"{value:,.2f}"


def whole_said(text: str) -> str:
    """To the whole unit, what a range of cost is told to; below nothing with a true minus."""
    return f"{rounded(amount(text), Decimal(1)) + NOTHING:,.0f}".replace("-", "−")
