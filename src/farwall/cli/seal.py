"""`farwall seal`: the seal day of a job, replayed before it is shown."""

from __future__ import annotations

import argparse
import json
from dataclasses import replace
from datetime import datetime
from functools import partial

from farwall.cli.log_kept import log_word, rinsed_by_log
from farwall.cli.paper_words import paper_words, wishing
from farwall.cli.plan import checked_faults
from farwall.cli.weather_file import job_out_weather, weather_of
from farwall.errors import Mistake, Refused
from farwall.units import measures_own_first

_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall seal` takes."""
    job_out_weather(parser)
    parser.add_argument(
        "--from",
        dest="from_at",
        metavar="TIME",
        help="the floor is dry from here on (ISO 8601 with offset), whatever its clock says",
    )
    log_word(parser, what="with plan.json beside: pH and rag of each room")
    paper_words(parser, what="the seal sheet and its drawing")
    parser.add_argument("--json", action="store_true", help="print seal.json on stdout")


def run(options: argparse.Namespace) -> int:
    """Write seal.json, seal-sheet.pdf and seal.svg; 1 when the answer is no."""
    from farwall.cli.forked import forked
    from farwall.job.seal_day import seal_day
    from farwall.job.seal_day.say import said
    from farwall.papers.folder import write_folder
    from farwall.papers.seal_files import seal_document, seal_files
    from farwall.readers.clock_change import with_clock_change
    from farwall.readers.job_json import read_job

    if options.out is None:
        raise Refused(Mistake("--out", "no folder was named.", "Add --out DIR."))
    from_at = None if options.from_at is None else _moment(options.from_at)
    job = rinsed_by_log(read_job(options.job), options.log)
    weather = weather_of(options.weather)
    day = seal_day(job, weather=weather, from_at=from_at, beside=forked)
    day = replace(day, plan=with_clock_change(day.plan, job))
    document = seal_document(day.plan, day.sealing)
    us = job.wishes.units == "us"
    checked = forked(partial(checked_faults, document, us=us))
    files = seal_files(
        day.plan, day.sealing, document, wishes=wishing(job, options.language).wishes,
        revision=job.revision, screens=options.screens,
    )  # fmt: skip
    faults = checked()
    write_folder(options.out, files)
    if options.json:
        print(json.dumps(document, ensure_ascii=False))
    else:
        told = said(day.plan, day.sealing, faults, folder=str(options.out), us=us)
        print(measures_own_first(told, us=us))
    return _NO if faults or day.sealing.verdict == "no" else _DONE


def _moment(text: str) -> datetime:
    """A moment with its offset. Raises `Refused`."""
    says = "Write day, time and offset from UTC, such as 2027-05-06T07:30:00-06:00."
    try:
        found = datetime.fromisoformat(text)
    except ValueError:
        raise Refused(Mistake("--from", f"{text!r} is no time.", says)) from None
    if found.tzinfo is None:
        raise Refused(Mistake("--from", f"{text} does not say its offset.", says))
    return found
