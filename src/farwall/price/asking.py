"""What is asked for a job: its cost, overhead, risk and profit, the least job, the step.

Overhead and profit are shares of cost and are added, not multiplied with each other, as finishers
reckon [common-practice].
"""

from __future__ import annotations

from decimal import Decimal

from farwall.nouns import dataclass
from farwall.price.money import CENT, NOTHING, rounded, share


@dataclass(frozen=True)
class Asked:
    """Amounts to the cent; `price` is the sum by the step, or the least job where that is more."""

    cost: Decimal
    overhead: Decimal
    risk: Decimal
    profit: Decimal
    added: Decimal
    price: Decimal
    least_job: bool

    @property
    def summed(self) -> Decimal:
        """What stands before rounding and the least job."""
        return self.cost + self.overhead + self.risk + self.profit + self.added


@dataclass(frozen=True)
class Shares:
    """Overhead and profit in per cent of cost, the smallest job that is taken, the step."""

    overhead_percent: Decimal
    profit_percent: Decimal
    least: Decimal = NOTHING
    step: Decimal = CENT


def asked(cost: Decimal, risk: Decimal, shares: Shares, *, added: Decimal = NOTHING) -> Asked:
    """What to ask for a job that costs so much. risk: an amount, what cost is above likely on the
    average; added: for what else it holds."""
    cost, risk = rounded(cost), rounded(risk)
    overhead = rounded(share(cost, shares.overhead_percent))
    profit = rounded(share(cost, shares.profit_percent))
    summed = cost + overhead + risk + profit + added
    price = max(rounded(summed, shares.step), shares.least)
    return Asked(cost, overhead, risk, profit, added, price, summed < shares.least)


def per_area(price: Decimal, area: Decimal) -> Decimal:
    """Price over an area, to the cent; nothing for no area."""
    return rounded(price / area) if area > 0 else NOTHING


def area_shares(price: Decimal, areas: tuple[float, ...]) -> tuple[Decimal, ...]:
    """The price parted by area to the cent, so that the parts add up to it exactly.

    The largest rest gets the next cent, the first of equal ones.
    """
    total = sum(areas)
    if total <= 0:
        return (NOTHING,) * len(areas)
    exact = [price * Decimal(str(one)) / Decimal(str(total)) for one in areas]
    down = [one - one % CENT for one in exact]
    left = int((rounded(price) - sum(down, start=NOTHING)) / CENT)
    order = sorted(range(len(areas)), key=lambda n: (down[n] - exact[n], n))
    for n in order[: max(left, 0)]:
        down[n] += CENT
    return tuple(down)
