"""When washing begins, how much is wetted at once, how long it takes."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.conditions import Conditions
from farwall.job.acid_day.washing.noun import Ends
from farwall.job.acid_day.washing.times import (
    DWELL_MIN,
    IN_HAND,
    MAN_HOUR_M2,
    WET_M2_MIN,
    Pace,
    dries_min,
    in_working_day,
    scaled,
    summed,
    wet_at_once,
)
from farwall.units import M2_PER_FT2

EIGHT = datetime(2026, 6, 8, 8, 0, tzinfo=UTC)
USUAL = Pace.of(None, None)


@pytest.mark.parametrize(
    ("free", "lasts", "begins"),
    [
        (60, 120, 60),  # 9:00, done by 11:00
        (8 * 60, 120, 8 * 60),  # 16:00, done by 18:00
        (9 * 60, 120, 23.5 * 60),  # 17:00 would end at 19:00: 7:30 next morning
        (14 * 60, 60, 23.5 * 60),  # 22:00
        (22 * 60, 60, 23.5 * 60),  # 6:00 waits for 7:30
        (23.5 * 60, 30 * 60, 23.5 * 60),  # longer than a day: begun in a morning
        (None, 60, None),
    ],
)
def test_nobody_washes_at_night(free, lasts, begins):
    """By hand, from a start at 8:00; work from 7:30 to 18:30."""
    assert in_working_day(free, EIGHT, lasts) == begins


@given(st.floats(11, 600), st.floats(0.5, 200))
def test_what_is_wetted_is_taken_up_in_half_the_time_to_dry(dries, area):
    scrub, rinse = wet_at_once(dries, USUAL, area)
    up = scrub / WET_M2_MIN + DWELL_MIN + scrub / USUAL.scrub.likely + scrub / USUAL.vacuum.likely
    assert up <= dries * IN_HAND + 1e-6 or scrub == pytest.approx(min(1.0, area))
    assert rinse / WET_M2_MIN + rinse / USUAL.vacuum.likely <= max(dries * IN_HAND, 0.5) + 1e-6
    assert scrub <= rinse <= area


@given(st.floats(20, 300), st.floats(1.1, 3))
def test_a_quicker_vacuum_never_means_less_floor_at_once(dries, times):
    slow, quick = (wet_at_once(dries, Pace.of(1.0, 2.0 * n), 500.0) for n in (1, times))
    assert quick[0] >= slow[0]
    assert quick[1] >= slow[1]


def test_a_hot_dry_draught_leaves_less_time():
    mild = dries_min(Conditions(21.0, 21.0, 50.0, 0.1))
    hot = dries_min(Conditions(30.0, 30.0, 20.0, 1.0))
    assert 0 < hot < mild


def test_where_it_does_not_dry_the_whole_room_may_be_wet():
    assert dries_min(Conditions(5.0, 25.0, 100.0, 0.1)) is None
    assert wet_at_once(None, USUAL, 30.0) == (30.0, 30.0)


@pytest.mark.common_practice
def test_1180_ft2_are_thirteen_hours_of_one():
    """By hand: 1,180 / 90 = 13.1; 7.9 at best, 23.6 at worst."""
    found = scaled(1180 * M2_PER_FT2, MAN_HOUR_M2)
    assert (found.low, found.likely, found.high) == pytest.approx((7.87, 13.11, 23.6), abs=0.01)


def test_a_sum_has_no_end_where_one_has_none():
    assert summed([Ends(1, 2, None), Ends(1, 1, 1)]) == Ends(2, 3, None)
