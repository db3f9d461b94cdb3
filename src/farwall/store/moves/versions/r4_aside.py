"""Houses that are set aside: each line says so; one entered by mistake stood for ever."""

import sqlalchemy as sa
from alembic import op

from farwall.store.lines import count_again

revision = "r4"
down_revision = "r3"


def upgrade() -> None:
    """Add the column, and count every line from what is there."""
    op.add_column("line", sa.Column("aside", sa.Boolean, nullable=False, server_default=sa.false()))
    count_again(op.get_bind())


def downgrade() -> None:
    """Take the column away; nothing is lost, it is counted from the entries."""
    op.drop_column("line", "aside")
