"""The sealed look from the wet one: a guess first, what was measured afterwards."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.dose import INNER
from farwall.colour.sealed import HAND, SEALED_INNER, Sealing, sealing

WET = (45.0, 8.0, 13.0)
lab = st.tuples(st.floats(20, 70), st.floats(-10, 20), st.floats(-10, 30))
share = st.floats(0.25, 0.8)


def pairs(count, inner=0.6):
    return [(WET, Sealing(inner, HAND, 0).sealed(WET))] * count


def test_a_grey_by_hand():
    """Channels of L 50: 0.1842; body 0.1842 / (0.5194 + 0.0866) = 0.3040; under a face of 0.6
    0.98·0.4·0.3040 / (1 - 0.1824) = 0.1457: L 116·∛0.1457 - 16 = 45.04."""
    assert Sealing(0.6, HAND, 0).sealed((50.0, 0.0, 0.0)) == pytest.approx((45.04, 0, 0), abs=0.02)


def test_without_a_pair_the_guess_speaks_and_much_is_unsure():
    found = sealing([])
    assert found.inner == pytest.approx(SEALED_INNER, abs=1e-3)
    assert found.spread[0] > 1.5
    assert found.sealed(WET)[0] < WET[0]


def test_each_pair_makes_it_surer_and_more_like_what_was_seen():
    found = [sealing(pairs(n)) for n in range(6)]
    inners, spreads = [one.inner for one in found], [one.spread[0] for one in found]
    assert inners == sorted(inners)
    assert inners[-1] == pytest.approx(0.6, abs=0.02)
    assert spreads == sorted(spreads, reverse=True)
    assert spreads[-1] > HAND[0]


@given(lab, st.integers(0, 5))
def test_there_and_back_is_the_same_colour(colour, count):
    found = sealing(pairs(count))
    back = found.wet(found.sealed(colour))
    assert all(abs(a - b) < 1e-6 for a, b in zip(back, colour, strict=True))


@given(st.floats(10, 90), share, share)
def test_a_face_that_throws_more_back_inside_looks_darker(lightness, one, other):
    low, high = sorted((one, other))
    grey = (lightness, 0.0, 0.0)
    assert Sealing(high, HAND, 0).sealed(grey)[0] <= Sealing(low, HAND, 0).sealed(grey)[0] + 1e-9


@given(lab)
def test_the_face_of_water_changes_nothing(colour):
    assert Sealing(INNER, HAND, 0).sealed(colour) == pytest.approx(colour, abs=1e-6)
