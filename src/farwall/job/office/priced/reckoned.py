"""One scope priced: its hours, costs, draws, and what is asked."""

from __future__ import annotations

from decimal import Decimal

from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours import Hours, hours_of
from farwall.job.office.hours.sizes import sizes_of
from farwall.job.office.masking import Masked
from farwall.job.office.priced.goods import goods_of
from farwall.job.office.priced.raised import raised
from farwall.job.office.scope import Scope
from farwall.nouns import dataclass
from farwall.price.asking import Asked, asked
from farwall.price.chances import Chance, call_backs
from farwall.price.costs import Reckoning, costs_of
from farwall.price.goods import Goods
from farwall.price.money import CENT, NOTHING, rounded, share
from farwall.price.risk import Outcome, outcome
from farwall.price.usual import RatesUsed, rates_used


@dataclass(frozen=True)
class Reckoned:
    """All that is known of the price of a scope."""

    scope: Scope
    hours: Hours
    goods: tuple[Goods, ...]
    chances: tuple[Chance, ...]
    rates: RatesUsed
    found: Outcome
    asked: Asked
    low: Asked
    high: Asked

    @property
    def loss_percent(self) -> float:
        """Chance that cost with overhead is more than the price."""
        left = self.asked.price - self.asked.overhead - self.asked.added
        return round(100 * self.found.above(float(left)), 1)


def reckoned(
    ground: OfficeGround,
    buying: Buying,
    masked: Masked,
    scope: Scope,
    *,
    added: Decimal = NOTHING,
    drives: bool = False,
) -> Reckoned:
    """A scope with its price. drives: whether to tell what drives the spread.

    Overhead and profit are shares of what is likely; at the ends the same amounts stay, for neither
    rent nor profit grows with a dirty floor.
    """
    rates = rates_used(ground.job.prices)
    hours = hours_of(ground, masked, scope)
    sizes = sizes_of(ground, masked, scope)
    goods = goods_of(ground, buying, scope, sizes)
    chances = call_backs(ground.job.prices.call_backs, ground.lessons, raised(ground))
    low, likely, high = hours.visits
    costs = costs_of(Reckoning(hours.tasks, goods, (low, likely, high), rates, chances))
    found = outcome(costs, drives=drives)
    cost = money(costs.likely)
    risk = _risk(cost, money(found.mean), rates)
    of = asked(cost, risk, rates.shares, added=added)
    ends = [
        asked(cost, money(end) - cost, rates.shares, added=added) for end in (found.low, found.high)
    ]
    return Reckoned(scope, hours, goods, chances, rates, found, of, ends[0], ends[1])


def money(value: float) -> Decimal:
    """A figure of a statistic as an amount, to the whole unit: its cents would mean nothing."""
    return Decimal(round(value))


def _risk(cost: Decimal, mean: Decimal, rates: RatesUsed) -> Decimal:
    """The firm's flat share where told, else what cost is above likely on the average."""
    if rates.risk_percent is not None:
        return rounded(share(cost, rates.risk_percent.amount), CENT)
    return max(mean - cost, NOTHING)
