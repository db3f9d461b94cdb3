"""What an hour allows, how fast waits run, and what a day may cost."""

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from tests.days.shop import MONDAY
from tests.strategies import air

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.day import HourAtSlab
from farwall.days.hours import (
    NEAR_DAYS,
    ahead_from,
    chances_of,
    hour_ahead,
    may_seal,
    mild,
    with_rain,
)
from farwall.days.nouns import MILD_HOUR
from farwall.units import c_from_f


def test_the_mild_day_runs_at_a_pace_of_one():
    hour = hour_ahead(REFERENCE)
    assert hour.film == pytest.approx(1.0)
    assert hour.slab == pytest.approx(1.0)
    assert hour.coat
    assert hour.seal


@given(air.conditions, air.rh_percent)
def test_damper_air_never_hurries_a_wait(now, damper):
    damp = replace(now, rh_percent=max(damper, now.rh_percent))
    assert hour_ahead(damp).film <= hour_ahead(now).film + 1e-9
    assert hour_ahead(damp).slab <= hour_ahead(now).slab + 1e-9


@pytest.mark.parametrize(
    ("now", "may"),
    [
        (Conditions(), True),
        (Conditions(surface_c=c_from_f(49)), False),
        (Conditions(surface_c=c_from_f(91)), False),
        (Conditions(rh_percent=86), False),
        (Conditions(surface_c=12, air_c=20, rh_percent=60), False),
    ],
    ids=["mild", "cold", "hot", "damp", "at the dew point"],
)
def test_sealer_goes_down_warm_dry_and_over_the_dew_point(now, may):
    assert may_seal(now) is may


def test_another_rule_for_sealer_can_be_handed_over_by_hand():
    """Only the fourth hour of the day may be sealed in."""
    hours = [HourAtSlab(MONDAY + timedelta(hours=n), REFERENCE, {}) for n in range(24)]
    told = ahead_from(
        hours, begins=MONDAY, days=1, seal_rule=lambda all_of: [n == 3 for n in range(len(all_of))]
    )
    assert [one.seal for one in told.hours].index(True) == 3
    assert sum(one.seal for one in told.hours) == 1
    assert all(one.coat for one in told.hours)


def test_the_days_begin_where_they_are_told_to_in_longer_hours():
    hours = [
        HourAtSlab(
            MONDAY + timedelta(hours=n), replace(REFERENCE, rh_percent=90 if n < 0 else 40), {}
        )
        for n in range(-48, 72)
    ]
    told = ahead_from(hours, begins=MONDAY, days=2)
    assert told.days == 2
    assert all(one.seal for one in told.hours)
    assert 0 < told.seal_lost[0] < 1


def test_rain_shuts_a_day_and_only_that_day():
    rained = with_rain(mild(MONDAY, 3), [1])
    assert not any(one.coat or one.seal for one in rained.hours[24:48])
    assert rained.hours[:24] == rained.hours[48:] == (MILD_HOUR,) * 24


def test_the_chance_of_a_day_is_counted_from_the_days_near_it_by_hand():
    """Of the 21 days around day 0 seven are too cold all day: a third."""
    cold = replace(MILD_HOUR, coat=False)
    days = [cold if n < 7 else MILD_HOUR for n in range(2 * NEAR_DAYS + 1)]
    hours = [one for one in days for _ in range(24)]
    told = chances_of(hours, first=24 * NEAR_DAYS, days=1)
    assert told.coat == (pytest.approx(7 / 21),)
    assert told.seal == (0.0,)
