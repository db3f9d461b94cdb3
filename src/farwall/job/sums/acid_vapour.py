"""Hydrogen chloride over its solution: what the air just above the liquid would hold at most."""

from __future__ import annotations

from farwall.acid import vapour
from farwall.acid.handbook_vapour import PA_PER_MMHG
from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.job.sums.air import PRESSURE_OF_AIR
from farwall.job.sums.arguments import TEMPERATURE
from farwall.job.sums.noun import Argument, Bounds, Given, Json, Result, Sum

STILL = "Over the still liquid, at rest: a room holds less, a spray or a drying film may hold more."
SALTS = "Chlorides dissolved in a stain press out more, from a little to many times as much."
RESPIRATOR = "A figure replaces neither a respirator nor a measurement."
WEAK = (
    "Below 2 % the handbook has no line: its distance from the other way is carried down from 2 %."
)
STRONG = "Above 36.8 % the activities are carried beyond 16 mol/kg, to where they were reviewed."


def reckon(given: Given) -> Result:
    """Partial pressure, Pa, with low, likely and high; ppm of the air just above it.

    Likely leans on the handbook from 12 % up; low and high hold both ways with a tenth to spare.
    [hamer-wu-1972, parker-1965, zeisberg-1925], constants from memory.
    """
    percent, celsius = given.number("hcl_percent"), given.number("temperature_c")
    found = vapour.hcl_pressure(hcl_percent=percent, temperature_c=celsius)
    ppm = 1e6 / given.usual("pressure_pa", STANDARD_PRESSURE_PA)
    told = ((WEAK, 0 < percent < 2), (STRONG, percent > 36.8))
    more: list[Json] = [words for words, so in told if so]
    return {
        "hcl_pressure_pa": found.likely_pa,
        "hcl_pressure_mmhg": found.likely_pa / PA_PER_MMHG,
        "ppm_over_liquid": found.likely_pa * ppm,
        "ppm_over_liquid_low": found.low_pa * ppm,
        "ppm_over_liquid_high": found.high_pa * ppm,
        "low": found.low_pa,
        "likely": found.likely_pa,
        "high": found.high_pa,
        "by_activity_pa": found.by_activity_pa,
        "by_handbook_pa": found.by_handbook_pa,
        "water_pressure_pa": vapour.water_pressure_pa(hcl_percent=percent, temperature_c=celsius),
        "rank": vapour.RANK.value,
        "source": vapour.SOURCE,
        "warnings": [*more, STILL, SALTS, RESPIRATOR],
    }


SUM = Sum(
    name="acid-vapour",
    what="hydrogen chloride over hydrochloric acid, by strength and temperature",
    arguments=(
        Argument("hcl_percent", bounds=Bounds(0.0, vapour.MOST_PERCENT), needed=True),
        Argument("temperature", TEMPERATURE, Bounds(vapour.LEAST_C, vapour.MOST_C), needed=True),
        PRESSURE_OF_AIR,
    ),
    reckon=reckon,
)
