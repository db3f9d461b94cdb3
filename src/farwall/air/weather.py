"""Weather: the hours of a file as they stand in it, and the stretch of them a day needs."""

from __future__ import annotations

import math
from dataclasses import field
from datetime import datetime, timedelta, timezone
from functools import cached_property
from typing import NamedTuple

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.units import clock_words

_MOST_OF_A_YEAR_H = 8000


class Hour(NamedTuple):
    """One hour of a weather file; `hour` is 1 to 24 and names its END. None is missing."""

    line: int
    year: int
    month: int
    day: int
    hour: int
    air_c: float | None
    dew_point_c: float | None
    rh_percent: float | None
    pressure_pa: float | None
    wind_m_s: float | None
    wind_direction_deg: float | None
    direct_w_m2: float | None = None
    diffuse_w_m2: float | None = None


@dataclass(frozen=True)
class Place:
    """Where a weather file was recorded. Degrees (north and east positive), hours, metres."""

    city: str
    latitude_deg: float
    longitude_deg: float
    utc_offset_h: float
    elevation_m: float


@dataclass(frozen=True)
class Weather:
    """Hourly outdoor weather from `starts_at` on (ISO 8601 with offset, the first hour's start).

    °C, %, Pa, and wind in m/s as a station measures it, at about 10 m in the
    open: it is not the air over an indoor floor. None is missing.
    """

    starts_at: datetime
    air_c: tuple[float | None, ...]
    rh_percent: tuple[float | None, ...]
    pressure_pa: tuple[float | None, ...]
    wind_m_s: tuple[float | None, ...]

    def __len__(self) -> int:
        return len(self.air_c)


@dataclass(frozen=True)
class WeatherFile:
    """A weather file as read: its place, its hours in order, how many values each lacked."""

    place: Place
    hours: tuple[Hour, ...]
    missing: dict[str, int] = field(default_factory=dict)

    @cached_property
    def mean_air_c(self) -> float | None:
        """Mean over the year, about that of the ground; None when the file is not of a year."""
        known = [one.air_c for one in self.hours if one.air_c is not None]
        return math.fsum(known) / len(known) if len(known) >= _MOST_OF_A_YEAR_H else None

    @cached_property
    def _by_step(self) -> dict[tuple[int, int, int], Hour]:
        return {(one.month, one.day, one.hour): one for one in self.hours}

    def weather(
        self, *, starts_at: datetime, hours: int = 24, before_h: int = 24, us: bool = False
    ) -> Weather:
        """`hours` of weather from the hour of `starts_at` on, and `before_h` hours before it.

        The file's year does not matter (typical years are put together from
        many): month, day and hour do. `starts_at` needs an offset; it is
        brought to the file's own clock. 29 February takes the 28th where the
        file has none. Raises `Refused` for a time without an offset and for
        hours that the file does not hold; us: told by am and pm.
        """
        if starts_at.tzinfo is None:
            raise Refused(
                Mistake("starts_at", f"{starts_at} has no offset.", "Write it like -06:00.")
            )
        clock = timezone(timedelta(hours=self.place.utc_offset_h))
        local = starts_at.astimezone(clock).replace(minute=0, second=0, microsecond=0)
        first = local - timedelta(hours=before_h)
        rows = [self._at(first + timedelta(hours=n), us=us) for n in range(hours + before_h)]
        return Weather(
            starts_at=first,
            air_c=tuple(one.air_c for one in rows),
            rh_percent=tuple(one.rh_percent for one in rows),
            pressure_pa=tuple(one.pressure_pa for one in rows),
            wind_m_s=tuple(one.wind_m_s for one in rows),
        )

    def direct_w_m2(self, *, starts_at: datetime, hours: int) -> tuple[float | None, ...]:
        """The sun's beam, mean of each hour from that of `starts_at` on. [W/m²]

        On a face that looks at the sun. None is missing. Raises `Refused` as `weather` does.
        """
        clock = timezone(timedelta(hours=self.place.utc_offset_h))
        first = starts_at.astimezone(clock).replace(minute=0, second=0, microsecond=0)
        return tuple(self._at(first + timedelta(hours=n)).direct_w_m2 for n in range(hours))

    def _at(self, moment: datetime, *, us: bool = False) -> Hour:
        """The hour of the file that begins at `moment` (on the file's own clock)."""
        found = self._by_step.get((moment.month, moment.day, moment.hour + 1))
        if found is None and (moment.month, moment.day) == (2, 29):
            found = self._by_step.get((2, 28, moment.hour + 1))
        if found is not None:
            return found
        raise Refused(
            Mistake(
                "weather",
                f"The weather file does not hold {moment:%d %B}, {clock_words(moment, us=us)}.",
                "Take a file of a whole year, or type readings for the day.",
            )
        )


def hour_words(at: datetime, *, us: bool) -> str:
    """`2027-05-04 14:00`, or `2027-05-04 2:00 pm`."""
    return f"{at:%Y-%m-%d} {clock_words(at, us=us)}"


@dataclass(frozen=True)
class Forecast:
    """Weather foretold, an hour each from `starts_at` on; `issued_at` when that was told.

    `cloud_percent` is kept for what reckons with the sun. None is missing.
    """

    starts_at: datetime
    air_c: tuple[float | None, ...]
    rh_percent: tuple[float | None, ...]
    wind_m_s: tuple[float | None, ...]
    cloud_percent: tuple[float | None, ...] = ()
    issued_at: datetime | None = None
    name: str = "forecast"

    mean_air_c: None = None
    """A forecast knows nothing of the year."""

    def weather(
        self, *, starts_at: datetime, hours: int = 24, before_h: int = 24, us: bool = False
    ) -> Weather:
        """The hours there are, at most `before_h` before that of `starts_at` and `hours` from it.

        Raises `Refused` for a time without an offset, and when the forecast
        does not hold the hour of `starts_at` itself; us: told by am and pm.
        """
        if starts_at.tzinfo is None:
            raise Refused(
                Mistake("starts_at", f"{starts_at} has no offset.", "Write it like -06:00.")
            )
        at = (starts_at - self.starts_at) // timedelta(hours=1)
        if not 0 <= at < len(self.air_c):
            ends = self.starts_at + timedelta(hours=len(self.air_c))
            begins, last, asked = (
                hour_words(one, us=us) for one in (self.starts_at, ends, starts_at)
            )
            raise Refused(
                Mistake(
                    "weather",
                    f"The forecast goes from {begins} to {last} and does not hold {asked}.",
                    "Fetch a forecast of the day, or mend starts_at.",
                )
            )
        part = slice(max(at - before_h, 0), at + hours)
        first = self.starts_at + timedelta(hours=part.start)
        return Weather(
            starts_at=first,
            air_c=self.air_c[part],
            rh_percent=self.rh_percent[part],
            pressure_pa=(None,) * len(self.air_c[part]),
            wind_m_s=self.wind_m_s[part],
        )

    def age_h(self, moment: datetime) -> float | None:
        """Hours from its issue to `moment`, None when it does not say when it was issued."""
        return None if self.issued_at is None else (moment - self.issued_at) / timedelta(hours=1)
