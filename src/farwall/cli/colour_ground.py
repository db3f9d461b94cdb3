"""What `farwall colour fit` and `next` are given: a job, its log, and the plan that both mean."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.facts.lessons import Lessons
    from farwall.facts.log import Kept
    from farwall.facts.plan import Plan


def ground_arguments(parser: argparse.ArgumentParser) -> None:
    """Job, log, lessons, JSON."""
    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument(
        "--log", metavar="DIR", type=Path,
        help="where its log.jsonl lies, with what was laid and how floor and samples looked",
    )  # fmt: skip
    parser.add_argument(
        "--lessons", metavar="LESSONS.json", type=Path, help="what closed jobs taught"
    )
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


def ground_of(
    options: argparse.Namespace,
) -> tuple[Job, Plan, tuple[Kept, ...], Lessons | None]:
    """Job, plan, log and lessons. Raises Refused.

    The plan is the one that lies beside the log; where none does, it is made.
    """
    from farwall.cli.log_kept import kept_of
    from farwall.readers.job_json import read_job
    from farwall.readers.lessons_json import read_lessons

    job = read_job(options.job)
    folder = options.log
    if folder is not None and folder.is_file():
        folder = folder.parent
    kept = kept_of(folder)
    lessons = read_lessons(options.lessons) if options.lessons is not None else None
    return job, _plan(job, folder), kept, lessons


def _plan(job: Job, folder: Path | None) -> Plan:
    if folder is not None and (folder / "plan.json").is_file():
        from farwall.readers.plan_json import read_plan

        return read_plan(folder / "plan.json")
    from farwall.cli.forked import forked
    from farwall.job.plan_job import plan_job

    return plan_job(job, beside=forked)
