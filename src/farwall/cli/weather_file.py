"""What the commands that reckon from a job and its weather have in common."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
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
