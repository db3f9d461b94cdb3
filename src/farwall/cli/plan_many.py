"""`farwall plan-many FOLDER… --out DIR`: every job in it planned, by as many as there are hands."""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.cli.many.nouns import How, OneJob, Outcome

_DONE, _NO, _STOPPED = 0, 1, 130


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall plan-many` takes."""
    parser.add_argument(
        "places", metavar="JOBS", type=Path, nargs="*", help="job files, or folders of them"
    )
    parser.add_argument(
        "--book", metavar="ADDRESS", help="every open job of this book; its plan is kept there too"
    )
    parser.add_argument("--out", metavar="DIR", type=Path, help="a folder for each job in here")
    parser.add_argument("--weather", metavar="FILE", type=Path, help="the same for all of them")
    parser.add_argument(
        "--workers", metavar="N", type=int, help="processes at once (default: all processors)"
    )
    parser.add_argument(
        "--machines", metavar="ADDRESS", help="a dask scheduler's address, or `local` (extra batch)"
    )
    parser.add_argument(
        "--no-pages", action="store_true", help="plan.json only: no run sheet, no drawings"
    )
    parser.add_argument(
        "--most-s", metavar="S", type=float, default=0.0, help="give a job up after so long"
    )
    parser.add_argument(
        "--fresh", action="store_true", help="plan again what was planned from the same before"
    )
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


def run(options: argparse.Namespace) -> int:
    """Plan them all; 1 when one or more did not come out as planned."""
    from farwall.cli.many import gather

    if options.out is None:
        raise Refused(Mistake("--out", "no folder was named.", "Add --out DIR."))
    if not options.places and options.book is None:
        remedy = "Name job files, a folder of them, or a book with --book ADDRESS."
        raise Refused(Mistake("JOBS", "which jobs?", remedy))
    if options.workers is not None and options.workers < 1:
        raise Refused(Mistake("--workers", "at least one has to work.", "Say --workers 2."))
    jobs = gather.jobs_in(options.places) if options.places else []
    if options.book is not None:
        jobs += gather.jobs_of_book(options.book, beside=jobs)
    how = gather.how(options.weather, pages=not options.no_pages, most_s=options.most_s)
    return _plan_all(jobs, how, options)


def _plan_all(jobs: list[OneJob], how: How, options: argparse.Namespace) -> int:
    from farwall.cli.many import notes, told
    from farwall.cli.many.gather import OF_BOOK, into_book
    from farwall.cli.many.one import made_from
    from farwall.papers.folder import write_folder

    began = time.monotonic()
    options.out.mkdir(parents=True, exist_ok=True)
    before = {} if options.fresh else notes.read(options.out)
    found = {
        job.id: before[job.id]
        for job in jobs
        if notes.still_good(before.get(job.id), made_from(job, how), options.out)
    }
    kept = len(found)
    ahead = [job for job in jobs if job.id not in found]
    from_book = {job.id for job in jobs if job.named.startswith(OF_BOOK)}
    progress = told.Progress(len(ahead)) if ahead else None
    try:
        for outcome in _by(ahead, how, options):
            if outcome.files:
                write_folder(options.out / outcome.id, outcome.files)
                if options.book is not None and outcome.id in from_book:
                    into_book(options.book, outcome)
            notes.add(options.out, outcome)
            found[outcome.id] = replace(outcome, files={})
            if progress is not None:
                progress.one_more()
    except KeyboardInterrupt:
        print(told.stopped(len(found), len(jobs), folder=str(options.out)), file=sys.stderr)
        return _STOPPED
    if progress is not None:
        progress.end()
    outcomes = [found[job.id] for job in jobs]
    notes.whole(options.out, outcomes)
    if options.json:
        print(json.dumps(_document(outcomes, kept), ensure_ascii=False))
    else:
        seconds = time.monotonic() - began
        print(told.said(outcomes, before=kept, seconds=seconds, folder=str(options.out)))
    return _DONE if all(one.state == "planned" for one in outcomes) else _NO


def _by(jobs: list[OneJob], how: How, options: argparse.Namespace) -> Iterator[Outcome]:
    from farwall.cli.many import workers

    if options.machines:
        return workers.machines(jobs, how, address=options.machines)
    count = min(options.workers or workers.processors(), max(len(jobs), 1))
    if count == 1 and options.workers == 1:
        return workers.here(jobs, how)
    return workers.pool(jobs, how, workers=count)


def _document(outcomes: list[Outcome], kept: int) -> dict[str, object]:
    from collections import Counter
    from dataclasses import asdict

    counts = Counter(one.state for one in outcomes)
    told = [{k: v for k, v in asdict(one).items() if k != "files"} for one in outcomes]
    return {"jobs": told, "counts": dict(counts), "as_before": kept}
