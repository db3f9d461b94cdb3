"""Litres and drums of a wash day."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.rinse_water import drums_for, rinse_water
from farwall.units import KG_PER_LB, L_PER_US_GAL, M2_PER_FT2

FLOOR = 1180 * M2_PER_FT2


@pytest.mark.common_practice
def test_a_floor_of_1180_ft2_asks_142_gal_and_three_drums_with_a_spare():
    """By hand: 1,180 x 12 / 100 = 141.6 gal; a drum of 55 gal at 85 % holds 46.75 gal: 3.03."""
    water = rinse_water(FLOOR).rinses_l
    gallons = [one / L_PER_US_GAL for one in (water.low, water.likely, water.high)]
    assert gallons == pytest.approx([94.4, 141.6, 236.0])
    assert drums_for(water.likely).full == 3
    assert drums_for(water.likely).count == 4
    assert drums_for(46.75 * 3.2 * L_PER_US_GAL).full == 4


@pytest.mark.common_practice
def test_a_full_drum_weighs_about_400_lb():
    """By hand: 46.75 gal are 176.97 kg, and 9.98 kg the drum: 186.95 kg, 412 lb."""
    drum = drums_for(1.0)
    assert drum.full_kg == pytest.approx(186.95, abs=0.01)
    assert drum.full_kg / KG_PER_LB == pytest.approx(412.2, abs=0.1)
    assert drum.under_kg_m2 == pytest.approx(707.6, abs=0.5)


def test_a_floor_of_195_kg_m2_wants_a_square_of_98_cm_for_each():
    """By hand: 186.95 / 195 = 0.9587 m², its root 0.979 m."""
    assert drums_for(1.0, floor_kg_m2=195).square_m == pytest.approx(0.979, abs=0.001)


def test_water_as_told_is_no_range():
    water = rinse_water(10.0, l_per_m2=5.0)
    assert (water.rinses_l.low, water.rinses_l.high) == (50.0, 50.0)
    assert water.all_l.likely == pytest.approx(60.0)


@given(st.floats(0.1, 400), st.floats(0.1, 400))
def test_floors_add_up(a, b):
    whole = rinse_water(a + b).all_l
    parts = rinse_water(a).all_l, rinse_water(b).all_l
    assert whole.likely == pytest.approx(sum(one.likely for one in parts))


@given(st.floats(0, 5000), st.floats(0, 500))
def test_more_water_never_asks_fewer_drums(litres, more):
    assert drums_for(litres + more).full >= drums_for(litres).full
