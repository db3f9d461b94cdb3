"""May, not yet, nobody told: one plain word for a person and a duty on a day. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from farwall.acid.worn import Check, Needs
from farwall.facts.job import Job
from farwall.facts.workers import Duty, Worker

Word = Literal["may", "not yet", "nobody told"]
NOT_YET: Word = "not yet"
NOBODY_TOLD: Word = "nobody told"
VERBS: dict[Duty, str] = {
    "mixes": "mix a batch", "sprays": "spray stain", "helps": "help inside",
    "scrubs": "scrub the floor", "seals": "lay sealer", "stands by": "stand by outside",
}  # fmt: skip
"""What a person may or may not do."""


def needs_of(job: Job) -> Needs:
    """What of the job bears on people. Chromate that nobody read for is asked by go or no-go."""
    chromate = any(one.chromate for one in job.stains)
    return Needs(chromate=chromate, ammonia=job.washing.base == "ammonia water")


def word_of(checks: Sequence[Check]) -> tuple[Word, tuple[str, ...]]:
    """The word, and why: all that is missing, else all that nobody told."""
    missing = tuple(one.why for one in checks if one.state == "missing")
    if missing:
        return NOT_YET, missing
    untold = tuple(one.why for one in checks if one.state == "not told")
    return (NOBODY_TOLD, untold) if untold else ("may", ())


def called(worker: Worker) -> str:
    """What a person is called."""
    return worker.name or worker.id


def is_called(worker: Worker, text: str) -> bool:
    """Whether a text means this person, by id or name, whatever the case of its letters."""
    asked = text.strip().casefold()
    return bool(asked) and asked in {worker.id.strip().casefold(), worker.name.strip().casefold()}
