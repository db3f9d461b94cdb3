"""Sessions that are open, tries that failed, and what was done: a restart changes none of it.

A token comes here only as its seal, the SHA-256 of it: it is random and long, so that no slow
hash is needed. Tries are a vessel that drips: each adds one, and it runs out with time.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from contextlib import suppress
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, Row, delete, func, insert, select, update

from farwall.store.canonical import canonical, row_hash, values
from farwall.store.engine import reading, writing
from farwall.store.keeping import take
from farwall.store.nouns import BookTrouble
from farwall.store.people import person_of
from farwall.store.people_nouns import Done, Open
from farwall.store.tables import DONE, INVITE, PERSON, SESSION, TRIED

if TYPE_CHECKING:
    from farwall.store.book import Book

_SEEN_EVERY_S = 60.0
_MOST_TRIED = 2000


def seal_of(token: str) -> str:
    """The seal under which a token is kept."""
    return hashlib.sha256(token.encode("utf-8", "surrogatepass")).hexdigest()


class Comings:
    """Sessions, tries and deeds of a book. now_s: seconds since 1970 by the book's clock."""

    def __init__(self, book: Book) -> None:
        self.book = book

    # sessions

    def begin(
        self, token: str, person: str | None, *, kind: str, now_s: float, ends_s: float
    ) -> None:
        """Open a session; sessions and links that have ended are swept away."""
        row = {"seal": seal_of(token), "person": person, "kind": kind}
        times = {"made_s": now_s, "seen_s": now_s, "ends_s": ends_s}
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(delete(SESSION).where(SESSION.c.ends_s <= now_s))
            connection.execute(delete(INVITE).where(INVITE.c.ends_s <= now_s))
            connection.execute(insert(SESSION).values(row | times))
            _seen(connection, person, now_s)

    def session(self, token: str, *, now_s: float, idle_s: Mapping[str, float]) -> Open | None:
        """The open session of a token, noted as seen; None when there is none, or it has ended.

        idle_s: after how many seconds unseen a session of a kind ends. One whose person's access
        was ended is none.
        """
        wanted = select(SESSION).where(SESSION.c.seal == seal_of(token))
        with reading(self.book.engine, self.book.where) as connection:
            row = connection.execute(wanted).one_or_none()
            if row is None or min(row.ends_s, row.seen_s + idle_s[row.kind]) <= now_s:
                return None
            found = _open(connection, row)
        if found is not None and now_s - found.seen_s > _SEEN_EVERY_S:
            with suppress(BookTrouble):
                self._note_seen(found, row.person, now_s)
        return found

    def _note_seen(self, found: Open, person: str | None, now_s: float) -> None:
        """Raises BookTrouble on a full or read-only disk: then pages are read all the same, and the
        session ends sooner, never later."""
        with writing(self.book.engine, self.book.where) as connection:
            same = update(SESSION).where(SESSION.c.seal == found.seal)
            connection.execute(same.values(seen_s=now_s))
            _seen(connection, person, now_s)

    def sessions(self, person: str, *, now_s: float) -> list[Open]:
        """The sessions of a person that have not ended, the last seen first."""
        theirs = (SESSION.c.person == person) & (SESSION.c.ends_s > now_s)
        wanted = select(SESSION).where(theirs).order_by(SESSION.c.seen_s.desc())
        with reading(self.book.engine, self.book.where) as connection:
            found = [_open(connection, row) for row in connection.execute(wanted).all()]
        return [one for one in found if one is not None]

    def leave(self, token: str) -> None:
        """End a session."""
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(delete(SESSION).where(SESSION.c.seal == seal_of(token)))

    def leave_all(self, person: str) -> None:
        """End all sessions of a person."""
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(delete(SESSION).where(SESSION.c.person == person))

    def leave_key(self) -> None:
        """End the sessions that the book's key opened."""
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(delete(SESSION).where(SESSION.c.person.is_(None)))

    # tries

    def tried(self, about: str, *, now_s: float, per_s: float) -> float:
        """How full the vessel of tries about something is; one runs out in 1 / per_s seconds."""
        with reading(self.book.engine, self.book.where) as connection:
            return _level(connection, seal_of(about), now_s, per_s)

    def try_once(self, vessels: Mapping[str, tuple[int, float]], *, now_s: float) -> bool:
        """Add a try to each vessel, or to none and False when one of them is full.

        vessels: how many tries each holds, and how many run out of it in a second. Asked and added
        in one step, so that many at once are no more than so many. The oldest are swept.
        """
        with writing(self.book.engine, self.book.where) as connection:
            levels = {
                name: _level(connection, seal_of(name), now_s, per_s)
                for name, (_, per_s) in vessels.items()
            }
            if any(levels[name] > most - 1 for name, (most, _) in vessels.items()):
                return False
            for name, level in levels.items():
                _put_level(connection, seal_of(name), level + 1, now_s)
            many = connection.scalar(select(func.count()).select_from(TRIED)) or 0
            if many > _MOST_TRIED:
                oldest = select(TRIED.c.seal).order_by(TRIED.c.at_s).limit(many - _MOST_TRIED)
                connection.execute(delete(TRIED).where(TRIED.c.seal.in_(oldest.scalar_subquery())))
        return True

    def take_back(self, about: str) -> None:
        """Take one try out of a vessel: it did not fail."""
        less = update(TRIED).where((TRIED.c.seal == seal_of(about)) & (TRIED.c.level >= 1))
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(less.values(level=TRIED.c.level - 1))

    def forgive(self, about: str) -> None:
        """Empty a vessel."""
        with writing(self.book.engine, self.book.where) as connection:
            connection.execute(delete(TRIED).where(TRIED.c.seal == seal_of(about)))

    # what was done

    def note(self, at: str, who: str, word: str, about: Mapping[str, Any]) -> None:
        """Add what was done; nothing there is ever changed."""
        with writing(self.book.engine, self.book.where) as connection:
            number = take(connection, "done")
            last = select(DONE.c.hash).where(DONE.c.number == number - 1)
            before = connection.scalar(last) or ""
            body = canonical(dict(about), where="what was done")
            connection.execute(insert(DONE).values(done_row(number, (at, who, word, body), before)))

    def done(self, *, limit: int = 100, before: int = 0) -> list[Done]:
        """What was done, the newest first; `before`: only what came before this number."""
        wanted = select(DONE).order_by(DONE.c.number.desc()).limit(limit)
        if before:
            wanted = wanted.where(DONE.c.number < before)
        with reading(self.book.engine, self.book.where) as connection:
            rows = connection.execute(wanted).all()
        return [Done(row.number, row.at, row.who, row.word, values(row.about)) for row in rows]


def done_row(number: int, told: tuple[str, str, str, str], before: str) -> dict[str, Any]:
    """A row of DONE (`at`, `who`, `word`, `about`), hashed with the hash of the row before."""
    row = dict(zip(("at", "who", "word", "about"), told, strict=True))
    return {"number": number, **row, "hash": row_hash(number, *told, before)}


def _open(connection: Connection, row: Row[Any]) -> Open | None:
    person = None
    if row.person is not None:
        found = connection.execute(select(PERSON).where(PERSON.c.id == row.person)).one()
        if found.ended_at:
            return None
        person = person_of(found)
    return Open(row.seal, person, row.kind, row.made_s, row.seen_s, row.ends_s)


def _seen(connection: Connection, person: str | None, now_s: float) -> None:
    if person is not None:
        connection.execute(update(PERSON).where(PERSON.c.id == person).values(seen_s=now_s))


def _put_level(connection: Connection, seal: str, level: float, now_s: float) -> None:
    connection.execute(delete(TRIED).where(TRIED.c.seal == seal))
    connection.execute(insert(TRIED).values(seal=seal, level=level, at_s=now_s))


def _level(connection: Connection, seal: str, now_s: float, per_s: float) -> float:
    row = connection.execute(select(TRIED).where(TRIED.c.seal == seal)).one_or_none()
    return 0.0 if row is None else max(0.0, float(row.level) - max(0.0, now_s - row.at_s) * per_s)
