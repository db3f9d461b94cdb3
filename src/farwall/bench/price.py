"""How honest the range of a price is, on invented jobs that it was not made from.

The model is asked with what an estimator knows; its range of cost (four jobs in five) and its
chance of losing money are held against what the jobs truly came to.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from farwall.bench.price_jobs import CameTo, PricedJob, priced_job
from farwall.days.nouns import House
from farwall.evidence import Rank
from farwall.facts.job import Prices
from farwall.facts.prices import CallBacks, Rates
from farwall.job.office.hours.days import worked_days
from farwall.nouns import dataclass
from farwall.price.asking import asked
from farwall.price.chances import call_backs
from farwall.price.costs import Reckoning, costs_of
from farwall.price.goods import AS_BOUGHT, Goods
from farwall.price.hours import Sizes, hours_of_sizes
from farwall.price.money import rounded
from farwall.price.risk import FEWER, Outcome, outcome
from farwall.price.usual import EARLY_VISITS, rates_used
from farwall.units import M2_PER_FT2, M_PER_FT

AIM = (75.0, 85.0)
SIZES_FT2 = (0.0, 800.0, 1600.0, 1e9)
LOSS_BANDS = (0.0, 10.0, 20.0, 30.0, 45.0, 100.0)
PROFITS = (-15.0, 0.0, 15.0, 30.0)
"""Per cent of cost; jobs are asked for by each in turn, so that chances differ."""


@dataclass(frozen=True)
class Priced:
    """One job: the model's range and likely cost, its chance of losing money, and the truth."""

    area_ft2: float
    low: float
    median: float
    high: float
    loss_percent: float
    true: float
    lost: bool

    @property
    def held(self) -> bool:
        """Whether the truth lies within the range."""
        return self.low <= self.true <= self.high


@dataclass(frozen=True)
class PriceScore:
    """Over a group of jobs: how many, per cent within, below and above the range, how wide it is
    against its middle, how far the middle lies off (median, per cent of the truth, signed)."""

    group: str
    jobs: int
    held_percent: float
    below_percent: float
    above_percent: float
    wide_percent: float
    off_percent: float


@dataclass(frozen=True)
class LossScore:
    """Jobs whose chance of losing money was told within a band, and how many truly lost."""

    band: str
    jobs: int
    told_percent: float
    lost_percent: float


def score_price(seeds: Sequence[int]) -> tuple[tuple[PriceScore, ...], tuple[LossScore, ...]]:
    """The ranges in all and by size of floor; the chances of losing money by band."""
    found = [priced(*priced_job(seed)) for seed in seeds]
    groups = [("all", found)]
    for low, high in pairwise(SIZES_FT2):
        name = f"{low:.0f} to {high:.0f} ft²" if high < 1e9 else f"from {low:.0f} ft²"
        groups.append((name, [one for one in found if low <= one.area_ft2 < high]))
    bands = []
    for low, high in pairwise(LOSS_BANDS):
        each = [one for one in found if low <= one.loss_percent < high]
        if each:
            bands.append(_lost(f"{low:.0f} to {high:.0f} %", each))
    return tuple(_score(name, each) for name, each in groups if each), (*bands, _lost("all", found))


def priced(job: PricedJob, true: CameTo) -> Priced:
    """One job as the model prices it, by a firm that told its own hour and trip and its list."""
    found, price, overhead = reckon(job)
    return Priced(
        job.area_ft2, found.low, found.median, found.high,
        100 * found.above(price - overhead), true.cost, true.cost > price - overhead,
    )  # fmt: skip


def reckon(job: PricedJob) -> tuple[Outcome, float, float]:
    """The draws, the price and the overhead in it."""
    area_m2 = job.area_ft2 * M2_PER_FT2
    house = House("h", "", area_m2, coats=len(job.spray_min), seal_coats=job.sealer_coats)
    days = sorted(
        float(len(worked_days(house, job.people, end))) for end in ("low", "likely", "high")
    )
    sizes = Sizes(
        area_m2, job.wall_ft * M_PER_FT, job.spray_min, job.people, job.sealer_coats,
        job.finish_coats, (days[0], days[1], days[2]),
    )  # fmt: skip
    told = Rates(labour_per_h=_text(job.per_h), visit=_text(job.visit))
    profit = Decimal(str(PROFITS[job.seed % len(PROFITS)]))
    rates = rates_used(replace(Prices(), rates=told))
    goods = [
        Goods(name, rounded(Decimal(str(much))), "", Rank.MEASURED.value, "list", AS_BOUGHT)
        for name, much in job.list
    ]
    low, likely, high = (one + EARLY_VISITS for one in days)
    raised = {} if job.signed else {"colour": "no sample is signed"}
    chances = call_backs(CallBacks(), None, raised)
    costs = costs_of(Reckoning(hours_of_sizes(sizes), goods, (low, likely, high), rates, chances))
    found = outcome(costs, draws=FEWER, drives=False)
    cost, mean = Decimal(str(costs.likely)), Decimal(str(found.mean))
    shares = replace(rates.shares, profit_percent=profit)
    of = asked(cost, max(mean - cost, Decimal(0)), shares)
    return found, float(of.price), float(of.overhead)


def lines(scores: Sequence[PriceScore], losses: Sequence[LossScore]) -> list[str]:
    """A table for a terminal."""
    told = ["jobs          count  within  below  above   width  middle off"]
    told += [
        f"{one.group:<18}{one.jobs:>6}{one.held_percent:>7.1f}%{one.below_percent:>6.1f}%"
        f"{one.above_percent:>6.1f}%{one.wide_percent:>7.0f}%{one.off_percent:>+10.1f}%"
        for one in scores
    ]
    told += ["", "chance to lose money, as told    jobs   told   lost"]
    told += [
        f"{one.band:<31}{one.jobs:>6}{one.told_percent:>6.1f}%{one.lost_percent:>6.1f}%"
        for one in losses
    ]
    return told


def _score(group: str, found: Sequence[Priced]) -> PriceScore:
    count = len(found)
    return PriceScore(
        group,
        count,
        100 * sum(one.held for one in found) / count,
        100 * sum(one.true < one.low for one in found) / count,
        100 * sum(one.true > one.high for one in found) / count,
        _middle([100 * (one.high - one.low) / one.median for one in found]),
        _middle([100 * (one.median / one.true - 1) for one in found]),
    )


def _lost(band: str, found: Sequence[Priced]) -> LossScore:
    count = len(found)
    return LossScore(
        band,
        count,
        sum(one.loss_percent for one in found) / count,
        100 * sum(one.lost for one in found) / count,
    )


def _middle(values: Sequence[float]) -> float:
    return sorted(values)[len(values) // 2]


def _text(value: float) -> str:
    return f"{value:.4f}"
