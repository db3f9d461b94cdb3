"""Writers killed at a random moment, and what the book then holds.

A child writes and says each acknowledged id; it gets SIGKILL up to 0.15 s after the first of them
was heard, or, one time in four, up to 0.25 s after it was forked, while it opens or makes the book;
every fourth time there are two of them. After each kill the book has to be whole, with every
acknowledged entry in it.
"""

from __future__ import annotations

import os
import select
import signal
import tempfile
import time
from collections.abc import Callable
from contextlib import ExitStack, suppress
from dataclasses import field
from pathlib import Path
from random import Random

from farwall.bench.book_postgres import Server, throwaway_server
from farwall.bench.book_writer import fork, found_wrong, write_on
from farwall.nouns import dataclass

_WRITING_S = 0.15
_OPENING_S = 0.25
_PATIENCE_S = 60.0
_KILLS_A_BOOK = 25


@dataclass
class Kills:
    """What came of killing the writers of one store."""

    store: str
    kills: int = 0
    acknowledged: int = 0
    kept_unsaid: int = 0
    before_any: int = 0
    crashes: int = 0
    wrong: list[str] = field(default_factory=list)


def kill_sqlite(kills: int, *, seed: int = 1) -> Kills:
    """Kill writers of SQLite books, 25 to a book."""
    with tempfile.TemporaryDirectory(prefix="farwall-kills-") as folder:
        return _kill_many(
            Kills("sqlite"),
            kills,
            Random(seed),
            new_address=lambda number: f"{folder}/book-{number}",
            folder=folder,
        )


def kill_postgres(kills: int, *, seed: int = 1) -> Kills:
    """Kill writers of PostgreSQL books, and crash the server after every 25; raises NoServer."""
    with ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory(prefix="farwall-kills-"))
        server = stack.enter_context(throwaway_server())

        def new_address(number: int) -> str:
            return server.new_database(f"book_{number}")

        return _kill_many(
            Kills("postgresql"),
            kills,
            Random(seed),
            new_address=new_address,
            folder=folder,
            server=server,
        )


def _kill_many(
    found: Kills,
    kills: int,
    dice: Random,
    *,
    new_address: Callable[[int], str],
    folder: str,
    server: Server | None = None,
) -> Kills:
    # Once here, so that the children do not each spend their life on importing it.
    import alembic.command  # noqa: F401
    import psycopg  # noqa: F401

    said: set[str] = set()
    told, files = "", Path(folder)
    while found.kills < kills:
        if found.kills % _KILLS_A_BOOK == 0:
            number = found.kills // _KILLS_A_BOOK
            told, files, said = new_address(number), Path(folder) / f"files-{number}", set()
        names = [f"{found.kills}{letter}" for letter in "ab"[: 1 if found.kills % 4 else 2]]
        now = _kill(told, files, names, dice)
        found.kills += 1
        if server and found.kills % _KILLS_A_BOOK == 0:
            server.crash()
            found.crashes += 1
        said |= now
        found.acknowledged += len(now)
        found.before_any += not now
        wrong, unsaid = found_wrong(told, files=files, said=said)
        found.wrong += [f"kill {found.kills}: {one}" for one in wrong]
        found.kept_unsaid += unsaid
        said |= _there(told, files) if unsaid else set()
    return found


def _kill(told: str, files: Path, names: list[str], dice: Random) -> set[str]:
    """Fork a writer for each name, kill them all, and return the ids that they had said."""
    children = []
    for name in names:
        hear, say = os.pipe()
        child = fork()
        if child == 0:
            os.close(hear)
            with suppress(BaseException):
                write_on(told, files=files, name=name, say=say)
            os._exit(1)
        os.close(say)
        children.append((child, hear))
    if dice.random() < 0.25:
        time.sleep(dice.uniform(0, _OPENING_S))
    else:
        # Looked at and not read: what was said by then is read with the rest.
        select.select([hear for _, hear in children], [], [], _PATIENCE_S)
        time.sleep(dice.uniform(0, _WRITING_S))
    heard = b""
    for child, _ in children:
        os.kill(child, signal.SIGKILL)
    for child, hear in children:
        with os.fdopen(hear, "rb") as pipe:
            heard += pipe.read()
        _, status = os.waitpid(child, 0)
        if not os.WIFSIGNALED(status):
            raise RuntimeError("a writer ended by itself; the trial shows nothing")
    return set(heard.decode().split())


def _there(told: str, files: Path) -> set[str]:
    from farwall.store.book import Book

    with Book.open(told, files=files) as book:
        return {one.entry.id for job in book.jobs() for one in book.entries(job.id)}
