"""Many jobs planned at once: found, shared out over workers, kept note of, told."""
