"""The formula written out is the library's, and keeps the laws of a difference."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.published.tables import table

from farwall.colour.ciede2000 import quick_de2000
from farwall.colour.difference import de2000

LABS = st.tuples(st.floats(0, 100), st.floats(-100, 100), st.floats(-100, 100))


@pytest.mark.parametrize("row", table("colour/ciede2000_sharma2005"), ids=lambda row: row["pair"])
def test_the_published_pair(row):
    one = [float(row[key]) for key in ("L1", "a1", "b1")]
    other = [float(row[key]) for key in ("L2", "a2", "b2")]
    assert float(quick_de2000(one, other)) == pytest.approx(float(row["dE00"]), abs=5e-5)


@given(LABS, LABS)
def test_either_way_round_is_the_same_and_a_colour_is_itself(one, other):
    there, back = float(quick_de2000(one, other)), float(quick_de2000(other, one))
    assert there == pytest.approx(back, abs=1e-6)
    assert there >= 0
    assert float(quick_de2000(one, one)) == pytest.approx(0, abs=1e-9)


def test_it_is_the_library_for_many_colours_at_once():
    dice = np.random.default_rng(5)
    one = dice.uniform((0, -90, -90), (100, 90, 90), (4000, 3))
    other = one + dice.normal(0, 12, one.shape)
    assert quick_de2000(one, other) == pytest.approx(de2000(one, other), abs=1e-6)
