"""What a wet face mirrors, held to a published table."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.colour.marks.mirror import brewster_deg, mirrored_share


@pytest.mark.parametrize(("index", "told"), [(1.333, 53), (1.515, 57), (2.417, 67.5)])
def test_brewster_angles_match_iupac_gold_book_bt07336(index, told):
    """Air on water, glass and diamond; told to a degree, the last to half of one."""
    assert brewster_deg(index) == pytest.approx(told, abs=0.5)


@given(st.floats(1.1, 3.0))
def test_at_brewsters_angle_nothing_swinging_along_is_mirrored(index):
    across, along = mirrored_share(brewster_deg(index), index)
    assert along == pytest.approx(0, abs=1e-12)
    assert across > 0.001


@given(st.floats(0, 89), st.floats(0.01, 1))
def test_the_flatter_the_view_the_more_is_mirrored(angle, more):
    def mean(one):
        return sum(mirrored_share(one)) / 2

    assert mean(angle + more) > mean(angle) - 1e-12


def test_straight_down_water_mirrors_two_per_cent_and_along_it_everything():
    assert mirrored_share(0.0) == pytest.approx((0.0204, 0.0204), abs=0.0001)
    assert mirrored_share(90.0) == pytest.approx((1.0, 1.0), abs=1e-6)
    with pytest.raises(ValueError, match="no angle"):
        mirrored_share(91.0)
