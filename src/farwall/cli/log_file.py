"""A log in a file beside its plan: one line an entry, only ever added to.

Each line is on the disk before the command says so (fsync). Two programs wait for one another (a
lock on the file). A line that a dying program left half written is passed over and said so;
the next entry begins on a line of its own. Linux and macOS.
"""

from __future__ import annotations

import fcntl
import json
import os
from collections.abc import Callable, Sequence
from dataclasses import field, replace
from pathlib import Path
from typing import BinaryIO

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry, Kept
from farwall.nouns import dataclass
from farwall.readers.kept_json import kept_from, kept_to_dict

LOG = "log.jsonl"
FILES = "files"
Make = Callable[[Sequence[Kept]], Sequence[Entry]]
"""From what the log has to what is to be added."""


@dataclass
class LogFile:
    """The log in a folder; `torn` tells after reading which lines could not be read."""

    folder: Path
    torn: list[str] = field(default_factory=list)

    @property
    def path(self) -> Path:
        """The file."""
        return self.folder / LOG

    def entries(self) -> list[Kept]:
        """All entries, in the order in which they came; none when there is no file yet."""
        try:
            with self.path.open("rb") as file:
                fcntl.flock(file, fcntl.LOCK_SH)
                return self._read(file.read())
        except FileNotFoundError:
            return []

    def close(self) -> None:
        """Nothing is held between reading and writing."""

    def keep(self, make: Make, *, received_at: str) -> tuple[Entry, ...]:
        """Add what `make` makes of the log as it is, while nobody else writes; what is new.

        An entry that is there already is not added again. Raises Refused, and then nothing is
        added, where an id is there with other content.
        """
        new = not self.path.exists()
        if new:
            make([])  # what is refused leaves no empty file behind
        with self.path.open("a+b") as file:
            fcntl.flock(file, fcntl.LOCK_EX)
            file.seek(0)
            raw = file.read()
            there = self._read(raw)
            fresh = new_ones(there, make(there))
            place = max((one.place for one in there), default=0)
            lines = [
                _line(Kept(entry, place + number, received_at, 0.0))
                for number, entry in enumerate(fresh, 1)
            ]
            self._add(file, raw, lines)
        if new:
            _settle_folder(self.folder)
        return fresh

    @property
    def files(self) -> Path:
        """The folder of photos beside the log, named as those of a book are."""
        return self.folder / FILES

    def put_file(self, content: bytes) -> str:
        """Keep a photo beside the log; back comes its SHA-256, and it is on the disk."""
        from farwall.store.files import put_file

        return put_file(self.files, content)

    def take_in(self, kept: Sequence[Kept]) -> tuple[Kept, ...]:
        """Add entries that another device made, with what is known of its clock; those new here."""
        with self.path.open("a+b") as file:
            fcntl.flock(file, fcntl.LOCK_EX)
            file.seek(0)
            raw = file.read()
            there = self._read(raw)
            known = {one.entry.id for one in there}
            place = max((one.place for one in there), default=0)
            fresh = [one for one in kept if one.entry.id not in known]
            fresh = [replace(one, place=place + n) for n, one in enumerate(fresh, 1)]
            self._add(file, raw, [_line(one) for one in fresh])
        return tuple(fresh)

    def _add(self, file: BinaryIO, raw: bytes, lines: Sequence[str]) -> None:
        """Write whole lines behind what is there, and have them reach the disk."""
        if lines:
            start = b"" if not raw or raw.endswith(b"\n") else b"\n"
            file.write(start + "".join(lines).encode())
            file.flush()
            os.fsync(file.fileno())

    def _read(self, raw: bytes) -> list[Kept]:
        self.torn.clear()
        found = []
        for number, line in enumerate(raw.split(b"\n"), 1):
            if not line.strip():
                continue
            try:
                found.append(kept_from(json.loads(line.decode())))
            except (ValueError, KeyError, TypeError, Refused):
                self.torn.append(f"{LOG}, line {number}: it cannot be read and is passed over.")
        return found


def new_ones(there: Sequence[Kept], offered: Sequence[Entry]) -> tuple[Entry, ...]:
    """The offered entries that the log does not have. Refused where an id says two things."""
    known = {one.entry.id: one.entry for one in there}
    mistakes, fresh = [], []
    for entry in offered:
        if entry.id not in known:
            known[entry.id] = entry
            fresh.append(entry)
        elif known[entry.id] != entry:
            what = "the log has another entry under this id."
            mistakes.append(Mistake(entry.id, what, "Give it an id of its own."))
    if mistakes:
        raise Refused(*mistakes, about="Nothing was entered:")
    return tuple(fresh)


def _line(kept: Kept) -> str:
    return json.dumps(kept_to_dict(kept), ensure_ascii=False, allow_nan=False) + "\n"


def _settle_folder(folder: Path) -> None:
    """The new file's name on the disk too."""
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
