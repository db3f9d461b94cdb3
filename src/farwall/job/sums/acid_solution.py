"""A strength of hydrochloric acid in every way of saying it, with its heat of dilution."""

from __future__ import annotations

from farwall.acid import density, heat
from farwall.acid.solution import (
    SIXTY_F_C,
    molality_from_percent,
    percent_from_baume,
    percent_from_molality,
    percent_from_molarity,
    solution,
)
from farwall.evidence import Rank
from farwall.job.sums.arguments import TEMPERATURE
from farwall.job.sums.noun import Argument, Bounds, Given, Json, Result, Sum
from farwall.units import f_from_c

MOST_MOLAL = heat.MOST_MOLAL
MOST_PERCENT = 66.93
"""What 55.506 mol/kg comes to, the strongest of the table of heats."""

NO_DENSITY = "Its density is known to 38 % only: density, molarity and Baumé are left out."
CARRIED = "From 37.6 to 38 % the density is carried a little beyond what was measured."
COLD = "Below 5 °C the density is carried a little beyond what was measured."
READ_AT_60_F = "No temperature was given: 60 °F (15.6 °C) is taken, as the trade's Baumé is read."
HEAT_AT_25_C = "The heat of dilution is that at 25 °C."


def reckon(given: Given) -> Result:
    """Density, molarity, molality, percent, Baumé; heat given off on endless dilution at 25 °C.

    `baume` given is the degree it is sold by, read at 60 °F. `baume` told is what a hydrometer
    reads at `temperature_c`, `baume_60f` the degree it is sold by, which follows the trade's
    table (two of its three strengths from memory). From 38 % to 66.9 % only
    percent, molality and heat are told; the others are null. [laliberte-2004, parker-1965]
    """
    celsius = given.usual("temperature_c", SIXTY_F_C)
    percent = _percent(given, celsius)
    molality = molality_from_percent(percent)
    warnings: list[Json] = [] if "temperature_c" in given else [READ_AT_60_F]
    return {
        **_by_density(percent, celsius),
        "molality": molality,
        "hcl_percent": percent,
        "temperature_c": celsius,
        "temperature_f": f_from_c(celsius),
        "heat_of_dilution_kj_mol": heat.heat_of_dilution_kj_mol(molality),
        "enthalpy_of_solution_kj_mol": heat.HEAT_OF_SOLUTION_KJ_MOL,
        "heat_capacity_kj_kg_k": (
            heat.heat_capacity_kj_kg_k(percent) if percent <= density.MOST_PERCENT else None
        ),
        "rank": (Rank.MEMORY if "baume" in given else Rank.PUBLISHED).value,
        "source": "laliberte-2004, parker-1965, baume, hcl-20c",
        "warnings": [*warnings, *_told(percent, celsius), HEAT_AT_25_C],
    }


def _percent(given: Given, celsius: float) -> float:
    if "hcl_percent" in given:
        return given.number("hcl_percent")
    if "molality" in given:
        return percent_from_molality(given.number("molality"))
    if "molarity" in given:
        return percent_from_molarity(given.number("molarity"), temperature_c=celsius)
    return percent_from_baume(given.number("baume"))


def _by_density(percent: float, celsius: float) -> Result:
    if percent > density.MOST_PERCENT:
        return dict.fromkeys(("density_kg_l", "molarity", "baume", "baume_60f"))
    found = solution(hcl_percent=percent, temperature_c=celsius)
    return {
        "density_kg_l": found.density_kg_l,
        "molarity": found.molarity,
        "baume": found.baume,
        "baume_60f": found.baume_60f,
    }


def _told(percent: float, celsius: float) -> list[Json]:
    if percent > density.MOST_PERCENT:
        return [NO_DENSITY]
    return [
        words for words, so in ((CARRIED, percent > 37.6), (COLD, celsius < 5)) if so
    ]  # fmt: skip


SUM = Sum(
    name="acid-solution",
    what="hydrochloric acid by percent, molality, molarity or Baumé, with density and heat",
    arguments=(
        Argument("hcl_percent", bounds=Bounds(0.0, MOST_PERCENT)),
        Argument("molality", bounds=Bounds(0.0, MOST_MOLAL)),
        Argument("molarity", bounds=Bounds(0.0, 13.0)),
        Argument("baume", bounds=Bounds(0.0, 25.0)),
        Argument("temperature", TEMPERATURE, Bounds(density.LEAST_C, density.MOST_C)),
    ),
    one_of=(("hcl_percent", "molality", "molarity", "baume"),),
    reckon=reckon,
)
