"""The job book: facts in numbered versions, entries that are only added, files beside them.

    with Book.open("our-book") as book:
        book.put_facts("quince-street", facts, who="Ann", at="2026-05-04T07:00:00-05:00")
        book.keep(entries, received_at="2026-05-04T18:00:00-05:00")

Whatever returned is on the disk. Every call is one transaction; a book may be used from several
threads and by several programs at once. All methods raise BookTrouble when the store fails
(full, read-only, held, damaged, out of reach); then nothing of the call is in the book.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from types import MappingProxyType, TracebackType
from typing import TYPE_CHECKING, Any, Self

from farwall.errors import Refused
from farwall.store import files, keeping, lines, versions
from farwall.store.address import Address, address
from farwall.store.canonical import canonical, id_mistakes, text_mistakes, time_mistakes
from farwall.store.engine import engine_for, reading, writing
from farwall.store.moving import bring_up_to_date
from farwall.store.nouns import BookFault, FactsLine, JobLine, NoSuchJob, Taken
from farwall.store.tables import LINE

if TYPE_CHECKING:
    from sqlalchemy import Engine

    from farwall.facts.log import Entry, Kept
    from farwall.store.devices import DeviceLine

_NO_CLOCKS: Mapping[tuple[str, int], float] = MappingProxyType({})


class Book:
    """An open book; see the module. `where` says where it lies, `engine` speaks to its store."""

    def __init__(self, where: Address, engine: Engine) -> None:
        self.where = where
        self.engine = engine

    @classmethod
    def open(cls, told: str | Path | None = None, *, files: Path | None = None) -> Self:
        """Open the book in a folder or at `postgresql://…`, made when it is not there yet.

        None: FARWALL_BOOK, else the user's data folder. `files`: the folder of files, by default
        `files/` in the folder of the book; beside a database FARWALL_FILES, else the user's data
        folder. Its tables are brought up to date. Raises Refused for a book by a later Farwall.
        """
        where = address(told, files=files)
        engine = engine_for(where)
        try:
            bring_up_to_date(engine, where)
        except BaseException:
            engine.dispose()
            raise
        return cls(where, engine)

    def close(self) -> None:
        """Let go of the store."""
        self.engine.dispose()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        at: TracebackType | None,
    ) -> None:
        self.close()

    # facts

    def put_facts(
        self, job_id: str, facts: Mapping[str, Any], *, who: str, at: str, name: str = ""
    ) -> int:
        """Add a version of a job's facts, and the job with the first; back comes its number.

        The same facts under the same name as the newest are that version again. An empty name
        keeps the name. at: ISO 8601 with offset, by the book's clock. Raises Refused.
        """
        mistakes = [*id_mistakes("job", job_id), *time_mistakes("at", at)]
        # A line end in a house's name is no reason to refuse the house.
        who, name = " ".join(who.split()), " ".join(name.split())
        mistakes += [*text_mistakes("who", who), *text_mistakes("name", name)]
        if mistakes:
            raise Refused(*mistakes, about="Nothing was kept.")
        body = canonical(dict(facts), where=f"facts of {job_id}")
        told = {"who": who, "at": at, "name": name, "body": body}
        with writing(self.engine, self.where) as connection:
            return versions.put_facts(connection, job_id, told)

    def facts(self, job_id: str, version: int | None = None) -> dict[str, Any]:
        """The facts of a job, by default the newest; keys sorted. Raises NoSuchJob, Refused."""
        with reading(self.engine, self.where) as connection:
            return versions.facts(connection, job_id, version)

    def versions(self, job_id: str) -> list[FactsLine]:
        """The versions of a job's facts, the oldest first. Raises NoSuchJob."""
        with reading(self.engine, self.where) as connection:
            return versions.versions(connection, job_id)

    # the log

    def keep(
        self,
        entries: Sequence[Entry],
        *,
        received_at: str,
        clock_off_s: Mapping[tuple[str, int], float] = _NO_CLOCKS,
    ) -> Taken:
        """Add the entries that the book does not have, all or none; places go up by one each.

        received_at: the book's clock, ISO 8601 with offset. clock_off_s: by how many seconds the
        clock of a (device, era) is ahead of it. Raises Differs with all ids that the book has
        with other content, NoSuchJob with all unknown jobs, Refused with all mistakes.
        """
        mistakes = keeping.clock_mistakes(clock_off_s, received_at)
        if mistakes:
            raise Refused(*mistakes, about="Nothing was kept.")
        offered = keeping.offered(entries, received_at)
        with writing(self.engine, self.where) as connection:
            taken = keeping.keep(connection, offered, received_at)
            keeping.tell_clocks(connection, clock_off_s, received_at)
        return taken

    def entries(self, job_id: str, *, after: int = 0) -> list[Kept]:
        """The entries of a job behind the place `after`, in the order of places.

        `clock_off_s` is what the entry's device said last of that era. Raises NoSuchJob.
        """
        with reading(self.engine, self.where) as connection:
            return keeping.entries(connection, job_id, after)

    def missing(self, ids: Sequence[str]) -> list[str]:
        """Which of these ids no entry of the book has, in their order."""
        with reading(self.engine, self.where) as connection:
            there = keeping.there(connection, ids)
        return [one for one in ids if one not in there]

    def last_place(self) -> int:
        """The last place that was given to an entry; 0 in a new book. It never goes down."""
        with reading(self.engine, self.where) as connection:
            return keeping.last_place(connection)

    def jobs(self, *, limit: int | None = None, after: str = "") -> list[JobLine]:
        """The jobs, the one that came last first; `after`: only those listed behind this id."""
        from sqlalchemy import select

        wanted = select(LINE).order_by(LINE.c.number.desc()).limit(limit)
        with reading(self.engine, self.where) as connection:
            if after:
                number = connection.scalar(select(LINE.c.number).where(LINE.c.job == after))
                if number is None:
                    raise NoSuchJob((after,))
                wanted = wanted.where(LINE.c.number < number)
            return [lines.line_values(row) for row in connection.execute(wanted)]

    def in_hand(self) -> list[JobLine]:
        """The jobs that are not set aside, the one that came last first."""
        return [one for one in self.jobs() if not one.aside]

    def starts_at(self, job_ids: Sequence[str]) -> dict[str, str]:
        """When the newest facts of each of these jobs say that it begins; empty where they do not.

        Quick for thousands: facts are not read as a whole.
        """
        from farwall.store.day_set import starts_at

        with reading(self.engine, self.where) as connection:
            return dict(starts_at(connection, job_ids))

    def documents_put(self, kind: str) -> int:
        """How many versions of documents of a kind the book has; it only grows."""
        from farwall.store.day_set import documents_put

        with reading(self.engine, self.where) as connection:
            return documents_put(connection, kind)

    # the firm's documents, and files

    def put_document(self, kind: str, id: str, value: Mapping[str, Any]) -> int:  # noqa: A002
        """Add a version of a document (the van, a choice, a plan); its number. Raises Refused."""
        if mistakes := [*id_mistakes("kind", kind), *id_mistakes("id", id)]:
            raise Refused(*mistakes, about="Nothing was kept.")
        body = canonical(dict(value), where=f"{kind} {id}")
        with writing(self.engine, self.where) as connection:
            return versions.put_document(connection, kind, id, body)

    def document(
        self,
        kind: str,
        id: str,  # noqa: A002
        version: int | None = None,
    ) -> dict[str, Any] | None:
        """A document, by default its newest version; None when the book does not have it."""
        with reading(self.engine, self.where) as connection:
            return versions.document(connection, kind, id, version)

    def documents(self, kind: str) -> dict[str, dict[str, Any]]:
        """The newest version of every document of a kind, by id, sorted."""
        with reading(self.engine, self.where) as connection:
            return versions.documents(connection, kind)

    def put_file(self, content: bytes) -> str:
        """Keep a file; back comes its SHA-256, by which an entry or a document names it."""
        return files.put_file(self.where.files, content)

    def file(self, sha: str) -> bytes:
        """The content of a file. Raises Refused when it is not there or damaged."""
        return files.file(self.where.files, sha)

    def missing_files(self, shas: Sequence[str]) -> list[str]:
        """Which of these files the book does not have, in their order. Raises Refused."""
        return files.missing(self.where.files, shas)

    # the whole book

    def check(self) -> list[BookFault]:
        """Everything wrong with the book, in the order in which it is looked through."""
        from farwall.store.checking import Check

        with reading(self.engine, self.where) as connection:
            return Check(connection, self.where.files).all()

    def devices(self) -> list[DeviceLine]:
        """Every device that the book has heard of, the one heard last first."""
        from farwall.store.devices import devices

        with reading(self.engine, self.where) as connection:
            return devices(connection)

    def backup(self, to: Path) -> None:
        """Copy the book as it stands into a new folder, while it is used. Raises Refused."""
        from farwall.store.backing import backup

        backup(self, to)

    def out(self, folder: Path) -> None:
        """Write the whole book in open formats into a new folder. Raises Refused."""
        from farwall.store.backing import out

        out(self, folder)

    def take_in(self, folder: Path) -> None:
        """Fill this empty book from open formats. Raises Refused with every mistake in them."""
        from farwall.store.backing import take_in

        take_in(self, folder)


def restore(source: Path, told: str | Path | None, *, files: Path | None = None) -> None:
    """Make a book at a new or empty address from a backup of either kind. Raises Refused."""
    from farwall.store import backing

    backing.restore(source, told, files=files)
