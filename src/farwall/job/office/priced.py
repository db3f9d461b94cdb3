"""What the job costs, with its range, and what to ask for it."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours import Hours
from farwall.price.money import amount, rounded, written

LABOUR_PER_H = "55"
"""An invented loaded hour: a guess, to be replaced by the firm's own."""


@dataclass(frozen=True)
class Cost:
    """A line of cost, amounts as text: low, likely, high; its rank."""

    what: str
    low: str
    likely: str
    high: str
    rank: str


@dataclass(frozen=True)
class Priced:
    """Cost line by line, in all, and in which currency."""

    costs: tuple[Cost, ...]
    cost: str
    currency: str
    warnings: tuple[str, ...] = ()


def priced_of(ground: OfficeGround, buying: Buying, hours: Hours) -> Priced:
    """Labour and materials."""
    per_h = amount(ground.job.prices.rates.labour_per_h or LABOUR_PER_H)
    rank = "guess" if ground.job.prices.rates.labour_per_h is None else "measured here"

    def of_hours(value: float) -> str:
        return written(per_h * Decimal(str(round(value, 2))))

    costs = [
        Cost(one.task, of_hours(one.low_h), of_hours(one.likely_h), of_hours(one.high_h), rank)
        for one in hours.tasks
    ]
    costs.append(Cost("materials", buying.total, buying.total, buying.total, rank))
    total = sum((amount(one.likely) for one in costs), start=Decimal(0))
    return Priced(tuple(costs), written(rounded(total)), buying.currency)


def priced_said(found: Priced) -> tuple[str, ...]:
    """Lines for a terminal."""
    lines = [f"{one.what}: {one.likely} ({one.low} to {one.high})" for one in found.costs]
    return (*lines, f"Cost {found.cost} {found.currency}", *found.warnings)
