"""Weather files in the EPW format: 35 fields a row, or the 32 of older files.

Source: the EPW data dictionary [epw]; the codes for a missing value are partly
from memory. Hours run 1 to 24 and name the END of the hour. A typical year is
put together from many, so the year column is not looked at. Files of 32 fields
lack albedo and rain, which Farwall does not use.

A file is refused as a whole, with all its faults at once, each naming its
lines; a missing value is no fault, it becomes None and is counted.
"""

from __future__ import annotations

import calendar
from collections.abc import Sequence
from itertools import pairwise
from math import isfinite
from pathlib import Path

from farwall.air.weather import Hour, Place, WeatherFile
from farwall.errors import Mistake, Refused

HEADERS = (
    "LOCATION",
    "DESIGN CONDITIONS",
    "TYPICAL/EXTREME PERIODS",
    "GROUND TEMPERATURES",
    "HOLIDAYS/DAYLIGHT SAVINGS",
    "COMMENTS 1",
    "COMMENTS 2",
    "DATA PERIODS",
)
FIELD_COUNTS = (32, 35)
LARGEST_BYTES = 64 * 1024 * 1024

# name, field (0-based), code from which on a value is missing, sensible range, unit
_VALUES: tuple[tuple[str, int, float, float, float, str], ...] = (
    ("air_c", 6, 99.9, -90.0, 70.0, "°C"),
    ("dew_point_c", 7, 99.9, -90.0, 70.0, "°C"),
    ("rh_percent", 8, 999.0, 0.0, 110.0, "%"),
    ("pressure_pa", 9, 999_999.0, 31_000.0, 120_000.0, "Pa"),
    ("direct_w_m2", 14, 9999.0, 0.0, 1500.0, "Wh/m² in the hour"),
    ("diffuse_w_m2", 15, 9999.0, 0.0, 1500.0, "Wh/m² in the hour"),
    ("wind_direction_deg", 20, 999.0, 0.0, 360.0, "degrees"),
    ("wind_m_s", 21, 999.0, 0.0, 70.0, "m/s"),
)


def read_epw(path: Path) -> WeatherFile:
    """The weather file at `path`. Raises `Refused` as `parse_epw`, and when it cannot be opened."""
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise Refused(
                Mistake(path.name, "It is larger than 64 MB.", "A year of hours takes 2 MB."),
                about=f"{path.name} is not a weather file that can be read.",
            )
        raw = path.read_bytes()
    except OSError as trouble:
        raise Refused(
            Mistake(str(path), "It cannot be opened.", trouble.strerror or ""),
            about="The weather file cannot be read.",
        ) from trouble
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        text = raw.decode("latin-1")  # names of places, in older files
    return parse_epw(text, name=path.name)


def parse_epw(text: str, *, name: str = "weather") -> WeatherFile:
    """The weather in `text`, or `Refused` with every fault of it. `name` is shown in the faults."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    faults = _Faults()
    place = _header(lines, faults)
    hours, missing = _rows(lines[len(HEADERS) :], faults)
    if not faults.seen:
        _order(hours, faults, leap=_says_leap(lines))
    if faults.seen or place is None:
        raise Refused(*faults.mistakes(), about=f"{name} cannot be used as a weather file.")
    return WeatherFile(place=place, hours=tuple(hours), missing=missing)


class _Faults:
    """Faults gathered by what they are, so that a fault of 8760 lines is one sentence."""

    def __init__(self) -> None:
        self.seen: dict[tuple[str, str], list[int]] = {}

    def add(self, line: int, what: str, remedy: str = "") -> None:
        self.seen.setdefault((what, remedy), []).append(line)

    def mistakes(self) -> list[Mistake]:
        return [Mistake(_lines(at), what, remedy) for (what, remedy), at in self.seen.items()]


def _lines(at: Sequence[int]) -> str:
    if len(at) == 1:
        return f"line {at[0]}"
    few = ", ".join(str(line) for line in at[:3])
    return f"lines {few}" + (f" and {len(at) - 3} more" if len(at) > 3 else "")


def _header(lines: Sequence[str], faults: _Faults) -> Place | None:
    if not any(line.strip() for line in lines):
        faults.add(1, "The file is empty.", "Take another weather file.")
        return None
    wrong = False
    for number, word in enumerate(HEADERS, 1):
        found = lines[number - 1] if number <= len(lines) else ""
        if found.split(",")[0].strip().upper() != word:
            faults.add(
                number, f"The header line {word} is missing.", "This is not a whole EPW file."
            )
            wrong = True
    if wrong:
        return None
    periods = [part.strip() for part in lines[7].split(",")]
    if len(periods) > 2 and periods[2] not in {"", "1"}:
        faults.add(
            8,
            f"The file has {periods[2]} records an hour.",
            "Only files of one record an hour are read so far.",
        )
    return _place(lines[0], faults)


def _place(line: str, faults: _Faults) -> Place | None:
    parts = [part.strip() for part in line.split(",")]
    bounds = (
        ("latitude", 6, -90.0, 90.0),
        ("longitude", 7, -180.0, 180.0),
        ("UTC offset", 8, -14.0, 14.0),
        ("elevation", 9, -1000.0, 10_000.0),
    )
    found = []
    for what, field, low, high in bounds:
        value = _number(parts[field]) if field < len(parts) else None
        if value is None or not low <= value <= high:
            faults.add(1, f"The {what} is not a number from {low:g} to {high:g}.", "Mend LOCATION.")
        else:
            found.append(value)
    return Place(parts[1], *found) if len(found) == len(bounds) else None


def _rows(lines: Sequence[str], faults: _Faults) -> tuple[list[Hour], dict[str, int]]:
    missing = {name: 0 for name, *_ in _VALUES}
    hours: list[Hour] = []
    width = 0
    for number, line in enumerate(lines, len(HEADERS) + 1):
        parts = line.split(",")
        if len(parts) == 1 and not line.strip():
            continue
        width = width or len(parts)
        if len(parts) not in FIELD_COUNTS:
            faults.add(
                number,
                f"A row has {len(parts)} field{'s' * (len(parts) != 1)}; 35 or 32 are read.",
                "Repair the row.",
            )
        elif len(parts) != width:
            faults.add(number, f"A row has {len(parts)} fields, the first one {width}.")
        else:
            hour = _row(number, parts, missing, faults)
            if hour is not None:
                hours.append(hour)
    if not hours and not faults.seen:
        faults.add(len(lines) + len(HEADERS), "The file holds no hours.", "Take another file.")
    return hours, missing


def _row(number: int, parts: list[str], missing: dict[str, int], faults: _Faults) -> Hour | None:
    try:
        year, month, day, hour = map(int, parts[:4])
    except ValueError:
        faults.add(number, "Year, month, day and hour are not whole numbers.", "Repair the row.")
        return None
    if not 1 <= month <= 12 or not 1 <= day <= _days(month) or not 1 <= hour <= 24:
        faults.add(number, "There is no such date, or the hour is not 1 to 24.", "Repair the row.")
        return None
    values: dict[str, float | None] = {}
    for name, field, gone, low, high, unit in _VALUES:
        text = parts[field].strip()
        value = _number(text) if text else gone
        if value is None:
            faults.add(number, f"{name} is not a number.", "Repair the row.")
            continue
        if value >= gone:
            missing[name] += 1
            values[name] = None
        elif low <= value <= high:
            values[name] = value
        else:
            faults.add(number, f"{name} lies outside {low:g} to {high:g} {unit}.", "Repair it.")
    if len(values) != len(_VALUES):
        return None
    return Hour(line=number, year=year, month=month, day=day, hour=hour, **values)


def _order(hours: Sequence[Hour], faults: _Faults, *, leap: bool) -> None:
    """Hours must follow each other; a 29 February may be there or not."""
    for before, after in pairwise(hours):
        if (after.month, after.day, after.hour) not in _next(before, leap=leap):
            faults.add(after.line, "An hour does not follow the one before it.", "Sort the rows.")


def _next(one: Hour, *, leap: bool) -> set[tuple[int, int, int]]:
    if one.hour < 24:
        return {(one.month, one.day, one.hour + 1)}
    if (one.month, one.day) == (2, 28):
        return {(2, 29, 1), (3, 1, 1)} if not leap else {(2, 29, 1)}
    if one.day < _days(one.month):
        return {(one.month, one.day + 1, 1)}
    return {(one.month % 12 + 1, 1, 1)}


def _says_leap(lines: Sequence[str]) -> bool:
    parts = lines[4].split(",")
    return len(parts) > 1 and parts[1].strip().lower() == "yes"


def _days(month: int) -> int:
    return 29 if month == 2 else calendar.monthrange(2001, month)[1]


def _number(text: str) -> float | None:
    try:
        value = float(text)
    except ValueError:
        return None
    return value if isfinite(value) else None
