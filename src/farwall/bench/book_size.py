"""A book of a large firm: how long its list and one of its jobs take to open."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from random import Random

from farwall.facts.log import Entry
from farwall.facts.plain import Plain
from farwall.store.book import Book

_AT = "2026-05-04T07:00:00-05:00"
_TRIALS = 40
_WORDS = ("band-done", "reading", "filled", "tank-weighed", "note", "sheen-lost")


@dataclass(frozen=True)
class Size:
    """What a book of this size takes: seconds on the wall, the middle and the worst of 40."""

    jobs: int
    entries: int
    megabytes: float
    build_s: float
    open_list_s: float
    list_s: float
    list_worst_s: float
    job_s: float
    job_worst_s: float
    keep_s: float
    keep_worst_s: float
    check_s: float


def measure_size(folder: Path, *, jobs: int, entries: int, facts: dict[str, object]) -> Size:
    """Build a book of so many jobs and entries in all and time it; `facts` are each job's.

    open_list_s: the book opened and all jobs listed. list_s: all jobs, the book being open. job_s:
    its newest facts and all its entries. keep_s: one entry kept, on the disk.
    """
    began = time.monotonic()
    each = entries // jobs
    with Book.open(folder) as book:
        for number in range(jobs):
            job = f"job-{number:05d}"
            book.put_facts(job, {**facts, "id": job}, who="Ann", at=_AT, name=f"House {number}")
            book.keep([_entry(job, one, number) for one in range(each)], received_at=_AT)
    built = time.monotonic() - began
    opened = _seconds(lambda: _opened(folder))
    dice = Random(1)
    with Book.open(folder) as book:

        def one_job() -> None:
            name = f"job-{dice.randrange(jobs):05d}"
            book.facts(name)
            book.entries(name)

        def one_entry() -> None:
            name = f"job-{dice.randrange(jobs):05d}"
            entry = Entry(f"later-{dice.random()}", name, "note", _AT, about={"text": "one more"})
            book.keep([entry], received_at=_AT)

        listed = sorted(_seconds(book.jobs) for _ in range(_TRIALS))
        jobs_opened = sorted(_seconds(one_job) for _ in range(_TRIALS))
        keep = sorted(_seconds(one_entry) for _ in range(_TRIALS))
        checked = _seconds(book.check)
    megabytes = sum(one.stat().st_size for one in folder.rglob("*") if one.is_file()) / 1e6
    middle = _TRIALS // 2
    return Size(
        jobs=jobs,
        entries=jobs * each,
        megabytes=megabytes,
        build_s=built,
        open_list_s=opened,
        list_s=listed[middle],
        list_worst_s=listed[-1],
        job_s=jobs_opened[middle],
        job_worst_s=jobs_opened[-1],
        keep_s=keep[middle],
        keep_worst_s=keep[-1],
        check_s=checked,
    )


def _opened(folder: Path) -> None:
    with Book.open(folder) as book:
        book.jobs()


def _seconds(doing: Callable[[], object]) -> float:
    began = time.perf_counter()
    doing()
    return time.perf_counter() - began


def _entry(job: str, number: int, seed: int) -> Entry:
    word = _WORDS[(number + seed) % len(_WORDS)]
    about: dict[str, Plain] = {
        "band": f"first.{number % 9}.{number}",
        "tank_l": 7.5,
        "sprayer": "the red one",
    }
    return Entry(
        f"{job}-{number:06d}",
        job,
        word,
        _AT,
        who="Ann",
        device="red",
        number=number,
        about=about,
    )
