"""Amounts, days and quantities on papers of money. Plain text."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from farwall.papers.office.blocks import Own
from farwall.papers.wall_clock import Units, day_in_words
from farwall.price.invoice import Line, TaxOf
from farwall.price.money import NOTHING, rounded

_SIGNS = {"square foot": "ft²", "square metre": "m²", "hour": "h"}


def grouped(value: Decimal | str) -> str:
    """`6,100.00`: two decimals, thousands apart."""
    return f"{rounded(Decimal(value)) + NOTHING:,.2f}"


def money(value: Decimal | str) -> Own:
    """The same on a paper; the currency stands in the head."""
    return Own(grouped(value))


def how_many(line: Line) -> Own:
    """`1,180 ft²`, `6.5 h`; nothing where it is one piece."""
    if line.unit == "one":
        return Own("")
    return Own(f"{line.quantity.normalize():,f} {_SIGNS[line.unit]}")


def percent(tax: TaxOf) -> Own:
    """`8.25 %`."""
    return Own(f"{tax.percent.normalize():f} %")


def day(text: str, units: Units) -> str:
    """An ISO day in words."""
    return day_in_words(date.fromisoformat(text), units)
