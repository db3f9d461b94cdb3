"""From the weather outside to the slab inside, hour by hour: a first form, and a guess.

A house that stands shut damps and delays the day outside; nobody measured by
how much for the house at hand. So a typed reading always wins, for the hours
of the day that it was taken for, and each figure keeps its rank.

The guesses, all to be replaced by readings:

- the slab is as warm as the air outside was on average over the last 24 h;
- the air inside swings half as far about that average as the air outside;
- it holds the water vapour of the air outside (no one cooks or mops yet);
- air moves over the floor at a fiftieth of the station's 10 m wind when the
  house is shut, at a fifth with windows open, and never slower than 0.1 m/s.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from farwall.air import moist
from farwall.air.conditions import REFERENCE, STANDARD_PRESSURE_PA, Conditions
from farwall.air.weather import Weather
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.facts import default_table as table

SWING = 0.5
SHUT, OPEN = 0.02, 0.2
STILL_M_S = REFERENCE.air_speed_m_s
LAG_H = 24
_COLDEST_C, _HOTTEST_C = -17.0, 60.0
_STAND_IN = {
    "surface_c": table.SLAB_C.rank,
    "air_c": table.AIR_C.rank,
    "rh_percent": table.RH_PERCENT.rank,
    "air_speed_m_s": table.AIR_SPEED_M_S.rank,
}


@dataclass(frozen=True)
class Readings:
    """What was read on the spot; None where nothing was. °C, %, m/s."""

    slab_c: float | None = None
    air_c: float | None = None
    rh_percent: float | None = None
    air_speed_m_s: float | None = None


@dataclass(frozen=True)
class HourAtSlab:
    """Conditions at the slab for one hour, and the rank of each of its values by name."""

    starts_at: datetime
    conditions: Conditions
    ranks: dict[str, Rank]


def typed_conditions(readings: Readings) -> tuple[Conditions, dict[str, Rank]]:
    """Conditions from readings alone, gaps filled by the mild day of common practice.

    A slab or an air temperature that is missing is taken like the other one (a guess).
    """
    told = _told(readings)
    values = {name: value for name, value in told.items() if value is not None}
    ranks = {name: Rank.MEASURED if name in values else _STAND_IN[name] for name in told}
    for name, other in (("surface_c", "air_c"), ("air_c", "surface_c")):
        value = told[other]
        if name not in values and value is not None:
            values[name] = value
            ranks[name] = Rank.GUESS
    return Conditions(**values), ranks


def hours_at_slab(
    weather: Weather, *, readings: Readings | None = None, windows_open: bool = False
) -> tuple[HourAtSlab, ...]:
    """Conditions at the slab for each hour of `weather` after its first 24, as guessed indoors.

    weather: outdoor hours, the first 24 of them being the day before.
    readings: typed values, which win over the guesses. windows_open: how the
    air moves. Raises `Refused` when fewer than 25 hours come, or when a value
    is missing for 6 hours together or more (shorter gaps are bridged).
    """
    if len(weather) <= LAG_H:
        raise Refused(
            Mistake("weather", f"Only {len(weather)} hours came.", "Give the day before as well.")
        )
    air_c = [min(max(one, _COLDEST_C), _HOTTEST_C) for one in _bridged("air_c", weather.air_c)]
    rh_percent = [min(one, 100.0) for one in _bridged("rh_percent", weather.rh_percent)]
    pressure_pa = _bridged("pressure_pa", weather.pressure_pa, usual=STANDARD_PRESSURE_PA)
    wind_m_s = _bridged("wind_m_s", weather.wind_m_s)
    told = _told(readings or Readings())
    ranks = {name: Rank.GUESS if value is None else Rank.MEASURED for name, value in told.items()}
    hours = []
    for n in range(LAG_H, len(weather)):
        values = _inside(
            mean_c=sum(air_c[n - LAG_H : n]) / LAG_H,
            air_c=air_c[n],
            rh_percent=rh_percent[n],
            moving=OPEN * wind_m_s[n] if windows_open else SHUT * wind_m_s[n],
            told=told,
        )
        now = Conditions(**values, pressure_pa=pressure_pa[n])
        hours.append(HourAtSlab(weather.starts_at + timedelta(hours=n), now, ranks))
    return tuple(hours)


def at(hours: Sequence[HourAtSlab], moment: datetime) -> HourAtSlab:
    """The hour that `moment` falls in; before the first the first, after the last the last."""
    begun = [one for one in hours if one.starts_at <= moment]
    return begun[-1] if begun else hours[0]


def _told(readings: Readings) -> dict[str, float | None]:
    return {
        "surface_c": readings.slab_c,
        "air_c": readings.air_c,
        "rh_percent": readings.rh_percent,
        "air_speed_m_s": readings.air_speed_m_s,
    }


def _inside(
    *,
    mean_c: float,
    air_c: float,
    rh_percent: float,
    moving: float,
    told: dict[str, float | None],
) -> dict[str, float]:
    """Values at the slab: as told, else guessed from the air outside (°C, %) and what moves it."""
    values = {
        "surface_c": mean_c,
        "air_c": mean_c + SWING * (air_c - mean_c),
        "air_speed_m_s": max(STILL_M_S, moving),
    }
    values |= {name: value for name, value in told.items() if value is not None}
    if "rh_percent" not in values:
        held = moist.vapour_pressure_pa(air_c=air_c, rh_percent=rh_percent)
        values["rh_percent"] = moist.rh_percent_from_vapour_pressure(
            air_c=values["air_c"], vapour_pressure_pa=held
        )
    return values


def _bridged(
    name: str, values: Sequence[float | None], *, usual: float | None = None, longest: int = 5
) -> list[float]:
    """The values with gaps of up to `longest` hours filled by straight lines."""
    known = [n for n, value in enumerate(values) if value is not None]
    if not known and usual is not None:
        return [usual] * len(values)
    gaps = [b - a - 1 for a, b in zip([-1, *known], [*known, len(values)], strict=True)]
    if usual is None and max(gaps) > longest:
        raise Refused(
            Mistake(
                "weather",
                f"{name} is missing for {max(gaps)} hours together.",
                "Take another file, or type readings for the day.",
            )
        )
    return [_between(values, known, n) for n in range(len(values))]


def _between(values: Sequence[float | None], known: Sequence[int], n: int) -> float:
    before = max((k for k in known if k <= n), default=known[0])
    after = min((k for k in known if k >= n), default=known[-1])
    left, right = values[before], values[after]
    assert left is not None
    assert right is not None
    if after == before or not before <= n <= after:
        return left if n >= before else right
    return left + (right - left) * (n - before) / (after - before)
