"""A year of floors in one answer: when stain, a second coat, rinsing and sealer go, by the hour.

For an ordinary slab and house, from a typical year of weather. It says what a
season is like, never what a day will bring.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta, timezone
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from farwall.air.day import HourAtSlab, hours_at_slab
from farwall.air.house import House
from farwall.air.sealers import SealerLimits, limits_of
from farwall.air.sun import sun_at
from farwall.air.weather import Place, WeatherFile
from farwall.facts.sealer import Sealer, SealerType
from farwall.job.year_chain import FROM_H, TO_H, allowed, days_to_seal
from farwall.job.year_heat import heated
from farwall.job.year_hours import DAY_H, Flags, Floats, Seal, Stain, seal_hours, stain_hours
from farwall.nouns import dataclass

Standing = Literal["shut", "open", "heated"]
DAYS = 365
STAINING_H = 2
"""A coat of stain on an ordinary floor, in hours: practice's work of two people, rounded up."""
_YEAR = 2027
"""Any year of 365 days: a typical year's own years are not looked at."""
_BEFORE_H = 240
_SUN_STEP_MIN = 10
_LIFT_DEG = 0.57
"""By how much the air lifts a sun at the horizon [from-memory: 34 minutes of arc]."""
MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip


@dataclass(frozen=True)
class Month:
    """Days of one month on which so much can be done within the hours of work."""

    name: str
    first_day: int
    days: int
    stain: int
    both_coats: int
    seal: int


@dataclass(frozen=True)
class Year:
    """A year of one place and house, hours from its first midnight, days of 24 of them."""

    place: Place
    standing: Standing
    limits: SealerLimits
    stain: Stain
    seal: Seal
    likely_days: Floats
    high_days: Floats
    sunrise_h: Floats
    """Hours of the file's own clock; not a number on a day without one."""
    sunset_h: Floats
    months: tuple[Month, ...]


def year_of(
    weather: WeatherFile, *, standing: Standing = "shut", sealer: SealerType | None = None
) -> Year:
    """What a year of this weather allows in an ordinary house that stands so.

    weather: a file of a whole year, else `Refused`. sealer: its generic type;
    left out, the strictest limits of all types. Rank: a guess, as all that is
    reckoned from weather (`air.day.STATION`).
    """
    hours = [one.conditions for one in _hours(weather, standing)]
    limits = limits_of(Sealer(type=sealer))
    stain, seal = stain_hours(hours), seal_hours(hours, limits)
    free = allowed(stain, seal)
    rises, sets = _sun(weather.place)
    return Year(
        weather.place,
        standing,
        limits,
        stain,
        seal,
        days_to_seal(hours, free, limits, end="likely"),
        days_to_seal(hours, free, limits, end="high"),
        rises,
        sets,
        _months(stain, seal),
    )


def first_days() -> tuple[int, ...]:
    """The first day of each month, counted from 0."""
    return tuple((date(_YEAR, n, 1) - date(_YEAR, 1, 1)).days for n in range(1, 13))


def by_day(flags: NDArray[np.generic]) -> NDArray[np.generic]:
    """Hours of a year as a row a day."""
    return flags.reshape(DAYS, DAY_H)


def both_coats(stain: Stain) -> Flags:
    """Days on which two coats can be laid within the hours of work, by the high end of drying."""
    fits: Flags = by_day(_whole_coat(stain)).astype(bool)
    waits = by_day(np.ceil(np.nan_to_num(stain.high_min, nan=np.inf) / 60)).astype(float)
    day: Flags = np.zeros(DAYS, dtype=bool)
    for hour in range(FROM_H, TO_H - STAINING_H):
        end = hour + STAINING_H
        later = np.arange(DAY_H)[None, :] >= end + waits[:, end, None]
        day = day | (fits[:, hour] & np.asarray((fits & later).any(axis=1)))
    return day


def _whole_coat(stain: Stain) -> Flags:
    """Hours in which a coat may begin and is finished within the hours of work of that day."""
    fine = stain.fine
    hour = np.arange(len(fine)) % DAY_H
    fits = fine & (hour >= FROM_H) & (hour + STAINING_H <= TO_H)
    for n in range(1, STAINING_H):
        fits = fits & np.roll(fine, -n)
    return np.asarray(fits)


def _months(stain: Stain, seal: Seal) -> tuple[Month, ...]:
    one_coat = np.asarray(by_day(_whole_coat(stain)).astype(bool).any(axis=1))
    two = both_coats(stain)
    sealed = np.asarray(by_day(seal.fine)[:, FROM_H : TO_H - 1].astype(bool).any(axis=1))
    starts = [*first_days(), DAYS]
    return tuple(
        Month(name, a, b - a, int(one_coat[a:b].sum()), int(two[a:b].sum()), int(sealed[a:b].sum()))
        for name, a, b in zip(MONTHS, starts[:-1], starts[1:], strict=True)
    )


def _hours(weather: WeatherFile, standing: Standing) -> Sequence[HourAtSlab]:
    clock = timezone(timedelta(hours=weather.place.utc_offset_h))
    begins = datetime(_YEAR, 1, 1, tzinfo=clock)
    told = weather.weather(starts_at=begins, hours=DAYS * DAY_H, before_h=_BEFORE_H)
    ground_c = weather.mean_air_c
    if standing == "heated":
        return heated(told, before_h=_BEFORE_H, ground_c=ground_c)
    house = House(standing=standing)
    return hours_at_slab(told, house=house, before_h=_BEFORE_H, ground_c=ground_c)


def _sun(place: Place) -> tuple[Floats, Floats]:
    """Sunrise and sunset of each day on the file's own clock: the sun's middle at the horizon."""
    begins = datetime(_YEAR, 1, 1, tzinfo=UTC) - timedelta(hours=place.utc_offset_h)
    count = DAYS * DAY_H * 60 // _SUN_STEP_MIN
    moments = [begins + n * timedelta(minutes=_SUN_STEP_MIN) for n in range(count)]
    high = sun_at(
        moments, latitude_deg=place.latitude_deg, longitude_deg=place.longitude_deg
    ).elevation_deg.reshape(DAYS, -1)
    # Air lifts a low sun, and the position leaves that out below the horizon: lifted there too.
    high = np.where(high < -_LIFT_DEG / 2, high + _LIFT_DEG, high)
    return _crossing(high), _crossing(-high)


def _crossing(high: Floats) -> Floats:
    """Hours of the first crossing from below to above nought in each row; nan without one."""
    up = (high[:, :-1] <= 0) & (high[:, 1:] > 0)
    at = up.argmax(axis=1)
    rows = np.arange(len(high))
    low, above = high[rows, at], high[rows, at + 1]
    share = -low / np.where(above > low, above - low, 1.0)
    return np.where(up.any(axis=1), (at + share) * _SUN_STEP_MIN / 60, np.nan)
