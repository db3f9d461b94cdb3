"""Which jobs are asked for: files, folders of files, each with an id of its own."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

from farwall.cli.many.nouns import How, OneJob, Outcome
from farwall.errors import Mistake, Refused

OF_BOOK = "the book's "
"""How a job of the book is named in mistakes."""
_WRITTEN = {"plan.json", "seal.json", "days.json", "year.json", "go.json"}
"""What Farwall itself writes beside a job: no jobs."""


def jobs_in(places: Sequence[Path]) -> list[OneJob]:
    """The jobs in these files and folders, in order of their paths.

    In a folder every `*.json` is a job, at any depth, but what Farwall itself writes.
    An id is the path without its ending, below the folder; `job.json` takes its folder's name.
    Raises Refused when a place is not there, holds no job, or two would have one id.
    """
    found: list[OneJob] = []
    mistakes: list[Mistake] = []
    for place in places:
        try:
            found += _jobs_at(place)
        except OSError as error:
            what = f"cannot be read ({error.strerror})."
            mistakes.append(Mistake(str(error.filename or place), what, "Name a file or folder."))
    seen: dict[str, str] = {}
    for job in found:
        if job.id in seen:
            what = f"has the same id as {seen[job.id]}: {job.id}."
            mistakes.append(Mistake(job.named, what, "Rename one of them."))
        seen.setdefault(job.id, job.named)
    if not found and not mistakes:
        where = ", ".join(map(str, places))
        mistakes.append(Mistake(where, "holds no job.", "Name a folder with JOB.json files."))
    if mistakes:
        raise Refused(*mistakes)
    return found


def jobs_of_book(address: str, *, beside: Sequence[OneJob] = ()) -> list[OneJob]:
    """The newest facts of each job of a book that is neither handed over nor set aside.

    Raises Refused.
    """
    from farwall.store.address import insist_there
    from farwall.store.book import Book

    insist_there(address)
    taken = {job.id for job in beside}
    with Book.open(address) as book:
        lines = [line for line in book.in_hand() if not line.closed]
        if clash := [line.id for line in lines if line.id in taken]:
            what = "is a job of the book and a file as well."
            raise Refused(*(Mistake(one, what, "Name one of the two.") for one in clash))
        return [
            OneJob(
                line.id,
                json.dumps(book.facts(line.id), ensure_ascii=False, sort_keys=True).encode(),
                f"{OF_BOOK}{line.id}",
            )
            for line in lines
        ]


def into_book(address: str, outcome: Outcome) -> None:
    """Keep a job's plan in the book that the job is of, and of which version of its facts it is."""
    from farwall.store.book import Book

    with Book.open(address) as book:
        version = book.versions(outcome.id)[-1].version
        book.put_document("plan", outcome.id, json.loads(outcome.files["plan.json"]))
        no = [] if outcome.fields else list(outcome.why)
        of = {"facts": version, "faults": list(outcome.why) if outcome.fields else [], "no": no}
        book.put_document("plan-of", outcome.id, of)


def _jobs_at(place: Path) -> list[OneJob]:
    if not place.is_dir():
        # A lone file may be called anything; it is read as a job whatever it is.
        return [OneJob(_id(Path(place.name), place), place.read_bytes(), str(place))]
    paths = sorted(
        path
        for path in place.rglob("*.json")
        if path.name not in _WRITTEN and not any(part.startswith(".") for part in path.parts)
    )
    return [
        OneJob(_id(path.relative_to(place), path), path.read_bytes(), str(path)) for path in paths
    ]


def _id(below: Path, path: Path) -> str:
    if below.name == "job.json":
        own = below.parent if below.parent.name else Path(path.resolve().parent.name)
        return own.as_posix()
    return below.with_suffix("").as_posix()


def how(weather: Path | None, *, pages: bool, most_s: float) -> How:
    """How all are planned; the weather is read whole, and judged now rather than a thousand times.

    Raises Refused as its reader does.
    """
    if weather is None:
        return How(pages=pages, most_s=most_s)
    from farwall.readers.any_weather import read_weather

    read_weather(weather)
    return How(weather.name, weather.read_bytes(), pages, most_s)
