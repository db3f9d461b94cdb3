"""`farwall year WEATHER.epw --out DIR`: which days and hours of a typical year suit a floor."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import TYPE_CHECKING, get_args

from farwall.cli.weather_file import year_file
from farwall.facts.sealer import SealerType

if TYPE_CHECKING:
    from farwall.job.year import Year


def arguments(parser: argparse.ArgumentParser) -> None:
    """The weather, how the house stands, the sealer, and where to write."""
    parser.add_argument(
        "weather", metavar="WEATHER.epw", type=Path, help="a weather file of a whole typical year"
    )
    parser.add_argument(
        "--house",
        choices=("shut", "open", "heated"),
        default="shut",
        help="how it stands; heated: held at 65 °F by vented heat (default shut)",
    )
    parser.add_argument(
        "--sealer", choices=get_args(SealerType), help="its type (else the strictest limits of all)"
    )
    parser.add_argument("--name", default="", help="of the place, in place of the weather file's")
    parser.add_argument(
        "--out", metavar="DIR", type=Path, required=True, help="where year.svg and year.json go"
    )
    parser.add_argument("--json", action="store_true", help="print year.json as well")


def run(options: argparse.Namespace) -> int:
    """Write year.svg and year.json, whole or not at all, and print the months."""
    from farwall.job.year import year_of
    from farwall.papers.folder import write_folder
    from farwall.papers.year_document import year_document
    from farwall.papers.year_picture import year_svg

    weather = year_file(options.weather, asked="a year is told from all of its hours")
    year = year_of(weather, standing=options.house, sealer=options.sealer)
    text = json.dumps(year_document(year, name=options.name), ensure_ascii=False)
    picture = year_svg(year, name=options.name)
    write_folder(options.out, {"year.svg": picture.encode(), "year.json": f"{text}\n".encode()})
    print(text if options.json else _said(year, options.name, options.out))
    return 0


def _said(year: Year, name: str, out: Path) -> str:
    from farwall.papers.year_picture import CAUTION, STANDING, counts

    lines = [
        f"{name or year.place.city}. {STANDING[year.standing]}; {year.limits.name}. {counts(year)}",
        f"{'month':<12}{'stain':>7}{'both coats':>12}{'seal':>6}{'days clean to sealed':>24}",
    ]
    lines += [
        f"{one.name:<12}{one.stain:>7}{one.both_coats:>12}{one.seal:>6}"
        f"{_days(year, one.first_day, one.days):>24}"
        for one in year.months
    ]
    return "\n".join([*lines, CAUTION, f"Open {out}/year.svg."])


def _days(year: Year, first: int, count: int) -> str:
    """The middle of a month's dates; some dates of it may have no end at all."""
    import numpy as np

    part = np.nan_to_num(year.likely_days[first : first + count], nan=np.inf)
    middle = float(np.sort(part)[count // 2])
    return f"{middle:.0f}" if np.isfinite(middle) else "not within 60"
