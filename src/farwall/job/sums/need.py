"""How much mix a floor needs so that it does not run out, at a stated certainty."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.job.sums.arguments import AREA, COVERAGE
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.mix.need import need
from farwall.units import gal_from_l


def reckon(given: Given) -> Result:
    """Likely need, reserve and mix. Source: [log-normal]; that a floor follows it is a guess.

    Spread and certainty left out are those of an unsampled floor; a warning says so.
    """
    warnings: list[object] = []
    values = {}
    for default, key in (
        (table.SPREAD_UNSAMPLED_PERCENT, "spread_percent"),
        (table.CERTAINTY_PERCENT, "certainty_percent"),
    ):
        values[key] = given.usual(key, default.usual)
        if key not in given:
            warnings.append(f"{key} was not given; {default.usual:g} is taken ({default.source}).")
    found = need(area_m2=given.number("area_m2"), m2_per_l=given.number("m2_per_l"), **values)
    return {
        "likely_gal": gal_from_l(found.likely_l),
        "likely_l": found.likely_l,
        "reserve_gal": gal_from_l(found.reserve_l),
        "reserve_l": found.reserve_l,
        "mix_gal": gal_from_l(found.mix_l),
        "mix_l": found.mix_l,
        "rank": Rank.GUESS.value,
        "source": "log-normal, house-guess",
        "warnings": warnings,
    }


SUM = Sum(
    name="need",
    what="how much mix so that it does not run out, at a stated certainty",
    arguments=(
        Argument("area", AREA, Bounds(0.0, 1e6, above=True), needed=True),
        Argument("", COVERAGE, Bounds(0.0, 1e5, above=True), needed=True),
        Argument("spread_percent", bounds=Bounds(0.0, 500.0)),
        Argument("certainty_percent", bounds=Bounds(50.0, 99.9999)),
    ),
    reckon=reckon,
)
