"""So many of each ware of one material, and its prices as whole numbers."""

from __future__ import annotations

from decimal import Decimal

from farwall.mix.pack import Aim
from farwall.nouns import dataclass

PLACES = 4
"""Decimals of a price that are reckoned with; prices of more are refused by the reader."""


@dataclass(frozen=True)
class Choice:
    """Counts by ware, cost in ten-thousandths, what is held in measures.

    at_least: where the search was cut short, what no choice costs less than; else None.
    """

    counts: tuple[int, ...]
    cost: int
    held: int
    at_least: int | None = None

    @property
    def least(self) -> int:
        """Nothing that does costs less."""
        return self.cost if self.at_least is None else self.at_least

    def key(self, aim: Aim) -> tuple[int, ...]:
        """What is made as small as can be, first things first."""
        many = sum(self.counts)
        return (self.cost, self.held, many) if aim == "cost" else (self.held, self.cost, many)


def price_units(text: str) -> int:
    """A price in ten-thousandths. Raises ArithmeticError where it has more decimals."""
    amount = Decimal(text)
    if -int(amount.as_tuple().exponent) > PLACES:
        raise ArithmeticError(f"{text} has more than {PLACES} decimals")
    return int(amount.scaleb(PLACES))
