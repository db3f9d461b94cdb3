"""Where a book lies: a folder (SQLite) or the address of a PostgreSQL database."""

from __future__ import annotations

import os
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

DATABASE = "book.sqlite"
FILES = "files"
_SERVERS = ("postgresql://", "postgres://")


@dataclass(frozen=True)
class Address:
    """A folder with `book.sqlite` in it, or a server's URL; `files` is the folder of files."""

    folder: Path | None
    url: str
    files: Path

    @property
    def shown(self) -> str:
        """The address without a password, for a sentence to a person."""
        if self.folder is not None:
            return str(self.folder)
        from sqlalchemy import make_url

        url = make_url(self.url).set(drivername="postgresql")
        return url.render_as_string(hide_password=True)


def default_address() -> str:
    """FARWALL_BOOK, else `farwall/book` in the user's data folder (XDG base directories)."""
    if told := os.environ.get("FARWALL_BOOK"):
        return told
    return str(_data() / "book")


def address(told: str | Path | None = None, *, files: Path | None = None) -> Address:
    """The address told, or the default; raises Refused for one that is neither of both kinds."""
    text = str(told) if told else default_address()
    if text.startswith(_SERVERS):
        beside = files or Path(os.environ.get("FARWALL_FILES") or _data() / FILES)
        return Address(None, "postgresql+psycopg://" + text.split("://", 1)[1], beside)
    if "://" in text:
        remedy = "Name a folder, or a database as postgresql://user@host/name."
        raise Refused(Mistake(text, "is no address of a book.", remedy))
    folder = Path(text).expanduser()
    return Address(folder, "", files or folder / FILES)


def is_there(where: Address) -> bool:
    """Whether a book lies in the folder; a server is taken to have one."""
    return where.folder is None or (where.folder / DATABASE).is_file()


def insist_there(told: str | Path | None = None, *, files: Path | None = None) -> None:
    """Who looks at a book means one that is there: a slip in its address makes no new one.

    Raises Refused for a folder without a book; whether a server answers shows when it is asked.
    """
    where = address(told, files=files)
    if not is_there(where):
        remedy = "Look at --book and FARWALL_BOOK; `farwall book add JOB.json` begins a new one."
        raise Refused(Mistake(where.shown, "holds no book.", remedy))


def _data() -> Path:
    return Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local/share") / "farwall"
