"""The ways of a house: what they take, what they cost."""

from dataclasses import replace

import pytest
from tests.days.shop import MONDAY, shop, typical

from farwall.days.columns import LATE_DAY, columns, crew_change
from farwall.days.hours import mild
from farwall.days.nouns import Away, Before, DayCrew


def test_the_first_way_of_a_typical_house_takes_the_half_days_of_a_mild_week_by_hand():
    """Clean and mask Monday, Tuesday; rinse Wednesday; sealer from Thursday afternoon; Friday."""
    first = min(columns(typical(), holds=((0, 0),)), key=lambda one: one.start)
    assert first.at == {0, 1, 2, 3, 4, 5, 7, 8, 9}
    assert first.fresh == {2, 3}
    assert first.sprays == {1}
    assert first.cost_days == 5


def test_a_day_late_costs_ten_days_of_waiting():
    question = typical()
    house = replace(question.houses[0], due_day=2)
    late = min(columns(replace(question, houses=(house,))), key=lambda one: one.cost_days)
    assert late.cost_days == 5 + 2 * LATE_DAY


def test_no_way_begins_before_the_house_is_free():
    question = typical()
    house = replace(question.houses[0], free_from_day=9)
    assert min(one.start for one in columns(replace(question, houses=(house,)))) >= 9 * 96


def test_no_way_has_another_trade_inside_its_lock():
    """The lock of the first way reaches from Monday to Saturday at 9 or so."""
    question = typical()
    for day in range(7):
        shut = replace(question, away=(Away("house", "plumber", day),))
        first = min(columns(shut, holds=((0, 0),)), key=lambda one: one.start)
        assert (first.start == 30) == (day == 6)


def test_moving_costs_by_the_days_moved():
    question = typical()
    plain = min(columns(question), key=lambda one: one.cost_days)
    starts = {"clean": 0.0, "mask": 2 * 1440.0}
    held = replace(question, before={"house": Before("crew 1", starts)})
    told = min((one for one in columns(held) if one.start == plain.start),
               key=lambda one: one.cost_days)  # fmt: skip
    assert told.cost_days - plain.cost_days == pytest.approx(0.4)


def test_a_chance_of_losing_a_day_costs_its_share():
    days = 40
    wet = replace(mild(MONDAY, days), coat_lost=(0.5,) * days, seal_lost=(0.0,) * days)
    risky = min(columns(typical(wet)), key=lambda one: one.cost_days)
    assert risky.cost_days == pytest.approx(5.5)


def test_another_crew_than_before_costs():
    question = replace(shop(1, crews=2), before={"house-1": Before("crew 1", {})})
    house = question.houses[0]
    assert crew_change(question, house, DayCrew("crew 1")) == 0
    assert crew_change(question, house, DayCrew("crew 2")) > 0


def test_a_chance_of_losing_a_day_for_sealer_costs_its_share_by_hand():
    """By hand: sealer goes down on Thursday and on Friday: one in two on each keeps a quarter."""
    days = 40
    wet = replace(mild(MONDAY, days), coat_lost=(0.0,) * days, seal_lost=(0.5,) * days)
    first = min(columns(typical(wet), holds=((0, 0),)), key=lambda one: one.start)
    assert first.cost_days == pytest.approx(5 + 0.75)


def test_ways_begin_in_the_morning_or_at_noon_of_working_days():
    """By hand: 7:30 is slot 30 of 96, noon slot 48."""
    starts = {one.start for one in columns(typical())}
    assert {start % 96 for start in starts} == {30, 48}
    assert {start // 96 % 7 for start in starts} == set(range(5))
