"""What the commands that reckon from a job and its weather have in common."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.air.foretold import Outdoors
    from farwall.air.weather import Forecast, WeatherFile


def job_out_weather(parser: argparse.ArgumentParser) -> None:
    """The job, where to write, and the weather it is reckoned with."""
    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument("--out", metavar="DIR", type=Path, help="where to write")
    parser.add_argument(
        "--weather",
        metavar="FILE",
        type=Path,
        help="hourly weather: an EPW file, or a forecast as CSV or JSON",
    )


def weather_of(path: Path | None) -> WeatherFile | Forecast | None:
    """The weather in a file; None where none was named. Raises Refused, OSError."""
    if path is None:
        return None
    from farwall.readers.any_weather import read_weather

    return read_weather(path)


def year_file(path: Path, *, asked: str) -> WeatherFile:
    """The weather file of a year at `path`; `asked` says what is wanted of it.

    Raises Refused for a forecast, which holds a few days and no place, and as the readers do.
    """
    from farwall.air.weather import Forecast
    from farwall.readers.any_weather import read_weather

    read = read_weather(path)
    if isinstance(read, Forecast):
        told = f"{path.name} is a forecast of {len(read.air_c)} hours; {asked}."
        raise Refused(Mistake("--weather", told, "Name an hourly EPW file."))
    return read


def weather_ahead(paths: Sequence[Path]) -> Outdoors | None:
    """The weather of weeks: a year's file, a forecast, or both; None where none was named.

    Raises Refused for two of a kind and as the readers do.
    """
    if not paths:
        return None
    from farwall.readers.any_weather import read_ahead

    return read_ahead(paths)
