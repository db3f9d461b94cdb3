"""Fifty invented invoices, always the same: every kind of tax, deposits, credits, odd names."""

from __future__ import annotations

from decimal import Decimal
from random import Random

from farwall.facts.firm import Address, Firm, Party
from farwall.price.invoice import Earlier, Extra, Invoice, Line, TaxOf
from farwall.price.money import rounded

NAMES = (
    "Alder Lane Homes", "Brück & Söhne <Estrich> \"Nord\"", "מרצפות האלון", "橡木地坪公司",
    "N" * 60, "O'Dell & Daughters", "Ωmega \u202eFloors", "Maison d’Érable; cour 3",
)  # fmt: skip
STANDARD = TaxOf("standard", Decimal("8.25"), "sales tax")
LOWER = TaxOf("standard", Decimal("7"), "lower rate")
ZERO = TaxOf("zero", name="zero rate")
EXEMPT = TaxOf("exempt", reason="exempt by an invented law, section 4 & 5")
REVERSE = TaxOf("reverse charge", reason="Reverse charge")
OUTSIDE = TaxOf("not subject", reason="Not subject to tax")
MIXES = (
    (STANDARD,), (ZERO,), (EXEMPT,), (REVERSE,), (OUTSIDE,), (STANDARD, LOWER),
    (STANDARD, ZERO, EXEMPT), (LOWER, EXEMPT),
)  # fmt: skip
COUNT = 50


def firm(name: str, country: str) -> Firm:
    return Firm(
        name=name, address=Address(("12 Kiln Row", "yard 3", "gate B", "bell 4"), "Harbour Town",
                                   "Coast", "00123", country),
        phone="000 555 0100", email="office@invented.example", tax_id=f"{country}123456789",
        company_id="00-1234", contact="R. Invented", account="00 123 456",
        pay_words="Cheque to the firm",
    )  # fmt: skip


def line(draw: Random, tax: TaxOf) -> Line:
    net = rounded(Decimal(draw.randrange(-90_000, 900_000)) / 100)
    kind = draw.randrange(3)
    if kind == 0:
        hours = Decimal(draw.randrange(1, 400)) / 4
        price = Decimal(draw.randrange(3000, 9000)) / 100
        return Line("Change order", rounded(hours * price), tax, hours, "hour", price)
    if kind == 1:
        area = Decimal(draw.randrange(1, 30_000)) / 10
        return Line("Floor, stained & sealed <two coats>", net, tax, area, "square foot",
                    words="great room; hall")  # fmt: skip
    return Line("Change of the drain", net, tax)


def invoice(n: int) -> Invoice:
    draw = Random(n)
    mix = MIXES[n % len(MIXES)]
    country = ("US", "DE", "MX")[n % 3]
    lines = [line(draw, tax) for tax in mix]
    lines += [line(draw, draw.choice(mix)) for _ in range(draw.randrange(5))]
    if n % 11 == 5:  # more left out than done: its sum is below zero
        lines.append(Line("The whole floor, left out", Decimal("-60000.00"), mix[0]))
    extras = tuple(
        Extra(draw.random() < 0.5, Decimal(draw.randrange(1, 9000)) / 100, "agreed & written",
              draw.choice(mix))
        for _ in range(draw.randrange(3))
    )  # fmt: skip
    buyer = Party(
        name=NAMES[(n * 3 + 1) % len(NAMES)], address=Address(("1 Elm",), "Town", "", "9", "FR"),
        tax_id="FR00123" if REVERSE in mix or n % 2 else "", reference="order 7" if n % 4 else "",
    )  # fmt: skip
    kind = ("final", "deposit", "progress", "final", "credit")[n % 5]
    return Invoice(
        kind=kind, seller=firm(NAMES[n % len(NAMES)], country), buyer=buyer,
        currency=("USD", "EUR", "MXN")[n % 3], lines=tuple(lines), extras=extras,
        number=f"2026-{n:03d}", on="2026-06-08", due_on="2026-06-22" if n % 2 else "",
        done_on="2026-06-05" if n % 3 else "",
        site=Address(("Alder Lane",), "Town", "", "", "US") if n % 4 == 1 else Address(),
        prepaid=Decimal(draw.randrange(0, 50_000)) / 100 if n % 3 == 0 else Decimal(0),
        rounding=Decimal(draw.randrange(-4, 5)) / 100 if n % 7 == 0 else Decimal(0),
        terms="Due in 14 days.", notes=("Invented & made for a test.",) if n % 2 else (),
        earlier=(Earlier("2026-000", "2026-05-01"),) if n % 5 in {3, 4} else (),
    )  # fmt: skip


def every() -> list[Invoice]:
    return [invoice(n) for n in range(COUNT)]
