"""The ways of one house: a line of words at the head of each of its screens."""

from __future__ import annotations

from urllib.parse import quote

HOUSE_WAYS: tuple[tuple[str, str], ...] = (
    ("", "way-floor"),
    ("/draw", "way-draw"),
    ("/survey", "way-survey"),
    ("/samples", "way-samples"),
    ("/crew", "way-crew"),
    ("/colour", "way-colour"),
    ("/acid", "way-acid"),
    ("/price", "way-price"),
    ("/log", "way-log"),
    ("/papers", "way-papers"),
)
"""What follows the address of the house, and the key of the words, in the order of the line."""


def house_ways(job: str) -> list[tuple[str, str]]:
    """Addresses and keys of words for a house."""
    return [(f"/houses/{quote(job, safe='')}{tail}", word) for tail, word in HOUSE_WAYS]
