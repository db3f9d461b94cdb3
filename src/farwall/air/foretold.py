"""A forecast for its own days, and for all others what is usual: a typical year, or its mean day.

A calendar looks weeks ahead, a forecast ten days. Past its end and before its
beginning stands the weather file of a year where one was given; else the mean
of its own days, hour by hour (a guess: the next days are most like these).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import cached_property

from farwall.air.weather import Forecast, Place, Weather, WeatherFile
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

_DAY_H = 24
_HOUR = timedelta(hours=1)
Values = tuple[float | None, ...]


@dataclass(frozen=True)
class Foretold:
    """Weather of any hour: foretold where the forecast holds it, usual where it does not."""

    forecast: Forecast
    year: WeatherFile | None = None

    @property
    def ends_at(self) -> datetime:
        """The first moment that is no longer foretold."""
        return self.forecast.starts_at + len(self.forecast.air_c) * _HOUR

    @property
    def place(self) -> Place | None:
        """Where the weather file was recorded; a forecast tells no place."""
        return None if self.year is None else self.year.place

    @cached_property
    def mean_air_c(self) -> float | None:
        """Of the year, else of the hours foretold (a guess at the ground). [°C]"""
        return self.year.mean_air_c if self.year is not None else _mean(self.forecast.air_c)

    def weather(self, *, starts_at: datetime, hours: int = 24, before_h: int = 24) -> Weather:
        """`hours` of weather from the hour of `starts_at` on, and `before_h` hours before it.

        Values as `Weather`; one that the forecast lacks is the usual one. Raises `Refused` for a
        time without an offset, and as `WeatherFile.weather` where a year is asked.
        """
        if starts_at.tzinfo is None:
            raise Refused(
                Mistake("starts_at", f"{starts_at} has no offset.", "Write it like -06:00.")
            )
        usual = self._usual(starts_at, hours, before_h)
        at = (usual.starts_at - self.forecast.starts_at) // _HOUR
        told = self.forecast
        return Weather(
            starts_at=usual.starts_at,
            air_c=_over(usual.air_c, told.air_c, at),
            rh_percent=_over(usual.rh_percent, told.rh_percent, at),
            pressure_pa=usual.pressure_pa,
            wind_m_s=_over(usual.wind_m_s, told.wind_m_s, at),
        )

    def _usual(self, starts_at: datetime, hours: int, before_h: int) -> Weather:
        if self.year is not None:
            return self.year.weather(starts_at=starts_at, hours=hours, before_h=before_h)
        whole = starts_at.replace(minute=0, second=0, microsecond=0)
        first = whole.astimezone(self.forecast.starts_at.tzinfo) - before_h * _HOUR
        at, count = (first - self.forecast.starts_at) // _HOUR, hours + before_h
        air_c, rh_percent, wind_m_s = self._mean_day
        return Weather(
            starts_at=first,
            air_c=_again(air_c, at, count),
            rh_percent=_again(rh_percent, at, count),
            pressure_pa=(None,) * count,
            wind_m_s=_again(wind_m_s, at, count),
        )

    @cached_property
    def _mean_day(self) -> tuple[Values, Values, Values]:
        """Air, humidity and wind of a day, an hour each from the hour the forecast begins at."""
        told = self.forecast
        return _by_hour(told.air_c), _by_hour(told.rh_percent), _by_hour(told.wind_m_s)


Outdoors = WeatherFile | Foretold
"""Weather of weeks: any hour can be asked of it."""


def _by_hour(values: Sequence[float | None]) -> Values:
    """The mean of each hour of the day; of all hours where an hour of the day has no value."""
    means = (_mean(values[n::_DAY_H]) for n in range(_DAY_H))
    whole = _mean(values)
    return tuple(whole if one is None else one for one in means)


def _mean(values: Sequence[float | None]) -> float | None:
    known = [one for one in values if one is not None]
    return math.fsum(known) / len(known) if known else None


def _again(day: Values, at: int, count: int) -> Values:
    return tuple(day[(at + n) % _DAY_H] for n in range(count))


def _over(usual: Values, told: Values, at: int) -> Values:
    """`told` laid over `usual`, whose first hour is number `at` of those told."""
    return tuple(
        one if not 0 <= at + n < len(told) or told[at + n] is None else told[at + n]
        for n, one in enumerate(usual)
    )
