"""A job's hours, materials, visits and chances as one question of what it may cost."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.price.chances import Chance
from farwall.price.goods import Goods
from farwall.price.hours import TaskHours, Three
from farwall.price.risk import Costs, Event, Factor, Part
from farwall.price.usual import (
    LABOUR_RANGE,
    SECOND_TRIP_COST,
    SECOND_TRIP_PERCENT,
    VISIT_RANGE,
    RatesUsed,
)

HOUSE, PRICES = "the house itself", "prices of materials"
"""What tasks of one house, and what materials of one list, have in common."""
HOUR = "what an hour truly costs"
SECOND_TRIP = "a second mobilisation"
VISITS = "travel to the site"
APART = ("travel", "sample")
"""Tasks that the state of the floor does not touch."""


@dataclass(frozen=True)
class Reckoning:
    """What a cost is reckoned from. visits: trips to the site, low, likely, high."""

    hours: Sequence[TaskHours]
    goods: Sequence[Goods]
    visits: Three
    rates: RatesUsed
    chances: Sequence[Chance] = ()


def costs_of(facts: Reckoning) -> Costs:
    """Every part with its range; what an hour costs is itself uncertain where it is a guess."""
    guessed = facts.rates.labour_per_h.rank == Rank.GUESS.value
    per_h = float(facts.rates.labour_per_h.amount)
    work = [
        Part(
            one.task, one.low_h * per_h, one.likely_h * per_h, one.high_h * per_h,
            common="" if one.id in APART else HOUSE, times=(HOUR,) if guessed else (),
        )
        for one in facts.hours
    ]  # fmt: skip
    goods = [
        Part(one.group, *_times(float(one.likely), one.ends), common=PRICES)
        for one in facts.goods
        if one.likely > 0
    ]
    return Costs(
        (*work, *goods, _visits(facts)),
        (Factor(HOUR, *LABOUR_RANGE),) if guessed else (),
        (*(_event(one) for one in facts.chances), _second_trip()),
    )


def _visits(facts: Reckoning) -> Part:
    each = float(facts.rates.visit.amount)
    wide = VISIT_RANGE if facts.rates.visit.rank == Rank.GUESS.value else (1.0, 1.0, 1.0)
    low, likely, high = (each * n * by for n, by in zip(facts.visits, wide, strict=True))
    return Part(VISITS, low, likely, high)


def _event(one: Chance) -> Event:
    ends = (float(one.cost_low), float(one.cost), float(one.cost_high))
    return Event(f"call-back: {one.what}", one.percent / 100, *ends)


def _second_trip() -> Event:
    return Event(SECOND_TRIP, SECOND_TRIP_PERCENT / 100, *SECOND_TRIP_COST)


def _times(likely: float, ends: Three) -> Three:
    return (likely * ends[0], likely * ends[1], likely * ends[2])
