"""The line of each job in the list: reckoned from its facts and entries, kept so that it is fast.

`closed` and `aside` ask only for the words `handed-over`, `set-aside` and `struck`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, delete, func, insert, select, update

from farwall.facts.log_words import SET_ASIDE
from farwall.store.canonical import instant, values
from farwall.store.nouns import JobLine
from farwall.store.tables import ENTRY, FACTS, JOB, LINE

_SAYS = {"closed": "handed-over", "aside": SET_ASIDE}
"""What a line says of a house, and the word that makes it so until it is struck."""
_CLOSING = (*_SAYS.values(), "struck")


def line_values(line: Any) -> JobLine:
    """A row of the table as the noun."""
    return JobLine(
        id=line.job,
        number=line.number,
        name=line.name,
        versions=line.versions,
        entries=line.entries,
        latest_at=line.latest_at,
        closed=bool(line.closed),
        aside=bool(line.aside),
    )


def later(one: str, other: str) -> str:
    """The later of two times as text; an empty one is the earliest."""
    if not one or not other:
        return one or other
    return other if instant(other) > instant(one) else one


def says(bodies: Sequence[str], word: str) -> bool:
    """Is there an entry of this word that is not struck, among these of one job, in any order?

    bodies: canonical JSON, strikes among them.

    A strike counts when every strike of it is struck itself; so a ring of strikes, and one that
    strikes itself, count for nothing.
    """
    found = [values(body) for body in bodies]
    strikes = {
        one["id"]: one["about"].get("entry")
        for one in found
        if one["word"] == "struck" and one["about"].get("entry") != one["id"]
    }
    by: dict[str, set[str]] = {}
    for strike, target in strikes.items():
        by.setdefault(str(target), set()).add(strike)
    struck: set[str] = set()
    while True:
        now = {str(strikes[one]) for one in strikes if by.get(one, set()) <= struck}
        if now == struck:
            break
        struck = now
    return any(one["word"] == word and one["id"] not in struck for one in found)


def said_by(bodies: Sequence[str]) -> dict[str, bool]:
    """`closed` and `aside`, by these entries of one job."""
    return {key: says(bodies, word) for key, word in _SAYS.items()}


def closing_bodies(connection: Connection, job: str) -> list[str]:
    """The entries of a job that may close it, set it aside, or take either back."""
    wanted = (
        select(ENTRY.c.body)
        .where(ENTRY.c.job == job, ENTRY.c.word.in_(_CLOSING))
        .order_by(ENTRY.c.place)
    )
    return list(connection.scalars(wanted))


def add_entries(connection: Connection, job: str, words: Sequence[str], received_at: str) -> None:
    """Count entries just kept, one word each, into the line of their job."""
    line = connection.execute(select(LINE).where(LINE.c.job == job)).one()
    told: dict[str, Any] = {
        "entries": line.entries + len(words),
        "latest_at": later(line.latest_at, received_at),
    }
    if set(words) & set(_CLOSING):
        told |= said_by(closing_bodies(connection, job))
    connection.execute(update(LINE).where(LINE.c.job == job).values(told))


def add_version(connection: Connection, job: str, number: int, version: int, facts: Any) -> None:
    """Count a version of facts just put (its `name` and `at`) into the line of its job."""
    line = connection.execute(select(LINE).where(LINE.c.job == job)).one_or_none()
    told = {"name": facts["name"], "versions": version}
    if line is None:
        first = {"job": job, "number": number, "entries": 0, "latest_at": facts["at"]}
        connection.execute(insert(LINE).values(closed=False, aside=False, **first, **told))
        return
    told["latest_at"] = later(line.latest_at, facts["at"])
    connection.execute(update(LINE).where(LINE.c.job == job).values(told))


def counted(connection: Connection) -> list[dict[str, Any]]:
    """Every line counted from facts and entries, in the order of jobs."""
    lines: dict[str, dict[str, Any]] = {}
    for job in connection.execute(select(JOB).order_by(JOB.c.number)):
        lines[job.id] = {"job": job.id, "number": job.number, "name": "", "versions": 0}
        lines[job.id] |= {"entries": 0, "latest_at": "", "closed": False, "aside": False}
    versions = select(FACTS.c.job, FACTS.c.version, FACTS.c.name, FACTS.c.at)
    for one in connection.execute(versions.order_by(FACTS.c.job, FACTS.c.version)):
        if line := lines.get(one.job):
            line["name"], line["versions"] = one.name, one.version
            line["latest_at"] = later(line["latest_at"], one.at)
    counts = select(ENTRY.c.job, ENTRY.c.received_at, func.count().label("many"))
    for one in connection.execute(counts.group_by(ENTRY.c.job, ENTRY.c.received_at)):
        if line := lines.get(one.job):
            line["entries"] += one.many
            line["latest_at"] = later(line["latest_at"], one.received_at)
    for job in connection.scalars(
        select(ENTRY.c.job).where(ENTRY.c.word.in_(_SAYS.values())).distinct()
    ):
        if line := lines.get(job):
            line |= said_by(closing_bodies(connection, job))
    return list(lines.values())


def count_again(connection: Connection) -> None:
    """Count the table of lines anew."""
    connection.execute(delete(LINE))
    if lines := counted(connection):
        connection.execute(insert(LINE), lines)
