"""An invoice as a noun: who, to whom, which lines, what was paid before. Money is Decimal.

Amounts of a credit note are told as on the note itself: above zero gives money back.
Terms in brackets are those of [en16931].
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from functools import cached_property
from typing import Literal

from farwall.facts.firm import Address, Firm, Party
from farwall.facts.prices import TaxKind
from farwall.nouns import dataclass
from farwall.price.money import NOTHING
from farwall.price.totals import Totals, tax_groups, totals

Kind = Literal["deposit", "progress", "final", "credit"]
"""What an invoice asks for: the deposit, what is due in between, the rest; or gives back."""
Unit = Literal["one", "square foot", "square metre", "hour"]


@dataclass(frozen=True)
class TaxOf:
    """How an amount is taxed: kind, rate in per cent, its name on the paper, why none is taken.

    told: False where nobody told of a tax, so that the kind says nothing.
    """

    kind: TaxKind
    percent: Decimal = NOTHING
    name: str = ""
    reason: str = ""
    told: bool = True


UNTOLD = TaxOf("not subject", told=False)
"""An amount of which nobody told how it is taxed."""


@dataclass(frozen=True)
class Line:
    """A line (BG-25): what, its net amount, how it is taxed; how many of what.

    price: of one unit (BT-146); None: the net amount is that of the whole quantity, which is then
    the base of the price (BT-149), so that no cent is lost by dividing. words: what is said of it.
    """

    what: str
    net: Decimal
    tax: TaxOf
    quantity: Decimal = Decimal(1)
    unit: Unit = "one"
    price: Decimal | None = None
    words: str = ""


@dataclass(frozen=True)
class Extra:
    """An allowance or a charge on the whole document (BG-20, BG-21), its amount above zero."""

    charge: bool
    amount: Decimal
    why: str
    tax: TaxOf


@dataclass(frozen=True)
class Earlier:
    """An invoice that went before (BG-3): number, day."""

    number: str
    on: str = ""


NOWHERE = Address()


@dataclass(frozen=True)
class Invoice:
    """All that stands on it. number, on: empty on a draft. Days are ISO.

    due_on: empty where terms say it · done_on: day of the work's end (BT-72) · site: where the
    work was done · prepaid: paid before, with tax (BT-113) · rounding: BT-114.
    """

    kind: Kind
    seller: Firm
    buyer: Party
    currency: str
    lines: tuple[Line, ...]
    extras: tuple[Extra, ...] = ()
    number: str = ""
    on: str = ""
    due_on: str = ""
    done_on: str = ""
    site: Address = NOWHERE
    prepaid: Decimal = NOTHING
    rounding: Decimal = NOTHING
    terms: str = ""
    notes: tuple[str, ...] = ()
    earlier: tuple[Earlier, ...] = ()

    @property
    def draft(self) -> bool:
        """Whether number or day are not told yet."""
        return not (self.number.strip() and self.on)

    @property
    def credit(self) -> bool:
        """Whether it gives money back: asked for, or its sum is below zero."""
        return self.kind == "credit" or self.totals.with_tax < 0

    @cached_property
    def totals(self) -> Totals:
        """Its sums. Source: [en16931]."""
        taxed = [(one.tax.kind, one.tax.percent, one.net) for one in self.lines]
        taxed += [
            (one.tax.kind, one.tax.percent, one.amount if one.charge else -one.amount)
            for one in self.extras
        ]
        return totals(
            [one.net for one in self.lines],
            allowances=[one.amount for one in self.extras if not one.charge],
            charges=[one.amount for one in self.extras if one.charge],
            taxes=tax_groups(taxed),
            prepaid=self.prepaid,
            rounding=self.rounding,
        )

    @property
    def taxes(self) -> tuple[TaxOf, ...]:
        """Every way in which an amount is taxed, each once, in order."""
        every = (*(one.tax for one in self.lines), *(one.tax for one in self.extras))
        return tuple(dict.fromkeys(every))


def as_note(invoice: Invoice) -> Invoice:
    """The same with every sign turned: what is below zero on an invoice, as a credit note has it.

    An allowance becomes a charge of the same amount, for an amount on a document is above zero.
    """
    return replace(
        invoice,
        kind="credit",
        lines=tuple(
            replace(one, net=-one.net, quantity=-one.quantity if one.price is not None
                    else one.quantity)
            for one in invoice.lines
        ),
        extras=tuple(replace(one, charge=not one.charge) for one in invoice.extras),
        prepaid=-invoice.prepaid,
        rounding=-invoice.rounding,
    )  # fmt: skip
