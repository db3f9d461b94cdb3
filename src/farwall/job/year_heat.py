"""A house kept warm through the year: as much vented heat, month by month, as holds it at 65 °F."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import numpy as np

from farwall.air.day import HourAtSlab, hours_at_slab
from farwall.air.house import House
from farwall.air.weather import Weather
from farwall.units import c_from_f

WARM_C = c_from_f(65)
"""What a heated house is held at on the mean of a month: a guess."""
MOST_KW = 15.0
"""No larger heater is taken, for 120 m² of floor: a guess."""
_TRY_KW, _MONTH_H = 4.0, 730


def heated(told: Weather, *, before_h: int, ground_c: float | None) -> tuple[HourAtSlab, ...]:
    """The hours at the slab with heat where the shut house is colder than `WARM_C`.

    told: hours outside, the first `before_h` to settle. Each month's heat is that
    which by a straight line through no heat and 4 kW brings its mean to
    `WARM_C`, between none and `MOST_KW`. The months are reckoned apart, each with
    `before_h` of the one before at its own heat.
    """
    found: list[HourAtSlab] = []
    last = len(told) - before_h
    for start in range(0, last, _MONTH_H):
        part = _part(told, start, min(start + _MONTH_H, last) + before_h)
        found += _held(part, before_h, ground_c)
    return tuple(found)


def _held(part: Weather, before_h: int, ground_c: float | None) -> tuple[HourAtSlab, ...]:
    def at(kw: float) -> tuple[HourAtSlab, ...]:
        house = House(heat_kw=kw)
        return hours_at_slab(part, house=house, before_h=before_h, ground_c=ground_c)

    unheated, tried = at(0.0), at(_TRY_KW)
    cold, warm = (float(np.mean([x.conditions.air_c for x in each])) for each in (unheated, tried))
    if cold >= WARM_C:
        return unheated
    if warm <= cold:  # both below what conditions can tell
        return at(MOST_KW)
    return at(min((WARM_C - cold) / (warm - cold) * _TRY_KW, MOST_KW))


def _part(told: Weather, first: int, last: int) -> Weather:
    cut = slice(first, last)
    return replace(
        told,
        starts_at=told.starts_at + timedelta(hours=first),
        air_c=told.air_c[cut],
        rh_percent=told.rh_percent[cut],
        pressure_pa=told.pressure_pa[cut],
        wind_m_s=told.wind_m_s[cut],
    )
