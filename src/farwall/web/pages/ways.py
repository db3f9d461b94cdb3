"""The ways from screen to screen: a line of words at the head of every page."""

from __future__ import annotations

WAYS: tuple[tuple[str, str], ...] = (
    ("/", "way-houses"),
    ("/days", "way-days"),
    ("/van", "way-van"),
    ("/lessons", "way-lessons"),
    ("/book", "way-book"),
)
"""Address and key of the words, in the order of the line."""
