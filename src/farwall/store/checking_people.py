"""Look through the people of a book and through what they did, each deed against the one before."""

from __future__ import annotations

from sqlalchemy import Connection, func, select

from farwall.store.comings import done_row
from farwall.store.nouns import BookFault
from farwall.store.people_nouns import ROLES, known_as
from farwall.store.tables import DONE, PERSON

_BACKUP = "Restore the last backup beside it and compare."


def people_faults(connection: Connection) -> list[BookFault]:
    """What is wrong with people and deeds; a deed altered with its hash breaks the one after."""
    found = []
    for row in connection.execute(select(PERSON).order_by(PERSON.c.id)):
        if row.role not in ROLES or known_as(row.name) != row.known_as:
            what = f"Their role or name is none of ours. {_BACKUP}"
            found.append(BookFault("altered", f"person {row.id}", what))
    due, before = 1, ""
    for row in connection.execute(
        select(DONE).order_by(DONE.c.number), execution_options={"yield_per": 2000}
    ):
        where = f"done {row.number}"
        if row.number != due:
            found.append(BookFault("gap", where, f"{due} should stand here. {_BACKUP}"))
        told = done_row(row.number, (row.at, row.who, row.word, row.about), before)
        if told["hash"] != row.hash:
            found.append(BookFault("altered", where, f"It is not as it was noted. {_BACKUP}"))
        due, before = row.number + 1, row.hash
    return found


def last_done(connection: Connection) -> int:
    """The number of the last deed; 0 for none."""
    return int(connection.scalar(select(func.coalesce(func.max(DONE.c.number), 0))) or 0)
