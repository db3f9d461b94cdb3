"""`farwall plan`: the day's plan of a job, replayed before it is shown."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.air.weather import Forecast, WeatherFile
    from farwall.facts.job import Job
    from farwall.facts.plan import Plan

_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall plan` takes."""
    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument("--out", metavar="DIR", type=Path, required=True, help="where to write")
    parser.add_argument(
        "--weather",
        metavar="FILE",
        type=Path,
        help="hourly weather: an EPW file, or a forecast as CSV or JSON",
    )
    parser.add_argument(
        "--order", metavar="ROOM,…", help="spray the rooms in this order, if that is possible"
    )
    parser.add_argument(
        "--thorough",
        action="store_true",
        help="seek younger edges in every field, also where plain bands hold (slower)",
    )
    parser.add_argument("--json", action="store_true", help="print plan.json on stdout")


def run(options: argparse.Namespace) -> int:
    """Write plan.json, run-sheet.pdf and floor.svg; 1 when a field cannot be done as planned."""
    from farwall.readers.job_json import read_job

    order = tuple(word.strip() for word in (options.order or "").split(",") if word.strip())
    return plan_into(
        read_job(options.job),
        options.out,
        weather_file=options.weather,
        order=order,
        thorough=options.thorough,
        as_json=options.json,
    )


def plan_into(
    job: Job,
    out: Path,
    *,
    weather_file: Path | None = None,
    order: tuple[str, ...] = (),
    thorough: bool = False,
    as_json: bool = False,
    also: dict[str, bytes] | None = None,
) -> int:
    """Plan `job`, have the checker replay it, write everything into `out`, say what came out."""
    from farwall.job.plan_job import plan_job
    from farwall.job.say import said
    from farwall.papers.folder import write_folder
    from farwall.papers.plan_files import plan_files
    from farwall.readers.plan_json import plan_to_dict
    from farwall.spray.check import check_plan

    _insist_on_rooms(job, order)
    weather = None
    if weather_file is not None:
        from farwall.readers.any_weather import read_weather

        weather = read_weather(weather_file)
        _say_age(weather)
    plan = plan_job(job, weather=weather, order=order, thorough=thorough)
    document = plan_to_dict(plan)
    faults = check_plan(document)
    files = plan_files(plan, job, document)
    write_folder(out, {**(also or {}), **files})
    if as_json:
        print(json.dumps(document, ensure_ascii=False))
    else:
        print(said(plan, [f"{fault.code}: {fault.what}" for fault in faults], folder=str(out)))
    if not as_json:
        _say_since_morning(job, plan, weather=weather, order=order, thorough=thorough)
    bad = bool(faults) or any(field.verdict == "cannot" for field in plan.fields)
    bad = bad or (plan.go is not None and plan.go.verdict == "no")
    return _NO if bad else _DONE


def _say_age(weather: WeatherFile | Forecast) -> None:
    """How old a forecast is now; the plan itself tells its age at the first stroke."""
    from datetime import UTC, datetime

    from farwall.air.weather import Forecast
    from farwall.job.slab_words import issued

    if isinstance(weather, Forecast):
        told = issued(weather.age_h(datetime.now(UTC)))
        print(f"{weather.name}: {told}", file=sys.stderr)


def _say_since_morning(
    job: Job,
    plan: Plan,
    *,
    weather: WeatherFile | Forecast | None,
    order: tuple[str, ...],
    thorough: bool,
) -> None:
    """What the check of the morning changed; nothing when it changed no fact of the plan."""
    from farwall.job.plan_job import plan_job
    from farwall.job.replanned import before_morning, what_changed

    before = before_morning(job)
    if before is None:
        return
    was = plan_job(before, weather=weather, order=order, thorough=thorough)
    print("Since the morning's check: " + " ".join(what_changed(was, plan)))


def _insist_on_rooms(job: Job, order: tuple[str, ...]) -> None:
    from difflib import get_close_matches

    known = job.floor.room_by_id
    mistakes = []
    for name in order:
        if name not in known:
            near = get_close_matches(name, known, n=1)
            there = f"Did you mean {near[0]}?" if near else f"It has: {', '.join(known)}."
            mistakes.append(Mistake("--order", f"the job has no room {name}.", there))
    if mistakes:
        raise Refused(*mistakes)
