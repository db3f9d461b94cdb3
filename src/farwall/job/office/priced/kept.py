"""Gear that is bought for a job and kept: the job's share of it, and what the van has already."""

from __future__ import annotations

from decimal import Decimal

from farwall.facts.kept_gear import LIVES, Life, lives_of
from farwall.job.office.buying import Bought, Buying
from farwall.job.office.ground import OfficeGround
from farwall.nouns import dataclass
from farwall.price.money import CENT, NOTHING, amount, rounded, written

IN_VAN = "in the van"


@dataclass(frozen=True)
class KeptGear:
    """One thing: what it costs, how many jobs it lasts, what of it is in the price of this one.

    Amounts as text. rank and source are those of the jobs it lasts; rank is `in the van` where
    nothing is bought: then cost and share are nothing.
    """

    what: str
    quantity: str
    cost: str
    share: str
    jobs_low: float = 0.0
    jobs: float = 0.0
    jobs_high: float = 0.0
    rank: str = ""
    source: str = ""


def share_of(cost: Decimal, life: Life) -> Decimal:
    """A job's likely share of what a thing costs; not rounded."""
    return cost / Decimal(str(life.likely))


def kept_gear(ground: OfficeGround, buying: Buying) -> tuple[KeptGear, ...]:
    """Each thing once, in the order of the list: bought and shared, or in the van already."""
    lives = lives_of(ground.job.supplies)
    costs: dict[str, Decimal] = {}
    first: dict[str, Bought] = {}
    for one in buying.lines:
        if one.quantity in lives:
            costs[one.quantity] = costs.get(one.quantity, NOTHING) + amount(one.cost)
            first.setdefault(one.quantity, one)
    bought = [_bought(first[id_], cost, lives[id_]) for id_, cost in costs.items()]
    there = [
        KeptGear(one.what, one.quantity, written(NOTHING), written(NOTHING), rank=IN_VAN)
        for one in buying.there
        if one.quantity in {*LIVES, *lives} and one.there > 0 and one.quantity not in costs
    ]
    return (*bought, *there)


def _bought(one: Bought, cost: Decimal, life: Life) -> KeptGear:
    return KeptGear(
        one.what, one.quantity, written(cost), written(rounded(share_of(cost, life), CENT)),
        life.low, life.likely, life.high, life.rank.value, life.source,
    )  # fmt: skip


def kept_back(gear: tuple[KeptGear, ...]) -> Decimal:
    """What is paid now and left for later jobs to bear."""
    return sum((amount(one.cost) - amount(one.share) for one in gear), start=NOTHING)
