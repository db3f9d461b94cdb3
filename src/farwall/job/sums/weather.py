"""What a weather file says: its place and its means over the year, a month, or one hour."""

from __future__ import annotations

from collections.abc import Sequence
from math import fsum

from farwall.air.weather import Hour, WeatherFile
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse
from farwall.units import f_from_c, ft_from_m

_ROW = (
    "year", "month", "day", "hour", "air_c", "dew_point_c", "rh_percent", "pressure_pa",
    "wind_m_s", "wind_direction_deg",
)  # fmt: skip


def reckon(given: Given) -> Result:
    """Place, means, least and greatest over the hours asked for; missing values left out.

    month: 1-12. line: the line of the file, counted from 1; its row's own
    values are told too, and the means are then of that one hour.
    """
    file = given.thing("file")
    assert isinstance(file, WeatherFile)
    hours = _asked_for(file, month=given.maybe("month"), line=given.maybe("line"))
    air = [one.air_c for one in hours if one.air_c is not None]
    place = file.place
    result: Result = {
        "latitude_deg": place.latitude_deg,
        "longitude_deg": place.longitude_deg,
        "elevation_m": place.elevation_m,
        "elevation_ft": ft_from_m(place.elevation_m),
        "utc_offset_h": place.utc_offset_h,
        "hours": len(hours),
        "air_mean_c": _mean(air),
        "air_min_c": min(air, default=None),
        "air_max_c": max(air, default=None),
        "dew_point_mean_c": _mean([one.dew_point_c for one in hours]),
        "rh_mean_percent": _mean([one.rh_percent for one in hours]),
        "pressure_mean_pa": _mean([one.pressure_pa for one in hours]),
        "wind_mean_m_s": _mean([one.wind_m_s for one in hours]),
    }
    for key in ("air_mean", "air_min", "air_max", "dew_point_mean"):
        value = result[f"{key}_c"]
        result[f"{key}_f"] = f_from_c(value) if isinstance(value, float) else None
    if "line" in given:
        result |= {name: getattr(hours[0], name) for name in _ROW}
    result["missing"] = dict(file.missing)
    result["rank"] = Rank.PUBLISHED.value
    result["source"] = f"epw: {place.city}"
    result["warnings"] = ["Wind is that of a station at about 10 m, not the air over a floor."]
    return result


def _asked_for(file: WeatherFile, *, month: float | None, line: float | None) -> Sequence[Hour]:
    hours: Sequence[Hour] = file.hours
    for key, value in (("month", month), ("line", line)):
        if value is None:
            continue
        if value != int(value):
            raise refuse(key, f"{value:g} is not a whole number.")
        hours = [one for one in hours if getattr(one, key) == int(value)]
        if not hours:
            raise refuse(
                key,
                f"The file holds no hour of {key} {int(value)}.",
                f"Its rows are lines {file.hours[0].line} to {file.hours[-1].line}.",
            )
    return hours


def _mean(values: Sequence[float | None]) -> float | None:
    known = [value for value in values if value is not None]
    return fsum(known) / len(known) if known else None


SUM = Sum(
    name="weather",
    what="what a weather file says: year, month or one hour",
    arguments=(
        Argument("file", needed=True, loaded=True),
        Argument("month", bounds=Bounds(1, 12)),
        Argument("line", bounds=Bounds(1, 1e7)),
    ),
    reckon=reckon,
)
