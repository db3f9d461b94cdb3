"""What is taken where the firm told no rates, chances or terms of its own, each with its rank.

The unit costs are invented, guesses to be replaced by the firm's own. Terms are those that
contractors' own pages show [finishers-pages]: a habit, no rule.
"""

from __future__ import annotations

from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.job import Prices
from farwall.nouns import dataclass
from farwall.price.asking import Shares
from farwall.price.hours import Three
from farwall.price.money import amount

LABOUR_PER_H = "55"
"""An invented loaded hour: a guess."""
LABOUR_RANGE: Three = (0.75, 1.0, 1.35)
"""What a firm's true hour is of that guess: a guess."""
VISIT = "40"
VISIT_RANGE: Three = (0.6, 1.0, 1.8)
OVERHEAD_PERCENT, PROFIT_PERCENT = 20.0, 15.0
ROUNDED_TO = "10"
MOCK_UP, VALID_DAYS = "250", 30
"""One more sample, USD; a quote holds 30 to 60 days [finishers-pages]."""
WARRANTY_MONTHS = 12
"""A year on workmanship [common-practice]."""
CALL_BACK_PERCENT: Three = (1, 4, 10)
"""Chance of a call-back for residue, moisture and colour, each: per cent of jobs."""
CALL_BACK_COST: Three = (300, 900, 6000)
SECOND_TRIP_PERCENT = 10.0
"""Chance of one more mobilisation (weather, a trade in the house, a floor that is not dry)."""
SECOND_TRIP_COST: Three = (400, 650, 900)
"""One more day of two people, loaded [common-practice]."""
EARLY_VISITS = 2
"""Trips before the work: survey with samples, and the look at the sealed sample."""
PUBLISHED_USD_FT2 = (4.0, 7.0)
"""What finishers' own pages ask a ft² for acid-based colour [finishers-pages]."""
SMALL_JOB_FT2 = 400.0
"""Smaller jobs rarely pay, since set-up, waits and visits do not shrink [finishers-pages]."""


@dataclass(frozen=True)
class Used:
    """An amount or a share that is reckoned with: as text, its rank, its source."""

    value: str
    rank: str
    source: str

    @property
    def amount(self) -> Decimal:
        """As a number."""
        return amount(self.value)


@dataclass(frozen=True)
class RatesUsed:
    """Rates and terms that a price and a quote need: the firm's own where told. None: told by
    nobody, and not guessed. Those of changes and waits are taken in `job.office.billing`."""

    labour_per_h: Used
    visit: Used
    overhead_percent: Used
    profit_percent: Used
    risk_percent: Used | None
    least: Used | None
    mock_up: Used | None
    rounded_to: Used
    valid_days: Used
    warranty_months: Used

    @property
    def shares(self) -> Shares:
        """As `asking` takes them."""
        return Shares(
            self.overhead_percent.amount, self.profit_percent.amount,
            self.least.amount if self.least else Decimal(0), self.rounded_to.amount,
        )  # fmt: skip


def rates_used(prices: Prices) -> RatesUsed:
    """The firm's own rates and terms, and guesses where it told none."""
    rates, terms = prices.rates, prices.terms
    dollars = prices.currency == "USD"
    pages, practice = (Rank.PRACTICE, "finishers-pages"), (Rank.PRACTICE, PRACTICE)
    return RatesUsed(
        labour_per_h=_used(rates.labour_per_h, LABOUR_PER_H),
        visit=_used(rates.visit, VISIT),
        overhead_percent=_used(rates.overhead_percent, OVERHEAD_PERCENT),
        profit_percent=_used(rates.profit_percent, PROFIT_PERCENT),
        risk_percent=None if rates.risk_percent is None else _used(rates.risk_percent, 0),
        least=None if rates.least is None else _used(rates.least, ""),
        mock_up=_used(rates.mock_up, MOCK_UP, pages) if rates.mock_up or dollars else None,
        rounded_to=_used(terms.rounded_to, ROUNDED_TO),
        valid_days=_used(terms.valid_days, VALID_DAYS, pages),
        warranty_months=_used(terms.warranty_months, WARRANTY_MONTHS, practice),
    )


def _used(
    told: str | float | None,
    usual: str | float,
    ranked: tuple[Rank, str] = (Rank.GUESS, OUR_GUESS),
) -> Used:
    """What was told is the firm's own, so measured here."""
    if told is not None:
        return Used(_shown(told), Rank.MEASURED.value, "told by the firm")
    return Used(_shown(usual), ranked[0].value, ranked[1])


def _shown(value: str | float) -> str:
    return value if isinstance(value, str) else _text(Decimal(str(value)))


def _text(value: Decimal) -> str:
    """Plain digits, no needless places."""
    return f"{value.normalize():f}" if value else "0"
