"""Look through a whole book: every row against its hash, places, orphans, files, counted lines.

A row altered together with its hash is not seen: the hash guards against accident, not malice.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Row, func, select
from sqlalchemy.exc import DBAPIError

from farwall.facts.log_words import WORDS
from farwall.store.canonical import instant, row_hash, values
from farwall.store.checking_people import last_done, people_faults
from farwall.store.files import file_names
from farwall.store.lines import counted
from farwall.store.nouns import DRAWING, BookFault
from farwall.store.tables import CLOCK, COUNTER, DOCUMENT, ENTRY, FACTS, JOB, LINE

_BACKUP = "Restore the last backup beside it and compare."
_SHA = re.compile(r'"([0-9a-f]{64})"')
_AT_A_TIME = 2000
_BACK = timedelta(hours=1)
_SHOWN = 20
_FILE_KEYS = {
    word.name: [one.key for one in word.carried if one.kind == "hash"] for word in WORDS.values()
}


class Check:
    """One look through a book: `faults` fills as its parts are read."""

    def __init__(self, connection: Connection, files: Path) -> None:
        self.connection = connection
        self.files = files
        self.faults: list[BookFault] = []
        self.jobs: set[str] = set()
        self.named: set[str] = set()
        self.wanted: dict[str, str] = {}

    def all(self) -> list[BookFault]:
        """Every part; one that cannot be read for a damaged page is told, and the rest go on."""
        for part in (
            self.pages,
            self.look_at_facts,
            self.look_at_entries,
            self.look_at_clocks,
            self.look_at_documents,
            self.look_at_lines,
            self.look_at_people,
            self.look_at_files,
        ):
            try:
                part()
            except DBAPIError as error:
                said = str(error.orig).splitlines()[0]
                self.fault("damaged", "the book", f"A part cannot be read ({said}). {_BACKUP}")
                if self.connection.dialect.name != "sqlite":
                    break
            except (ValueError, LookupError, TypeError, AttributeError) as error:
                said = str(error).splitlines()[0]
                self.fault("damaged", "the book", f"A row is no JSON of ours ({said}). {_BACKUP}")
        return self.faults

    def fault(self, code: str, where: str, what: str, *, harm: bool = True) -> None:
        """Note a fault."""
        self.faults.append(BookFault(code, where, what, harm))

    def pages(self) -> None:
        """What SQLite says of its own file; PostgreSQL is asked for every row and no more."""
        if self.connection.dialect.name != "sqlite":
            return
        ask = f"PRAGMA integrity_check({_SHOWN})"
        for (said,) in self.connection.exec_driver_sql(ask):
            if said != "ok":
                self.fault("page", "the file of the book", f"It is damaged ({said}). {_BACKUP}")

    def look_at_facts(self) -> None:
        """Versions without a gap, each as it was put, each of a job that is there."""
        self.jobs = set(self.connection.scalars(select(JOB.c.id)))
        last: tuple[str, int] = ("", 0)
        for row in self.rows(select(FACTS).order_by(FACTS.c.job, FACTS.c.version)):
            where = f"facts of {row.job}, version {row.version}"
            told = (row.job, row.version, row.name, row.who, row.at, row.body)
            self.look_at_row(where, row, told)
            due = last[1] + 1 if row.job == last[0] else 1
            if row.version != due:
                self.fault("gap", where, f"Version {due} should stand here. {_BACKUP}")
            if row.job not in self.jobs:
                self.fault("orphan", where, f"The book has no job {row.job}. {_BACKUP}")
            last = row.job, row.version

    def look_at_entries(self) -> None:
        """Places one more each, entries as they were kept, of jobs that are there."""
        due, before = 1, None
        for row in self.rows(select(ENTRY).order_by(ENTRY.c.place)):
            where = f"entry {row.id}, place {row.place}"
            if row.place != due:
                missing = f"{due}" if row.place == due + 1 else f"{due} to {row.place - 1}"
                self.fault("gap", where, f"Nothing stands before it at place {missing}. {_BACKUP}")
            due = row.place + 1
            found = self.look_at_row(where, row, (row.place, row.received_at, row.body))
            said = [found.get(key) for key in ("id", "job", "word")]
            if found and said != [row.id, row.job, row.word]:
                self.fault(
                    "altered", where, f"It is filed under other words than its own. {_BACKUP}"
                )
            if row.job not in self.jobs:
                self.fault("orphan", where, f"The book has no job {row.job}. {_BACKUP}")
            before = self.look_at_order(where, row, before)
            about = found.get("about") or {}
            for key in _FILE_KEYS.get(row.word, ()):
                self.wanted.setdefault(str(about.get(key)), where)
        self.look_at_counter("place", due - 1)

    def look_at_order(self, where: str, row: Row[Any], before: datetime | None) -> datetime | None:
        """The book's clock as it stood at this entry; told when it went back by an hour or more."""
        try:
            now = instant(row.received_at)
        except ValueError:
            return before
        if before and now < before - _BACK:
            what = "The clock of the book went back before it came. Look at that clock."
            self.fault("clock-back", where, what, harm=False)
        return now

    def look_at_clocks(self) -> None:
        """What was told of clocks is numbered without a gap."""
        many, newest = self.connection.execute(
            select(func.count(), func.coalesce(func.max(CLOCK.c.number), 0))
        ).one()
        if many != newest:
            self.fault("gap", "clocks", f"{newest - many} told times are missing. {_BACKUP}")
        self.look_at_counter("clock", newest)

    def look_at_documents(self) -> None:
        """Documents as they were put."""
        for row in self.rows(select(DOCUMENT)):
            where = f"{row.kind} {row.id}, version {row.version}"
            found = self.look_at_row(where, row, (row.kind, row.id, row.version, row.body))
            if row.kind == DRAWING and found:
                self.wanted.setdefault(str(found.get("file")), where)

    def look_at_lines(self) -> None:
        """The list of jobs says what facts and entries say."""
        due = {line["job"]: line for line in counted(self.connection)}
        found = {row.job: dict(row._mapping) for row in self.connection.execute(select(LINE))}
        for job in sorted(due.keys() | found.keys()):
            line = found.get(job, {})
            flags = {key: bool(line.get(key)) for key in ("closed", "aside")}
            if due.get(job) != {**line, **flags}:
                what = "Its line in the list is not what its facts and entries come to."
                self.fault("line", f"job {job}", f"{what} {_BACKUP}")
            if job in due and not due[job]["versions"]:
                self.fault("orphan", f"job {job}", f"It has no facts. {_BACKUP}")
        numbers = [line["number"] for line in due.values()]
        self.look_at_counter("job", max(numbers, default=0))

    def look_at_people(self) -> None:
        """People of known roles under names of their own; what was done, without a gap."""
        self.faults += people_faults(self.connection)
        self.look_at_counter("done", last_done(self.connection))

    def look_at_files(self) -> None:
        """Files that entries name are there and whole; files that nobody names are told."""
        there: set[str] = set()
        for sha, path in file_names(self.files):
            if not sha:
                what = "It does not belong there; a write that was cut short leaves such a one."
                self.fault("loose-file", str(path.name), what, harm=False)
                continue
            there.add(sha)
            with path.open("rb") as content:
                if hashlib.file_digest(content, "sha256").hexdigest() != sha:
                    self.fault("altered", f"file {sha}", f"Its content is another. {_BACKUP}")
            if sha not in self.named:
                what = "No entry, facts or document names it; an entry may still come."
                self.fault("loose-file", f"file {sha}", what, harm=False)
        for sha, where in self.wanted.items():
            if sha not in there:
                what = f"Its file {sha} is not in the book. Send it again from the phone."
                self.fault("missing-file", where, what)

    def look_at_row(self, where: str, row: Row[Any], told: tuple[str | int, ...]) -> dict[str, Any]:
        """The values of a row's body; empty, and a fault told, when it was altered."""
        self.named.update(_SHA.findall(row.body))
        if row_hash(*told) != row.hash:
            self.fault("altered", where, f"It is not as it was put in. {_BACKUP}")
            return {}
        return values(row.body)

    def look_at_counter(self, name: str, due: int) -> None:
        """A counter stands at the last number given."""
        stands = self.connection.scalar(select(COUNTER.c.value).where(COUNTER.c.name == name))
        if stands != due:
            what = f"The last {name} given is {stands}, the last there is {due}: some are missing."
            self.fault("gap", f"{name}s", f"{what} {_BACKUP}")

    def rows(self, wanted: Any) -> Iterator[Row[Any]]:
        """Rows a few at a time."""
        options = {"yield_per": _AT_A_TIME}
        yield from self.connection.execute(wanted, execution_options=options)
