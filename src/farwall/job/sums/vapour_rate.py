"""Vapour coming out of a slab, from what a calcium chloride dish gained."""

from __future__ import annotations

from farwall.air.slab_tests import UG_M2_S_PER_LB
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.units import KG_M2_PER_LB_FT2

KIT = 117.909
"""lb·h/(1000 ft²·24 h·g): vapour rate for a gram gained in an hour under the kit's dome, about
0.449 ft² [astm-f1869]."""
SHORTEST_H, LONGEST_H = 60.0, 72.0
FILMS_LB = 3.0


def reckon(given: Given) -> Result:
    """The rate in both units. Source: [astm-f1869]."""
    hours = given.number("hours")
    rate_lb = KIT * given.number("gain_g") / hours
    warnings: list[object] = []
    if not SHORTEST_H <= hours <= LONGEST_H:
        warnings.append(f"The test runs {SHORTEST_H:g} to {LONGEST_H:g} h, not {hours:g}.")
    if rate_lb > FILMS_LB:
        warnings.append(
            f"Above {FILMS_LB:g} lb/(1000 ft²·24 h), the usual limit for coverings that keep "
            "vapour in; the sheet of the sealer in hand says what it bears."
        )
    return {
        "lb_1000ft2_24h": rate_lb,
        "ug_m2_s": rate_lb * UG_M2_S_PER_LB,
        "g_m2_24h": rate_lb * KG_M2_PER_LB_FT2,
        "rank": Rank.PUBLISHED.value,
        "source": "astm-f1869",
        "warnings": warnings,
    }


SUM = Sum(
    name="vapour-rate",
    what="vapour out of a slab, from what a calcium chloride dish gained",
    arguments=(
        Argument("gain_g", bounds=Bounds(0.0, 1000.0), needed=True),
        Argument("hours", bounds=Bounds(0.0, 1000.0, above=True), needed=True),
    ),
    reckon=reckon,
)
