"""The tables of the book as they are today; `moves/` says how they came to be.

Rows of `facts`, `entry`, `clock`, `document` and `done` are added and never changed. `line` and
`counter` are reckoned from them and can be made again. Of passwords and
tokens only hashes are kept.
"""

from __future__ import annotations

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Double,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)

WHOLE = BigInteger().with_variant(Integer, "sqlite")
META = MetaData()

COUNTER = Table(
    "counter",
    META,
    Column("name", Text, primary_key=True),
    Column("value", WHOLE, nullable=False),
)
JOB = Table(
    "job",
    META,
    Column("id", Text, primary_key=True),
    Column("number", WHOLE, nullable=False, unique=True),
)
FACTS = Table(
    "facts",
    META,
    Column("job", Text, ForeignKey("job.id"), primary_key=True),
    Column("version", WHOLE, primary_key=True, autoincrement=False),
    Column("name", Text, nullable=False),
    Column("who", Text, nullable=False),
    Column("at", Text, nullable=False),
    Column("body", Text, nullable=False),
    Column("hash", Text, nullable=False),
)
ENTRY = Table(
    "entry",
    META,
    Column("place", WHOLE, primary_key=True, autoincrement=False),
    Column("id", Text, nullable=False),
    Column("job", Text, ForeignKey("job.id"), nullable=False),
    Column("word", Text, nullable=False),
    Column("received_at", Text, nullable=False),
    Column("body", Text, nullable=False),
    Column("hash", Text, nullable=False),
    UniqueConstraint("id", name="entry_id"),
    Index("entry_job", "job", "place"),
)
CLOCK = Table(
    "clock",
    META,
    Column("number", WHOLE, primary_key=True, autoincrement=False),
    Column("device", Text, nullable=False),
    Column("era", WHOLE, nullable=False),
    Column("off_s", Double, nullable=False),
    Column("told_at", Text, nullable=False),
    Index("clock_device", "device", "era", "number"),
)
DOCUMENT = Table(
    "document",
    META,
    Column("kind", Text, primary_key=True),
    Column("id", Text, primary_key=True),
    Column("version", WHOLE, primary_key=True, autoincrement=False),
    Column("body", Text, nullable=False),
    Column("hash", Text, nullable=False),
)
LINE = Table(
    "line",
    META,
    Column("job", Text, ForeignKey("job.id"), primary_key=True),
    Column("number", WHOLE, nullable=False, unique=True),
    Column("name", Text, nullable=False),
    Column("versions", WHOLE, nullable=False),
    Column("entries", WHOLE, nullable=False),
    Column("latest_at", Text, nullable=False),
    Column("closed", Boolean, nullable=False),
    Column("aside", Boolean, nullable=False),
)
PERSON = Table(
    "person",
    META,
    Column("id", Text, primary_key=True),
    Column("name", Text, nullable=False),
    Column("known_as", Text, nullable=False, unique=True),
    Column("role", Text, nullable=False),
    Column("password", Text, nullable=False),
    Column("made_at", Text, nullable=False),
    Column("ended_at", Text, nullable=False),
    Column("seen_s", Double, nullable=False),
)
SESSION = Table(
    "session",
    META,
    Column("seal", Text, primary_key=True),
    Column("person", Text, ForeignKey("person.id"), nullable=True),
    Column("kind", Text, nullable=False),
    Column("made_s", Double, nullable=False),
    Column("seen_s", Double, nullable=False),
    Column("ends_s", Double, nullable=False),
    Index("session_person", "person"),
)
INVITE = Table(
    "invite",
    META,
    Column("seal", Text, primary_key=True),
    Column("kind", Text, nullable=False),
    Column("role", Text, nullable=False),
    Column("person", Text, ForeignKey("person.id"), nullable=True),
    Column("ends_s", Double, nullable=False),
)
TRIED = Table(
    "tried",
    META,
    Column("seal", Text, primary_key=True),
    Column("level", Double, nullable=False),
    Column("at_s", Double, nullable=False),
)
DONE = Table(
    "done",
    META,
    Column("number", WHOLE, primary_key=True, autoincrement=False),
    Column("at", Text, nullable=False),
    Column("who", Text, nullable=False),
    Column("word", Text, nullable=False),
    Column("about", Text, nullable=False),
    Column("hash", Text, nullable=False),
)
SECRET = (SESSION, INVITE, TRIED)
"""Tables that no backup brings back and no open format holds: who was in signs in again."""
