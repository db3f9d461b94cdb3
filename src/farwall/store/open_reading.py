"""A book in open formats back into an empty book: every line looked at, then all or nothing."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterator
from itertools import islice
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, func, insert, select, update

from farwall.errors import Mistake, Refused
from farwall.store import lines
from farwall.store.canonical import (
    canonical,
    entry_from,
    entry_text,
    id_mistakes,
    time_mistakes,
    values,
)
from farwall.store.files import file_names, put_file
from farwall.store.keeping import entry_row
from farwall.store.open_format import LATER, MANIFEST, READ_BACK, VERSION
from farwall.store.open_people import done_from, person_from
from farwall.store.tables import CLOCK, COUNTER, DOCUMENT, DONE, ENTRY, FACTS, JOB, PERSON
from farwall.store.versions import document_row, facts_row

_MOST_MISTAKES = 100
_AT_A_TIME = 2000

Row = dict[str, Any]


def is_empty(connection: Connection) -> bool:
    """Nothing was put into this book yet?"""
    tables = (JOB, ENTRY, CLOCK, DOCUMENT, PERSON, DONE)
    return not any(connection.scalar(select(func.count()).select_from(one)) for one in tables)


def insist_empty(connection: Connection, shown: str) -> None:
    """Raise Refused for a book with anything in it."""
    if not is_empty(connection):
        remedy = "Name a new folder or an empty database with --book."
        raise Refused(Mistake(shown, "is a book with something in it.", remedy))


def read_in(connection: Connection, files: Path, folder: Path) -> None:
    """Fill the empty book. Raises Refused with what is wrong in the folder, a hundred at most."""
    _look_at_manifest(folder)
    reader = _Reader(connection, folder)
    reader.fill()
    for sha, path in file_names(folder / "files"):
        if not sha or _seal(path) != sha:
            what = "is not named by the SHA-256 of its content."
            reader.mistakes.append(Mistake(str(path), what))
        elif not reader.mistakes:
            put_file(files, path.read_bytes())
    if reader.mistakes:
        raise Refused(*reader.mistakes, about=f"{folder} was not taken in.")
    lines.count_again(connection)


class _Reader:
    def __init__(self, connection: Connection, folder: Path) -> None:
        self.connection = connection
        self.folder = folder
        self.mistakes: list[Mistake] = []
        self.jobs: dict[str, int] = {}
        self.numbers: dict[str, int] = {"entries": 0, "clocks": 0}
        self.ids: set[str] = set()
        self.documents: dict[tuple[str, str], int] = {}
        self.known: set[str] = set()
        self.deeds: list[str] = []

    def fill(self) -> None:
        """Every file, in an order in which what is named is there already."""
        self.insert("jobs.jsonl", FACTS, self.facts)
        self.insert("entries.jsonl", ENTRY, self.entry)
        self.insert("clocks.jsonl", CLOCK, self.clock)
        self.insert("documents.jsonl", DOCUMENT, self.document)
        self.insert("people.jsonl", PERSON, lambda line: person_from(line, self.known))
        self.insert("done.jsonl", DONE, lambda line: done_from(line, self.deeds))
        counters = {
            "job": len(self.jobs),
            "place": self.numbers["entries"],
            "clock": self.numbers["clocks"],
            "done": len(self.deeds),
        }
        for name, value in counters.items():
            told = update(COUNTER).where(COUNTER.c.name == name).values(value=value)
            self.connection.execute(told)

    def insert(self, name: str, table: Any, made: Callable[[Row], Row]) -> None:
        """Read a file line by line and put its rows in, a few thousand at a time."""
        if name in LATER and not (self.folder / name).is_file():
            return
        rows = self.read(name, made)
        while some := list(islice(rows, _AT_A_TIME)):
            if not self.mistakes:
                self.connection.execute(insert(table), some)

    def read(self, name: str, made: Callable[[Row], Row]) -> Iterator[Row]:
        """The row of each line; what is wrong with a line is noted."""
        with (self.folder / name).open(encoding="utf-8") as text:
            for number, line in enumerate(text, 1):
                if len(self.mistakes) >= _MOST_MISTAKES:
                    return
                try:
                    yield made(values(line))
                except Refused as refusal:
                    self.mistakes += [
                        Mistake(f"{name}, line {number}, {one.where}", one.what, one.remedy)
                        for one in refusal.mistakes
                    ]
                except KeyError as error:
                    self.mistakes.append(Mistake(f"{name}, line {number}", f"lacks {error}."))
                except (ValueError, TypeError, AttributeError) as error:
                    said = str(error).splitlines()[0]
                    self.mistakes.append(Mistake(f"{name}, line {number}", f"{said}."))

    def facts(self, line: Row) -> Row:
        """A version of a job's facts; the first brings the job."""
        job, version = line["job"], line["version"]
        _refuse([*id_mistakes("job", job), *time_mistakes("at", line["at"])])
        _due("version", version, self.jobs.get(job, 0) + 1)
        if job not in self.jobs:
            self.connection.execute(insert(JOB).values(id=job, number=len(self.jobs) + 1))
        self.jobs[job] = version
        told = {key: str(line[key]) for key in ("name", "who", "at")}
        body = canonical(dict(line["facts"]), where="facts")
        return facts_row(job, version, {**told, "body": body})

    def entry(self, line: Row) -> Row:
        """An entry at its place."""
        entry, place = entry_from(line["entry"]), line["place"]
        keys = ("id", "job", "word")
        wrong = [one for key in keys for one in id_mistakes(key, getattr(entry, key))]
        wrong += time_mistakes("at", entry.at) + time_mistakes("received_at", line["received_at"])
        if entry.job not in self.jobs:
            wrong.append(Mistake("job", f"jobs.jsonl has no job {entry.job}."))
        if entry.id in self.ids:
            wrong.append(Mistake("id", f"{entry.id} is there twice."))
        self.ids.add(entry.id)
        _refuse(wrong)
        _due("place", place, self.numbers["entries"] + 1)
        self.numbers["entries"] = place
        return entry_row(place, entry, entry_text(entry), line["received_at"])

    def clock(self, line: Row) -> Row:
        """What a device told of its clock."""
        _refuse(time_mistakes("at", line["at"]))
        self.numbers["clocks"] += 1
        told = {"device": str(line["device"]), "era": int(line["era"])}
        told |= {"off_s": float(line["off_s"]), "told_at": line["at"]}
        return {"number": self.numbers["clocks"], **told}

    def document(self, line: Row) -> Row:
        """A version of a document."""
        key = line["kind"], line["id"]
        _refuse([*id_mistakes("kind", key[0]), *id_mistakes("id", key[1])])
        _due("version", line["version"], self.documents.get(key, 0) + 1)
        self.documents[key] = line["version"]
        body = canonical(dict(line["value"]), where="value")
        return document_row(*key, line["version"], body)


def _refuse(mistakes: list[Mistake]) -> None:
    if mistakes:
        raise Refused(*mistakes)


def _due(what: str, found: int, due: int) -> None:
    if found != due:
        raise Refused(Mistake(what, f"{due} is due, {found} stands there.", "Is a line missing?"))


def _look_at_manifest(folder: Path) -> None:
    """Raise Refused when files are missing, or are not those that were written.

    Who changed a file on purpose takes manifest.json away: then each line is judged by itself.
    """
    missing = [name for name in READ_BACK if not (folder / name).is_file()]
    if missing:
        what = f"is no book in open formats: {', '.join(missing)} is not there."
        raise Refused(Mistake(str(folder), what, "Name the folder that `farwall book out` made."))
    path = folder / MANIFEST
    if not path.is_file():
        return
    try:
        manifest = json.loads(path.read_text(encoding="utf-8"))
        version, told = manifest["version"], manifest["files"]
        there = [name for name in LATER if name in told or (folder / name).is_file()]
        seals = {name: told[name]["sha256"] for name in (*READ_BACK, *there)}
    except (ValueError, KeyError, TypeError) as error:
        raise Refused(Mistake(str(path), f"cannot be read ({error}).")) from None
    if version != VERSION:
        what = f"tells version {version} of the format, known is {VERSION}."
        raise Refused(Mistake(str(path), what, "Use a later Farwall."))
    remedy = f"If it was changed on purpose, take {MANIFEST} away."
    wrong = [
        Mistake(str(folder / name), "is not as it was written.", remedy)
        for name, seal in seals.items()
        if not (folder / name).is_file() or _seal(folder / name) != seal
    ]
    _refuse(wrong)


def _seal(path: Path) -> str:
    with path.open("rb") as content:
        return hashlib.file_digest(content, "sha256").hexdigest()
