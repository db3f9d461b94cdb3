"""The people of the book, their sessions and links, and what they did: one key opened all."""

import sqlalchemy as sa
from alembic import op

revision = "r3"
down_revision = "r2"

_WHOLE = sa.BigInteger().with_variant(sa.Integer, "sqlite")
_TABLES = ("done", "tried", "invite", "session", "person")
_KEPT = "what was done is added and never changed"


def _texts(*names: str) -> list[sa.Column[str]]:
    return [sa.Column(name, sa.Text, nullable=False) for name in names]


def _moments(*names: str) -> list[sa.Column[float]]:
    return [sa.Column(name, sa.Double, nullable=False) for name in names]


def _person() -> sa.Column[str]:
    return sa.Column("person", sa.Text, sa.ForeignKey("person.id"), nullable=True)


def upgrade() -> None:
    """Make the tables, empty, and the counter of what was done, which nobody may alter."""
    op.create_table(
        "person",
        sa.Column("id", sa.Text, primary_key=True),
        *_texts("name", "known_as", "role", "password", "made_at", "ended_at"),
        *_moments("seen_s"),
        sa.UniqueConstraint("known_as"),
    )
    op.create_table(
        "session",
        sa.Column("seal", sa.Text, primary_key=True),
        _person(),
        *_texts("kind"),
        *_moments("made_s", "seen_s", "ends_s"),
    )
    op.create_index("session_person", "session", ["person"])
    op.create_table(
        "invite",
        sa.Column("seal", sa.Text, primary_key=True),
        *_texts("kind", "role"),
        _person(),
        *_moments("ends_s"),
    )
    op.create_table(
        "tried", sa.Column("seal", sa.Text, primary_key=True), *_moments("level", "at_s")
    )
    op.create_table(
        "done",
        sa.Column("number", _WHOLE, primary_key=True, autoincrement=False),
        *_texts("at", "who", "word", "about", "hash"),
    )
    op.execute("INSERT INTO counter (name, value) VALUES ('done', 0)")
    for statement in _guards(op.get_bind().dialect.name):
        op.execute(statement)


def downgrade() -> None:
    """Take people, sessions, links and what was done away; the jobs stay as they are."""
    for name in _TABLES:
        op.drop_table(name)
    if op.get_bind().dialect.name != "sqlite":
        op.execute("DROP FUNCTION done_is_kept()")
    op.execute("DELETE FROM counter WHERE name = 'done'")


def _guards(dialect: str) -> list[str]:
    if dialect == "sqlite":
        return [
            f"CREATE TRIGGER done_no_{verb} BEFORE {verb} ON done "
            f"BEGIN SELECT RAISE(ABORT, '{_KEPT}'); END"
            for verb in ("update", "delete")
        ]
    raising = f"$$ BEGIN RAISE EXCEPTION '{_KEPT}'; END $$"
    when = "BEFORE UPDATE OR DELETE OR TRUNCATE ON done FOR EACH STATEMENT"
    return [
        f"CREATE FUNCTION done_is_kept() RETURNS trigger LANGUAGE plpgsql AS {raising}",
        f"CREATE TRIGGER done_kept {when} EXECUTE FUNCTION done_is_kept()",
    ]
