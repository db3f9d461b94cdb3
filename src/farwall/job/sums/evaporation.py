"""Water leaving a wet slab, by one of several published relations, with their spread."""

from __future__ import annotations

from farwall.air.conditions import STANDARD_PRESSURE_PA, Conditions
from farwall.air.evaporation import Evaporation, evaporation
from farwall.air.relations import RELATIONS
from farwall.job.sums.arguments import PERCENT, PRESSURE, SPEED, TEMPERATURE, sensible
from farwall.job.sums.noun import Argument, Given, Result, Sum
from farwall.units import KG_M2_PER_LB_FT2

RELATION = Argument("relation", choices=tuple(RELATIONS))
RH = Argument("rh", PERCENT, sensible("rh_percent"), needed=True)
AIR = Argument("air", TEMPERATURE, sensible("air_c"), needed=True)
PRESSURE_OF_AIR = Argument("pressure", PRESSURE, sensible("pressure_pa"))


def reckon(given: Given) -> Result:
    """Rate with its range; wind is that 0.5 m over the slab, not that of a weather station."""
    now = Conditions(
        surface_c=given.number("concrete_c"),
        air_c=given.number("air_c"),
        rh_percent=given.number("rh_percent"),
        air_speed_m_s=given.number("wind_m_s"),
        pressure_pa=given.usual("pressure_pa", STANDARD_PRESSURE_PA),
    )
    found = evaporation(now, relation=given.text("relation"))
    return {
        "rate_kg_m2_h": found.rate_kg_m2_h,
        "rate_lb_ft2_h": found.rate_kg_m2_h / KG_M2_PER_LB_FT2,
        "low": found.low_kg_m2_h,
        "likely": found.rate_kg_m2_h,
        "high": found.high_kg_m2_h,
        **told_of(found),
    }


def told_of(found: Evaporation) -> Result:
    """What stands beside every figure that rests on an evaporation relation."""
    return {
        "relation": found.relation,
        "made_for": found.made_for,
        "rank": found.rank.value,
        "source": found.source,
        "warnings": list(found.warnings),
    }


SUM = Sum(
    name="evaporation",
    what="water leaving a wet slab, by rival published relations",
    arguments=(
        Argument("concrete", TEMPERATURE, sensible("surface_c"), needed=True),
        AIR,
        RH,
        Argument("wind", SPEED, sensible("air_speed_m_s"), needed=True),
        RELATION,
        PRESSURE_OF_AIR,
    ),
    reckon=reckon,
)
