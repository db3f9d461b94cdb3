"""Chance by a seed."""

from collections import Counter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.bench.dice import Dice


def test_the_recorded_throws_of_a_seed():
    """What Python promises of Random(seed).random(); by these, whole houses."""
    dice = Dice(7)
    assert [dice.between(1, 100) for _ in range(5)] == [33, 16, 66, 8, 54]


@given(st.integers(0, 2**32), st.integers(-50, 50), st.integers(0, 60))
def test_a_throw_stays_within_its_ends(seed, low, more):
    dice = Dice(seed)
    assert all(low <= dice.between(low, low + more) <= low + more for _ in range(20))


def test_both_ends_are_thrown_and_all_things_chosen():
    dice = Dice(1)
    assert set(Counter(dice.between(1, 6) for _ in range(200))) == {1, 2, 3, 4, 5, 6}
    assert {dice.one_of("abc") for _ in range(50)} == {"a", "b", "c"}


@pytest.mark.parametrize(("chance", "sure"), [(0.0, False), (1.0, True)])
def test_nothing_happens_at_nought_and_everything_at_one(chance, sure):
    dice = Dice(1)
    assert {dice.happens(chance) for _ in range(50)} == {sure}
