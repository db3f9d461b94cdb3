"""Weather of any kind that is read: an hourly EPW file, or a forecast as CSV or JSON."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from farwall.air.foretold import Foretold, Outdoors
from farwall.air.weather import Forecast, WeatherFile
from farwall.errors import Mistake, Refused
from farwall.readers.epw import HEADERS, read_epw
from farwall.readers.forecast import read_forecast


def read_weather(path: Path) -> WeatherFile | Forecast:
    """The weather at `path`, by what the file begins with. Raises `Refused` as its reader does."""
    try:
        with path.open("rb") as file:
            begins = file.read(64)
    except OSError:
        return read_epw(path)  # it says calmly that the file cannot be opened
    if is_epw(begins) or path.suffix.lower() == ".epw":
        return read_epw(path)
    return read_forecast(path)


def is_epw(begins: bytes) -> bool:
    """Whether a file is meant as an EPW file, by its first bytes."""
    head = begins[:64].decode("latin-1").removeprefix("ï»¿").lstrip()
    return head.upper().startswith(HEADERS[0])


def read_ahead(paths: Sequence[Path]) -> Outdoors | None:
    """The weather of weeks: a year's file, a forecast, or the one over the other; None of none.

    Raises `Refused` for two of a kind, and as the readers do.
    """
    read = [read_weather(path) for path in paths]
    forecasts = [one for one in read if isinstance(one, Forecast)]
    years = [one for one in read if not isinstance(one, Forecast)]
    if len(forecasts) > 1 or len(years) > 1:
        kind = "forecasts" if len(forecasts) > 1 else "weather files of a year"
        raise Refused(Mistake("weather", f"There are two {kind}.", "Name one of each at most."))
    year = years[0] if years else None
    return Foretold(forecasts[0], year) if forecasts else year
