"""Entries into the book and out again: insert or find, never change."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import islice
from typing import Any

from sqlalchemy import Connection, func, insert, select, update

from farwall.errors import Mistake, Refused
from farwall.facts.log import Entry, Kept
from farwall.nouns import dataclass
from farwall.store import lines
from farwall.store.canonical import (
    entry_from,
    entry_text,
    id_mistakes,
    row_hash,
    time_mistakes,
    values,
)
from farwall.store.nouns import Differs, NoSuchJob, Taken
from farwall.store.tables import CLOCK, COUNTER, ENTRY, JOB

# Each value of an IN is a variable of the statement, and a statement may hold only so many.
_AT_ONCE = 500


@dataclass(frozen=True)
class Offered:
    """Entries with their canonical JSON by id, and the ids offered with more than one content."""

    entries: Mapping[str, tuple[Entry, str]]
    unlike: frozenset[str]


def offered(entries: Sequence[Entry], received_at: str) -> Offered:
    """Entries made ready to be kept; raises Refused with every mistake in them."""
    mistakes = time_mistakes("received_at", received_at)
    found: dict[str, tuple[Entry, str]] = {}
    unlike: set[str] = set()
    for entry in entries:
        where = f"entry {entry.id[:80]}"
        for key in ("id", "job", "word"):
            mistakes += id_mistakes(f"{where}, {key}", getattr(entry, key))
        mistakes += time_mistakes(f"{where}, at", entry.at)
        try:
            body = entry_text(entry)
        except Refused as refusal:
            mistakes += refusal.mistakes
            continue
        if found.setdefault(entry.id, (entry, body))[1] != body:
            unlike.add(entry.id)
    if mistakes:
        raise Refused(*mistakes, about="Nothing was kept.")
    return Offered(found, frozenset(unlike))


def keep(connection: Connection, told: Offered, received_at: str) -> Taken:
    """Add what is new; `connection` is the only writer. Raises Differs, NoSuchJob."""
    offered = told.entries
    known = _known(connection, offered)
    unlike = tuple(
        one
        for one, (_, body) in offered.items()
        if one in told.unlike or known.get(one, body) != body
    )
    if unlike:
        raise Differs(unlike)
    new = [pair for one, pair in offered.items() if one not in known]
    missing = _missing_jobs(connection, {entry.job for entry, _ in new})
    if missing:
        raise NoSuchJob(missing)
    if new:
        place = take(connection, "place", len(new)) - len(new)
        rows = [
            entry_row(place + one, entry, body, received_at)
            for one, (entry, body) in enumerate(new, 1)
        ]
        connection.execute(insert(ENTRY), rows)
        words: dict[str, list[str]] = {}
        for entry, _ in new:
            words.setdefault(entry.job, []).append(entry.word)
        for job, each in words.items():
            lines.add_entries(connection, job, each, received_at)
    taken = tuple(entry.id for entry, _ in new)
    return Taken(taken, tuple(one for one in offered if one in known))


def entry_row(place: int, entry: Entry, body: str, received_at: str) -> dict[str, Any]:
    """The row of an entry, its hash over all that it says."""
    return {
        "place": place,
        "id": entry.id,
        "job": entry.job,
        "word": entry.word,
        "received_at": received_at,
        "body": body,
        "hash": row_hash(place, received_at, body),
    }


def take(connection: Connection, name: str, many: int = 1) -> int:
    """Count a counter up; back comes its new value. The places below are never given again."""
    connection.execute(
        update(COUNTER).where(COUNTER.c.name == name).values(value=COUNTER.c.value + many)
    )
    found = connection.execute(select(COUNTER.c.value).where(COUNTER.c.name == name))
    return int(found.scalar_one())


def there(connection: Connection, ids: Iterable[str]) -> set[str]:
    """Those of the ids that an entry bears."""
    found: set[str] = set()
    for some in _in_parts(ids):
        found.update(connection.scalars(select(ENTRY.c.id).where(ENTRY.c.id.in_(some))))
    return found


def last_place(connection: Connection) -> int:
    """The last place that was given."""
    wanted = select(COUNTER.c.value).where(COUNTER.c.name == "place")
    return int(connection.execute(wanted).scalar_one())


def entries(connection: Connection, job: str, after: int) -> list[Kept]:
    """The entries of a job behind a place, in the order of places."""
    if connection.execute(select(JOB.c.id).where(JOB.c.id == job)).first() is None:
        raise NoSuchJob((job,))
    wanted = (
        select(ENTRY.c.place, ENTRY.c.received_at, ENTRY.c.body)
        .where(ENTRY.c.job == job, ENTRY.c.place > after)
        .order_by(ENTRY.c.place)
    )
    rows = connection.execute(wanted).all()
    found = [(row.place, row.received_at, entry_from(values(row.body))) for row in rows]
    off = clocks(connection, {entry.device for _, _, entry in found})
    return [
        Kept(entry, place, received_at, off.get((entry.device, entry.era)))
        for place, received_at, entry in found
    ]


def clocks(connection: Connection, devices: Iterable[str]) -> dict[tuple[str, int], float]:
    """How far ahead each clock is as last told, by device and era."""
    found: dict[tuple[str, int], float] = {}
    for some in _in_parts(devices):
        newest = (
            select(func.max(CLOCK.c.number))
            .where(CLOCK.c.device.in_(some))
            .group_by(CLOCK.c.device, CLOCK.c.era)
        )
        for row in connection.execute(select(CLOCK).where(CLOCK.c.number.in_(newest))):
            found[row.device, row.era] = row.off_s
    return found


def tell_clocks(
    connection: Connection, told: Mapping[tuple[str, int], float], told_at: str
) -> None:
    """Add what devices say of their clocks; what is known already is not said twice."""
    known = clocks(connection, {device for device, _ in told})
    rows = [
        {"device": device, "era": era, "off_s": off_s, "told_at": told_at}
        for (device, era), off_s in told.items()
        if known.get((device, era)) != off_s
    ]
    if rows:
        number = take(connection, "clock", len(rows)) - len(rows)
        numbered = [{"number": number + one, **row} for one, row in enumerate(rows, 1)]
        connection.execute(insert(CLOCK), numbered)


def clock_mistakes(told: Mapping[tuple[str, int], float], told_at: str) -> list[Mistake]:
    """What is wrong with what devices say of their clocks."""
    mistakes = time_mistakes("told at", told_at) if told else []
    for (device, era), off_s in told.items():
        if era < 0 or not abs(off_s) < 1e12 or not (device.isprintable() or not device):
            where = f"clock of {device[:80]!a}, era {era}"
            mistakes.append(Mistake(where, f"{off_s} seconds ahead cannot be.", "Leave it out."))
    return mistakes


def _known(connection: Connection, ids: Iterable[str]) -> dict[str, str]:
    found: dict[str, str] = {}
    for some in _in_parts(ids):
        wanted = select(ENTRY.c.id, ENTRY.c.body).where(ENTRY.c.id.in_(some))
        found.update((row.id, row.body) for row in connection.execute(wanted))
    return found


def _missing_jobs(connection: Connection, jobs: set[str]) -> tuple[str, ...]:
    there: set[str] = set()
    for some in _in_parts(jobs):
        there.update(connection.scalars(select(JOB.c.id).where(JOB.c.id.in_(some))))
    return tuple(sorted(jobs - there))


def _in_parts(ids: Iterable[str]) -> Iterator[list[str]]:
    waiting = iter(ids)
    while some := list(islice(waiting, _AT_ONCE)):
        yield some
