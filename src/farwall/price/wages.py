"""A published wage to hold an hour's cost against: it shows whether a guess is absurd, no more."""

from __future__ import annotations

from decimal import Decimal

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Wage:
    """An hourly wage, USD, before what an employer adds to it; the month that it is of."""

    median: Decimal
    low: Decimal
    high: Decimal
    month: str
    source: str


FINISHERS_US = Wage(Decimal("21.54"), Decimal("14.30"), Decimal("36.04"), "May 2019", "bls-oews")
"""Cement masons and concrete finishers (47-2051), United States: median, 10 and 90 % points
[bls-oews]. No later national row was found."""


def loaded_over_wage(per_h: Decimal, wage: Wage = FINISHERS_US) -> Decimal:
    """How many times the median wage an hour is reckoned at."""
    return per_h / wage.median
