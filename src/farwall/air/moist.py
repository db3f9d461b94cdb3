"""Moist air: dew point, wet bulb, vapour pressure, humidity ratio, saturation.

All relations are those of ASHRAE 2017 chapter 1 [ashrae-2017-ch1] as the
package PsychroLib writes them [psychrolib]. Its unit switch is global, so it
is set once, here, and no other module may touch that package.

Units: °C, percent, pascal, kilogram of water per kilogram of dry air, joule
per kilogram of dry air. Every function raises `Refused` with the value and
the range when it is asked outside its range.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from types import ModuleType

from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.errors import Mistake, Refused


def _uncompiled() -> ModuleType:
    """PsychroLib as it stands without numba.

    Where numba is installed (extra `fast`) it has each of its functions compiled when first called,
    seconds for a handful of sums, and last digits that may differ from those without.
    """
    there = sys.modules.get("numba")
    sys.modules["numba"] = None  # type: ignore[assignment]  # the language's own "not there"
    try:
        import psychrolib
    finally:
        if there is None:
            del sys.modules["numba"]
        else:
            sys.modules["numba"] = there
    return psychrolib  # type: ignore[no-any-return]


psychrolib = _uncompiled()
psychrolib.SetUnitSystem(psychrolib.SI)

_AIR_C = (-100.0, 200.0, "°C")
_RH_PERCENT = (0.1, 100.0, "%")
_PRESSURE_PA = (20_000.0, 150_000.0, "Pa")
_ALTITUDE_M = (-5_000.0, 11_000.0, "m")


def vapour_pressure_pa(*, air_c: float, rh_percent: float) -> float:
    """Pressure of the water vapour in the air. [Pa]

    air_c: dry bulb [°C], -100 to 200. rh_percent: 0 to 100 [%].
    """
    _within("air_c", air_c, _AIR_C)
    _within("rh_percent", rh_percent, (0.0, 100.0, "%"))
    return _asked(lambda: psychrolib.GetVapPresFromRelHum(air_c, rh_percent / 100))


def dew_point_c(*, air_c: float, rh_percent: float) -> float:
    """Temperature at which this air, and a slab in it, begins to sweat. [°C]

    air_c: -100 to 200 [°C]. rh_percent: 0.1 to 100 [%]; bone-dry air has no dew point.
    """
    _within("air_c", air_c, _AIR_C)
    _within("rh_percent", rh_percent, _RH_PERCENT)
    return _asked(lambda: psychrolib.GetTDewPointFromRelHum(air_c, rh_percent / 100))


def wet_bulb_c(
    *, air_c: float, rh_percent: float, pressure_pa: float = STANDARD_PRESSURE_PA
) -> float:
    """Thermodynamic wet-bulb temperature. [°C] Arguments as `humidity_ratio`."""
    _within_air(air_c, rh_percent, pressure_pa)
    return _asked(lambda: psychrolib.GetTWetBulbFromRelHum(air_c, rh_percent / 100, pressure_pa))


def humidity_ratio(
    *, air_c: float, rh_percent: float, pressure_pa: float = STANDARD_PRESSURE_PA
) -> float:
    """Water in the air. [kg per kg of dry air]

    air_c: -100 to 200 [°C]. rh_percent: 0.1 to 100 [%]. pressure_pa: 20 000 to 150 000 [Pa].
    """
    _within_air(air_c, rh_percent, pressure_pa)
    return _asked(lambda: psychrolib.GetHumRatioFromRelHum(air_c, rh_percent / 100, pressure_pa))


def rh_percent_from_vapour_pressure(*, air_c: float, vapour_pressure_pa: float) -> float:
    """Relative humidity of air that holds this vapour at `air_c`, 100 when it cannot. [%]"""
    most = saturation_pressure_pa(air_c=air_c)
    return min(100.0, 100.0 * max(0.0, vapour_pressure_pa) / most)


def rh_percent_from_dew_point(*, air_c: float, dew_point_c: float) -> float:
    """Relative humidity of air at `air_c` that sweats at `dew_point_c`, at most 100. [%]"""
    held = saturation_pressure_pa(air_c=dew_point_c)
    return rh_percent_from_vapour_pressure(air_c=air_c, vapour_pressure_pa=held)


def saturation_pressure_pa(*, air_c: float) -> float:
    """Vapour pressure over water (below 0.01 °C over ice). [Pa] air_c: -100 to 200 [°C]."""
    _within("air_c", air_c, _AIR_C)
    return _asked(lambda: psychrolib.GetSatVapPres(air_c))


def saturation_humidity_ratio(*, air_c: float, pressure_pa: float = STANDARD_PRESSURE_PA) -> float:
    """Water in saturated air, taken as an ideal gas (within 1 % of the tables). [kg/kg]"""
    _within("air_c", air_c, _AIR_C)
    _within("pressure_pa", pressure_pa, _PRESSURE_PA)
    _boils_not(air_c, pressure_pa)
    return _asked(lambda: psychrolib.GetSatHumRatio(air_c, pressure_pa))


def saturation_enthalpy_j_per_kg(
    *, air_c: float, pressure_pa: float = STANDARD_PRESSURE_PA
) -> float:
    """Enthalpy of saturated air above dry air and water at 0 °C. [J per kg of dry air]"""
    _within("air_c", air_c, _AIR_C)
    _within("pressure_pa", pressure_pa, _PRESSURE_PA)
    _boils_not(air_c, pressure_pa)
    return _asked(lambda: psychrolib.GetSatAirEnthalpy(air_c, pressure_pa))


def standard_pressure_pa(*, altitude_m: float) -> float:
    """Pressure of the standard atmosphere. [Pa] altitude_m: -5 000 to 11 000 [m]."""
    _within("altitude_m", altitude_m, _ALTITUDE_M)
    return _asked(lambda: psychrolib.GetStandardAtmPressure(altitude_m))


def dry_air_kg_m3(*, air_c: float, rh_percent: float, pressure_pa: float) -> float:
    """Dry air in a cubic metre of this moist air. [kg/m³] An ideal gas, as the rest."""
    ratio = humidity_ratio(air_c=air_c, rh_percent=rh_percent, pressure_pa=pressure_pa)
    return 1.0 / _asked(lambda: psychrolib.GetMoistAirVolume(air_c, ratio, pressure_pa))


def _within_air(air_c: float, rh_percent: float, pressure_pa: float) -> None:
    _within("air_c", air_c, _AIR_C)
    _within("rh_percent", rh_percent, _RH_PERCENT)
    _within("pressure_pa", pressure_pa, _PRESSURE_PA)
    _boils_not(air_c, pressure_pa, share=rh_percent / 100)


def _boils_not(air_c: float, pressure_pa: float, *, share: float = 1.0) -> None:
    if share * saturation_pressure_pa(air_c=air_c) >= pressure_pa:
        raise Refused(
            Mistake(
                "air_c",
                f"At {air_c:g} °C this air would hold more vapour than {pressure_pa:g} Pa allows.",
                "Check the temperature, the humidity and the pressure.",
            )
        )


def _within(name: str, value: float, bounds: tuple[float, float, str]) -> None:
    low, high, unit = bounds
    if not low <= value <= high:
        raise Refused(
            Mistake(
                name,
                f"{value:g} {unit} lies outside {low:g} to {high:g} {unit}.",
                "Check the value and its unit.",
            )
        )


def _asked(question: Callable[[], object]) -> float:
    """The package's answer; its bare complaints become ours."""
    try:
        return float(question())  # type: ignore[arg-type]
    except ValueError as trouble:
        raise Refused(
            Mistake("", "The moist-air relations give no answer here.", str(trouble))
        ) from trouble
