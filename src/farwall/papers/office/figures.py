"""Amounts and days as papers say them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal

from farwall.papers.office.ground import PaperGround
from farwall.price.money import amount, rounded


def money_said(text: str, currency: str) -> str:
    """`7,820 USD`, cents where there are any; a code of ISO 4217, which no two countries share."""
    return f"{figure_said(text)} {currency}"


def figure_said(text: str) -> str:
    """The same without its currency, for a column that names it once."""
    value = rounded(amount(text)) + Decimal(0)
    whole = value == value.to_integral_value()
    return f"{value:,.0f}" if whole else f"{value:,.2f}"


def whole_said(text: str) -> str:
    """To the whole unit, what a range of cost is told to; below nothing with a true minus."""
    return f"{rounded(amount(text), Decimal(1)) + Decimal(0):,.0f}".replace("-", "−")


def day_said(ground: PaperGround, day: date) -> str:
    """A day in the manner of the paper's units, in English; the book of phrases knows it."""
    at = datetime.combine(day, time(), ground.clock.starts_at.tzinfo)
    return replace(ground.clock, starts_at=at, day_told=True).day()


def asked_on(ground: PaperGround) -> date | None:
    """The day of the question, where anybody told one."""
    return date.fromisoformat(ground.ground.on) if ground.ground.on else None


def until(day: date, days: int) -> date:
    """The last day on which something holds."""
    return day + timedelta(days=days)
