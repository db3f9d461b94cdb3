"""Links by which people come: random, good once and for a while, kept by their seal."""

from __future__ import annotations

import secrets
import time

from farwall.store.book import Book
from farwall.store.comings import seal_of
from farwall.store.people import People
from farwall.store.people_nouns import FIRST, JOIN, LEAD, PHONE, RESET, Person

LASTS_S = 48 * 3600.0
"""How long a link is good. Rank: guess; a weekend between two shifts on a site."""
PHONE_LASTS_S = 1800.0
"""How long one is good that is read from a screen at once. Rank: guess."""


def link_for_first(book: Book, now_s: float) -> str:
    """The path of a link by which the first lead names themselves; earlier ones end."""
    return _made(book, now_s, kind=FIRST, role=LEAD)


def first_link(book: Book) -> str:
    """`link_for_first` by the clock of this machine, "" when a lead can sign in."""
    return "" if People(book).has_lead() else link_for_first(book, time.time())


def link_to_join(book: Book, now_s: float, role: str) -> str:
    """The path of a link for somebody new."""
    return _made(book, now_s, kind=JOIN, role=role)


def link_to_choose(book: Book, now_s: float, person: Person) -> str:
    """The path of a link by which a person chooses a new password."""
    return _made(book, now_s, kind=RESET, role=person.role, person=person.id)


def link_for_phone(book: Book, now_s: float, person: Person) -> str:
    """The path of a link by which a phone comes in as a person, with all that they may."""
    return _made(book, now_s, kind=PHONE, role=person.role, person=person.id)


def _made(book: Book, now_s: float, *, kind: str, role: str, person: str | None = None) -> str:
    token = secrets.token_urlsafe(32)
    ends_s = now_s + (PHONE_LASTS_S if kind == PHONE else LASTS_S)
    People(book).invite(seal_of(token), kind=kind, role=role, person=person, ends_s=ends_s)
    return f"/join/{token}"
