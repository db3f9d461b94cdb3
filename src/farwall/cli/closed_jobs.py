"""Closed jobs from where their logs lie: folders with a plan, or the jobs of a book."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Refused, Unanswerable

if TYPE_CHECKING:
    from farwall.cli.log_place import Place
    from farwall.facts.closed import ClosedJob
    from farwall.job.story import Story


def told_at(told: str, book: str | None) -> tuple[Place, Story]:
    """A job's plan and facts, and the story of its log, which is let go of. Raises Refused."""
    from farwall.cli.log_place import place_of
    from farwall.job.story import story

    with place_of(told, job_file=None, book=book) as place:
        return place, story(place.plan, place.log.entries())


def closed_at(told: str, book: str | None = None) -> ClosedJob:
    """What the job there tells the next ones. Raises Refused."""
    from farwall.cli.log_place import place_of
    from farwall.job.closed import closed_job
    from farwall.job.story import story

    with place_of(told, job_file=None, book=book) as place:
        kept = place.log.entries()
    day = story(place.plan, kept)
    return closed_job(place.job, place.plan, day, job_id=place.job_id, kept=kept)


def closed_in(folders: Sequence[Path]) -> list[ClosedJob]:
    """Those of folders with a log in them."""
    return [closed_at(str(folder)) for folder in folders]


def closed_in_book(book: str) -> Iterator[ClosedJob | str]:
    """Every job of a book handed over and not set aside; in words where one cannot be told."""
    from farwall.store.address import insist_there
    from farwall.store.book import Book

    insist_there(book)
    with Book.open(book) as opened:
        ids = [line.id for line in opened.in_hand() if line.closed]
    for job in ids:
        try:
            yield closed_at(job, book)
        except (Refused, Unanswerable) as error:
            yield f"{job} teaches nothing: {error}"
