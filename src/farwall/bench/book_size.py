"""A book of a large firm: how long its list and one of its jobs take to open."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from random import Random

from farwall.facts.log import Entry
from farwall.facts.plain import Plain
from farwall.nouns import dataclass
from farwall.store.book import Book

_AT = "2026-05-04T07:00:00-05:00"
_TRIALS = 40
_WORDS = ("band-done", "reading", "filled", "tank-weighed", "note", "sheen-lost")


@dataclass(frozen=True)
class Size:
    """What a book of this size takes, the middle and the worst of 40.

    Seconds on the wall, and of the processor (`_cpu_s`), which neighbours do not lengthen.
    """

    jobs: int
    entries: int
    megabytes: float
    build_s: float
    open_list_s: float
    list_s: float
    list_worst_s: float
    list_cpu_s: float
    job_s: float
    job_worst_s: float
    job_cpu_s: float
    keep_s: float
    keep_worst_s: float
    check_s: float
    check_cpu_s: float


def measure_size(folder: Path, *, jobs: int, entries: int, facts: dict[str, object]) -> Size:
    """Build a book of so many jobs and entries in all and time it; `facts` are each job's.

    open_list_s: the book opened and all jobs listed. list_s: all jobs, the book being open. job_s:
    its newest facts and all its entries. keep_s: one entry kept, on the disk.
    """
    began = time.monotonic()
    each = entries // jobs
    with Book.open(folder) as book:
        for number in range(jobs):
            name = f"job-{number:05d}"
            book.put_facts(name, {**facts, "id": name}, who="Ann", at=_AT, name=f"House {number}")
            book.keep([_entry(name, one, number) for one in range(each)], received_at=_AT)
    built = time.monotonic() - began
    opened, _ = _seconds(lambda: _opened(folder))
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

        listed = _many(book.jobs)
        job = _many(one_job)
        keep = _many(one_entry)
        checked, checked_cpu = _seconds(book.check)
    megabytes = sum(one.stat().st_size for one in folder.rglob("*") if one.is_file()) / 1e6
    return Size(
        jobs=jobs,
        entries=jobs * each,
        megabytes=megabytes,
        build_s=built,
        open_list_s=opened,
        list_s=listed[0],
        list_worst_s=listed[1],
        list_cpu_s=listed[2],
        job_s=job[0],
        job_worst_s=job[1],
        job_cpu_s=job[2],
        keep_s=keep[0],
        keep_worst_s=keep[1],
        check_s=checked,
        check_cpu_s=checked_cpu,
    )


def _many(doing: Callable[[], object]) -> tuple[float, float, float]:
    """Middle and worst on the wall, and the middle of the processor."""
    found = [_seconds(doing) for _ in range(_TRIALS)]
    wall, processor = sorted(one for one, _ in found), sorted(one for _, one in found)
    return wall[_TRIALS // 2], wall[-1], processor[_TRIALS // 2]


def _opened(folder: Path) -> None:
    with Book.open(folder) as book:
        book.jobs()


def _seconds(doing: Callable[[], object]) -> tuple[float, float]:
    wall, processor = time.perf_counter(), time.process_time()
    doing()
    return time.perf_counter() - wall, time.process_time() - processor


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
