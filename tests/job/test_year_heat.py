"""Heat for a year: it holds what it is meant to hold, and none is given where none is needed."""

from datetime import UTC, datetime

import pytest

from farwall.air.day import hours_at_slab
from farwall.air.house import House
from farwall.air.weather import Weather
from farwall.job.year_heat import WARM_C, heated

BEFORE_H = 240


def steady(air_c, hours=3 * 730):
    count = hours + BEFORE_H
    return Weather(datetime(2027, 1, 1, tzinfo=UTC), (air_c,) * count, (60.0,) * count,
                   (101_000.0,) * count, (3.0,) * count)  # fmt: skip


def test_a_cold_month_is_held_at_the_wanted_warmth():
    hours = heated(steady(5.0), before_h=BEFORE_H, ground_c=10.0)
    assert len(hours) == 3 * 730
    for start in range(0, 3 * 730, 730):
        month = [one.conditions.air_c for one in hours[start : start + 730]]
        assert sum(month) / 730 == pytest.approx(WARM_C, abs=0.6)


def test_a_warm_month_is_left_alone():
    told = steady(24.0, 730)
    plain = hours_at_slab(told, house=House(), before_h=BEFORE_H, ground_c=20.0)
    assert heated(told, before_h=BEFORE_H, ground_c=20.0) == plain


def test_a_heater_has_its_limit():
    hours = heated(steady(-80.0, 730), before_h=BEFORE_H, ground_c=0.0)
    assert hours[-1].conditions.air_c < WARM_C - 5
