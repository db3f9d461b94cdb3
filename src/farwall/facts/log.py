"""The log of a job: entries that are added and never changed, each made on some device.

An entry is known by its id, made where it was tapped; the same id twice is the
same entry. What was wrong is struck by another entry and stays to be read.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Annotated

from annotated_types import Ge, MinLen

from farwall.facts.plain import Plain
from farwall.nouns import dataclass

LOG_VERSION = 1


@dataclass(frozen=True)
class Entry:
    """One thing that happened.

    id: UUIDv7, made on the device · word: one of `log_words.WORDS` · at: when it happened by the
    clock of the device, ISO 8601 with offset · number: counts up on that device, so that its
    entries keep their order whatever its clock says · era: counts how often that clock was
    seen to jump, so that what one reckons of a clock is not taken for another · about: what the
    word carries, SI.
    """

    id: Annotated[str, MinLen(1)]
    job: Annotated[str, MinLen(1)]
    word: Annotated[str, MinLen(1)]
    at: Annotated[str, MinLen(1)]
    who: str = ""
    device: str = ""
    number: Annotated[int, Ge(0)] = 0
    era: Annotated[int, Ge(0)] = 0
    about: Mapping[str, Plain] = field(default_factory=dict)
    version: int = LOG_VERSION


@dataclass(frozen=True)
class Kept:
    """An entry as the book keeps it.

    place: its place in the book, one more for each entry kept, never reused · received_at: the
    clock of the book when it came in, ISO 8601 · clock_off_s: by how much the device's clock
    was ahead of the book's, as last known; None when that is not known.
    """

    entry: Entry
    place: int
    received_at: str
    clock_off_s: float | None = None
