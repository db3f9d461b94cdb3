"""An invoice whose sum is below nothing, told as a credit note: every sign by hand."""

from __future__ import annotations

from decimal import Decimal

from farwall.facts.firm import Firm, Party
from farwall.price.invoice import Extra, Invoice, Line, TaxOf, as_note

STANDARD = TaxOf("standard", Decimal(10))
TAKEN_BACK = Line("floor left out", Decimal("-300.00"), STANDARD, Decimal(-2), price=Decimal(150))
WHOLE = Line("visit", Decimal("-40.00"), STANDARD, Decimal(3), unit="hour")
INVOICE = Invoice(
    "final", Firm(), Party(), "USD", (TAKEN_BACK, WHOLE),
    extras=(
        Extra(charge=True, amount=Decimal(30), why="travel", tax=STANDARD),
        Extra(charge=False, amount=Decimal(10), why="rebate", tax=STANDARD),
    ),
    prepaid=Decimal(50), rounding=Decimal("0.02"),
)  # fmt: skip


def test_every_sign_turns_in_a_credit_note_by_hand():
    """-300 - 40 + 30 - 10 = -320, with a tenth of tax -352; less 50 paid, with 0.02: -401.98."""
    note = as_note(INVOICE)
    assert INVOICE.totals.payable == Decimal("-401.98")
    assert (note.totals.without_tax, note.totals.with_tax) == (Decimal(320), Decimal(352))
    assert note.totals.payable == Decimal("401.98")
    assert note.credit


def test_what_has_a_price_turns_its_number_and_what_has_none_keeps_it():
    """300 is 2 times 150; the visit of 3 hours is 40 in one sum."""
    first, second = as_note(INVOICE).lines
    assert (first.net, first.quantity, first.price) == (Decimal(300), Decimal(2), Decimal(150))
    assert (second.net, second.quantity, second.price) == (Decimal(40), Decimal(3), None)
