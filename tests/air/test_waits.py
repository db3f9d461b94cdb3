"""The waits and their paces: one on the mild day, laws of any air, and courses by hand."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.air import conditions

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.day import HourAtSlab
from farwall.air.film import film_drying, wet_film_mm
from farwall.air.waits import (
    DRY_DOWN,
    NEUTRALISE,
    RECOAT,
    SEALER,
    WAITS,
    WATCHABLE,
    carried,
    steady,
    through,
    worth_min,
)

START = datetime(2031, 5, 3, 8, 20, tzinfo=UTC)
ALL = pytest.mark.parametrize("wait", WAITS.values(), ids=lambda one: one.name)


def hours(*states):
    first = START.replace(minute=0)
    return tuple(HourAtSlab(first + timedelta(hours=n), one, {}) for n, one in enumerate(states))


@ALL
def test_a_minute_of_the_mild_day_counts_as_one(wait):
    assert wait.pace(REFERENCE) == pytest.approx(1.0)
    assert steady(wait, REFERENCE).until(wait.usual_min) == pytest.approx(wait.usual_min)


def test_every_wait_can_be_watched():
    assert set(WATCHABLE) == {"open time", *WAITS}
    assert {RECOAT.name, NEUTRALISE.name, DRY_DOWN.name, SEALER.name} == set(WAITS)


@ALL
@given(conditions, st.floats(0, 40), st.floats(0, 3))
def test_damper_air_never_hurries_and_wind_never_holds_up(wait, now, damper, faster):
    pace = wait.pace(now)
    assert pace >= 0
    damp = replace(now, rh_percent=min(now.rh_percent + damper, 100.0))
    assert wait.pace(damp) <= pace + 1e-9
    windy = replace(now, air_speed_m_s=min(now.air_speed_m_s + faster, 40.0))
    assert wait.pace(windy) >= pace - 1e-9


def test_a_film_in_constant_air_dries_as_its_depth_over_what_leaves():
    """The analytic answer, t = h/E: the wait of a coat keeps the ratio of film dryings exactly."""
    dry_air = Conditions(24.0, 26.0, 30.0, 0.5)
    ratios = [
        film_drying(now, film_mm=film_mm, relation="uno").minutes
        for now, film_mm in ((REFERENCE, 0.2), (dry_air, 0.3))
    ]
    waits = [
        steady(RECOAT, now).until(worth_min(RECOAT, m2_per_l=1 / film_mm))
        for now, film_mm in ((REFERENCE, 0.2), (dry_air, 0.3))
    ]
    assert waits[1] / waits[0] == pytest.approx(ratios[1] / ratios[0], rel=1e-9)
    assert wet_film_mm(m2_per_l=5.0) == pytest.approx(0.2)


def test_hours_that_are_alike_give_the_steady_course():
    now = Conditions(18.0, 19.0, 55.0, 0.2)
    same, alike = steady(RECOAT, now), through(RECOAT, hours(*[now] * 5), begins=START)
    for worth in (5.0, 60.0, 200.0):
        assert alike.until(worth) == pytest.approx(same.until(worth))
    assert alike.after(90.0) == pytest.approx(same.after(90.0))


def test_a_damp_hour_holds_it_up_by_hand():
    """By hand: 40 min of a mild hour count 40, an hour of dew nothing, then 20 of 60 are wanted."""
    dew = Conditions(10.0, 21.0, 90.0, 0.1)
    assert RECOAT.pace(dew) == 0
    course = through(RECOAT, hours(REFERENCE, dew, REFERENCE), begins=START)
    assert course.until(60.0) == pytest.approx(40 + 60 + 20)
    assert course.until(40.0) == pytest.approx(40)
    assert course.after(100.0) == pytest.approx(40)


def test_a_wait_that_does_not_end_within_its_day_has_no_end():
    dew = Conditions(10.0, 21.0, 90.0, 0.1)
    assert steady(RECOAT, dew).until(1.0) is None
    assert through(RECOAT, hours(REFERENCE, dew), begins=START).until(60.0) is None


def test_worth_goes_with_the_film_only_where_there_is_one():
    usual = worth_min(RECOAT, m2_per_l=1 / 0.2037)
    assert usual == pytest.approx(120, rel=1e-3)
    assert worth_min(RECOAT, m2_per_l=2 / 0.2037) == pytest.approx(usual / 2)
    assert worth_min(DRY_DOWN, m2_per_l=3.0) == DRY_DOWN.usual_min


@given(st.lists(conditions, min_size=2, max_size=6), st.floats(1, 300), st.floats(1, 300))
def test_more_to_wait_for_never_ends_sooner(states, worth, more):
    course = through(RECOAT, hours(*states), begins=START)
    short, long = course.until(worth), course.until(worth + more)
    assert long is None or (short is not None and short <= long)


def test_what_was_seen_is_carried_over_by_the_root_of_the_paces_by_hand():
    """By hand: seen at pace 1, asked at 4: the share doubles, so the wait halves, not quarters."""
    assert carried(RECOAT, 1.2, pace_seen=1.0, pace_asked=4.0) == pytest.approx(2.4)
    assert carried(RECOAT, 1.2, pace_seen=0.7, pace_asked=0.7) == pytest.approx(1.2)
    assert carried(DRY_DOWN, 1.2, pace_seen=1.0, pace_asked=4.0) == pytest.approx(1.2)


@pytest.mark.parametrize(("seen", "asked"), [(0.0, 1.0), (1.0, 0.0)])
def test_air_that_takes_nothing_carries_nothing_over(seen, asked):
    assert carried(RECOAT, 1.2, pace_seen=seen, pace_asked=asked) == 1.2
