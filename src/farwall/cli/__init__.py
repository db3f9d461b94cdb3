"""The command line: one of the doors."""
