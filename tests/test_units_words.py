"""Amounts in words. Hand-worked."""

from farwall.units import counted


def test_one_is_told_as_one_and_all_else_as_several():
    assert [counted(n, "room") for n in (0, 1, 2)] == ["0 rooms", "1 room", "2 rooms"]
    assert counted(1, "way out", "ways out") == "1 way out"
    assert counted(3, "way out", "ways out") == "3 ways out"
