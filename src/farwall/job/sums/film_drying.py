"""Minutes for evaporation alone to dry a film: a limit, never an open time."""

from __future__ import annotations

from farwall.air.conditions import STANDARD_PRESSURE_PA, Conditions
from farwall.air.film import film_drying
from farwall.job.sums.arguments import FILM, SPEED, TEMPERATURE, sensible
from farwall.job.sums.evaporation import AIR, PRESSURE_OF_AIR, RELATION, RH, told_of
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum

CAUTION = "Evaporation alone: the slab drinks too, so this is not an open time. See open-time."


def reckon(given: Given) -> Result:
    """Minutes with their range, `null` where the film does not dry."""
    now = Conditions(
        surface_c=given.number("surface_c"),
        air_c=given.number("air_c"),
        rh_percent=given.number("rh_percent"),
        air_speed_m_s=given.number("air_speed_m_s"),
        pressure_pa=given.usual("pressure_pa", STANDARD_PRESSURE_PA),
    )
    found = film_drying(now, film_mm=given.number("film_mm"), relation=given.text("relation"))
    told = told_of(found.by)
    return {
        "minutes": found.minutes,
        "low": found.low_min,
        "likely": found.minutes,
        "high": found.high_min,
        "rate_kg_m2_h": found.by.rate_kg_m2_h,
        **told,
        "warnings": [*found.by.warnings, CAUTION],
    }


SUM = Sum(
    name="film-drying",
    what="minutes for evaporation alone to dry a film; not an open time",
    arguments=(
        Argument("surface", TEMPERATURE, sensible("surface_c"), needed=True),
        AIR,
        RH,
        Argument("air_speed", SPEED, sensible("air_speed_m_s"), needed=True),
        Argument("film", FILM, Bounds(0.0, 100.0, above=True), needed=True),
        RELATION,
        PRESSURE_OF_AIR,
    ),
    reckon=reckon,
)
