"""Where a house's drawn floor stands: the job's, or a drawing that is not a job yet."""

from __future__ import annotations

import copy
from hashlib import sha256
from typing import Any

from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.store.book import Book
from farwall.store.canonical import canonical
from farwall.store.nouns import NoSuchJob
from farwall.web.pages.drawn import begun_facts, drawn_of, empty_drawn, fixed_of
from farwall.web.pages.repairs import READING

DRAFT, UNDERLAY = "floor-draft", "underlay"
"""Kinds of documents: a drawn floor that cannot be planned yet; a picture laid under the floor."""
Json = dict[str, Any]


@dataclass(frozen=True)
class FloorOf:
    """version: of the facts, 0 where the house has none yet · `facts`, `was`: the job and its floor
    as the screen draws it · `now`: what is drawn: the draft where one is newer.
    """

    id: str
    version: int
    name: str
    units: Units
    facts: Json
    was: Json
    now: Json
    windows: list[Json]
    reading: Json | None
    underlay: Json | None

    @property
    def changed(self) -> bool:
        """Whether a draft waits that the facts do not have."""
        return self.now is not self.was

    @property
    def seen(self) -> str:
        """A short word of what is drawn: another floor has another. 16 hexadecimal digits."""
        return sha256(canonical(self.now, where=self.id).encode()).hexdigest()[:16]


def floor_of(book: Book, job_id: str) -> FloorOf:
    """Where the floor of a house stands. Raises NoSuchJob, BookTrouble, Refused."""
    from farwall.readers.job_json import job_from

    draft = book.document(DRAFT, job_id)
    reading, underlay = book.document(READING, job_id), book.document(UNDERLAY, job_id)
    try:
        newest = book.versions(job_id)[-1]
    except NoSuchJob:
        if draft is None or draft["facts"]:
            raise
        name, was = str(draft["name"]), empty_drawn()
        facts = begun_facts(job_id, name)
        return FloorOf(
            job_id, 0, name, "us", facts, was, _lists(draft["drawn"]), [], reading, underlay
        )
    facts = book.facts(job_id, newest.version)
    job = job_from(copy.deepcopy(facts), f"The job {job_id}")
    was = drawn_of(job)
    now = was
    if draft is not None and draft["facts"] == newest.version and draft["drawn"] != was:
        now = _lists(draft["drawn"])
    windows = fixed_of(job.floor)["windows"]
    units = job.wishes.units
    return FloorOf(
        job_id, newest.version, newest.name or job_id, units, facts, was, now, windows, reading,
        underlay,
    )  # fmt: skip


def _lists(drawn: Json) -> Json:
    return {**empty_drawn(), **drawn}


def draft_document(version: int, name: str, drawn: Json) -> Json:
    """What is kept of a drawing that is no job yet; `version`: of the facts that it corrects."""
    return {"facts": version, "name": name, "drawn": drawn}


def drafts_of(book: Book) -> list[tuple[str, str]]:
    """Id and name of every house that is begun and has no facts yet."""
    begun = [(name, one) for name, one in book.documents(DRAFT).items() if not one["facts"]]
    return [(name, str(one["name"])) for name, one in begun if not has_facts(book, name)]


def has_facts(book: Book, job: str) -> bool:
    """Whether a house is a job already."""
    try:
        return bool(book.versions(job))
    except NoSuchJob:
        return False
