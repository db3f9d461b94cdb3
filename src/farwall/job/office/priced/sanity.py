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
from farwall.units import M2_PER_FT2

PAGES = "finishers-pages"


def sanity_of(found: Reckoned, area_m2: float, currency: str, *, us: bool) -> Iterator[Sanity]:
    """Price a ft² and a small floor against finishers' pages; the hour against published wages.

    Prices and wages are of the United States: nothing is said in another currency. us: told in
    square feet, else in square metres.
    """
    area_ft2 = area_m2 / M2_PER_FT2
    if currency == "USD":
        yield _per_area(found.asked.price, area_ft2, us=us)
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
    least_m2 = SMALL_JOB_FT2 * M2_PER_FT2
    if area_ft2 < SMALL_JOB_FT2:
        yield Sanity(
            f"{floor_words(area_m2, us=us)} is below {floor_words(least_m2, us=us)}: such jobs "
            f"rarely pay, for "
            f"set-up, waits and visits do not shrink. Tell the least job that you take.",
            inside=False, rank=Rank.PRACTICE.value, source=PAGES,
        )  # fmt: skip


def _per_area(price: Decimal, area_ft2: float, *, us: bool) -> Sanity:
    each = per_area(price, Decimal(str(round(area_ft2, 3))))
    low, high = PUBLISHED_USD_FT2
    inside = low <= float(each) <= high
    where = "inside" if inside else "below" if float(each) < low else "above"
    if us:
        told = f"{each:f} USD a ft², {where} the {low:g} to {high:g}"
    else:
        a_m2 = float(each) / M2_PER_FT2
        ends = f"{low / M2_PER_FT2:.0f} to {high / M2_PER_FT2:.0f}"
        told = f"{a_m2:.0f} USD a m², {where} the {ends}"
    return Sanity(
        f"{told} that finishers' own pages ask for acid-based colour.",
        inside, Rank.PRACTICE.value, PAGES,
    )  # fmt: skip


def floor_words(area_m2: float, *, us: bool) -> str:
    """`387 ft²` or `36 m²`."""
    return f"{area_m2 / M2_PER_FT2:,.0f} ft²" if us else f"{area_m2:,.0f} m²"
