"""Run by Alembic: the connection, already in a transaction under a lock, is handed over."""

from alembic import context

from farwall.store.tables import META

context.configure(connection=context.config.attributes["connection"], target_metadata=META)
context.run_migrations()
