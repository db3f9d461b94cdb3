"""The log that a command is told of beside the job: its entries, and what they say of rinsing."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    import argparse

    from farwall.facts.job import Job
    from farwall.facts.log import Kept


def log_word(parser: argparse.ArgumentParser, *, what: str) -> None:
    """The word `--log DIR`."""
    parser.add_argument("--log", metavar="DIR", type=Path, help=f"where its log.jsonl lies, {what}")


def kept_of(path: Path | None, *, again: bool = False) -> tuple[Kept, ...]:
    """The entries of a log; a line that cannot be read is told and passed over. Raises Refused.

    again: it was read before, and its torn lines were told then.
    """
    if path is None:
        return ()
    from farwall.cli.log_file import LOG, LogFile

    log = LogFile(path)
    if not log.path.is_file():
        raise Refused(Mistake(str(path), f"there is no {LOG}.", "Name the folder it lies in."))
    found = log.entries()
    for line in () if again else log.torn:
        print(line, file=sys.stderr)
    return tuple(found)


def rinsed_by_log(job: Job, path: Path | None) -> Job:
    """The job with pH and rag as the log's rooms tell them; the plan lies beside the log."""
    kept = kept_of(path)
    if path is None or not kept:
        return job
    from farwall.job.rinsed_seen import as_rinsed
    from farwall.job.story import story
    from farwall.readers.plan_json import read_plan

    if not (path / "plan.json").exists():
        remedy = "Name the folder in which plan.json and log.jsonl lie."
        raise Refused(Mistake(str(path), "there is no plan.json beside the log.", remedy))
    plan = read_plan(path / "plan.json")
    return as_rinsed(job, plan, story(plan, kept))
