"""A forecast as a table: CSV or JSON with time, temperature, humidity, wind and cloud.

CSV: a header row that names each column with its unit, such as
`time, temperature_f, humidity_percent, wind_mph, cloud_percent`; lines that
begin with # may say `issued_at: …` and `utc_offset: -06:00`. JSON: an object
with the same names, `hours` a list of objects (or one list a column), and
`issued_at`, `utc_offset` beside them. Times are ISO 8601. Rows an hour or up
to six apart; longer steps are joined by straight lines. All mistakes of a
file come at once; an empty cell is none, it is missing. Columns of other things (gusts, where the
wind comes from, pressure) are left aside beside one of this unit that is told.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta, timezone
from math import isfinite
from pathlib import Path

from farwall import units
from farwall.air.weather import Forecast
from farwall.errors import Refused
from farwall.readers.forecast_table import Table, from_csv, from_json
from farwall.readers.json_text import read_table_text

LONGEST_STEP_H, MOST_HOURS = 6, 24 * 60
_HOUR = timedelta(hours=1)

_QUANTITIES: dict[str, tuple[str, ...]] = {
    "air_c": ("temperature", "temp", "air", "air_temperature", "air_temp"),
    "rh_percent": ("humidity", "rh", "relative_humidity"),
    "wind_m_s": ("wind", "wind_speed", "windspeed"),
    "cloud_percent": ("cloud", "clouds", "cloud_cover", "cloudcover", "sky"),
}
_UNITS: dict[str, dict[str, tuple[float, float]]] = {
    "air_c": {"c": (1.0, 0.0), "f": (1 / 1.8, -32 / 1.8)},
    "rh_percent": {"percent": (1.0, 0.0), "": (1.0, 0.0)},
    "wind_m_s": {
        "m_s": (1.0, 0.0),
        "mph": (units.M_S_PER_MPH, 0.0),
        "km_h": (1 / 3.6, 0.0),
        "kn": (1852 / 3600, 0.0),
    },
    "cloud_percent": {"percent": (1.0, 0.0), "": (1.0, 0.0)},
}
_SENSE = {
    "air_c": (-60.0, 60.0, "°C"),
    "rh_percent": (0.0, 105.0, "%"),
    "wind_m_s": (0.0, 70.0, "m/s"),
    "cloud_percent": (0.0, 100.0, "%"),
}
_COMMA = re.compile(r"[+-]?\d{1,3},\d{1,6}")
"""21,5 as half of the world writes it: no figure of the air has thousands to be parted."""
_WHENCE = re.compile(r"(?:from_)?(?:dir|bearing|deg|from)")
"""A column of the wind that tells where it comes from."""
_NEEDED = ("air_c", "rh_percent", "wind_m_s")


def read_forecast(path: Path) -> Forecast:
    """The forecast at `path`. Raises `Refused` as `parse_forecast`, and when it cannot be read."""
    return parse_forecast(read_table_text(path), name=path.name)


def parse_forecast(text: str, *, name: str = "forecast") -> Forecast:
    """The forecast in `text`, or `Refused` with every mistake of it; `name` is shown."""
    about = f"{name} cannot be used as a forecast."
    table = from_json(text, about) if text.lstrip()[:1] in {"{", "["} else from_csv(text)
    columns = _columns(table)
    zone = _zone(table)
    issued_at = _issued(table, zone)
    times = _times(table, zone)
    values = {key: _values(table, key, column) for key, column in columns.items()}
    if not table.rows and not table.faults:
        table.add("", "The file holds no hours.", "Give a header and a row an hour.")
    if table.faults:
        raise Refused(*table.mistakes(), about=about)
    return _forecast(name, [one for one in times if one is not None], values, issued_at)


def _columns(table: Table) -> dict[str, tuple[str, float, float]]:
    """Which column tells each quantity, with the factor and offset that bring it to SI."""
    found: dict[str, tuple[str, float, float]] = {}
    for name in sorted(table.names, key=lambda one: not _tells(one)):
        for key, words in _QUANTITIES.items():
            unit = _unit_in(name, words)
            if unit is None or (unit not in _UNITS[key] and key in found):
                continue  # gusts beside the wind, pressure beside the air
            if key == "wind_m_s" and _WHENCE.match(unit):
                continue  # where it comes from says nothing of how fast it is
            if unit not in _UNITS[key]:
                if key not in {"rh_percent", "cloud_percent"} or unit in {"c", "f"}:
                    asked = " or ".join(f"{words[0]}_{one}" for one in _UNITS[key] if one)
                    table.add(f"column {name}", "Its unit is not known.", f"Call it {asked}.")
            elif key in found:
                told = f"{found[key][0]} tells the same."
                table.add(f"column {name}", told, "Keep one of the two.")
            else:
                found[key] = (name, *_UNITS[key][unit])
    _ask_for_missing(table, found)
    return found


def _ask_for_missing(table: Table, found: Mapping[str, object]) -> None:
    """Faults for what every forecast must tell and this one does not."""
    missing = [key for key in _NEEDED if key not in found and not _ill_named(table, key)]
    if table.names:
        for key in missing:
            asked = " or ".join(f"{_QUANTITIES[key][0]}_{one}" for one in _UNITS[key] if one)
            table.add("header", f"No column tells the {_QUANTITIES[key][0]}.", f"Call it {asked}.")
        if "time" not in table.names:
            table.add("header", "No column is called time.", "Write ISO 8601 times under time.")


def _unit_in(name: str, words: Sequence[str]) -> str | None:
    """What stands behind one of the words in a column's name; None where none begins it."""
    begun = [w for w in words if name == w or name.startswith(w + "_")]
    return name.removeprefix(max(begun, key=len)).strip("_") if begun else None


def _tells(name: str) -> bool:
    """Whether a column tells a quantity in a known unit."""
    return any(_unit_in(name, words) in _UNITS[key] for key, words in _QUANTITIES.items())


def _ill_named(table: Table, key: str) -> bool:
    """Whether a column of this quantity was already told to have no known unit."""
    words = _QUANTITIES[key]
    told = {where for at in table.faults.values() for where in at}
    return any(
        f"column {name}" in told and any(name.startswith(word) for word in words)
        for name in table.names
    )


def _zone(table: Table) -> timezone | None:
    told = table.said.get("utc_offset")
    if told is None:
        return None
    match = re.fullmatch(r"(?:utc)?\s*([+-])(\d{1,2})(?::?(\d{2}))?", told.strip().lower())
    if match is None or int(match[2]) > 14:
        table.add("utc_offset", f'"{told[:40]}" is no offset.', "Write it like -06:00.")
        return None
    away = timedelta(hours=int(match[2]), minutes=int(match[3] or 0))
    return timezone(-away if match[1] == "-" else away)


def _moment(text: object, zone: timezone | None) -> datetime | None:
    """The moment, with an offset; None when it is no ISO 8601 time."""
    if not isinstance(text, str):
        return None
    try:
        told = datetime.fromisoformat(text.strip())
    except ValueError:
        return None
    return told.replace(tzinfo=zone) if told.tzinfo is None and zone is not None else told


def _issued(table: Table, zone: timezone | None) -> datetime | None:
    told = table.said.get("issued_at", table.said.get("issued"))
    if told is None and table.rows:
        cell = table.rows[0][1].get("issued_at")
        told = cell if isinstance(cell, str) and cell.strip() else None
    if told is None:
        return None
    found = _moment(told, zone)
    if found is None or found.tzinfo is None:
        what = f'"{told[:40]}" is no time with an offset.'
        table.add("issued_at", what, "Write it like 2027-05-04T05:00:00-06:00.")
        return None
    return found


def _times(table: Table, zone: timezone | None) -> list[datetime | None]:
    found: list[datetime | None] = []
    before: datetime | None = None
    for where, row in table.rows if "time" in table.names else []:
        moment = _moment(row.get("time"), zone)
        if moment is None:
            table.add(where, "Its time is not ISO 8601.", "Write it like 2027-05-04T08:00-06:00.")
        elif moment.tzinfo is None:
            remedy = "Write -06:00 behind it, or a line `# utc_offset: -06:00`."
            table.add(where, "Its time has no offset.", remedy)
            moment = None
        elif before is not None and moment <= before:
            table.add(where, "Its time is not after the one before.", "Sort the rows.")
        elif before is not None and moment - before > LONGEST_STEP_H * _HOUR:
            told = f"It comes more than {LONGEST_STEP_H} h after the one before."
            table.add(where, told, "Fill the gap, or cut the file there.")
        before = moment or before
        found.append(moment)
    known = [one for one in found if one is not None]
    if known and known[-1] - known[0] > MOST_HOURS * _HOUR:
        table.add("", "It is longer than 60 days.", "That is no forecast; take its first days.")
    return found


def _values(table: Table, key: str, column: tuple[str, float, float]) -> list[float | None]:
    name, factor, offset = column
    low, high, unit = _SENSE[key]
    found: list[float | None] = []
    for where, row in table.rows:
        cell = row.get(name)
        if cell is None or (isinstance(cell, str) and not cell.strip()):
            found.append(None)
            continue
        value = _number(cell)
        if value is None:
            table.add(f"{where}, {name}", "This is not a number.", "Write it like 21.5.")
        elif not low <= value * factor + offset <= high:
            told = f"{value:g} lies outside what air does ({low:g} to {high:g} {unit})."
            table.add(f"{where}, {name}", told, "Check the value and the unit of the column.")
        found.append(None if value is None else value * factor + offset)
    _as_share(table, key, name, [one for one in found if one is not None])
    return found


def _as_share(table: Table, key: str, name: str, told: Sequence[float]) -> None:
    """A fault where percents are told as shares: no air is as dry as 1 % for long."""
    if key not in {"rh_percent", "cloud_percent"} or not any(0 < one < 1 for one in told):
        return
    if max(told) <= 1:
        what = "It goes from 0 to 1 where percent are wanted."
        table.add(f"column {name}", what, "Multiply it by 100: 45 for 0.45.")


def _number(cell: object) -> float | None:
    if isinstance(cell, bool) or not isinstance(cell, str | int | float):
        return None
    if isinstance(cell, str) and _COMMA.fullmatch(cell.strip()):
        cell = cell.replace(",", ".")
    try:
        value = float(cell)
    except ValueError:
        return None
    return value if isfinite(value) else None


def _forecast(
    name: str,
    times: Sequence[datetime],
    values: Mapping[str, list[float | None]],
    issued_at: datetime | None,
) -> Forecast:
    """The table at whole hours: a row an hour as it stands, longer steps joined by lines."""
    first = times[0].replace(minute=0, second=0, microsecond=0)
    hours = int((times[-1] - first) / _HOUR) + 1
    at = [(one - first) / _HOUR for one in times]

    def hourly(key: str) -> tuple[float | None, ...]:
        told = values.get(key)
        if told is None:
            return ()
        return tuple(_at(at, told, float(n)) for n in range(hours))

    damp = tuple(None if one is None else min(one, 100.0) for one in hourly("rh_percent"))
    return Forecast(
        starts_at=first,
        air_c=hourly("air_c"),
        rh_percent=damp,
        wind_m_s=hourly("wind_m_s"),
        cloud_percent=hourly("cloud_percent"),
        issued_at=issued_at,
        name=name,
    )


def _at(at: Sequence[float], told: Sequence[float | None], hour: float) -> float | None:
    """The value at an hour, between its neighbours; missing where one of them is."""
    after = next((n for n, one in enumerate(at) if one >= hour), len(at) - 1)
    if at[after] == hour or after == 0:
        return told[after]
    left, right = told[after - 1], told[after]
    if left is None or right is None:
        return None
    return left + (right - left) * (hour - at[after - 1]) / (at[after] - at[after - 1])
