"""Rates and terms of money work that are taken: the firm's own, else by rank, or none.

Amounts of money that are not the firm's own are in dollars, as finishers' pages have them; for any
other currency nothing is taken, and the firm is asked.
"""

from __future__ import annotations

from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS
from farwall.facts.job import Job
from farwall.nouns import dataclass
from farwall.price.usual import Used

_PAGES = "finishers-pages"
_DEPOSIT_PERCENT = Decimal(50)
"""Of the agreed price, before stain is bought [finishers-pages]."""
_CHANGE_PER_H = "50"
_CHANGE_MATERIAL_PERCENT, _TOLERANCE_PERCENT = Decimal(50), Decimal(5)
"""Work asked for later, USD an hour of one person and on materials; area that changes no price
[finishers-pages]."""


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
    rates, terms = job.prices.rates, job.prices.terms
    dollars = job.prices.currency == "USD"
    change = _told(rates.change_per_h) or (
        Used(_CHANGE_PER_H, Rank.PRACTICE.value, _PAGES) if dollars else None
    )
    progress = _figure(terms.progress_percent, Decimal(0), Rank.GUESS, OUR_GUESS)
    usual = min(_DEPOSIT_PERCENT, 100 - progress.amount)
    return MoneyTerms(
        change_per_h=change,
        change_material_percent=_figure(
            rates.change_material_percent, _CHANGE_MATERIAL_PERCENT, Rank.PRACTICE, _PAGES
        ),
        standby_per_h=_told(rates.standby_per_h) or _two_waiting(change),
        deposit_percent=_figure(terms.deposit_percent, usual, Rank.PRACTICE, _PAGES),
        progress_percent=progress,
        pay_days=_figure(terms.pay_days, Decimal(0), Rank.GUESS, OUR_GUESS),
        tolerance_percent=_figure(
            terms.area_tolerance_percent, _TOLERANCE_PERCENT, Rank.PRACTICE, _PAGES
        ),
    )


def _told(own: str | None) -> Used | None:
    return None if own is None else Used(own, Rank.MEASURED.value, "told by the firm")


def _two_waiting(change: Used | None) -> Used | None:
    """Two people waiting, at what an hour of a change costs, where the firm did not say."""
    return None if change is None else Used(f"{2 * change.amount:f}", Rank.GUESS.value, OUR_GUESS)


def _figure(own: float | None, usual: Decimal, rank: Rank, source: str) -> Used:
    if own is not None:
        return Used(f"{Decimal(str(own)).normalize():f}", Rank.MEASURED.value, "told by the firm")
    return Used(f"{usual.normalize():f}", rank.value, source)
