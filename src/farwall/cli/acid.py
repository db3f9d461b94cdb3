"""`farwall acid`: strength, fumes, neutralising, washing, waste and cautions of a job."""

from __future__ import annotations

import argparse
import json

from farwall.cli.log_kept import kept_of, log_word
from farwall.cli.weather_file import job_out_weather, weather_of
from farwall.errors import Mistake, Refused

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall acid` takes."""
    job_out_weather(parser)
    log_word(parser, what="for the waste water")
    parser.add_argument(
        "--part", metavar="PART", action="append", default=[],
        help="print a part whole: strength, fumes, pours, people, neutralising, washing, waste",
    )  # fmt: skip
    parser.add_argument(
        "--screens", metavar="ADDRESS", default="",
        help="address of the house in the book, for the square that a phone's camera reads",
    )  # fmt: skip
    parser.add_argument("--json", action="store_true", help="print acid.json on stdout")


def run(options: argparse.Namespace) -> int:
    """Write acid.json, cards, labels, the wash-day sheet and the page for the utility."""
    from farwall.cli.forked import forked
    from farwall.facts.numbered import coats_of
    from farwall.job.acid_day.day import acid_day
    from farwall.job.acid_day.ground import Ground
    from farwall.job.acid_day.say import WHOLE, Manner, said
    from farwall.job.plan_job import plan_job
    from farwall.job.story import story
    from farwall.papers.acid_files import acid_document, acid_files
    from farwall.papers.folder import write_folder
    from farwall.readers.job_json import read_job

    if options.out is None:
        raise Refused(Mistake("--out", "no folder was named.", "Add --out DIR."))
    parts = tuple(options.part)
    if unknown := [one for one in parts if one not in WHOLE]:
        known = ", ".join(WHOLE)
        raise Refused(Mistake("--part", f"there is no part {unknown[0]}.", f"There are {known}."))
    job = read_job(options.job)
    weather = weather_of(options.weather)
    plan = plan_job(job, weather=weather, beside=forked)
    kept = kept_of(options.log)
    ground = Ground(job, plan, weather, story=story(plan, kept) if kept else None, kept=kept)
    day = acid_day(ground)
    document = acid_document(day)
    write_folder(options.out, acid_files(ground, day, document, screens=options.screens))
    if options.json:
        print(json.dumps(document, ensure_ascii=False))
    else:
        told = Manner(us=job.wishes.units == "us", coats=coats_of(plan))
        print(said(day, parts, told=told))
    return _DONE
