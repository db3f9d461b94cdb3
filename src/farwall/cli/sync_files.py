"""Photos between a log's folder and the book: sent before their entries, fetched after them.

What has to go is reckoned anew each time, from the entries and from what lies on either side, so
it may be cut short and run twice.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli.log_photo import files_named
from farwall.errors import Refused
from farwall.facts.log import Entry
from farwall.nouns import dataclass
from farwall.store import files

if TYPE_CHECKING:
    from farwall.cli.sync_client import Door

AT_ONCE = 5_000
"""So many files are asked about in one question."""


_NOWHERE = "neither here nor in the book"


@dataclass(frozen=True)
class Sent:
    """How many files were sent, and why entries that name others must wait, by their id."""

    count: int
    held: Mapping[str, tuple[str, ...]]


def send(door: Door, folder: Path, entries: Sequence[Entry]) -> Sent:
    """Send the files of these entries that the book does not have. Raises NoSignal, Refused."""
    named = {one.id: files_named(one) for one in entries}
    lacking: dict[str, str] = {}
    count = 0
    for sha in _missing(door, list(dict.fromkeys(sha for each in named.values() for sha in each))):
        try:
            content = files.file(folder, sha)
        except Refused:
            here = files.file_path(folder, sha).is_file()
            lacking[sha] = "damaged here and not in the book" if here else _NOWHERE
            continue
        door.put_file(sha, content)
        count += 1
    held = {
        name: tuple(f"its photo {sha[:12]}… is {lacking[sha]}." for sha in sorted(bad))
        for name, each in named.items()
        if (bad := set(each) & lacking.keys())
    }
    return Sent(count, held)


def fetch(door: Door, folder: Path, entries: Sequence[Entry]) -> tuple[int, tuple[str, ...]]:
    """Fetch the files of these entries that do not lie here: how many came, and which did not."""
    wanted = dict.fromkeys(sha for one in entries for sha in files_named(one))
    absent = [sha for sha in wanted if not files.file_path(folder, sha).is_file()]
    lacking = []
    for sha in absent:
        content = door.file(sha)
        if content is None:
            lacking.append(sha)
        else:
            files.put_file(folder, content)
    return len(absent) - len(lacking), tuple(lacking)


def _missing(door: Door, shas: Sequence[str]) -> list[str]:
    found: list[str] = []
    for start in range(0, len(shas), AT_ONCE):
        asked = {"ids": [], "files": list(shas[start : start + AT_ONCE])}
        found += door.send("/api/have", asked)["missing_files"]
    return found
