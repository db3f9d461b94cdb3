"""What is told keeps the order of what is weighed, and is no more than was met."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.marks.trust import MET, SURE, likelihood


@given(st.floats(0, 1), st.floats(0, 1))
def test_the_order_stays(one, other):
    low, high = sorted((one, other))
    assert 0 <= likelihood(low) <= likelihood(high) <= 1


def test_at_the_bins_it_is_what_was_met():
    assert [likelihood(one) for one in SURE] == list(MET)
    assert likelihood(0.95) < 0.6
