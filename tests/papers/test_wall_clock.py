"""The clock on the wall: minutes of the plan as a crew reads them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.papers.invented_plan import small_house

from farwall.facts.default_table import STARTS_AT
from farwall.facts.plan import Ground
from farwall.papers.wall_clock import plan_clock, wall_clock

MORNING = "2026-03-12T08:00:00-06:00"


@pytest.mark.parametrize(
    ("minutes", "us", "metric"),
    [(0, "8:00", "8:00"), (102, "9:42", "9:42"), (315, "1:15", "13:15"), (59.6, "9:00", "9:00")],
)
def test_minutes_become_the_local_time_by_hand(minutes: float, us: str, metric: str):
    assert wall_clock(MORNING, last_min=400, units="us").time(minutes) == us
    assert wall_clock(MORNING, last_min=400, units="metric").time(minutes) == metric


def test_half_days_are_named_when_a_time_could_mean_two():
    assert wall_clock(MORNING, last_min=800, units="us").time(0) == "8:00 am"
    assert wall_clock(MORNING, last_min=800, units="us").time(300) == "1:00 pm"
    night = "2026-03-12T19:00:00-06:00"
    assert wall_clock(night, last_min=60, units="us").time(0) == "7:00 pm"


def test_another_day_is_named():
    clock = wall_clock(MORNING, last_min=1600, units="us")
    assert clock.time(1500) == "Fri 9:00 am"
    assert wall_clock(MORNING, last_min=1600, units="metric").time(1500) == "Fri 9:00"


def test_a_time_of_another_day_names_its_half_even_on_a_plain_day():
    """A day on the slab needs no halves; of the next one nobody knows which 12:24 is meant."""
    clock = wall_clock(MORNING, last_min=400, units="us")
    assert clock.time(300) == "1:00"
    assert clock.time(984) == "Fri 12:24 am"
    assert clock.time(1704) == "Fri 12:24 pm"
    assert wall_clock(MORNING, last_min=400, units="metric").time(984) == "Fri 0:24"


def test_a_span_says_the_day_and_its_half_once():
    clock = wall_clock(MORNING, last_min=1600, units="us")
    assert clock.span(1500, 1510) == "Fri 9:00 to 9:10 am"
    assert clock.span(200, 260) == "11:20 am to 12:20 pm"
    assert clock.span(900, 1500) == "11:00 pm to Fri 9:00 am"
    assert wall_clock(MORNING, last_min=90, units="us").span(10, 20) == "8:10 to 8:20"


def test_a_span_within_one_minute_is_one_time():
    clock = wall_clock(MORNING, last_min=1600, units="us")
    assert clock.span(6.1, 6.4) == "8:06 am"
    assert clock.bare(6.1) == "8:06"


def test_a_stand_in_of_the_plan_is_no_day_either():
    """With a weather file a plan starts on a day of that file's year, which nobody set."""
    plan = small_house()
    start = Ground("starts_at", "2001-05-15T08:00:00-06:00", "", "guess", "no start was told")
    taken = replace(plan, starts_at="2001-05-15T08:00:00-06:00", grounds=(*plan.grounds, start))
    assert plan_clock(taken, "us").day() == "day not set"
    told = replace(taken, grounds=(*plan.grounds, replace(start, rank="measured here")))
    assert plan_clock(told, "us").day() == "Tuesday, May 15, 2001"


def test_a_start_that_nobody_set_names_no_day():
    clock = wall_clock(STARTS_AT, last_min=1600, units="metric")
    assert clock.day() == "day not set"
    assert clock.time(1500) == "day 2, 9:00"


def test_the_day_in_words():
    assert wall_clock(MORNING, last_min=60, units="us").day() == "Thursday, March 12, 2026"
    assert wall_clock(MORNING, last_min=60, units="metric").day() == "Thursday, 12 March 2026"


def test_a_plans_clock_reaches_to_its_last_wait():
    plan = small_house()
    assert not plan_clock(plan, "us").half_day_words
    late = replace(plan.clocks[-1], high_min=900.0)
    assert plan_clock(replace(plan, clocks=(late,)), "us").half_day_words


def test_moments_of_two_days_in_one_sentence_each_tell_day_and_half():
    """Beside `Tue 7:30 am` a bare `4:50` of the day before would be read as Tuesday's."""
    for units, before, after in (
        ("us", "Mon 4:50 pm", "Tue 7:30 am"), ("metric", "Mon 16:50", "Tue 7:30"),
    ):  # fmt: skip
        clock = wall_clock("2026-06-08T08:00:00-06:00", last_min=300, units=units)
        assert clock.times([530, 1410]) == [before, after]
    clock = wall_clock("2026-06-08T08:00:00-06:00", last_min=300, units="us")
    assert clock.times([60, 530]) == [clock.time(60), clock.time(530)]
