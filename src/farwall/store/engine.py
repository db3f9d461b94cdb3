"""Connections to the two stores, and what goes wrong with them in calm words.

SQLite: write-ahead log and synchronous=FULL, so that what was acknowledged is on the disk
[sqlite-wal]; a writer takes the lock when it begins and waits its turn. PostgreSQL: its own
defaults; writers take the row `lock` of `counter`, so that places appear in their order.
"""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event, select
from sqlalchemy.exc import DBAPIError, SQLAlchemyError
from sqlalchemy.exc import TimeoutError as Overdue

from farwall.errors import Mistake, Refused
from farwall.store.address import DATABASE, Address
from farwall.store.files import make_folder
from farwall.store.nouns import BookTrouble
from farwall.store.tables import COUNTER

WAIT_S = 30.0
_CANNOT_CONNECT_S = 10


def engine_for(where: Address) -> Engine:
    """An engine; nothing is connected yet. Raises Refused when a driver or a folder is missing."""
    if where.folder is None:
        return _postgres(where)
    try:
        make_folder(where.folder)
        _private(where.folder / DATABASE)
    except OSError as error:
        raise _folder_trouble(where, error) from error
    engine = create_engine(f"sqlite:///{where.folder / DATABASE}", connect_args={"timeout": WAIT_S})
    event.listen(engine, "connect", _sqlite_connected)
    event.listen(engine, "begin", _sqlite_begins)
    return engine


def _private(path: Path) -> None:
    """Begin the file, where it is not there, so that nobody beside owner and group reads it."""
    if not path.exists():
        os.close(os.open(path, os.O_CREAT | os.O_WRONLY, 0o660))


def _postgres(where: Address) -> Engine:
    try:
        import psycopg  # noqa: F401
    except ImportError as error:
        remedy = "Install it: pip install 'farwall[postgres]'."
        raise Refused(Mistake(where.shown, "needs the extra `postgres`.", remedy)) from error
    return create_engine(
        where.url, connect_args={"connect_timeout": _CANNOT_CONNECT_S}, pool_pre_ping=True
    )


def _sqlite_connected(connection: Any, _record: object) -> None:
    # Python's own guessing of when to begin is switched off: we say BEGIN ourselves.
    connection.isolation_level = None
    deadline = time.monotonic() + WAIT_S
    while True:
        try:
            # Not under the busy timeout while another turns the log on or off: asked again.
            connection.execute("PRAGMA journal_mode=WAL")
            break
        except Exception as error:
            if "locked" not in str(error) or time.monotonic() > deadline:
                raise
            time.sleep(0.01)
    for pragma in ("synchronous=FULL", "foreign_keys=ON", "fullfsync=ON"):
        connection.execute(f"PRAGMA {pragma}")


def _sqlite_begins(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


@contextmanager
def reading(engine: Engine, where: Address) -> Iterator[Connection]:
    """A connection that sees one state of the book from its first question on."""
    with calmly(where), engine.connect() as connection:
        if where.folder is None:
            connection.execution_options(isolation_level="REPEATABLE READ")
        with connection.begin():
            yield connection


@contextmanager
def writing(engine: Engine, where: Address) -> Iterator[Connection]:
    """A connection that alone may write; all or nothing, on the disk when it ends."""
    with calmly(where), engine.connect() as connection:
        connection.execution_options(writes=True)
        with connection.begin():
            connection.execute(
                select(COUNTER.c.value).where(COUNTER.c.name == "lock").with_for_update()
            )
            yield connection


_DAMAGED = ("malformed", "not a database")
_TROUBLES = (
    ("full", "The disk is full.", "Make room, then do it again."),
    ("readonly", "The book may only be read.", "Ask for the right to write there."),
    ("read-only", "The book may only be read.", "Ask for the right to write there."),
    ("locked", "Another program holds the book.", "Close it, or do this again in a minute."),
    ("malformed", "The book is damaged.", "Restore the last backup: `farwall book restore`."),
    ("not a database", "This is no book, or it is damaged.", "Restore the last backup."),
    ("unable to open", "The book cannot be opened.", "Look at the folder and who may write there."),
    ("disk i/o", "The disk does not take or give it.", "Look for room, rights and a failing disk."),
    ("no space left", "The disk of the server is full.", "Make room there, then do it again."),
    ("password", "The server does not let us in.", "Look at user and password of the address."),
    ("does not exist", "That is not on the server.", "Make the database first: createdb."),
    # Last: whatever else a server says when it is first asked begins with this word.
    ("connect", "The server does not answer.", "Is it running, and is the address right?"),
)


@contextmanager
def calmly(where: Address) -> Iterator[None]:
    """What a store raises in its own words, as BookTrouble with a sentence and a next step."""
    try:
        yield
    except DBAPIError as error:
        said = str(error.orig).strip() or type(error.orig).__name__
        for sign, what, remedy in _TROUBLES:
            if sign in said.lower():
                trouble = Mistake(where.shown, what, remedy)
                break
        else:
            first = said.splitlines()[0]
            trouble = Mistake(where.shown, f"The store said: {first}.", "Nothing was changed.")
        damaged = any(sign in said.lower() for sign in _DAMAGED)
        raise BookTrouble(trouble, damaged=damaged) from error
    except Overdue as error:
        busy = Mistake(where.shown, "Too many ask at once.", "Do this again in a minute.")
        raise BookTrouble(busy) from error
    except (SQLAlchemyError, ValueError) as error:
        # A row that is not there though another needs it, or is no JSON any more.
        remedy = "`farwall book check` tells which; restore the last backup."
        what = f"A row of the book cannot be read ({str(error).splitlines()[0]})."
        raise BookTrouble(Mistake(where.shown, what, remedy), damaged=True) from error


def _folder_trouble(where: Address, error: OSError) -> BookTrouble:
    why = f"cannot be used as a book ({error.strerror})."
    return BookTrouble(Mistake(where.shown, why, "Name another folder with --book."))
