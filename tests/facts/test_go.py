"""Where a slab test is made first, in words."""

from farwall.facts.go import SlabTest

LABELS = {"a": "Closet", "b": "Bath", "c": "Closet", "d": "Hall"}


def first(*where: str) -> str:
    return SlabTest("F2170", 4, where, "Holes.", "published", "F2170").first_in(LABELS)


def test_rooms_are_told_by_name_and_those_of_one_name_counted():
    assert first("a", "b", "c") == "First in 2 × Closet and Bath."
    assert first("b") == "First in Bath."
    assert first("b", "a", "d") == "First in Bath, Closet and Hall."


def test_nothing_is_said_of_all_rooms_or_of_none():
    assert first("a", "b", "c", "d") == ""
    assert first() == ""
