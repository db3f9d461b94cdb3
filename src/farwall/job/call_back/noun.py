"""Nouns of a call-back: what the caller says, signs for and against a cause, causes in their order.

What is not known stays empty, and speaks neither for nor against anything.
"""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

Whose = Literal["ours", "the owner's", "another trade's", "to be seen"]
CALL_BACK_VERSION = 1


@dataclass(frozen=True)
class Call:
    """What the caller says; empty: not known.

    look, where, cleaner, rug, wet, winter: words of `asked.QUESTIONS` · months: since hand-over ·
    room: its id · photo: whether one is at hand.
    """

    look: str = ""
    room: str = ""
    where: str = ""
    wet: str = ""
    cleaner: str = ""
    rug: str = ""
    winter: str = ""
    months: float | None = None
    photo: str = ""


@dataclass(frozen=True)
class Sign:
    """Something that is known of this floor: its kind and value, and a sentence that says it.

    measured: it comes from the job's own record, not from what the caller says.
    """

    kind: str
    value: str
    told: str
    measured: bool = False


@dataclass(frozen=True)
class Likely:
    """A cause in its place (1: the likeliest; equal ones share theirs).

    speaks_for, against: what is known that says so · whose: words for the talk, no verdict ·
    do: what to try first on the visit · kit: what to take along for it.
    """

    place: int
    cause: str
    what: str
    score: float
    speaks_for: tuple[str, ...]
    against: tuple[str, ...]
    whose: Whose
    whose_why: str
    do: str
    kit: tuple[str, ...]


@dataclass(frozen=True)
class Triage:
    """All causes that nothing rules out, what is ruled out and by what, what to ask and to take.

    ask: keys of questions that would part the first causes · records: what the job's own log
    says of the room · call_backs: closed ones by which the signs are weighed, 0: by guesses.
    """

    room: str
    likely: tuple[Likely, ...]
    ruled_out: tuple[tuple[str, str], ...]
    records: tuple[str, ...]
    ask: tuple[str, ...]
    kit: tuple[str, ...]
    rank: str
    source: str
    version: int = CALL_BACK_VERSION
    call_backs: int = 0
