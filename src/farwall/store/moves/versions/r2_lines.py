"""The list of jobs, counted once and kept: a million entries were counted at every look."""

import sqlalchemy as sa
from alembic import op

revision = "r2"
down_revision = "r1"

_WHOLE = sa.BigInteger().with_variant(sa.Integer, "sqlite")


def upgrade() -> None:
    """Make the table of lines; r4, which knows all of its columns, fills it."""
    op.create_table(
        "line",
        sa.Column("job", sa.Text, sa.ForeignKey("job.id"), primary_key=True),
        sa.Column("number", _WHOLE, nullable=False, unique=True),
        sa.Column("name", sa.Text, nullable=False),
        sa.Column("versions", _WHOLE, nullable=False),
        sa.Column("entries", _WHOLE, nullable=False),
        sa.Column("latest_at", sa.Text, nullable=False),
        sa.Column("closed", sa.Boolean, nullable=False),
    )


def downgrade() -> None:
    """Take the lines away; nothing is lost, they are counted from the rest."""
    op.drop_table("line")
