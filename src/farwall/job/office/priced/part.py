"""The price of a job, put together: the whole job, its offers, its rooms."""

from __future__ import annotations

from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS
from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours import Hours
from farwall.job.office.masking import Masked, masked_of
from farwall.job.office.priced.kept import kept_gear
from farwall.job.office.priced.measure import drivers_of, together
from farwall.job.office.priced.noun import Added, Cost, Priced
from farwall.job.office.priced.offers import offers_of
from farwall.job.office.priced.reckoned import Reckoned, money, reckoned
from farwall.job.office.priced.rooms import rooms_money
from farwall.job.office.priced.sanity import sanity_of
from farwall.job.office.scope import scope_of
from farwall.price.asking import per_area
from farwall.price.costs import VISITS
from farwall.price.money import written
from farwall.price.usual import VISIT_RANGE, Used
from farwall.units import ft2_from_m2


def priced_of(
    ground: OfficeGround, buying: Buying, hours: Hours, masked: Masked | None = None
) -> Priced:
    """The whole job priced, beside its offers; hours are those of the whole job."""
    where = masked if masked is not None else masked_of(ground)
    found = reckoned(ground, buying, where, scope_of(ground), drives=True)
    offers, warnings = offers_of(ground, buying, where)
    area_m2 = sum(one.area_m2 for one in hours.rooms)
    area_ft2 = ft2_from_m2(area_m2)
    return Priced(
        costs=_costs(found),
        cost=written(found.asked.cost),
        currency=buying.currency,
        warnings=(*_guesses(found, buying.currency), *warnings),
        cost_low=written(money(found.found.low)),
        cost_median=written(money(found.found.median)),
        cost_high=written(money(found.found.high)),
        cost_mean=written(money(found.found.mean)),
        added=_added(found),
        price=written(found.asked.price),
        price_low=written(found.low.price),
        price_high=written(found.high.price),
        loss_percent=found.loss_percent,
        least_job=found.asked.least_job,
        area_m2=round(area_m2, 4),
        per_ft2=written(per_area(found.asked.price, Decimal(str(round(area_ft2, 3))))),
        days=hours.days,
        drivers=drivers_of(found.found, ground.job),
        together_percent=together(found.found),
        chances=found.chances,
        sanity=tuple(
            sanity_of(found, area_m2, buying.currency, us=ground.job.wishes.units == "us")
        ),
        offers=offers,
        rooms=rooms_money(ground, where, found),
        rates=found.rates,
        gear=kept_gear(ground, buying),
    )


def _costs(found: Reckoned) -> tuple[Cost, ...]:
    labour = found.rates.labour_per_h
    work = [
        Cost(
            one.task, _hours(one.low_h, labour), _hours(one.likely_h, labour),
            _hours(one.high_h, labour), one.rank, one.rule, one.source,
        )
        for one in found.hours.tasks
    ]  # fmt: skip
    goods = []
    for one in found.goods:
        low, likely, high = (written(one.likely * Decimal(str(end))) for end in one.ends)
        goods.append(
            Cost(one.group, low, likely, high, one.rank, one.rule, one.source, "materials")
        )
    return (*work, *goods, _visits(found))


def _hours(value: float, labour: Used) -> str:
    return written(labour.amount * Decimal(str(round(value, 4))))


def _visits(found: Reckoned) -> Cost:
    visit, low_high = found.rates.visit, found.hours.visits
    wide = VISIT_RANGE if visit.rank == Rank.GUESS.value else (1.0, 1.0, 1.0)
    ends = [
        written(visit.amount * n * Decimal(str(by))) for n, by in zip(low_high, wide, strict=True)
    ]
    rule = f"{low_high[1]} trips at {visit.value}"
    return Cost(VISITS, ends[0], ends[1], ends[2], visit.rank, rule, visit.source, "visits")


def _added(found: Reckoned) -> tuple[Added, ...]:
    rates, asked = found.rates, found.asked
    flat = rates.risk_percent
    lines = [
        Added("overhead", rates.overhead_percent.value, written(asked.overhead),
              rates.overhead_percent.rank, rates.overhead_percent.source),
        Added("risk", flat.value if flat else "", written(asked.risk),
              flat.rank if flat else Rank.GUESS.value, flat.source if flat else OUR_GUESS),
        Added("profit", rates.profit_percent.value, written(asked.profit),
              rates.profit_percent.rank, rates.profit_percent.source),
    ]  # fmt: skip
    return tuple(lines)


def _guesses(found: Reckoned, currency: str) -> tuple[str, ...]:
    """What the price rests on that nobody told."""
    rates = found.rates
    named = {
        "an hour": rates.labour_per_h, "a trip": rates.visit, "overhead": rates.overhead_percent,
        "profit": rates.profit_percent,
    }  # fmt: skip
    guessed = [name for name, one in named.items() if one.rank == Rank.GUESS.value]
    if not guessed:
        return ()
    listed = ", ".join(guessed)
    lines = [f"Invented figures stand in for: {listed}. Tell your own under rates."]
    if currency != "USD":
        lines.append("They are of dollars, and so is the cost of a call-back.")
    return tuple(lines)
