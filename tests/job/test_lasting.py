"""How long edges live on this job's day: the quickest room, the sample, the weather, the no."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.spray.hand_floors import job, row
from tests.strategies.weather import epw_text

from farwall.air.clocks import DRAUGHT, SUN
from farwall.facts.defaults import settle
from farwall.facts.job import Coat, RoomSurvey, Survey
from farwall.facts.samples import Sample
from farwall.job.lasting import lasting_of
from farwall.readers.epw import parse_epw

ROOMS = ("a", "b", "c")


def lasting(*, samples=(), weather=None, starts_at="2027-05-04T08:00:00-06:00", **survey):
    told = Survey(**{"slab_c": 21.0, "air_c": 21.0, "rh_percent": 45.0, **survey})
    settled = settle(job(row(3, 3, 3), samples=samples, survey=told, starts_at=starts_at))
    return lasting_of(settled, weather), settled.coats[0]


def sample(minutes, **conditions):
    return (Sample("board", coat="one", sheen_loss_min=minutes, **conditions),)


def low(rooms=ROOMS, **facts):
    found, coat = lasting(**facts)
    return found.open_time(rooms, coat, 0.0).low


@pytest.mark.common_practice
def test_an_ordinary_slab_on_a_mild_day_lands_near_practice():
    """Common practice, no source: 5 to 15 min at 70 °F on a normal trowel; the low end counts."""
    found, coat = lasting()
    span = found.open_time(ROOMS, coat, 0.0)
    assert span.low == pytest.approx(5, rel=0.15)
    assert span.likely == pytest.approx(10, rel=0.15)
    assert span.high == pytest.approx(15, rel=0.15)


def test_half_of_a_timed_sample_is_the_budget_by_hand():
    """By hand: 8 min of sheen in these very conditions: 4 min."""
    assert low(samples=sample(8.0)) == pytest.approx(4.0)


def test_of_two_samples_the_sooner_one_counts():
    both = (
        Sample("one", coat="one", sheen_loss_min=12.0),
        Sample("two", coat="one", sheen_loss_min=6.0),
    )
    assert low(samples=both) == pytest.approx(3.0)


def test_a_sample_made_in_cooler_air_shortens_by_the_weather_of_today():
    cool = sample(8.0, slab_c=15.0, air_c=15.0, rh_percent=70.0)
    assert low(samples=cool) < 4.0


def test_a_sample_made_in_hotter_air_never_lengthens_the_budget():
    """Half of what was measured is the most that is trusted."""
    hot = sample(8.0, slab_c=28.0, air_c=30.0, rh_percent=20.0)
    assert low(samples=hot) <= 4.0


@pytest.mark.parametrize(
    ("found", "share"),
    [
        (RoomSurvey(sun=True), SUN),
        (RoomSurvey(draught=True), DRAUGHT),
        (RoomSurvey(sun=True, draught=True), SUN * DRAUGHT),
    ],
    ids=["sun", "draught", "both"],
)
def test_sun_and_draught_take_their_share_by_hand(found, share):
    """By hand: of 4 min the share that is left."""
    sunny, coat = lasting(samples=sample(8.0), rooms={"b": found})
    assert sunny.open_time(("b",), coat, 0.0).low == pytest.approx(4.0 * share, abs=0.01)
    assert sunny.open_time(("a",), coat, 0.0).low == pytest.approx(4.0)


def test_all_of_the_range_is_shorter_in_the_sun_by_hand():
    """By hand: likely 8 min of a timed sheen and 1.25 of it at most, 0.55 of both in the sun."""
    sunny, coat = lasting(samples=sample(8.0), rooms={"b": RoomSurvey(sun=True)})
    span = sunny.open_time(("b",), coat, 0.0)
    assert (span.likely, span.high) == pytest.approx((8.0 * SUN, 10.0 * SUN), abs=0.01)
    believed = sunny.believed("b", coat, 0.0)
    assert (believed.low, believed.likely, believed.high) == pytest.approx(
        (6.4 * SUN, 8.0 * SUN, 10.0 * SUN)
    )


def test_a_field_is_as_quick_as_its_quickest_room():
    rooms = {"b": RoomSurvey(sun=True), "c": RoomSurvey(finish="broom")}
    found, coat = lasting(rooms=rooms)
    alone = [found.open_time((room,), coat, 0.0).low for room in ROOMS]
    assert found.open_time(ROOMS, coat, 0.0).low == min(alone)


def test_a_thirsty_room_is_quicker_than_a_tight_one():
    rooms = {"a": RoomSurvey(drop_s=3.0), "b": RoomSurvey(drop_s=15.0)}
    found, coat = lasting(rooms=rooms)
    assert found.open_time(("a",), coat, 0.0).low < found.open_time(("b",), coat, 0.0).low


@pytest.mark.parametrize("slab_c", [32.2, 7.2], ids=["90 F", "45 F"])
def test_a_slab_outside_its_limits_has_no_open_time(slab_c):
    found, coat = lasting(slab_c=slab_c)
    span = found.open_time(ROOMS, coat, 0.0)
    assert (span.low, span.likely, span.high) == (0.0, 0.0, 0.0)
    assert found.refusal(ROOMS, 0.0) is not None


def test_a_room_where_a_drop_stands_refuses_only_fields_that_hold_it():
    found, coat = lasting(rooms={"b": RoomSurvey(drop_s=90.0)})
    assert found.refusal(("a", "c"), 0.0) is None
    assert "90 s" in found.refusal(("a", "b"), 0.0).reason
    assert found.open_time(("a",), coat, 0.0).low > 0.0


def test_the_budget_is_never_above_the_likely_open_time():
    found, coat = lasting(samples=sample(8.0))
    span = found.open_time(ROOMS, coat, 0.0)
    assert span.low <= span.likely <= span.high


def test_each_room_has_its_open_time_and_one_suffices_without_weather():
    found, coat = lasting(samples=sample(8.0), rooms={"b": RoomSurvey(draught=True)})
    told = found.open_times(ROOMS, coat, 10.0, 500.0)
    assert [(one.room, one.from_min) for one in told] == [("a", 10.0), ("b", 10.0), ("c", 10.0)]
    assert [one.low for one in told] == [4.0, pytest.approx(4.0 * DRAUGHT, abs=0.01), 4.0]
    for one in told:
        alone = found.open_time((one.room,), coat, 10.0)
        assert (one.low, one.likely, one.high) == (alone.low, alone.likely, alone.high)


def test_where_the_slab_says_no_to_one_room_no_room_has_an_open_time():
    found, coat = lasting(rooms={"b": RoomSurvey(drop_s=90.0)})
    assert {one.low for one in found.open_times(ROOMS, coat, 0.0, 60.0)} == {0.0}
    assert found.open_times(("a", "c"), coat, 0.0, 60.0)[0].low > 0.0


def test_without_weather_every_minute_is_alike():
    found, coat = lasting()
    assert found.open_time(ROOMS, coat, 0.0) == found.open_time(ROOMS, coat, 600.0)
    assert found.conditions(0.0) == found.conditions(1234.0)


@pytest.fixture(scope="module")
def year():
    """An invented year: warm in July, warmest and driest at three in the afternoon."""
    return parse_epw(epw_text())


MAY = "2027-05-04T08:00:00-06:00"


def bare(year, **survey):
    settled = settle(job(row(3, 3, 3), survey=Survey(**survey), starts_at=MAY))
    return lasting_of(settled, year), settled.coats[0]


def test_a_weather_file_brings_the_hours_of_the_day_in(year):
    found, coat = bare(year)
    assert len(found.hours) > 24
    morning, afternoon = found.conditions(0.0), found.conditions(7 * 60.0)
    assert afternoon.air_c > morning.air_c
    assert afternoon.rh_percent < morning.rh_percent
    assert found.open_time(ROOMS, coat, 7 * 60.0).low < found.open_time(ROOMS, coat, 0.0).low


def test_open_times_are_told_anew_only_where_an_hour_changes_them(year):
    """By hand: from 8:00, minute 20 to 200 meets the hours at 60, 120 and 180."""
    found, coat = bare(year)
    told = found.open_times(("a",), coat, 20.0, 200.0)
    assert [one.from_min for one in told] == [20.0, 60.0, 120.0, 180.0]
    for one in told:
        assert one.low == found.open_time(("a",), coat, one.from_min + 1.0).low
    read, same = lasting()
    assert len(read.open_times(("a",), same, 20.0, 200.0)) == 1


def test_a_typed_reading_wins_over_the_weather_file(year):
    read = {"slab_c": 21.5, "air_c": 22.5, "rh_percent": 40.0, "air_speed_m_s": 0.2}
    now = bare(year, **read)[0].conditions(30.0)
    assert (now.surface_c, now.air_c, now.rh_percent, now.air_speed_m_s) == tuple(read.values())
    weather_now = bare(year)[0].conditions(30.0)
    assert now != weather_now


def test_a_winter_of_the_file_says_no_by_its_cold_slab(year):
    """By hand: January air of 4 °C and a swing of 6 leaves the slab near 5 °C."""
    settled = settle(job(row(3, 3, 3), survey=Survey(), starts_at="2027-01-12T08:00:00-06:00"))
    found = lasting_of(settled, year)
    assert "below 50 °F" in found.refusal(ROOMS, 0.0).reason
    assert bare(year)[0].refusal(ROOMS, 0.0) is None


@given(st.floats(1.0, 60.0), st.floats(1.05, 3.0))
def test_a_longer_sheen_never_gives_a_shorter_budget(minutes, longer):
    assert low(samples=sample(minutes)) <= low(samples=sample(minutes * longer)) + 0.011


@given(st.floats(12.0, 28.0), st.floats(20.0, 90.0), st.booleans(), st.booleans())
def test_sun_and_draught_never_lengthen_the_budget(slab_c, rh_percent, sun, draught):
    found, coat = lasting(
        slab_c=slab_c, rh_percent=rh_percent, rooms={"a": RoomSurvey(sun=sun, draught=draught)}
    )
    assert found.open_time(("a",), coat, 0.0).low <= found.open_time(("b",), coat, 0.0).low + 1e-9


def test_a_thinner_coat_is_no_slower_to_lose_its_edge():
    thick = settle(job(row(3, 3, 3), coats=(Coat("one", "sand", "1:1", m2_per_l=3.0),)))
    thin = settle(job(row(3, 3, 3), coats=(Coat("one", "sand", "1:1", m2_per_l=9.0),)))
    times = [lasting_of(s, None).open_time(ROOMS, s.coats[0], 0.0).low for s in (thick, thin)]
    assert times[1] <= times[0]
