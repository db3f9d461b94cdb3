"""Who may come into a book, as its store tells it, and why somebody may not."""

from __future__ import annotations

import unicodedata
from typing import Any

from farwall.errors import Refused
from farwall.nouns import dataclass

LEAD = "lead"
ROLES = (LEAD, "office", "helper", "owner")
"""What a person is in the book; what each may do is said by the door."""
JOIN, FIRST, RESET, PHONE = "join", "first", "reset", "phone"
"""Kinds of links: for somebody new, for the first lead, for a person who chooses anew, for a
phone of a person."""


@dataclass(frozen=True)
class Person:
    """Somebody of the book. ended_at: "" while they may come in · seen_s: seconds since 1970, 0
    for never · has_password: False for who comes by a device alone, or has yet to choose one."""

    id: str
    name: str
    role: str
    made_at: str
    ended_at: str = ""
    seen_s: float = 0.0
    has_password: bool = False


@dataclass(frozen=True)
class Open:
    """A session: `person` is None where the book's key opened it, before there were people."""

    seal: str
    person: Person | None
    kind: str
    made_s: float
    seen_s: float
    ends_s: float


@dataclass(frozen=True)
class Invite:
    """A link that is still good. person: whose password it is for; None for somebody new."""

    kind: str
    role: str
    person: Person | None


@dataclass(frozen=True)
class Done:
    """Something that was done: when by the book's clock, by whom, a word for it, and the rest."""

    number: int
    at: str
    who: str
    word: str
    about: dict[str, Any]


class LinkSpent(Refused):
    """A link that was used, has ended or never was."""


class NameTaken(Refused):
    """Another person of the book bears the name."""


class LastLead(Refused):
    """Without this person nobody could manage the people."""


class NoSuchPerson(Refused):
    """The book has no such person."""


def known_as(name: str) -> str:
    """The name as it is compared: NFKC, without case, spaces as one [uax-15, 3]."""
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())
