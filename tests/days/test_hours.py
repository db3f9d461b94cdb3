"""What an hour allows, how fast waits run, and what a day may cost."""

from dataclasses import replace

import pytest
from hypothesis import given
from tests.days.shop import MONDAY
from tests.strategies import air

from farwall.air.conditions import REFERENCE, Conditions
from farwall.days.hours import NEAR_DAYS, chances_of, hour_ahead, may_seal, mild, with_rain
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


def test_another_rule_for_sealer_can_be_handed_over():
    assert not hour_ahead(REFERENCE, seal_rule=lambda _: False).seal


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
