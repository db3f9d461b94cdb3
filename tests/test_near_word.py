"""The known word that was meant. Hand-worked."""

import pytest

from farwall.near_word import near_word

KNOWN = ("water", "area_ft2", "area_m2", "slab_age_days", "finish-class",
         "drop_until_it_is_gone_in_seconds", "stopwatch_at_sheen_loss_in_seconds")  # fmt: skip


@pytest.mark.parametrize(
    ("word", "meant"),
    [
        ("watre", "water"),
        ("WATER", "water"),
        ("ft2", "area_ft2"),
        ("class", "finish-class"),
        ("age", "slab_age_days"),
        ("area", "area_m2"),  # two have it, the shorter looks more like it
        ("seconds", None),  # two have it
        ("state", None),  # three letters of five are not enough
        ("", None),
        ("x" * 10_000, None),
    ],
)
def test_the_word_that_was_meant_or_none(word, meant):
    assert near_word(word, KNOWN) == meant


def test_how_much_alike_is_told_by_who_asks():
    assert near_word("state", KNOWN, alike=0.6) == "water"
