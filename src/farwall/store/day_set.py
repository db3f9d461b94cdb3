"""On which moment each house is set to begin, without reading whole facts: for a list of many."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from sqlalchemy import JSON, Connection, cast, func, select

from farwall.store.tables import DOCUMENT, FACTS, LINE

_AT_ONCE = 500


def starts_at(connection: Connection, jobs: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Id and `starts_at` of the newest facts, empty where they tell none, of each of these jobs."""
    if connection.dialect.name == "sqlite":
        told = func.json_extract(FACTS.c.body, "$.starts_at")
    else:
        told = func.json_extract_path_text(cast(FACTS.c.body, JSON), "starts_at")
    newest = select(FACTS.c.job, told).join(
        LINE, (LINE.c.job == FACTS.c.job) & (LINE.c.versions == FACTS.c.version)
    )
    for first in range(0, len(jobs), _AT_ONCE):
        some = list(jobs[first : first + _AT_ONCE])
        for job, at in connection.execute(newest.where(FACTS.c.job.in_(some))):
            yield job, at if isinstance(at, str) else ""


def documents_put(connection: Connection, kind: str) -> int:
    """How many versions of documents of a kind there are: it grows with each that is put."""
    wanted = select(func.count()).select_from(DOCUMENT).where(DOCUMENT.c.kind == kind)
    return int(connection.scalar(wanted) or 0)
