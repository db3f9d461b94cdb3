"""Jobs, versions of their facts, entries, clocks of devices, documents of the firm."""

import sqlalchemy as sa
from alembic import op

revision = "r1"
down_revision = None

_WHOLE = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def _text(name: str, *more: sa.ForeignKey, key: bool = False) -> sa.Column[str]:
    return sa.Column(name, sa.Text, *more, nullable=False, primary_key=key)


def _whole(name: str, *, key: bool = False) -> sa.Column[int]:
    return sa.Column(name, _WHOLE, nullable=False, primary_key=key, autoincrement=False)


def upgrade() -> None:
    """Make the tables, and the counters from which places are given."""
    counter = op.create_table("counter", _text("name", key=True), _whole("value"))
    op.bulk_insert(
        counter, [{"name": name, "value": 0} for name in ("place", "job", "clock", "lock")]
    )
    op.create_table("job", _text("id", key=True), _whole("number"), sa.UniqueConstraint("number"))
    op.create_table(
        "facts",
        _text("job", sa.ForeignKey("job.id"), key=True),
        _whole("version", key=True),
        *(_text(name) for name in ("name", "who", "at", "body", "hash")),
    )
    op.create_table(
        "entry",
        _whole("place", key=True),
        _text("id"),
        _text("job", sa.ForeignKey("job.id")),
        *(_text(name) for name in ("word", "received_at", "body", "hash")),
        sa.UniqueConstraint("id", name="entry_id"),
    )
    op.create_index("entry_job", "entry", ["job", "place"])
    op.create_table(
        "clock",
        _whole("number", key=True),
        _text("device"),
        _whole("era"),
        sa.Column("off_s", sa.Double, nullable=False),
        _text("told_at"),
    )
    op.create_index("clock_device", "clock", ["device", "era", "number"])
    op.create_table(
        "document",
        _text("kind", key=True),
        _text("id", key=True),
        _whole("version", key=True),
        _text("body"),
        _text("hash"),
    )


def downgrade() -> None:
    """Take all tables away, and what is in them."""
    for name in ("document", "clock", "entry", "facts", "job", "counter"):
        op.drop_table(name)
