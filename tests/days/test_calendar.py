"""Houses placed: ranges, locks, days late."""

from dataclasses import replace

from tests.days.shop import typical

from farwall.days.calendar import calendar
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
