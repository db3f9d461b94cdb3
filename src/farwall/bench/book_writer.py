"""A day's worth of entries, photos and changed facts written into a book, each acknowledged.

What the trials cut short: it says an id on a pipe only after the book has returned.
"""

from __future__ import annotations

import itertools
import os
import warnings
from pathlib import Path
from random import Random

from farwall.facts.log import Entry
from farwall.store.book import Book

AT = "2026-05-04T07:00:00-05:00"
JOB = "quince-street"


def write_on(told: str, *, files: Path, name: str, say: int, most: int | None = None) -> None:
    """Write until `most` entries are in, or for ever; each kept id goes to `say`, a line each.

    One call in ten brings a photo, one in twenty new facts; one to five entries at once.
    """
    dice = Random(name)
    with Book.open(told, files=files) as book:
        book.put_facts(JOB, {"version": 1}, who=name, at=AT, name="Quince Street")
        for number in itertools.count():
            if most is not None and number * 3 >= most:
                return
            entries = [
                _entry(f"{name}-{number}-{one}", number) for one in range(dice.randint(1, 5))
            ]
            if dice.random() < 0.1:
                sha = book.put_file(dice.randbytes(dice.randint(1, 20_000)))
                entries.append(_entry(f"{name}-{number}-photo", number, file=sha))
            if dice.random() < 0.05:
                book.put_facts(JOB, {"version": 1, "number": number}, who=name, at=AT)
            taken = book.keep(entries, received_at=AT, clock_off_s={(name, 0): float(number // 10)})
            os.write(say, "".join(f"{one}\n" for one in taken.new).encode())


def fork() -> int:
    """os.fork without the warning of later Pythons: the child only writes and is killed."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)
        return os.fork()


def _entry(name: str, number: int, *, file: str = "") -> Entry:
    word, about = ("photo", {"file": file}) if file else ("note", {"text": "a note " * 20})
    return Entry(name, JOB, word, AT, device="red", number=number, about=dict(about))


def found_wrong(told: str, *, files: Path, said: set[str]) -> tuple[list[str], int]:
    """What is wrong with the book after it was cut short, and the entries it kept beyond `said`.

    Every id said has to be there and every look of `check` clean; files that no entry names yet
    are allowed, for a photo is kept before its entry.
    """
    with Book.open(told, files=files) as book:
        wrong = [f"{one.code}, {one.where}: {one.what}" for one in book.check() if one.harm]
        jobs = [one.id for one in book.jobs()]
        there = {one.entry.id for job in jobs for one in book.entries(job)}
    wrong += [f"lost: {one}" for one in sorted(said - there)]
    return wrong, len(there - said)
