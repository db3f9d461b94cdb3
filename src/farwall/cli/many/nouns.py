"""What a job among many is, and what came of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Literal

from farwall.nouns import dataclass

State = Literal["planned", "no", "refused", "failed", "lost"]
"""planned: stands · no: planned, and the answer is no (a field cannot be done, or a fault) ·
refused: the job file holds mistakes · failed: it broke in Farwall, which is a defect of ours ·
lost: its worker died or ran over the time limit, twice."""


@dataclass(frozen=True)
class OneJob:
    """A job to be planned: its id, unique among the many, and its facts as JSON text."""

    id: str
    text: bytes
    named: str
    """Where it came from, to be told in mistakes."""


@dataclass(frozen=True)
class How:
    """How all of them are planned: weather (name and content), pages or not, seconds at most."""

    weather_name: str = ""
    weather: bytes = b""
    pages: bool = True
    most_s: float = 0.0


@dataclass(frozen=True)
class Outcome:
    """What came of a job: its state in one word, why, and its files, which are not kept in notes.

    `made_from` is the SHA-256 of all that the plan was made from, Farwall's version with it.
    """

    id: str
    state: State
    made_from: str
    seconds: float = 0.0
    why: tuple[str, ...] = ()
    fields: int = 0
    area_m2: float = 0.0
    files: Mapping[str, bytes] = field(default_factory=dict, compare=False)
