"""Houses placed: ranges, locks, days late."""

from dataclasses import replace

from tests.days.shop import typical

from farwall.days.calendar import calendar
from farwall.days.check import check_days
from farwall.days.document import document
from farwall.days.nouns import Away


def test_ends_lie_in_their_ranges():
    house = calendar(typical()).houses[0]
    for step in house.steps:
        assert step.end_low_min <= step.end_min
        assert step.end_high_min is None or step.end_min <= step.end_high_min
    assert house.steps[-1].end_low_min < house.steps[-1].end_high_min


def test_the_lock_reaches_from_cleaning_to_finish_and_a_day_by_hand():
    house = calendar(typical()).houses[0]
    finish = next(step for step in house.steps if step.id == "finish")
    assert house.lock_start_min == 7.5 * 60
    assert house.lock_end_min == finish.end_min + 1440
    assert house.lock_end_high_min == finish.end_high_min + 1440


def test_days_late_are_told():
    question = typical()
    due = replace(question.houses[0], due_day=2)
    assert calendar(replace(question, houses=(due,))).houses[0].late_days == 2


def test_another_trade_moves_a_house_out_of_its_days():
    shut = replace(typical(), away=(Away("house", "plumber", 1),))
    house = calendar(shut).houses[0]
    assert house.lock_start_min >= 2 * 1440


def test_no_trade_is_inside_before_hand_over_and_no_checker_finds_one():
    """Of a large house the hand-over comes days after its lock: a trade before it moves the house.

    A law over the days of a plumber: what the calendar lets be, its own checker lets be.
    """
    question = typical()
    large = replace(question.houses[0], area_m2=2.2 * question.houses[0].area_m2, free_from_day=1)
    apart = 0
    for day in range(8, 18):
        shut = (Away("house", "plumber", day),)
        found = calendar(replace(question, houses=(large,), away=shut))
        (house,) = found.houses
        assert check_days(document(found)) == []
        assert (day + 1) * 1440 <= house.lock_start_min or day * 1440 >= house.steps[-1].end_min
        apart += house.lock_end_min < house.steps[-1].end_min
    assert apart  # some of them had their hand-over after the lock


def test_ends_and_waits_are_minutes_of_the_same_clock_by_hand():
    """By hand: cleaning takes 8.2 h of two people, 5.6 when all goes well, 10.8 when ill. From 7:30
    on Monday: 15:45 by the quarter of an hour, 13:15, and Tuesday 9:00, for the day ends at 17:00.
    Masking may begin when the floor is dry, six hours later on Monday, and begins on Tuesday."""
    clean, mask, *_ = calendar(typical()).houses[0].steps
    assert clean.end_min == 15.75 * 60
    assert clean.end_low_min == 13.25 * 60
    assert clean.end_high_min == 1440 + 9 * 60
    assert clean.ready_min is None
    assert mask.ready_min == 21.75 * 60
    assert mask.start_min == 1440 + 7.5 * 60
