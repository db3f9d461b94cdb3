"""Rates and terms of money work that are taken: the firm's own, else by rank, or none.

Amounts of money that are not the firm's own are in dollars, as the contracts have them; for any
other currency nothing is taken, and the firm is asked.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.price.money import amount

CONTRACTS = "finisher-terms"
_GUESS = "house-guess"
_OWN = "told by the firm"


@dataclass(frozen=True)
class Taken:
    """A figure with its rank and source."""

    value: Decimal
    rank: str
    source: str


@dataclass(frozen=True)
class MoneyTerms:
    """What is taken for this job. None: told by nobody, and not to be guessed.

    change_per_h: of one person · change_material_percent: put on materials · standby_per_h: of the
    crew · deposit_percent, progress_percent: of the agreed price · tolerance_percent: of the area.
    """

    change_per_h: Taken | None
    change_material_percent: Taken
    standby_per_h: Taken | None
    deposit_percent: Taken
    progress_percent: Taken
    pay_days: Taken
    tolerance_percent: Taken


def money_terms(job: Job) -> MoneyTerms:
    """The firm's rates and terms with what stands in for them. Source: [finisher-terms]."""
    rates, terms = job.prices.rates, job.prices.terms
    dollars = job.prices.currency == "USD"
    change = _sum(rates.change_per_h, "50" if dollars else None, Rank.PRACTICE, CONTRACTS)
    deposit = _figure(terms.deposit_percent, 50, Rank.PRACTICE, CONTRACTS)
    return MoneyTerms(
        change_per_h=change,
        change_material_percent=_figure(
            rates.change_material_percent, 50, Rank.PRACTICE, CONTRACTS
        ),
        standby_per_h=_standby(rates.standby_per_h, change),
        deposit_percent=deposit if deposit.source == _OWN else _within(deposit, job),
        progress_percent=_figure(terms.progress_percent, 0, Rank.GUESS, _GUESS),
        pay_days=_figure(terms.pay_days, 0, Rank.GUESS, _GUESS),
        tolerance_percent=_figure(terms.area_tolerance_percent, 5, Rank.PRACTICE, CONTRACTS),
    )


def _sum(own: str | None, usual: str | None, rank: Rank, source: str) -> Taken | None:
    if own is not None:
        return Taken(amount(own), Rank.MEASURED.value, _OWN)
    return None if usual is None else Taken(amount(usual), rank.value, source)


def _figure(own: float | None, usual: int, rank: Rank, source: str) -> Taken:
    if own is not None:
        return Taken(Decimal(str(own)), Rank.MEASURED.value, _OWN)
    return Taken(Decimal(usual), rank.value, source)


def _standby(own: str | None, change: Taken | None) -> Taken | None:
    """Two people waiting, at what an hour of change costs, where the firm did not say."""
    if own is not None:
        return Taken(amount(own), Rank.MEASURED.value, _OWN)
    return None if change is None else Taken(2 * change.value, Rank.GUESS.value, _GUESS)


def _within(deposit: Taken, job: Job) -> Taken:
    """A usual deposit beside a told progress payment: together at most the whole."""
    progress = job.prices.terms.progress_percent
    left = 100 - Decimal(str(progress or 0))
    return Taken(min(deposit.value, left), deposit.rank, deposit.source)
