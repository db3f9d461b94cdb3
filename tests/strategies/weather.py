"""Weather files for tests: invented hours in the EPW form, of 35 or 32 fields."""

from __future__ import annotations

import calendar
import math
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta

HEADERS = (
    "LOCATION,Nowhere,ZZ,ZZZ,invented,000000,{latitude},{longitude},{offset},{elevation}",
    "DESIGN CONDITIONS,0",
    "TYPICAL/EXTREME PERIODS,0",
    "GROUND TEMPERATURES,0",
    "HOLIDAYS/DAYLIGHT SAVINGS,{leap},0,0,0",
    "COMMENTS 1,invented for tests",
    "COMMENTS 2,",
    "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
)
FIELDS = 35

Values = dict[str, float | str]


def plain_hour(month: int, day: int, hour: int) -> Values:
    """An invented hour: a warm summer, a cool winter, afternoons drier and windier."""
    season = math.cos(2 * math.pi * (month - 7) / 12)
    time = math.cos(2 * math.pi * (hour - 15) / 24)
    air_c = round(14 + 10 * season + 6 * time + day % 3, 1)
    return {
        "air_c": air_c,
        "dew_point_c": round(air_c - 8 - 3 * time, 1),
        "rh_percent": round(60 - 20 * time),
        "pressure_pa": 100_000 + 10 * day,
        "wind_direction_deg": 10 * hour,
        "wind_m_s": round(3 + 2 * time, 1),
    }


PLACES = {
    "air_c": 6,
    "dew_point_c": 7,
    "rh_percent": 8,
    "pressure_pa": 9,
    "direct_w_m2": 14,
    "diffuse_w_m2": 15,
    "wind_direction_deg": 20,
    "wind_m_s": 21,
}


def dates(*, leap_day: bool = False) -> Iterator[tuple[int, int]]:
    for month in range(1, 13):
        days = 29 if leap_day and month == 2 else calendar.monthrange(2001, month)[1]
        for day in range(1, days + 1):
            yield month, day


def epw_text(
    *,
    fields: int = FIELDS,
    leap_day: bool = False,
    says_leap: bool | None = None,
    hour: Callable[[int, int, int], Values] = plain_hour,
    offset: float = -6.0,
    line_end: str = "\n",
    months: tuple[int, ...] = tuple(range(1, 13)),
) -> str:
    """A whole invented EPW file as text."""
    leap = leap_day if says_leap is None else says_leap
    head = [
        line.format(
            latitude=40.0,
            longitude=-90.0,
            offset=offset,
            elevation=200.0,
            leap="Yes" if leap else "No",
        )
        for line in HEADERS
    ]
    rows = [
        row_text(month, day, clock, hour(month, day, clock), fields=fields)
        for month, day in dates(leap_day=leap_day)
        if month in months
        for clock in range(1, 25)
    ]
    return line_end.join([*head, *rows, ""])


def row_text(month: int, day: int, hour: int, values: Values, *, fields: int = FIELDS) -> str:
    row = ["0"] * fields
    row[:6] = [str(1990 + month), str(month), str(day), str(hour), "0", "?9?9?9?9E0"]
    for name, value in values.items():
        row[PLACES[name]] = str(value)
    return ",".join(row)


def forecast_text(begins: datetime, *, hours: int, air_c: float = 21.0) -> str:
    """A forecast as CSV, issued as that day breaks: still air of one temperature at 45 %."""
    rows = [f"{(begins + timedelta(hours=n)).isoformat()},{air_c},45,0" for n in range(hours)]
    issued = (begins + timedelta(hours=5.5)).isoformat()
    head = f"# issued_at: {issued}\ntime,temperature_c,humidity_percent,wind_m_s"
    return "\n".join([head, *rows])
