"""Weather of any kind that is read: an hourly EPW file, or a forecast as CSV or JSON."""

from __future__ import annotations

from pathlib import Path

from farwall.air.weather import Forecast, WeatherFile
from farwall.readers.epw import HEADERS, read_epw
from farwall.readers.forecast import read_forecast


def read_weather(path: Path) -> WeatherFile | Forecast:
    """The weather at `path`, by what the file begins with. Raises `Refused` as its reader does."""
    try:
        with path.open("rb") as file:
            begins = file.read(64).decode("latin-1").removeprefix("ï»¿").lstrip()
    except OSError:
        return read_epw(path)  # it says calmly that the file cannot be opened
    if begins.upper().startswith(HEADERS[0]) or path.suffix.lower() == ".epw":
        return read_epw(path)
    return read_forecast(path)
