"""CIEDE2000: the laws of a distance that it keeps, and opposite hues."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.difference import de2000

LAB = st.tuples(st.floats(0, 100), st.floats(-100, 100), st.floats(-100, 100))


@given(LAB)
def test_a_colour_lies_nowhere_from_itself(lab):
    assert de2000(lab, lab) < 1e-6


@given(LAB, LAB)
def test_either_order_gives_the_same(one, other):
    assert abs(de2000(one, other) - de2000(other, one)) < 1e-6 * (1 + de2000(one, other))


def test_hues_that_are_opposite_to_the_last_bit_take_one_side():
    """Pair 14 of the published table: the last bit of an angle must not choose."""
    fixed = (50.0, -1.0, 2.0)
    near = [(50.0, 1.0 + shift, -2.0) for shift in (0.0, 1e-15, -1e-15, 1e-13, -1e-13)]
    found = de2000(np.array([fixed] * len(near)), np.array(near))
    assert np.ptp(found) < 1e-6


def test_many_at_once():
    one = np.array([[50.0, 2.0, 3.0], [20.0, 0.0, 0.0]])
    assert de2000(one, one[::-1]).shape == (2,)
    assert de2000(one, [50.0, 2.0, 3.0])[0] < 1e-9
