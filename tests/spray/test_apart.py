"""Two on one floor: how near they come, against plain sampling, and who waits for whom."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Unanswerable
from farwall.spray.apart import PASS_M, least_gap_m, timed, walks_apart

PACE = 40.0
places = st.tuples(st.floats(-9, 9), st.floats(-9, 9))
ways = st.lists(places, min_size=1, max_size=4)


def sampled_m(one, two):
    start = min(one[0][2], two[0][2])
    end = max(one[-1][2], two[-1][2])
    moments = np.linspace(start, end, 4001)
    at = [
        [np.interp(moments, [t for *_, t in path], [p[i] for p in path]) for i in (0, 1)]
        for path in (one, two)
    ]
    return float(np.hypot(at[0][0] - at[1][0], at[0][1] - at[1][1]).min())


@given(ways, ways, st.floats(0, 3), st.floats(0.1, 4))
def test_the_least_gap_is_that_of_many_moments(one, two, later, minutes):
    first, second = timed(one, 0.0, 2.0), timed(two, later, minutes)
    exact, sampled = least_gap_m(first, second), sampled_m(first, second)
    assert exact <= sampled + 1e-9
    assert sampled - exact <= 0.3


def test_two_who_cross_by_hand():
    """By hand: 4 m along x and 4 m along y in a minute each, crossing in the middle at once."""
    one, two = timed([(-2, 0), (2, 0)], 0.0, 1.0), timed([(0, -2), (0, 2)], 0.0, 1.0)
    assert least_gap_m(one, two) == pytest.approx(0.0, abs=1e-9)
    late = timed([(0, -2), (0, 2)], 0.5, 1.0)
    assert least_gap_m(one, late) == pytest.approx(2 / 2**0.5)


def test_one_waits_at_a_door_that_both_go_through():
    door = (0.0, 0.0)
    one, two = walks_apart(
        (((-3.0, 1.0), door, (3.0, 1.0)), ((-3.0, -1.0), door, (3.0, -1.0))), 5.0, PACE
    )
    assert least_gap_m(one, two) >= PASS_M
    assert min(one[0][2], two[0][2]) == 5.0
    assert max(one[0][2], two[0][2]) > 5.0


def test_two_who_change_places_in_a_passage_cannot_get_by():
    with pytest.raises(Unanswerable, match="cannot get by one another"):
        walks_apart((((0.0, 0.0), (5.0, 0.0)), ((5.0, 0.0), (0.0, 0.0))), 0.0, PACE)


@given(ways, ways)
def test_whoever_gets_by_keeps_apart(one, two):
    try:
        both = walks_apart((one, two), 1.0, PACE)
    except Unanswerable:
        return
    assert least_gap_m(*both) >= PASS_M
