"""Bring the tables of a book to today's version when it is opened, or to another and back."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, text

from farwall.errors import Mistake, Refused
from farwall.store.address import Address
from farwall.store.engine import calmly

NEWEST = "r4"
KNOWN = ("r1", "r2", "r3", NEWEST)
# Any number will do, as long as nobody else takes it: the letters of "farwall" as bytes.
_LOCK = int.from_bytes(b"farwall")


def version(connection: Connection) -> str | None:
    """The version of the tables; None when there are none yet."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    return connection.execute(text("SELECT version_num FROM alembic_version")).scalar()


def bring_up_to_date(engine: Engine, where: Address) -> None:
    """Move to the newest version when the book is not there yet; raises Refused for a later one."""
    with calmly(where), engine.connect() as connection, connection.begin():
        found = version(connection)
    if found == NEWEST:
        return
    if found is not None and found not in KNOWN:
        raise Refused(
            Mistake(
                where.shown,
                f"was written by a later Farwall (its tables are {found}, known is {NEWEST}).",
                "Use that one; nothing was changed.",
            )
        )
    move(engine, where, "head")


def move(engine: Engine, where: Address, to: str) -> None:
    """Move the tables up or down to a version ("head", "base" or a name), under a lock, whole.

    Down to "base" takes everything away.
    """
    from alembic import command
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "moves"))
    with calmly(where), engine.connect() as connection:
        connection.execution_options(writes=True)
        with connection.begin():
            if where.folder is None:
                connection.execute(text("SELECT pg_advisory_xact_lock(:it)"), {"it": _LOCK})
            config.attributes["connection"] = connection
            # Another program may have come first while this one waited.
            now = version(connection)
            order = [None, *KNOWN]
            target = {"head": NEWEST, "base": None}.get(to, to)
            if order.index(now) <= order.index(target):
                command.upgrade(config, to)
            else:
                command.downgrade(config, to)
