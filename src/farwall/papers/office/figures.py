"""Amounts and days as papers say them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta

from farwall.papers.office.ground import PaperGround
from farwall.price.money import figure_said


def money_said(text: str, currency: str) -> str:
    """`7,820 USD`, cents where there are any; a code of ISO 4217, which no two countries share."""
    return f"{figure_said(text)} {currency}"


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
