"""Saturated air at a temperature, or the standard atmosphere at an altitude."""

from __future__ import annotations

from farwall.air import moist
from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.evidence import Rank
from farwall.job.sums.air import PRESSURE_OF_AIR
from farwall.job.sums.arguments import HEIGHT, TEMPERATURE
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse


def reckon(given: Given) -> Result:
    """Saturation pressure, humidity ratio and enthalpy; or the standard pressure.

    Above boiling at the pressure given only the saturation pressure is told.
    Source: [ashrae-2017-ch1].
    """
    tail: Result = {"rank": Rank.PUBLISHED.value, "source": "ashrae-2017-ch1", "warnings": []}
    altitude_m = given.maybe("altitude_m")
    if altitude_m is not None:
        if "pressure_pa" in given:
            raise refuse("pressure_pa", "It does not go with altitude_m.", "Leave one out.")
        return {"standard_pressure_pa": moist.standard_pressure_pa(altitude_m=altitude_m), **tail}
    air_c = given.number("air_c")
    pressure_pa = given.usual("pressure_pa", STANDARD_PRESSURE_PA)
    vapour_pa = moist.saturation_pressure_pa(air_c=air_c)
    ratio = enthalpy = None
    if vapour_pa < pressure_pa:
        ratio = moist.saturation_humidity_ratio(air_c=air_c, pressure_pa=pressure_pa)
        enthalpy = moist.saturation_enthalpy_j_per_kg(air_c=air_c, pressure_pa=pressure_pa)
    else:
        tail["warnings"] = ["Water boils at this temperature and pressure: there is no wet air."]
    return {
        "saturation_pressure_pa": vapour_pa,
        "saturation_humidity_ratio": ratio,
        "saturation_enthalpy_j_per_kg": enthalpy,
        **tail,
    }


SUM = Sum(
    name="saturation",
    what="saturated air at a temperature, or the standard pressure at an altitude",
    arguments=(
        Argument("air", TEMPERATURE, Bounds(-100.0, 200.0)),
        PRESSURE_OF_AIR,
        Argument("altitude", HEIGHT, Bounds(-5000.0, 11_000.0)),
    ),
    one_of=(("air_c", "altitude_m"),),
    reckon=reckon,
)
