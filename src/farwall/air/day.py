"""From the weather outside to the slab inside, hour by hour.

The room is reckoned by a few nodes and two balances (`air.indoor`), the slab
by heat through concrete and ground (`air.slab`); nobody measured the house at
hand, so all of it is a guess until a reading comes. A typed reading wins at
the hour it was taken for, keeps its rank there, and pulls the hours about it.
What is measured at an airport is not measured over a floor: `STATION` says so
beside the numbers.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.air.conditions import SENSE, STANDARD_PRESSURE_PA, Conditions
from farwall.air.house import House
from farwall.air.indoor import Outside, ReadingsAt, room_over_slab
from farwall.air.weather import Weather
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.nouns import dataclass

STATION = (
    "The weather is that of a station or a forecast, not of this floor: air and slab in the house "
    "are reckoned from it, and are a guess. Read slab, air and humidity on the spot."
)
LAG_H = 24
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
    air_changes_h: float | None = None
    """How often an hour the air of the house changes, where the house was reckoned (a guess)."""


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
    weather: Weather,
    *,
    readings: Readings | None = None,
    house: House | None = None,
    before_h: int = LAG_H,
    ground_c: float | None = None,
    sun_w_m2: Sequence[float] | None = None,
) -> tuple[HourAtSlab, ...]:
    """Conditions at the slab for each hour of `weather` after its first `before_h`.

    weather: outdoor hours, ten days before the first that matters or what
    there is. readings: typed values, taken at the first hour that comes back.
    house: how it stands. ground_c: below the slab, the mean of these hours
    when left out. sun_w_m2: taken up by the floor, an hour of `weather` each.
    Raises `Refused` when no hour is left after `before_h`, or when a value is
    missing for 6 hours together or more (shorter gaps are bridged).
    """
    if len(weather) <= before_h:
        raise Refused(
            Mistake("weather", f"Only {len(weather)} hours came.", "Give the day before as well.")
        )
    read = readings or Readings()
    outside = Outside(
        air_c=_bridged("air_c", weather.air_c),
        rh_percent=[min(one, 100.0) for one in _bridged("rh_percent", weather.rh_percent)],
        wind_m_s=_bridged("wind_m_s", weather.wind_m_s),
        sun_w_m2=sun_w_m2,
    )
    room = room_over_slab(
        outside,
        house=house,
        ground_c=ground_c,
        read=ReadingsAt(before_h, read.slab_c, read.air_c, read.rh_percent, read.air_speed_m_s),
    )
    pressure_pa = _bridged("pressure_pa", weather.pressure_pa, usual=STANDARD_PRESSURE_PA)
    told = _told(read)
    measured = {n: Rank.GUESS if value is None else Rank.MEASURED for n, value in told.items()}
    guessed = dict.fromkeys(told, Rank.GUESS)
    return tuple(
        HourAtSlab(
            weather.starts_at + timedelta(hours=n),
            Conditions(
                surface_c=_sensible("surface_c", room.face_c[n]),
                air_c=_sensible("air_c", room.air_c[n]),
                rh_percent=_sensible("rh_percent", room.rh_percent[n]),
                air_speed_m_s=room.air_speed_m_s[n],
                pressure_pa=pressure_pa[n],
            ),
            measured if n == before_h else guessed,
            room.air_changes_h[n],
        )
        for n in range(before_h, len(weather))
    )


def at(hours: Sequence[HourAtSlab], moment: datetime) -> HourAtSlab:
    """The hour that `moment` falls in; before the first the first, after the last the last."""
    begun = bisect_right(hours, moment, key=lambda one: one.starts_at)
    return hours[max(begun - 1, 0)]


def _told(readings: Readings) -> dict[str, float | None]:
    return {
        "surface_c": readings.slab_c,
        "air_c": readings.air_c,
        "rh_percent": readings.rh_percent,
        "air_speed_m_s": readings.air_speed_m_s,
    }


def _sensible(name: str, value: float) -> float:
    """The value, kept where the relations have a meaning: a house is not as hot as that."""
    low, high, _ = SENSE[name]
    return min(max(value, low), high)


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
    filled, before = [], 0
    for n, value in enumerate(values):
        while before + 1 < len(known) and known[before + 1] <= n:
            before += 1
        filled.append(_between(values, known, before, n) if value is None else value)
    return filled


def _between(values: Sequence[float | None], known: Sequence[int], before: int, n: int) -> float:
    """A missing value from its known neighbours; the nearer one alone at an end."""
    left_at, right_at = known[before], known[min(before + 1, len(known) - 1)]
    left, right = values[left_at], values[right_at]
    assert left is not None
    assert right is not None
    if n < left_at or left_at == right_at:
        return left
    return left + (right - left) * (n - left_at) / (right_at - left_at)
