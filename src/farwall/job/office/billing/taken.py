"""Rates and terms of money work that are taken: the firm's own, else by rank, or none.

Amounts of money that are not the firm's own are in dollars, as finishers' pages have them; for any
other currency nothing is taken, and the firm is asked.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS
from farwall.facts.job import Job
from farwall.price.usual import Used, rates_used

_PAGES = "finishers-pages"
_DEPOSIT_PERCENT = Decimal(50)
"""Of the agreed price, before stain is bought [finishers-pages]."""


@dataclass(frozen=True)
class MoneyTerms:
    """What is taken for this job. None: told by nobody, and not to be guessed.

    change_per_h: of one person · change_material_percent: put on materials · standby_per_h: of the
    crew · deposit_percent, progress_percent: of the agreed price · tolerance_percent: of the area.
    """

    change_per_h: Used | None
    change_material_percent: Used
    standby_per_h: Used | None
    deposit_percent: Used
    progress_percent: Used
    pay_days: Used
    tolerance_percent: Used


def money_terms(job: Job) -> MoneyTerms:
    """The firm's rates and terms with what stands in for them. Source: [finishers-pages]."""
    rates, terms, used = job.prices.rates, job.prices.terms, rates_used(job.prices)
    dollars = job.prices.currency == "USD"
    progress = _figure(terms.progress_percent, Decimal(0), Rank.GUESS, OUR_GUESS)
    usual = min(_DEPOSIT_PERCENT, 100 - progress.amount)
    return MoneyTerms(
        change_per_h=used.change_per_h if dollars or rates.change_per_h is not None else None,
        change_material_percent=used.change_material_percent,
        standby_per_h=used.standby_per_h if dollars or rates.standby_per_h is not None else None,
        deposit_percent=_figure(terms.deposit_percent, usual, Rank.PRACTICE, _PAGES),
        progress_percent=progress,
        pay_days=_figure(terms.pay_days, Decimal(0), Rank.GUESS, OUR_GUESS),
        tolerance_percent=used.area_tolerance_percent,
    )


def _figure(own: float | None, usual: Decimal, rank: Rank, source: str) -> Used:
    if own is not None:
        return Used(f"{Decimal(str(own)).normalize():f}", Rank.MEASURED.value, "told by the firm")
    return Used(f"{usual.normalize():f}", rank.value, source)
