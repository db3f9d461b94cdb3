"""The gate asked about a job: its own materials, by their names, in any vessel."""
