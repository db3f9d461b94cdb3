"""Figures that others published, beside ours: a line to stop at, never a bound."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from farwall.evidence import Rank
from farwall.job.office.priced.noun import Sanity
from farwall.job.office.priced.reckoned import Reckoned
from farwall.price.asking import per_area
from farwall.price.usual import PUBLISHED_USD_FT2, SMALL_JOB_FT2
from farwall.price.wages import FINISHERS_US, loaded_over_wage

PAGES = "finishers-pages"


def sanity_of(found: Reckoned, area_ft2: float, currency: str) -> Iterator[Sanity]:
    """Price a ft² and a small floor against finishers' pages; the hour against published wages.

    Prices and wages are of the United States: nothing is said in another currency.
    """
    if currency == "USD":
        yield _per_ft2(found.asked.price, area_ft2)
        wage = FINISHERS_US
        times = loaded_over_wage(found.rates.labour_per_h.amount)
        hour = found.rates.labour_per_h
        yield Sanity(
            f"An hour is reckoned at {hour.amount:f} USD ({hour.rank}), {times:.1f} times the "
            f"median wage of cement masons and concrete finishers in the United States, "
            f"{wage.median} USD in {wage.month}; wages have risen since. A loaded hour holds "
            f"insurance, taxes, holidays and idle days as well.",
            None, Rank.PUBLISHED.value, wage.source,
        )  # fmt: skip
    if area_ft2 < SMALL_JOB_FT2:
        yield Sanity(
            f"{area_ft2:,.0f} ft² is below {SMALL_JOB_FT2:.0f} ft²: such jobs rarely pay, for "
            f"set-up, waits and visits do not shrink. Tell the least job that you take.",
            inside=False, rank=Rank.PRACTICE.value, source=PAGES,
        )  # fmt: skip


def _per_ft2(price: Decimal, area_ft2: float) -> Sanity:
    each = per_area(price, Decimal(str(round(area_ft2, 3))))
    low, high = PUBLISHED_USD_FT2
    inside = low <= float(each) <= high
    where = "inside" if inside else "below" if float(each) < low else "above"
    return Sanity(
        f"{each:f} USD a ft², {where} the {low:g} to {high:g} that finishers' own pages ask for "
        f"acid-based colour.",
        inside, Rank.PRACTICE.value, PAGES,
    )  # fmt: skip
