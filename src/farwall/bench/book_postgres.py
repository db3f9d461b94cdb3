"""A PostgreSQL server of one's own for a trial: made in a moment, thrown away afterwards.

It listens on a socket in a folder of its own and on no network.
"""

from __future__ import annotations

import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from farwall.nouns import dataclass

_USERS = ("postgres", "nobody")


class NoServer(Exception):
    """There is no server to be had; the text says why."""


@dataclass(frozen=True)
class Server:
    """A running server: the folder of its socket and data, its programs, who runs it."""

    folder: Path
    programs: Path
    user: str | None

    def address(self, database: str) -> str:
        """The address of a database on it."""
        return f"postgresql://trial@/{database}?host={self.folder}"

    def new_database(self, name: str) -> str:
        """Make an empty database; back comes its address."""
        self.run("createdb", "-h", str(self.folder), "-U", "trial", name)
        return self.address(name)

    def crash(self) -> None:
        """Stop it at once without letting it write anything out, then start it again."""
        data = str(self.folder / "data")
        self.run("pg_ctl", "-D", data, "-m", "immediate", "-w", "stop")
        self.start()

    def start(self) -> None:
        """Start it; back when it answers."""
        data, log = str(self.folder / "data"), str(self.folder / "log")
        words = f"-k {self.folder} -c listen_addresses=''"
        self.run("pg_ctl", "-D", data, "-l", log, "-o", words, "-w", "start")

    def run(self, program: str, *words: str) -> None:
        """Run one of its programs; raises NoServer with what it said."""
        said = subprocess.run(
            [str(self.programs / program), *words],
            check=False,
            user=self.user,
            cwd=self.folder,
            # pg_ctl leaves a server behind that would hold a pipe open.
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE if program != "pg_ctl" else subprocess.DEVNULL,
            text=True,
        )
        if said.returncode:
            raise NoServer(f"{program} failed: {(said.stderr or '').strip()}")


@contextmanager
def throwaway_server() -> Iterator[Server]:
    """A server for the time of the block; raises NoServer when there is none to be had."""
    programs = _programs()
    user = _user()
    folder = Path(tempfile.mkdtemp(prefix="farwall-trial-"))
    try:
        if user:
            os.chown(folder, pwd.getpwnam(user).pw_uid, -1)
        server = Server(folder, programs, user)
        words = ("-A", "trust", "-U", "trial", "-E", "UTF8", "--locale=C")
        server.run("initdb", "-D", str(folder / "data"), *words)
        server.start()
        try:
            yield server
        finally:
            server.run("pg_ctl", "-D", str(folder / "data"), "-m", "immediate", "-w", "stop")
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _programs() -> Path:
    there = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=_version)
    found = str(there[-1]) if there else shutil.which("initdb")
    if not found:
        raise NoServer("initdb is not here (Debian has it in the package postgresql)")
    return Path(found).resolve().parent


def _version(program: Path) -> int:
    number = program.parent.parent.name
    return int(number) if number.isdigit() else 0


def _user() -> str | None:
    # initdb refuses root.
    if os.geteuid() != 0:
        return None
    for name in _USERS:
        try:
            pwd.getpwnam(name)
        except KeyError:
            continue
        return name
    raise NoServer("there is no user to run it as, and it will not run as root")
