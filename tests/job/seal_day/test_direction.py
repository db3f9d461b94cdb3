"""Directions of bands and the angle between two of them."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity

from farwall.job.seal_day.direction import apart_deg, mean_direction_deg

BAND = shapely.box(0, 0, 5, 1)


@given(st.floats(0, 179.9), st.floats(0.5, 20))
def test_a_turned_band_has_the_angle_by_which_it_was_turned(angle, size):
    turned = affinity.rotate(affinity.scale(BAND, size, size), angle)
    assert apart_deg(mean_direction_deg([turned]), angle) == pytest.approx(0, abs=1e-6)


def test_neighbours_of_180_degrees_average_to_it_and_not_to_90():
    """By hand: 179° and 1° lie 2° apart; their mean is 0°, not 90°."""
    both = [affinity.rotate(BAND, 1), affinity.rotate(BAND, 179)]
    assert apart_deg(mean_direction_deg(both), 0) == pytest.approx(0, abs=1e-6)


def test_a_long_band_outweighs_a_stub():
    stub = affinity.rotate(shapely.box(0, 0, 1.1, 1), 90)
    assert apart_deg(mean_direction_deg([BAND, stub]), 0) < 5


def test_squares_have_no_direction():
    assert mean_direction_deg([shapely.box(0, 0, 1, 1)]) is None
    assert apart_deg(None, 3.0) is None


@given(st.floats(0, 180), st.floats(0, 180))
def test_the_angle_between_two_directions_is_the_same_either_way_and_at_most_90(one, other):
    assert apart_deg(one, other) == pytest.approx(apart_deg(other, one))
    assert 0 <= apart_deg(one, other) <= 90
