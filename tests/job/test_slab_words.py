"""What is said beside a plan of the slab and the weather."""

from datetime import datetime, timedelta

import pytest
from tests.spray.hand_floors import job, row

from farwall.air.day import STATION
from farwall.air.weather import Forecast
from farwall.facts.defaults import settle
from farwall.facts.job import Survey, Wishes
from farwall.job.lasting import lasting_of
from farwall.job.plan_job import plan_job
from farwall.job.slab_words import slab_warnings, weather_warnings

START = "2027-05-04T08:00:00-06:00"


def said(more=None, /, **survey):
    facts = job(row(3, 3), survey=Survey(**survey), starts_at=START, **(more or {}))
    return slab_warnings(lasting_of(settle(facts), None))


def test_warm_air_over_a_cold_slab_is_named_with_both_figures():
    (told,) = said(air_c=20.0, slab_c=10.6, rh_percent=40.0)
    assert told.startswith("Air 68 °F (20.0 °C), slab 51 °F (10.6 °C) at the first stroke:")
    assert "the slab decides" in told


def test_a_mild_even_day_needs_no_words():
    assert said(air_c=21.0, slab_c=20.0, rh_percent=45.0) == ()


@pytest.mark.parametrize(("rh_percent", "words"), [(80.0, "only"), (99.0, "sweats")])
def test_a_slab_near_its_dew_point_is_named(rh_percent, words):
    """By hand: air of 21 °C and 80 % has its dew point at 17.4 °C; at 99 % above a 19 °C slab."""
    slab_c = 19.0
    (told,) = said(air_c=21.0, slab_c=slab_c, rh_percent=rh_percent)
    assert words in told
    assert "no sealer" in told


def forecast(issued_h=9.0, hours=72):
    start = datetime.fromisoformat(START) - timedelta(hours=24)
    return Forecast(
        start, (21.0,) * hours, (50.0,) * hours, (2.0,) * hours,
        issued_at=datetime.fromisoformat(START) - timedelta(hours=issued_h),
    )  # fmt: skip


def test_the_age_of_a_forecast_and_its_distance_are_told():
    facts = job(row(3, 3), survey=Survey(), starts_at=START)
    told = weather_warnings(facts, forecast(), datetime.fromisoformat(START))
    assert told == (STATION, "The forecast was issued 9 h before the first stroke.")
    plan = plan_job(facts, weather=forecast())
    assert set(told) <= set(plan.warnings)


def test_readings_on_the_spot_need_no_word_of_the_station():
    survey = Survey(slab_c=20.0, air_c=21.0, rh_percent=45.0)
    facts = job(row(3, 3), survey=survey, starts_at=START)
    assert weather_warnings(facts, None, datetime.fromisoformat(START)) == ()
    told = weather_warnings(facts, forecast(), datetime.fromisoformat(START))
    assert STATION not in told


def test_with_weather_the_grounds_are_what_was_reckoned():
    facts = job(row(3, 3), survey=Survey(slab_c=18.0), starts_at=START)
    grounds = {one.name: one for one in plan_job(facts, weather=forecast()).grounds}
    assert (grounds["survey.slab_c"].value, grounds["survey.slab_c"].rank) == (
        "18",
        "measured here",
    )
    assert grounds["survey.air_c"].rank == "guess"
    assert grounds["survey.air_c"].source == "reckoned from the weather"
    assert float(grounds["survey.air_c"].value) == pytest.approx(21, abs=0.5)
    assert (grounds["site.house"].value, grounds["site.house"].rank) == ("shut", "guess")
    bare = {one.name for one in plan_job(facts).grounds}
    assert "site.house" not in bare


def test_nobody_is_told_to_warm_a_hot_house():
    (told,) = said(air_c=36.0, slab_c=28.0, rh_percent=15.0)
    assert told.startswith("Air 97 °F (36.0 °C), slab 82 °F (28.0 °C) at the first stroke:")
    assert "Warm the house" not in told
    assert "gets warmer" in told


def test_a_metric_job_is_told_its_own_degrees_first():
    metric = {"wishes": Wishes(units="metric")}
    (cold,) = said(metric, air_c=20.0, slab_c=10.6, rh_percent=40.0)
    (damp,) = said(metric, air_c=21.0, slab_c=19.0, rh_percent=80.0)
    assert cold.startswith("Air 20.0 °C (68 °F), slab 10.6 °C (51 °F)")
    assert "nearer to the dew point than 3 K (5 °F)" in damp
    assert "than 5 °F (3 K)" in said(air_c=21.0, slab_c=19.0, rh_percent=80.0)[0]
