"""Sunset by short formulas against the sun of the tool's own sun positions; coats by daylight."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.air.sun import sun_at
from farwall.facts.default_table import STARTS_AT
from farwall.facts.job import Place
from farwall.job.daylight import Daylight, LightEnds, daylight_of, sunset

WHERE = Place(latitude_deg=41.9, longitude_deg=-87.9)


@pytest.mark.parametrize("latitude", [-35.0, 0.0, 40.0, 60.0])
@pytest.mark.parametrize("day", ["2026-01-10", "2026-03-20", "2026-06-21", "2026-10-30"])
def test_the_sun_stands_at_the_horizon_within_ten_minutes(latitude, day):
    """Ten minutes: short formulas from memory; as seen through the air it sets at 0 degrees."""
    noon = datetime.fromisoformat(f"{day}T12:00").replace(tzinfo=timezone(timedelta(hours=-7)))
    found = sunset(noon, latitude_deg=latitude, longitude_deg=-105.0)
    around = [found - timedelta(minutes=10), found + timedelta(minutes=10)]
    before, after = sun_at(around, latitude_deg=latitude, longitude_deg=-105.0).elevation_deg
    assert before > 0 > after
    assert found.utcoffset() == noon.utcoffset()


def test_where_the_sun_does_not_set_there_is_no_sunset():
    noon = datetime.fromisoformat("2026-06-21T12:00+00:00")
    assert sunset(noon, latitude_deg=75.0, longitude_deg=20.0) is None


def at(hour, *, day=0):
    """Minute of a plan that starts at 7:30."""
    return (hour - 7.5) * 60 + day * 24 * 60


DAY = Daylight(datetime.fromisoformat("2026-12-15T07:30:00-06:00"))
WINTER = replace(DAY, latitude_deg=41.9, longitude_deg=-87.9)


def test_without_a_place_a_day_ends_with_the_evening_of_the_calendar():
    assert DAY.ends(at(8)) == LightEnds(at(18.5), sun=False)
    assert DAY.ends(at(3, day=1)) == LightEnds(at(18.5, day=1), sun=False)


def test_where_the_sun_sets_sooner_it_ends_the_day():
    """Sunset of 15 December at 41.9 N, 87.9 W: 16:21 by the almanac, from memory."""
    ends = WINTER.ends(at(8))
    assert ends.sun
    assert ends.at_min == pytest.approx(at(16 + 21 / 60), abs=10)
    summer = replace(WINTER, starts_at=datetime.fromisoformat("2026-06-15T07:30:00-05:00"))
    assert summer.ends(at(8)) == LightEnds(at(18.5), sun=False)


def test_an_offset_that_is_not_the_places_own_does_not_end_the_day_at_breakfast():
    far = replace(WINTER, starts_at=datetime.fromisoformat("2026-12-15T07:30:00+12:00"))
    assert far.ends(at(8)) == LightEnds(at(18.5), sun=False)


@pytest.mark.parametrize(
    ("free", "lasts", "begins"),
    [
        (at(13), 90, at(13)),
        (at(17), 90, at(17)),  # ends on the stroke
        (at(17.01), 90, at(7.5, day=1)),
        (at(23), 90, at(7.5, day=1)),
        (at(3, day=1), 90, at(7.5, day=1)),
        (at(9), 700, at(7.5, day=1)),  # longer than any day: the first morning
    ],
)
def test_work_begins_in_the_light_or_on_a_morning(free, lasts, begins):
    """Worked by hand: light from 7:30 to 18:30."""
    assert DAY.begins(free, lasts) == pytest.approx(begins)


@pytest.mark.parametrize(
    ("starts", "begins"), [("09:00", "09:00"), ("05:30", "05:30"), ("14:30", "07:30")]
)
def test_a_morning_is_the_plans_own_where_it_has_one(starts, begins):
    light = Daylight(datetime.fromisoformat(f"2026-06-15T{starts}:00-05:00"))
    at_min = light.begins(14 * 60.0, 60)
    assert (light.starts_at + timedelta(minutes=at_min)).strftime("%d %H:%M") == f"16 {begins}"


def test_a_told_hour_is_kept_to():
    told = "2026-12-16T09:00:00-06:00"
    assert DAY.coat_begins(at(13), 90, told) == at(9, day=1)
    assert DAY.coat_begins(at(13), 90, "2026-12-15T08:00:00-06:00") == at(13)
    assert DAY.coat_begins(at(17.5), 90, "2026-12-15T16:00:00-06:00") == at(7.5, day=1)


def test_a_told_hour_without_light_means_lamps():
    assert DAY.coat_begins(at(13), 90, "2026-12-15T19:00:00-06:00") == at(19)
    assert DAY.coat_begins(at(19.5), 90, "2026-12-15T19:00:00-06:00") == at(19.5)


@given(free=st.floats(0, 20_000), lasts=st.floats(1, 1500), start=st.integers(0, 1439))
def test_nothing_begins_before_it_may_or_in_the_dark_where_a_day_is_long_enough(free, lasts, start):
    light = Daylight(datetime(2026, 6, 15, *divmod(start, 60), tzinfo=UTC))
    begins = light.begins(free, lasts)
    assert free <= begins <= free + 24 * 60
    if lasts <= 660:  # 7:30 to 18:30
        assert light.holds(begins, lasts) or light.holds(begins - 1e-6, lasts - 1e-6)


def test_only_a_job_that_tells_its_start_has_a_sunset():
    told = job(TWO_ROOMS, place=WHERE, starts_at="2026-12-15T07:30:00-06:00")
    assert daylight_of(told, told.starts_at) == WINTER
    silent = replace(told, starts_at=None)
    assert daylight_of(silent, STARTS_AT).latitude_deg is None
