"""Where a log lies: in a file beside the plan, or in the book. One small protocol for both."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from contextlib import ExitStack
from dataclasses import field, replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Protocol, Self

from farwall.cli.log_file import LogFile, Make, new_ones
from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.facts.log import Entry, Kept
from farwall.facts.plan import Plan
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.facts.lessons import Lessons
    from farwall.store.book import Book


class Log(Protocol):
    """A log that is only added to; `torn` tells what could not be read of it."""

    torn: list[str]

    def entries(self) -> list[Kept]:
        """All its entries."""

    def keep(self, make: Make, *, received_at: str) -> tuple[Entry, ...]:
        """Add what `make` makes of the entries there are; what is new. Raises Refused."""

    def put_file(self, content: bytes) -> str:
        """Keep a photo; back comes its SHA-256, by which an entry names it."""

    def close(self) -> None:
        """Let go of it."""


@dataclass(frozen=True)
class Place:
    """A job's plan, its facts as far as they are known, its log, what the firm's jobs taught.

    Whoever asked for it lets go of its log: `with place_of(…) as place`.
    """

    job_id: str
    plan: Plan
    job: Job
    log: Log
    lessons: Lessons | None = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.log.close()


def place_of(
    told: str, *, job_file: Path | None, book: str | None, lessons_file: Path | None = None
) -> Place:
    """The place that JOB names: a folder or plan.json, else a job of the book. Raises Refused."""
    path = Path(told)
    lessons = None
    if lessons_file is not None:
        from farwall.readers.lessons_json import read_lessons

        lessons = read_lessons(lessons_file)
    if book is None and path.exists():
        return replace(_beside(path, job_file), lessons=lessons)
    if book is None and not os.environ.get("FARWALL_BOOK"):
        remedy = "Name the folder of a plan, or the book with --book ADDRESS."
        raise Refused(Mistake(told, "there is no such folder or plan.", remedy))
    return _in_book(told, book, job_file, lessons)


def _beside(path: Path, job_file: Path | None) -> Place:
    from farwall.readers.plan_json import read_plan

    folder = path if path.is_dir() else path.parent
    plan_path = folder / "plan.json" if path.is_dir() else path
    if not plan_path.exists():
        remedy = "`farwall plan JOB.json --out DIR` writes one; then name that DIR."
        raise Refused(Mistake(str(path), "there is no plan.json in it.", remedy))
    plan = read_plan(plan_path)
    beside = folder / "job.json"
    job = _job(job_file or (beside if beside.exists() else None), plan)
    name = job.id or plan.job or folder.resolve().name or "job"
    return Place(name[:80], plan, job, LogFile(folder))


def _job(path: Path | None, plan: Plan) -> Job:
    from farwall.job.live.job_of_plan import job_of_plan

    if path is None:
        return job_of_plan(plan)
    from farwall.readers.job_json import read_job

    return read_job(path)


def _in_book(
    job_id: str, address: str | None, job_file: Path | None, lessons: Lessons | None
) -> Place:
    from farwall.readers.job_json import job_from, read_job
    from farwall.store.address import insist_there
    from farwall.store.book import Book
    from farwall.web.firm import lessons_of

    insist_there(address)
    with ExitStack() as unless_found:
        book = unless_found.enter_context(Book.open(address))
        lessons = lessons or lessons_of(book)
        job = read_job(job_file) if job_file is not None else job_from(book.facts(job_id), job_id)
        place = Place(
            job_id, _plan_in(book, job_id, job, lessons), job, BookLog(book, job_id), lessons
        )
        unless_found.pop_all()
    return place


def _plan_in(book: Book, job_id: str, job: Job, lessons: Lessons | None) -> Plan:
    """The plan that the book has of a job; made and put there when it has none."""
    from farwall.readers.plan_json import plan_from, plan_to_dict

    document = book.document("plan", job_id)
    if document is not None:
        return plan_from(document, f"the plan of {job_id}")
    from farwall.job.plan_job import plan_job

    plan = plan_job(job, lessons=lessons)
    book.put_document("plan", job_id, plan_to_dict(plan))
    return plan


@dataclass
class BookLog:
    """The log of one job of a book."""

    book: Book
    job_id: str
    torn: list[str] = field(default_factory=list)

    def entries(self) -> list[Kept]:
        """All its entries. Raises Refused where the book does not have the job."""
        return self.book.entries(self.job_id)

    def keep(self, make: Make, *, received_at: str) -> tuple[Entry, ...]:
        """Add what `make` makes of the entries there are; what is new. Raises Refused."""
        there = self.entries()
        fresh = new_ones(there, make(there))
        if not fresh:
            return ()
        taken = self.book.keep(
            fresh, received_at=received_at, clock_off_s=_clocks(fresh, received_at)
        )
        return tuple(one for one in fresh if one.id in taken.new)

    def put_file(self, content: bytes) -> str:
        """Keep a photo in the book; back comes its SHA-256."""
        return self.book.put_file(content)

    def close(self) -> None:
        """Let go of the book."""
        self.book.close()


def _clocks(entries: Sequence[Entry], received_at: str) -> Mapping[tuple[str, int], float]:
    """Devices whose entries are made here and now: their clock is this one."""
    now = datetime.fromisoformat(received_at)
    return {
        (one.device, one.era): 0.0
        for one in entries
        if one.device and abs((datetime.fromisoformat(one.at) - now).total_seconds()) < 1.0
    }
