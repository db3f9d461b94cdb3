"""Where a log lies: in a file beside the plan, or in the book. One small protocol for both."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Protocol

from farwall.cli.log_file import LogFile, Make
from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.log import Entry, Kept
from farwall.facts.plan import Plan


class Log(Protocol):
    """A log that is only added to."""

    torn: list[str]

    def entries(self) -> list[Kept]:
        """All its entries."""

    def keep(self, make: Make, *, received_at: str) -> tuple[Entry, ...]:
        """Add what `make` makes of the entries there are; what is new. Raises Refused."""


@dataclass(frozen=True)
class Place:
    """A job's plan, its facts where they are known, and its log."""

    job_id: str
    plan: Plan
    job: Job
    log: Log
    shown: str


def place_of(told: str, *, job_file: Path | None, book: str | None) -> Place:
    """The place that JOB names: a folder or plan.json, else a job of the book. Raises Refused."""
    path = Path(told)
    if book is None and path.exists():
        return _beside(path, job_file)
    return _in_book(told, book, job_file)


def _beside(path: Path, job_file: Path | None) -> Place:
    from farwall.readers.plan_json import read_plan

    folder = path if path.is_dir() else path.parent
    plan_path = folder / "plan.json" if path.is_dir() else path
    if not plan_path.exists():
        remedy = "`farwall plan JOB.json --out DIR` writes one; then name that DIR."
        raise Refused(Mistake(str(path), "there is no plan.json in it.", remedy))
    plan = read_plan(plan_path)
    beside = folder / "job.json"
    found = job_file if job_file is not None else beside if beside.exists() else None
    job = _job(found, plan)
    name = job.id or plan.job or folder.resolve().name or "job"
    return Place(name[:80], plan, job, LogFile(folder), str(folder))


def _job(path: Path | None, plan: Plan) -> Job:
    from farwall.job.live.job_of_plan import job_of_plan

    if path is None:
        return job_of_plan(plan)
    from farwall.readers.job_json import read_job

    return read_job(path)


def _in_book(job_id: str, book: str | None, job_file: Path | None) -> Place:
    import importlib.util
    import os

    address = book or os.environ.get("FARWALL_BOOK")
    if not address or importlib.util.find_spec("farwall.store.book") is None:
        remedy = "Name the folder of a plan, or the book with --book ADDRESS."
        raise Refused(Mistake(job_id, "no such folder or plan.", remedy))
    return _book_place(job_id, address, job_file)


def _book_place(job_id: str, address: str, job_file: Path | None) -> Place:
    from farwall.store.book import Book

    opened = Book.open(address)
    return Place(*_facts(opened, job_id, job_file), BookLog(opened, job_id), opened.where.shown)


@dataclass
class BookLog:
    """The log of one job of the book."""

    book: object
    job_id: str
    torn: list[str] = field(default_factory=list)
