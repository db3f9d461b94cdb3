"""The scale of the tape of days."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.days_scale import Week, mondays, wedge_outline

MONDAY = datetime.fromisoformat("2026-06-08T00:00:00-06:00")
WEEK = Week(MONDAY, 560.0)
minutes = st.floats(-2000, 12_000)


@given(minutes, minutes)
def test_later_never_lies_further_left_and_all_lies_on_the_tape(one, other):
    early, late = (WEEK.x(MONDAY + timedelta(minutes=m)) for m in sorted((one, other)))
    assert 0 <= early <= late + 1e-9 <= 560 + 1e-6


def test_ends_lie_at_the_ends_and_a_weekend_day_is_narrower_by_hand():
    """560 is shared by five days and two of three tenths: a day is 100, Saturday 30."""
    assert WEEK.x(MONDAY) == 0
    assert WEEK.x(MONDAY + timedelta(days=1)) == pytest.approx(100)
    assert WEEK.x(MONDAY + timedelta(days=6)) == pytest.approx(530)
    assert WEEK.x(MONDAY + timedelta(days=7)) == 560


def test_a_wedge_is_widest_at_its_likeliest_and_cut_at_the_end_of_the_week():
    points = wedge_outline(WEEK, MONDAY, MONDAY + timedelta(days=3), MONDAY + timedelta(days=9))
    heights = [round(height, 3) for _, height in points]
    assert heights == [0.0, 1.0, round(2 / 6, 3)]
    assert points[-1][0] == 560


def test_a_wait_with_no_width_has_no_shape_that_fails():
    assert wedge_outline(WEEK, MONDAY, MONDAY, MONDAY)


def test_the_weeks_of_a_house_begin_on_mondays():
    step = {"starts_at": "2026-06-12T08:00:00-06:00", "ends_at": "2026-06-15T09:00:00-06:00"}
    assert mondays([{"steps": [step]}]) == [MONDAY, MONDAY + timedelta(days=7)]
