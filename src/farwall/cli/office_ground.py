"""The facts of the office side as the command line is given them."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.cli.weather_file import job_out_weather, weather_of
from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.facts.lessons import Lessons
    from farwall.facts.log import Kept
    from farwall.job.office import OfficeGround


def office_arguments(parser: argparse.ArgumentParser) -> None:
    """Job, place for files, weather, log, van, price list, lessons and calendar."""
    job_out_weather(parser)
    parser.add_argument("--log", metavar="DIR", type=Path, help="where its log.jsonl lies")
    parser.add_argument("--van", metavar="VAN.json", type=Path, help="what is in the van")
    parser.add_argument(
        "--lessons", metavar="LESSONS.json", type=Path, help="what closed jobs taught"
    )
    parser.add_argument(
        "--wares", metavar="FILE", type=Path, help="a price list of sellers: XLSX, CSV or JSON"
    )
    parser.add_argument(
        "--days", metavar="DAYS.json", type=Path,
        help="the firm's calendar with this house in it, as `farwall days --out` writes it",
    )  # fmt: skip
    parser.add_argument("--on", metavar="DATE", default="", help="the day of the question")


def office_ground(options: argparse.Namespace) -> OfficeGround:
    """Everything read and planned. Raises Refused."""
    from farwall.cli.forked import forked
    from farwall.job.office import OfficeGround
    from farwall.job.plan_job import plan_job
    from farwall.job.story import story
    from farwall.readers.job_json import read_job

    job = read_job(options.job)
    calendar = _calendar(options.days, job)
    weather = weather_of(options.weather)
    plan = plan_job(job, weather=weather, beside=forked)
    kept = _kept(options.log)
    return OfficeGround(
        job, plan, weather, story(plan, kept) if kept else None, kept, van=_van(options.van),
        wares=_wares(options.wares), lessons=lessons_in(options.lessons), on=_day(options.on),
        calendar=calendar,
    )  # fmt: skip


def _kept(path: Path | None) -> tuple[Kept, ...]:
    if path is None:
        return ()
    from farwall.cli.log_file import LOG, LogFile

    log = LogFile(path)
    if not log.path.is_file():
        raise Refused(Mistake(str(path), f"there is no {LOG}.", "Name the folder it lies in."))
    return tuple(log.entries())


def _van(path: Path | None):  # type: ignore[no-untyped-def]
    if path is None:
        return None
    from farwall.readers.van_json import read_van

    return read_van(path)


def _wares(path: Path | None):  # type: ignore[no-untyped-def]
    """The price list; what was left out of it goes to stderr, row by row."""
    if path is None:
        return None
    import sys

    from farwall.readers.price_list import read_price_list

    read = read_price_list(path)
    for one in read.told:
        print(f"{path.name}: {one}", file=sys.stderr)
    return read.prices


def lessons_in(path: Path | None) -> Lessons | None:
    """What closed jobs taught, as a file has it; None without one."""
    if path is None:
        return None
    from farwall.readers.lessons_json import read_lessons

    return read_lessons(path)


def _calendar(path: Path | None, job: Job) -> dict[str, Any] | None:
    """The calendar in a file. Raises Refused for one with faults, or without this house."""
    if path is None:
        return None
    from farwall.job.plan_days import house_ids
    from farwall.readers.days_json import read_days

    return read_days(path, house_ids([job])[0])


def _day(text: str) -> str:
    from datetime import date

    try:
        return date.fromisoformat(text).isoformat() if text else ""
    except ValueError:
        raise Refused(Mistake("--on", f"{text} is no day.", "Such as --on 2026-06-08.")) from None
