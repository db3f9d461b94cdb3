"""The sealed look from the wet one: a guess first, what was measured afterwards."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.sealed import HAND, NEAR, sealing

SHIFT = (-1.5, 0.5, 1.0)
lab = st.tuples(st.floats(20, 70), st.floats(-10, 20), st.floats(-10, 30))


def pairs(count):
    wet = (45.0, 8.0, 13.0)
    return [(wet, tuple(a + b for a, b in zip(wet, SHIFT, strict=True)))] * count


def test_without_a_pair_nothing_is_moved_and_much_is_unsure():
    found = sealing([])
    assert found.shift == (0.0, 0.0, 0.0)
    assert all(one >= near for one, near in zip(found.spread, NEAR, strict=True))


def test_each_pair_makes_it_surer_and_more_like_what_was_seen():
    found = [sealing(pairs(n)) for n in range(6)]
    shifts = [one.shift[0] for one in found]
    spreads = [one.spread[0] for one in found]
    assert shifts == sorted(shifts, reverse=True)
    assert SHIFT[0] < shifts[-1] < shifts[1]
    assert spreads == sorted(spreads, reverse=True)
    assert spreads[-1] > HAND[0]


@given(lab, st.integers(0, 5))
def test_there_and_back_is_the_same_colour(colour, count):
    found = sealing(pairs(count))
    back = found.wet(found.sealed(colour))
    assert all(abs(a - b) < 1e-9 for a, b in zip(back, colour, strict=True))
