"""Moist air at a temperature and a humidity."""

from __future__ import annotations

from farwall.air import moist
from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.evidence import Rank
from farwall.job.sums.arguments import PERCENT, PRESSURE, TEMPERATURE
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.units import f_from_c

WARMEST_C = 90.0
AIR = Argument("air", TEMPERATURE, Bounds(-60.0, WARMEST_C), needed=True)
PRESSURE_OF_AIR = Argument("pressure", PRESSURE, Bounds(20_000.0, 150_000.0))


def reckon(given: Given) -> Result:
    """Dew point, wet bulb, vapour pressure, humidity ratio. Source: [ashrae-2017-ch1]."""
    air_c, rh_percent = given.number("air_c"), given.number("rh_percent")
    pressure_pa = given.usual("pressure_pa", STANDARD_PRESSURE_PA)
    dew_c = moist.dew_point_c(air_c=air_c, rh_percent=rh_percent)
    wet_c = moist.wet_bulb_c(air_c=air_c, rh_percent=rh_percent, pressure_pa=pressure_pa)
    return {
        "dew_point_c": dew_c,
        "dew_point_f": f_from_c(dew_c),
        "wet_bulb_c": wet_c,
        "wet_bulb_f": f_from_c(wet_c),
        "vapour_pressure_pa": moist.vapour_pressure_pa(air_c=air_c, rh_percent=rh_percent),
        "humidity_ratio": moist.humidity_ratio(
            air_c=air_c, rh_percent=rh_percent, pressure_pa=pressure_pa
        ),
        "rank": Rank.PUBLISHED.value,
        "source": "ashrae-2017-ch1",
        "warnings": [],
    }


SUM = Sum(
    name="air",
    what="dew point, wet bulb, vapour pressure, humidity ratio",
    arguments=(
        AIR,
        Argument("rh", PERCENT, Bounds(0.1, 100.0), needed=True),
        PRESSURE_OF_AIR,
    ),
    reckon=reckon,
)
