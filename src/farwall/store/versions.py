"""Facts of jobs and documents of the firm: numbered versions that are never changed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, func, insert, select

from farwall.errors import Mistake, Refused
from farwall.store import lines
from farwall.store.canonical import row_hash, values
from farwall.store.keeping import take
from farwall.store.nouns import FactsLine, NoSuchJob
from farwall.store.tables import DOCUMENT, FACTS, JOB


def put_facts(connection: Connection, job: str, told: Mapping[str, str]) -> int:
    """Add a version (`who`, `at`, `name`, `body`) unless the newest says the same; its number."""
    newest = connection.execute(
        select(FACTS).where(FACTS.c.job == job).order_by(FACTS.c.version.desc()).limit(1)
    ).one_or_none()
    name = told["name"] or (newest.name if newest else "")
    if newest and (newest.body, newest.name) == (told["body"], name):
        return int(newest.version)
    number = 0
    if newest is None:
        number = take(connection, "job")
        connection.execute(insert(JOB).values(id=job, number=number))
    version = newest.version + 1 if newest else 1
    row = facts_row(job, version, {**told, "name": name})
    connection.execute(insert(FACTS).values(row))
    lines.add_version(connection, job, number, version, row)
    return int(version)


def facts_row(job: str, version: int, told: Mapping[str, str]) -> dict[str, Any]:
    """The row of a version, its hash over all that it says."""
    said = [told[key] for key in ("name", "who", "at", "body")]
    row = {key: told[key] for key in ("name", "who", "at", "body")}
    return {"job": job, "version": version, **row, "hash": row_hash(job, version, *said)}


def facts(connection: Connection, job: str, version: int | None) -> dict[str, Any]:
    """The facts of a version, the newest when none is named; raises NoSuchJob, Refused."""
    wanted = select(FACTS.c.body).where(FACTS.c.job == job)
    if version is not None:
        wanted = wanted.where(FACTS.c.version == version)
    body = connection.execute(wanted.order_by(FACTS.c.version.desc()).limit(1)).scalar()
    if body is not None:
        return values(body)
    there = versions(connection, job)
    remedy = f"It has 1 to {there[-1].version}."
    raise Refused(Mistake(f"job {job}", f"has no version {version} of its facts.", remedy))


def versions(connection: Connection, job: str) -> list[FactsLine]:
    """The versions of a job's facts, the oldest first; raises NoSuchJob."""
    wanted = select(FACTS.c.version, FACTS.c.who, FACTS.c.at, FACTS.c.name)
    rows = connection.execute(wanted.where(FACTS.c.job == job).order_by(FACTS.c.version)).all()
    if not rows:
        raise NoSuchJob((job,))
    return [FactsLine(row.version, row.who, row.at, row.name) for row in rows]


def put_document(connection: Connection, kind: str, name: str, body: str) -> int:
    """Add a version of a document unless the newest says the same; its number."""
    newest = connection.execute(
        select(DOCUMENT.c.version, DOCUMENT.c.body)
        .where(DOCUMENT.c.kind == kind, DOCUMENT.c.id == name)
        .order_by(DOCUMENT.c.version.desc())
        .limit(1)
    ).one_or_none()
    if newest and newest.body == body:
        return int(newest.version)
    version = newest.version + 1 if newest else 1
    connection.execute(insert(DOCUMENT).values(document_row(kind, name, version, body)))
    return int(version)


def document_row(kind: str, name: str, version: int, body: str) -> dict[str, Any]:
    """The row of a version of a document, its hash over all that it says."""
    row = {"kind": kind, "id": name, "version": version, "body": body}
    return {**row, "hash": row_hash(kind, name, version, body)}


def document(
    connection: Connection, kind: str, name: str, version: int | None
) -> dict[str, Any] | None:
    """A version of a document, the newest when none is named; None when it is not there."""
    wanted = select(DOCUMENT.c.body).where(DOCUMENT.c.kind == kind, DOCUMENT.c.id == name)
    if version is not None:
        wanted = wanted.where(DOCUMENT.c.version == version)
    body = connection.execute(wanted.order_by(DOCUMENT.c.version.desc()).limit(1)).scalar()
    return None if body is None else values(body)


def documents(connection: Connection, kind: str) -> dict[str, dict[str, Any]]:
    """The newest version of every document of a kind, by id, sorted."""
    newest = (
        select(DOCUMENT.c.id, func.max(DOCUMENT.c.version).label("version"))
        .where(DOCUMENT.c.kind == kind)
        .group_by(DOCUMENT.c.id)
        .subquery()
    )
    wanted = select(DOCUMENT.c.id, DOCUMENT.c.body).join(
        newest,
        (DOCUMENT.c.id == newest.c.id)
        & (DOCUMENT.c.version == newest.c.version)
        & (DOCUMENT.c.kind == kind),
    )
    found = {row.id: values(row.body) for row in connection.execute(wanted)}
    return dict(sorted(found.items()))
