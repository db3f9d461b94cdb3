"""Backups of a book while it is used, and a book made from one."""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, insert, select, update

from farwall.errors import Mistake, Refused
from farwall.store.address import DATABASE, FILES
from farwall.store.engine import calmly, reading, writing
from farwall.store.files import file_names, put_file, sync_folder
from farwall.store.nouns import BookTrouble
from farwall.store.open_format import MANIFEST, READ_BACK, write_out
from farwall.store.open_reading import insist_empty, read_in
from farwall.store.tables import COUNTER, META, SECRET

if TYPE_CHECKING:
    from farwall.store.book import Book

_AT_A_TIME = 2000


def out(book: Book, folder: Path) -> None:
    """Write the whole book in open formats into a new folder; it appears whole or not at all."""
    with _new_folder(folder) as aside, reading(book.engine, book.where) as connection:
        write_out(connection, book.where.files, aside)


def take_in(book: Book, folder: Path) -> None:
    """Fill an empty book from open formats, places, times and clocks as they were."""
    with writing(book.engine, book.where) as connection:
        insist_empty(connection, book.where.shown)
        read_in(connection, book.where.files, folder)


def backup(book: Book, to: Path) -> None:
    """Copy the book as it stands at one moment into a new folder while others go on writing.

    SQLite: its backup API, and the files; the hashes of passwords are in it. PostgreSQL: open
    formats, as `out`, without them.
    """
    if book.where.folder is None:
        out(book, to)
        return
    with _new_folder(to) as aside, calmly(book.where):
        with closing(sqlite3.connect(aside / DATABASE)) as target:
            pooled = book.engine.raw_connection()
            try:
                _copied(book, pooled.driver_connection, target)
            finally:
                pooled.close()
        # After the rows: a file is kept before an entry names it.
        for sha, path in file_names(book.where.files):
            if sha:
                put_file(aside / FILES, path.read_bytes())


def _copied(book: Book, source: sqlite3.Connection | None, target: sqlite3.Connection) -> None:
    if source is None:
        raise BookTrouble(Mistake(book.where.shown, "is not connected.", "Do it again."))
    try:
        source.backup(target)
        target.execute("PRAGMA journal_mode=DELETE")
    except sqlite3.Error as error:
        what = f"The backup was not made ({error})."
        raise BookTrouble(Mistake(book.where.shown, what, "Make room, then again.")) from error


def restore(source: Path, told: str | Path | None, *, files: Path | None = None) -> None:
    """Make a book at an address from a backup of either kind. Raises Refused.

    The address has to be new or empty; the backup stays as it is.
    """
    from farwall.store.book import Book

    if not (source / DATABASE).is_file() and not all((source / one).is_file() for one in READ_BACK):
        what = f"holds no backup: neither {DATABASE} nor {MANIFEST} with its files is there."
        raise Refused(
            Mistake(str(source), what, "Name the folder that `farwall book backup` made.")
        )
    with Book.open(told, files=files) as book:
        if not (source / DATABASE).is_file():
            take_in(book, source)
            return
        # A copy is opened: its tables may have to move, and the backup is not to change.
        with tempfile.TemporaryDirectory(prefix="farwall-") as aside:
            shutil.copyfile(source / DATABASE, Path(aside) / DATABASE)
            with Book.open(aside, files=source / FILES) as old:
                _copy(old, book)


def _copy(old: Book, new: Book) -> None:
    for sha, path in file_names(old.where.files):
        if sha:
            put_file(new.where.files, path.read_bytes())
    with reading(old.engine, old.where) as source, writing(new.engine, new.where) as target:
        insist_empty(target, new.where.shown)
        _copy_rows(source, target)


def _copy_rows(source: Connection, target: Connection) -> None:
    for row in source.execute(select(COUNTER)):
        # Changed and not put in anew: who waits to write waits on one of these rows.
        told = update(COUNTER).where(COUNTER.c.name == row.name).values(value=row.value)
        target.execute(told)
    for table in META.sorted_tables:
        if table is COUNTER or table in SECRET:
            continue
        rows = source.execute(select(table), execution_options={"yield_per": _AT_A_TIME})
        for some in rows.mappings().partitions():
            target.execute(insert(table), [dict(row) for row in some])


@contextmanager
def _new_folder(folder: Path) -> Iterator[Path]:
    """A folder to write into that takes its name when all went well; OSErrors told calmly."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise Refused(Mistake(str(folder), "is there already.", "Name a new folder."))
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        aside = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=folder.parent))
        try:
            yield aside
            for path in (*aside.rglob("*"), aside):
                _sync(path)
            aside.chmod(0o750)  # the hashes of passwords are nobody else's
            aside.replace(folder)
            sync_folder(folder.parent)
        finally:
            shutil.rmtree(aside, ignore_errors=True)
    except OSError as error:
        why = f"cannot be written ({error.strerror or error})."
        raise BookTrouble(Mistake(str(folder), why, "Make room or name another folder.")) from error


def _sync(path: Path) -> None:
    if path.is_dir():
        sync_folder(path)
        return
    with path.open("rb") as written:
        os.fsync(written.fileno())
