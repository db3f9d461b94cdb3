"""What slab, air and weather make one say beside a plan: cold slab, sweating slab, old forecast."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.air.day import STATION, at
from farwall.air.limits import in_both
from farwall.air.sealers import MARGIN_K, apart_words, wanted_words
from farwall.air.weather import Forecast, WeatherFile
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.plan import Ground
from farwall.job.lasting import Lasting
from farwall.job.site import house_grounds

WARM_AIR_C, COOL_SLAB_C, APART_K = 15.6, 12.8, 4.5
"""60 °F of air over less than 55 °F of slab, or a slab 8 °F below the air: guesses."""
HOT_SLAB_C = 23.9
"""75 °F: from here on a slab below the air is no cold one, and nobody warms a house for it. A
guess."""
SWEAT_K = MARGIN_K
"""A slab nearer the dew point takes no sealer [iso-8502-4]."""
_LOOKED_AHEAD_H = 24
_FROM_WEATHER = {
    "survey.slab_c": ("surface_c", "C"),
    "survey.air_c": ("air_c", "C"),
    "survey.rh_percent": ("rh_percent", "%"),
    "survey.air_speed_m_s": ("air_speed_m_s", "m/s"),
}


def slab_warnings(lasting: Lasting) -> tuple[str, ...]:
    """The cold-slab trap and the sweating slab, for the first day of the plan."""
    hours = range(_LOOKED_AHEAD_H if lasting.hours else 1)
    day = [(hour, lasting.conditions(60.0 * hour)) for hour in hours]
    found = []
    us = lasting.job.job.wishes.units == "us"
    trapped = [(hour, now) for hour, now in day if _trap(now)]
    if trapped:
        hour, now = max(trapped, key=lambda one: one[1].air_c - one[1].surface_c)
        told = _hot if now.surface_c >= HOT_SLAB_C else _cold
        found.append(told(hour, now, us=us))
    damp = [(hour, now) for hour, now in day if _above_dew_k(now) < SWEAT_K]
    if damp:
        hour, now = min(damp, key=lambda one: _above_dew_k(one[1]))
        found.append(_sweating(hour, now, us=us))
    return tuple(found)


def weather_warnings(
    job: Job, weather: WeatherFile | Forecast | None, starts_at: datetime
) -> tuple[str, ...]:
    """That a station is not this floor, unless it was read there; how old a forecast is."""
    found = []
    survey = job.survey
    read = (survey.slab_c, survey.air_c, survey.rh_percent)
    if weather is not None and any(one is None for one in read):
        found.append(STATION)
    if isinstance(weather, Forecast):
        age_h = weather.age_h(starts_at)
        if age_h is None:
            found.append("The forecast does not say when it was issued: mind how old it is.")
        else:
            found.append(f"The forecast was issued {age_h:.0f} h before the first stroke.")
    return tuple(found)


def issued(age_h: float | None) -> str:
    """How old a forecast is, in words."""
    if age_h is None:
        return "it does not say when it was issued."
    if age_h < 0:
        return f"issued {-age_h:.0f} h from now: check its clock or this one."
    return f"issued {age_h:.0f} h ago."


def weather_grounds(lasting: Lasting, settled: Sequence[Ground]) -> tuple[Ground, ...]:
    """The grounds with slab and air of the first hour as reckoned, where weather brought them.

    A default that the weather took the place of is no ground of the plan.
    """
    if not lasting.hours:
        return tuple(settled)
    first = at(lasting.hours, lasting.starts_at)
    kept = [one for one in settled if one.name not in _FROM_WEATHER]
    found = []
    for name, (key, unit) in _FROM_WEATHER.items():
        rank = first.ranks[key]
        value = f"{getattr(first.conditions, key):.3g}"
        source = f"told as {name}" if rank is Rank.MEASURED else "reckoned from the weather"
        found.append(Ground(name, value, unit, rank.value, source))
    return (*kept, *found, *house_grounds(lasting.job.job))


def _trap(now: Conditions) -> bool:
    apart = now.air_c - now.surface_c
    return apart >= APART_K or (now.air_c >= WARM_AIR_C and now.surface_c < COOL_SLAB_C)


def _above_dew_k(now: Conditions) -> float:
    return now.surface_c - moist.dew_point_c(air_c=now.air_c, rh_percent=max(now.rh_percent, 1.0))


def _cold(hour: int, now: Conditions, *, us: bool) -> str:
    return (
        f"{_read(hour, now, us=us)} Stain reacts and dries by the slab's warmth, and sealer laid "
        "over a cold slab clouds later. Warm the house for a day or two and read the slab again, "
        "not the air."
    )


def _hot(hour: int, now: Conditions, *, us: bool) -> str:
    return (
        f"{_read(hour, now, us=us)} The slab follows the air and gets warmer through the day: an "
        "edge then lives shorter. Read the slab again before each coat."
    )


def _read(hour: int, now: Conditions, *, us: bool) -> str:
    air, slab = in_both(now.air_c, us=us), in_both(now.surface_c, us=us)
    return f"Air {air}, slab {slab}{_when(hour)}: the air deceives, the slab decides."


def _sweating(hour: int, now: Conditions, *, us: bool) -> str:
    above = _above_dew_k(now)
    dew_c = now.surface_c - above
    apart = apart_words(above, us=us)
    state = "the slab sweats" if above <= 0 else f"the slab is only {apart} above it"
    dries = "Nothing dries there" if above <= 0 else "It dries slowly there, if at all"
    return (
        f"Dew point {in_both(dew_c, us=us)}, slab {in_both(now.surface_c, us=us)}{_when(hour)}: "
        f"{state}. {dries}, and no sealer goes on nearer to the dew point than "
        f"{wanted_words(SWEAT_K, above, us=us)}."
    )


def _when(hour: int) -> str:
    return " at the first stroke" if hour == 0 else f" {hour} h after the first stroke"
