"""A whole book as open formats: JSON lines, CSV, GeoJSON, files as they are.

    manifest.json     what is there: rows of each file, its SHA-256
    jobs.jsonl        a version of a job's facts to a line, jobs in their order
    entries.jsonl     an entry to a line, by place; clock_off_s as last told
    clocks.jsonl      what devices told of their clocks, in order
    documents.jsonl   a version of a document to a line
    people.jsonl      who may come in, without passwords: everybody chooses a new one by a link
    done.jsonl        what was done by whom, in order
    files/ab/cdef…    each file under its SHA-256
    entries.csv       the entries once more, for a spreadsheet        (not read back)
    floors/*.geojson  the newest floor of each job, in local metres   (not read back)

Every line is canonical JSON (RFC 8785), so that the same book gives the same bytes.
"""

from __future__ import annotations

import csv
import hashlib
import io
import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, select

from farwall.store.canonical import canonical, values
from farwall.store.files import file_names, put_file
from farwall.store.keeping import clocks
from farwall.store.tables import CLOCK, DOCUMENT, DONE, ENTRY, FACTS, JOB, PERSON

VERSION = 1
READ_BACK = ("jobs.jsonl", "entries.jsonl", "clocks.jsonl", "documents.jsonl")
LATER = ("people.jsonl", "done.jsonl")
"""Read back where they are there: books written before there were people lack them."""
MANIFEST = "manifest.json"
_AT_A_TIME = {"yield_per": 2000}
_COLUMNS = ("place", "received_at", "clock_off_s", "id", "job", "at", "word", "who", "device")
_MORE = ("number", "era", "about")


def write_out(connection: Connection, files: Path, folder: Path) -> None:
    """Write the book that `connection` sees into an empty folder. Raises OSError."""
    off = clocks(connection, connection.scalars(select(CLOCK.c.device).distinct()))
    told = {
        "jobs.jsonl": _written(folder / "jobs.jsonl", _jobs(connection)),
        "entries.jsonl": _written(folder / "entries.jsonl", _entries(connection, off)),
        "clocks.jsonl": _written(folder / "clocks.jsonl", _clocks(connection)),
        "documents.jsonl": _written(folder / "documents.jsonl", _documents(connection)),
        "people.jsonl": _written(folder / "people.jsonl", _people(connection)),
        "done.jsonl": _written(folder / "done.jsonl", _done(connection)),
    }
    _written(folder / "entries.csv", _table(connection, off))
    _floors(connection, folder / "floors")
    for sha, path in file_names(files):
        if sha:
            put_file(folder / "files", path.read_bytes())
    manifest = {"format": "farwall-book", "version": VERSION, "files": told}
    text = json.dumps(manifest, indent=1) + "\n"
    (folder / MANIFEST).write_text(text, encoding="utf-8")


def _written(path: Path, lines: Iterator[str]) -> dict[str, Any]:
    rows, seal = 0, hashlib.sha256()
    with path.open("wb") as out:
        for line in lines:
            raw = line.encode() + b"\n"
            seal.update(raw)
            out.write(raw)
            rows += 1
    return {"rows": rows, "sha256": seal.hexdigest()}


def _jobs(connection: Connection) -> Iterator[str]:
    wanted = select(FACTS).join(JOB, JOB.c.id == FACTS.c.job)
    for row in connection.execute(
        wanted.order_by(JOB.c.number, FACTS.c.version), execution_options=_AT_A_TIME
    ):
        about = {"job": row.job, "name": row.name, "version": row.version, "who": row.who}
        yield canonical({"at": row.at, "facts": values(row.body), **about}, where=f"job {row.job}")


def _entries(connection: Connection, off: dict[tuple[str, int], float]) -> Iterator[str]:
    for row, entry in _kept(connection):
        told = {
            "clock_off_s": off.get((entry["device"], entry["era"])),
            "entry": entry,
            "place": row.place,
            "received_at": row.received_at,
        }
        yield canonical(told, where=f"entry {row.id}")


def _kept(connection: Connection) -> Iterator[tuple[Any, dict[str, Any]]]:
    wanted = select(ENTRY).order_by(ENTRY.c.place)
    for row in connection.execute(wanted, execution_options=_AT_A_TIME):
        yield row, values(row.body)


def _clocks(connection: Connection) -> Iterator[str]:
    for row in connection.execute(select(CLOCK).order_by(CLOCK.c.number)):
        told = {"at": row.told_at, "device": row.device, "era": row.era, "off_s": row.off_s}
        yield canonical(told, where=f"clock of {row.device}")


def _documents(connection: Connection) -> Iterator[str]:
    # Sorted here: the stores do not sort text alike.
    keys = select(DOCUMENT.c.kind, DOCUMENT.c.id, DOCUMENT.c.version)
    for kind, name, version in sorted(map(tuple, connection.execute(keys))):
        body = connection.scalar(
            select(DOCUMENT.c.body).where(
                DOCUMENT.c.kind == kind, DOCUMENT.c.id == name, DOCUMENT.c.version == version
            )
        )
        told = {"id": name, "kind": kind, "version": version, "value": values(body or "")}
        yield canonical(told, where=f"{kind} {name}")


def _people(connection: Connection) -> Iterator[str]:
    """Never a password's hash, a session or a link: who reads an open format need not keep it."""
    open_ = ("id", "name", "role", "made_at", "ended_at")
    told = [{key: getattr(row, key) for key in open_} for row in connection.execute(select(PERSON))]
    for one in sorted(told, key=lambda one: str(one["id"])):
        yield canonical(one, where=f"person {one['id']}")


def _done(connection: Connection) -> Iterator[str]:
    wanted = select(DONE).order_by(DONE.c.number)
    for row in connection.execute(wanted, execution_options=_AT_A_TIME):
        about = {"about": values(row.about), "at": row.at, "who": row.who, "word": row.word}
        yield canonical({"number": row.number, **about}, where=f"done {row.number}")


def _table(connection: Connection, off: dict[tuple[str, int], float]) -> Iterator[str]:
    yield _row([*_COLUMNS, *_MORE])
    for row, entry in _kept(connection):
        ahead = off.get((entry["device"], entry["era"]))
        about = canonical(entry["about"], where="about")
        told = [row.place, row.received_at, "" if ahead is None else ahead]
        told += [entry[key] for key in (*_COLUMNS[3:], *_MORE[:2])]
        yield _row([*told, about])


def _row(cells: list[Any]) -> str:
    """RFC 4180. What a spreadsheet would take for a formula gets an apostrophe in front."""
    safe = [
        f"'{one}" if isinstance(one, str) and one[:1] in {*"=+-@\t\r"} else one for one in cells
    ]
    line = io.StringIO()
    csv.writer(line, lineterminator="\r").writerow(safe)
    return line.getvalue()


def _floors(connection: Connection, folder: Path) -> None:
    """The newest floor of every job; one whose facts hold no floor of ours has no file."""
    folder.mkdir()
    collection = _collector()
    jobs = connection.execute(select(JOB).order_by(JOB.c.number)).all()
    for job in jobs:
        newest = select(FACTS.c.body).where(FACTS.c.job == job.id)
        body = connection.scalar(newest.order_by(FACTS.c.version.desc()).limit(1))
        if found := collection(values(body or "{}")):
            slug = re.sub(r"[^a-z0-9]+", "-", job.id.lower()).strip("-")[:60]
            name = f"{job.number:05d}-{slug}.geojson"
            text = canonical({**found, "job": job.id}, where=f"floor of {job.id}")
            (folder / name).write_text(text + "\n", encoding="utf-8")


def _collector() -> Callable[[dict[str, Any]], dict[str, Any] | None]:
    from pydantic import TypeAdapter, ValidationError

    from farwall.floor.geojson import floor_collection
    from farwall.floor.nouns import Exit, Floor

    floors, exits = TypeAdapter(Floor), TypeAdapter(tuple[Exit, ...])

    def collection(facts: dict[str, Any]) -> dict[str, Any] | None:
        try:
            floor = floors.validate_python(facts.get("floor"))
            return floor_collection(floor, exits.validate_python(facts.get("exits") or ()))
        except (ValidationError, KeyError, StopIteration):
            return None

    return collection
