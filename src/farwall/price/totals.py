"""Totals of an invoice, exactly as the European standard adds them. Decimal all through.

Source: [en16931] business rules BR-CO-10 to BR-CO-17 and the rules BR-DEC (at most two decimals);
half is rounded away from zero, below zero too. What is rounded, and when: each line first; then
the tax of each kind and rate, once; all else is exact sums of these.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import ROUND_FLOOR, Decimal

from farwall.facts.prices import TaxKind
from farwall.nouns import dataclass
from farwall.price.money import NOTHING, added, rounded, share


@dataclass(frozen=True)
class TaxGroup:
    """What is taxed alike: the kind, its rate in per cent, what it is taken of, the tax.

    base: BT-116, two decimals · amount: BT-117, base times rate, rounded once (BR-CO-17).
    """

    kind: TaxKind
    percent: Decimal
    base: Decimal

    @property
    def amount(self) -> Decimal:
        """The tax."""
        return rounded(share(self.base, self.percent))


@dataclass(frozen=True)
class Totals:
    """The sums of a document, each with two decimals.

    sum_of_lines: BT-106 · allowances, charges: BT-107, BT-108 · prepaid: BT-113 · rounding: BT-114.
    """

    sum_of_lines: Decimal
    allowances: Decimal
    charges: Decimal
    taxes: tuple[TaxGroup, ...]
    prepaid: Decimal = NOTHING
    rounding: Decimal = NOTHING

    @property
    def without_tax(self) -> Decimal:
        """BT-109: lines less allowances, with charges (BR-CO-13)."""
        return self.sum_of_lines - self.allowances + self.charges

    @property
    def tax(self) -> Decimal:
        """BT-110: the taxes of all groups (BR-CO-14)."""
        return added(one.amount for one in self.taxes)

    @property
    def with_tax(self) -> Decimal:
        """BT-112 (BR-CO-15)."""
        return self.without_tax + self.tax

    @property
    def payable(self) -> Decimal:
        """BT-115: what is to be paid now (BR-CO-16)."""
        return self.with_tax - self.prepaid + self.rounding

    @property
    def bases(self) -> Decimal:
        """What all groups are taken of; equal to `without_tax` where every amount has its group."""
        return added(one.base for one in self.taxes)


def totals(
    lines: Iterable[Decimal],
    *,
    allowances: Iterable[Decimal] = (),
    charges: Iterable[Decimal] = (),
    taxes: Sequence[TaxGroup] = (),
    prepaid: Decimal = NOTHING,
    rounding: Decimal = NOTHING,
) -> Totals:
    """Sums of amounts, each rounded to two decimals before it is added. Source: [en16931]."""
    return Totals(
        sum_of_lines=added(map(rounded, lines)),
        allowances=added(map(rounded, allowances)),
        charges=added(map(rounded, charges)),
        taxes=tuple(TaxGroup(one.kind, one.percent, rounded(one.base)) for one in taxes),
        prepaid=rounded(prepaid),
        rounding=rounded(rounding),
    )


Taxed = tuple[TaxKind, Decimal, Decimal]
"""An amount that is taxed: kind, rate in per cent, the amount (an allowance below zero)."""


def tax_groups(amounts: Iterable[Taxed]) -> tuple[TaxGroup, ...]:
    """Amounts added up by kind and rate, in the order in which these first come.

    Each amount is rounded first, so that the groups add up to the document's sum (BR-S-08 and its
    sisters of the other kinds).
    """
    found: dict[tuple[TaxKind, Decimal], Decimal] = {}
    for kind, percent, value in amounts:
        key = (kind, percent.normalize())
        found[key] = found.get(key, NOTHING) + rounded(value)
    return tuple(TaxGroup(kind, percent, base) for (kind, percent), base in found.items())


def spread_over(whole: Decimal, weights: Sequence[Decimal]) -> tuple[Decimal, ...]:
    """An amount spread by weights, two decimals each, the last weight that is none takes the rest.

    Nothing is lost: the parts add up to the rounded whole. Raises ArithmeticError where all weights
    together are nothing.
    """
    total = added(weights)
    if total == 0:
        raise ArithmeticError("nothing to spread over")
    parts = [rounded(whole * one / total) for one in weights]
    last = max(n for n, one in enumerate(weights) if one != 0)
    rest = rounded(whole) - added(parts)
    return tuple(part + (rest if n == last else NOTHING) for n, part in enumerate(parts))


def whole_parts(parts: Sequence[Decimal], whole: Decimal) -> tuple[Decimal, ...]:
    """Parts in whole units that add up to a whole: each off by less than one.

    What lies nearest to the next unit takes it, the first of equals before others. whole: within
    one unit of their sum, in whole units.
    """
    low = [one.to_integral_value(ROUND_FLOOR) for one in parts]
    more = int(rounded(whole, Decimal(1)) - added(low))
    by_rest = sorted(range(len(parts)), key=lambda n: (low[n] - parts[n], n))
    taken = set(by_rest[:more])
    return tuple(one + (n in taken) for n, one in enumerate(low))
