"""People of a book, their passwords' hashes, links by which they come; each call one transaction.

No password and no token comes here: hashes and seals of them do.
"""

from __future__ import annotations

import uuid
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Row, delete, func, insert, select, update

from farwall.errors import Mistake, Refused
from farwall.store.canonical import text_mistakes
from farwall.store.engine import reading, writing
from farwall.store.people_nouns import (
    FIRST,
    LEAD,
    PHONE,
    ROLES,
    Invite,
    LastLead,
    LinkSpent,
    NameTaken,
    NoSuchPerson,
    Person,
    known_as,
)
from farwall.store.tables import INVITE, PERSON, SESSION

if TYPE_CHECKING:
    from farwall.store.book import Book


class People:
    """The people of a book."""

    def __init__(self, book: Book) -> None:
        self.book = book

    def all(self) -> list[Person]:
        """Everybody, those who may come in first, by name."""
        with reading(self.book.engine, self.book.where) as connection:
            found = [person_of(row) for row in connection.execute(select(PERSON))]
        return sorted(found, key=lambda one: (one.ended_at != "", known_as(one.name)))

    def named(self, name: str) -> tuple[Person, str] | None:
        """Who bears the name, with the hash of their password ("" for none); None for nobody."""
        wanted = select(PERSON).where(PERSON.c.known_as == known_as(name))
        with reading(self.book.engine, self.book.where) as connection:
            row = connection.execute(wanted).one_or_none()
        return None if row is None else (person_of(row), row.password)

    def has_lead(self) -> bool:
        """Whether somebody who may manage the people can sign in."""
        with reading(self.book.engine, self.book.where) as connection:
            return bool(_leads(connection))

    def name_first(self, name: str, password: str, at: str) -> Person:
        """The first lead, while no lead can sign in. Raises LinkSpent, NameTaken, Refused."""
        with writing(self.book.engine, self.book.where) as connection:
            return _first(connection, name, password, at)

    def invite(self, seal: str, *, kind: str, role: str, person: str | None, ends_s: float) -> None:
        """Keep a link; one for the first lead, or of its kind for a person, ends the older one."""
        if role not in ROLES:
            raise Refused(Mistake("role", f"{role!r} is none.", f"Say one of {', '.join(ROLES)}."))
        row = {"seal": seal, "kind": kind, "role": role, "person": person, "ends_s": ends_s}
        with writing(self.book.engine, self.book.where) as connection:
            if kind == FIRST:
                connection.execute(delete(INVITE).where(INVITE.c.kind == FIRST))
            if person is not None:
                _active(connection, person)
                same = (INVITE.c.person == person) & (INVITE.c.kind == kind)
                connection.execute(delete(INVITE).where(same))
            connection.execute(insert(INVITE).values(row))

    def invited(self, seal: str, *, now_s: float) -> Invite | None:
        """What a link is for; None when it is not good any more."""
        with reading(self.book.engine, self.book.where) as connection:
            return _invited(connection, seal, now_s)

    def join(self, seal: str, *, now_s: float, name: str, password: str, at: str) -> Person:
        """Who comes by a link, which is spent by it; a person's sessions end with the old password.

        password: its hash, "" for who comes by a device alone. Raises LinkSpent, NameTaken,
        Refused; then the link stays good.
        """
        with writing(self.book.engine, self.book.where) as connection:
            found = _invited(connection, seal, now_s)
            if found is None:
                raise LinkSpent(Mistake("link", "is not good any more.", "Ask for a new one."))
            connection.execute(delete(INVITE).where(INVITE.c.seal == seal))
            if found.person is not None and found.kind == PHONE:
                return found.person
            if found.person is not None:
                _set_password(connection, found.person.id, password)
                return found.person
            if found.kind == FIRST:
                return _first(connection, name, password, at)
            return _add(connection, name, found.role, password, at)

    def set_password(self, person: str, password: str, *, but: str = "") -> None:
        """Another password; all sessions of the person end `but` that of one seal."""
        with writing(self.book.engine, self.book.where) as connection:
            _set_password(connection, person, password, but=but)

    def set_hash(self, person: str, was: str, password: str) -> None:
        """The same password under another hash, unless it was changed meanwhile."""
        same = (PERSON.c.id == person) & (PERSON.c.password == was)
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(update(PERSON).where(same).values(password=password))

    def set_role(self, person: str, role: str) -> Person:
        """Another role. Raises LastLead, NoSuchPerson, Refused."""
        if role not in ROLES:
            raise Refused(Mistake("role", f"{role!r} is none.", f"Say one of {', '.join(ROLES)}."))
        with writing(self.book.engine, self.book.where) as connection:
            found = _active(connection, person)
            if role != LEAD:
                _insist_another(connection, person)
            connection.execute(update(PERSON).where(PERSON.c.id == person).values(role=role))
        return found

    def end(self, person: str, *, at: str) -> Person:
        """End somebody's access: password, sessions and links go. Raises LastLead, NoSuchPerson."""
        with writing(self.book.engine, self.book.where) as connection:
            found = _active(connection, person)
            _insist_another(connection, person)
            told = update(PERSON).where(PERSON.c.id == person)
            connection.execute(told.values(password="", ended_at=at))
            connection.execute(delete(SESSION).where(SESSION.c.person == person))
            connection.execute(delete(INVITE).where(INVITE.c.person == person))
        return found


def person_of(row: Row[Any]) -> Person:
    """The person in a row of PERSON."""
    return Person(
        row.id, row.name, row.role, row.made_at, row.ended_at, row.seen_s, bool(row.password)
    )


def _leads(connection: Connection, but: str = "") -> int:
    wanted = select(func.count()).select_from(PERSON)
    can = (PERSON.c.role == LEAD) & (PERSON.c.ended_at == "") & (PERSON.c.password != "")
    return int(connection.scalar(wanted.where(can & (PERSON.c.id != but))) or 0)


def _insist_another(connection: Connection, person: str) -> None:
    if not _leads(connection, but=person):
        remedy = "Make another person lead first."
        raise LastLead(Mistake("", "This is the last lead of the book.", remedy))


def _active(connection: Connection, person: str) -> Person:
    wanted = select(PERSON).where((PERSON.c.id == person) & (PERSON.c.ended_at == ""))
    row = connection.execute(wanted).one_or_none()
    if row is None:
        raise NoSuchPerson(Mistake("person", "The book has no such person."))
    return person_of(row)


def _first(connection: Connection, name: str, password: str, at: str) -> Person:
    if _leads(connection):
        raise LinkSpent(Mistake("link", "The book has a lead by now.", "Ask them for a link."))
    row = connection.execute(
        select(PERSON).where(PERSON.c.known_as == known_as(name))
    ).one_or_none()
    if row is None:
        return _add(connection, name, LEAD, password, at)
    # A book that was put back from open formats knows its people, but no password.
    if row.password or row.ended_at:
        raise NameTaken(Mistake("name", "Another person bears this name.", "Choose another."))
    connection.execute(update(PERSON).where(PERSON.c.id == row.id).values(role=LEAD))
    _set_password(connection, row.id, password)
    return person_of(row)


def _add(connection: Connection, name: str, role: str, password: str, at: str) -> Person:
    name = " ".join(name.split())
    if not known_as(name):
        raise Refused(Mistake("name", "is empty.", "Say what you are called."))
    if mistakes := text_mistakes("name", name):
        raise Refused(*mistakes)
    taken = select(PERSON.c.id).where(PERSON.c.known_as == known_as(name))
    if connection.scalar(taken) is not None:
        raise NameTaken(Mistake("name", "Another person bears this name.", "Choose another."))
    made = Person(uuid.uuid4().hex, name, role, at, has_password=bool(password))
    row = {"id": made.id, "name": name, "known_as": known_as(name), "role": role}
    more = {"password": password, "made_at": at, "ended_at": "", "seen_s": 0.0}
    connection.execute(insert(PERSON).values(row | more))
    return made


def _set_password(connection: Connection, person: str, password: str, *, but: str = "") -> None:
    connection.execute(update(PERSON).where(PERSON.c.id == person).values(password=password))
    others = (SESSION.c.person == person) & (SESSION.c.seal != but)
    connection.execute(delete(SESSION).where(others))


def _invited(connection: Connection, seal: str, now_s: float) -> Invite | None:
    row = connection.execute(select(INVITE).where(INVITE.c.seal == seal)).one_or_none()
    if row is None or row.ends_s <= now_s:
        return None
    if row.person is None:
        return Invite(row.kind, row.role, None)
    wanted = select(PERSON).where((PERSON.c.id == row.person) & (PERSON.c.ended_at == ""))
    person = connection.execute(wanted).one_or_none()
    return None if person is None else Invite(row.kind, row.role, person_of(person))
