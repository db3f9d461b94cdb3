"""What an hour allows, how fast waits run, and what a day may cost."""

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from tests.days.shop import MONDAY, typical
from tests.strategies import air

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.day import HourAtSlab
from farwall.air.sealers import limits_of
from farwall.air.waits import DRY_DOWN, NEUTRALISE, RECOAT, SEALER
from farwall.days.hours import (
    NEAR_DAYS,
    ahead_from,
    chances_of,
    hour_ahead,
    mild,
    rained_on,
    seal_hours,
    with_rain,
)
from farwall.days.nouns import MILD_HOUR, House
from farwall.facts.sealer import Sealer
from farwall.units import c_from_f


def test_the_mild_day_runs_at_a_pace_of_one():
    hour = hour_ahead(REFERENCE)
    assert hour.film == pytest.approx(1.0)
    assert hour.slab == pytest.approx(1.0)
    assert hour.sealer == pytest.approx(1.0)
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
    assert hour_ahead(now).seal is may


def test_the_jobs_own_sealer_decides_by_its_label():
    now = Conditions(surface_c=c_from_f(52), air_c=c_from_f(52))
    assert hour_ahead(now).seal
    assert not hour_ahead(now, limits_of(Sealer(type="epoxy"))).seal
    assert hour_ahead(now, limits_of(Sealer(type="epoxy", least_slab_c=c_from_f(45)))).seal


@given(air.conditions)
def test_the_paces_are_those_under_the_clocks(now):
    hour = hour_ahead(now)
    assert (hour.film, hour.slab, hour.sealer) == (
        RECOAT.pace(now), DRY_DOWN.pace(now), SEALER.pace(now)
    )  # fmt: skip
    assert RECOAT.pace is NEUTRALISE.pace


def day(*states, first=0):
    return [HourAtSlab(MONDAY + timedelta(hours=first + n), one, {}) for n, one in
            enumerate(states)]  # fmt: skip


def test_the_night_to_come_and_a_slab_that_cools_shut_the_hours_before_by_hand():
    """Warm to 15:00, then colder than any sealer bears: six hours before are shut too."""
    cold = replace(REFERENCE, surface_c=2.0, air_c=2.0)
    may = seal_hours(day(*[REFERENCE] * 15, *[cold] * 9), limits_of(Sealer(type="water acrylic")))
    assert may == [True] * 9 + [False] * 15


def test_a_room_in_the_sun_that_grows_too_warm_shuts_hours_and_hurries_nothing():
    hot = replace(REFERENCE, surface_c=c_from_f(90))
    shade = day(*[REFERENCE] * 48)
    sun = day(*[REFERENCE] * 12, hot, *[REFERENCE] * 35)
    plain = ahead_from(shade, begins=MONDAY, days=2)
    lit = ahead_from(shade, begins=MONDAY, days=2, sunlit=[sun])
    assert [n for n, one in enumerate(lit.hours) if not one.coat] == [12]
    assert [n for n, one in enumerate(lit.hours) if one.seal < plain.hours[n].seal] == [12]
    assert [one.slab for one in lit.hours] == [one.slab for one in plain.hours]


def test_rain_falls_on_the_hours_of_every_house():
    own = House("own", "Own", 100.0, ahead=mild(MONDAY, 3))
    rained = rained_on(replace(typical(), houses=(own,)), [1])
    for ahead in (rained.ahead, rained.houses[0].ahead):
        assert not any(one.coat for one in ahead.hours[24:48])


def test_the_days_begin_where_they_are_told_to_in_longer_hours():
    hours = [
        HourAtSlab(
            MONDAY + timedelta(hours=n), replace(REFERENCE, rh_percent=90 if n < 0 else 40), {}
        )
        for n in range(-48, 72)
    ]
    told = ahead_from(hours, begins=MONDAY, days=2)
    assert told.days == 2
    # Told hours end with the second day, so its last ones are judged by those that are known.
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


@pytest.mark.parametrize(
    ("fine", "lost"),
    [
        ((9, 10, 11), False),
        ((8, 9, 10), False),
        ((14, 15, 16), False),
        ((15, 16, 17), True),
        ((5, 6, 7, 8, 9), True),
        ((9, 10, 12, 13, 15, 16), True),
        ((), True),
        (range(24), False),
    ],
)
def test_a_day_is_lost_without_three_hours_on_end_between_eight_and_five_by_hand(fine, lost):
    """By hand: only whole hours from 8:00 to 17:00 count, and three must lie together."""
    hours = [replace(MILD_HOUR, coat=n in fine, seal=n not in fine) for n in range(24)]
    told = chances_of(hours, first=0, days=1)
    assert told.coat == (float(lost),)


def test_days_of_which_a_part_alone_is_told_count_for_no_chance_by_hand():
    """By hand: the last day has ten of its hours, all cold, and is left out: one of two is lost."""
    cold = replace(MILD_HOUR, coat=False)
    hours = [*[cold] * 24, *[MILD_HOUR] * 24, *[cold] * 10]
    assert chances_of(hours, first=0, days=1).coat == (0.5,)
    assert chances_of(hours[12:], first=-12, days=1).coat == (0.0,)
