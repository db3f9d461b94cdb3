"""Blank sheets for a walk with a tape, to fill in by pencil."""
