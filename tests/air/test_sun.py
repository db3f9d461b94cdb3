"""Where the sun stands: day and night, seasons, moments and places that cannot be."""

from datetime import UTC, datetime, timedelta, timezone

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.sun import GLASS, TAKEN_UP, absorbed_w_m2, sun_at
from farwall.errors import Refused

HERE = {"latitude_deg": 40.0, "longitude_deg": -105.0}
CLOCK = timezone(timedelta(hours=-7))


def hours_of(year, month, day):
    return [datetime(year, month, day, hour, tzinfo=CLOCK) for hour in range(24)]


def test_at_noon_of_midsummer_it_stands_as_high_as_latitude_and_tilt_make_it_by_hand():
    """By hand: at 105° W the clock of UTC-7 is solar time within 2 min on that day; 90 - 40 + 23.44
    degrees. Tolerance: half a degree of azimuth a few minutes from noon, refraction 0.01."""
    sun = sun_at([datetime(2026, 6, 21, 12, 2, tzinfo=CLOCK)], **HERE)
    assert sun.elevation_deg[0] == pytest.approx(73.44, abs=0.05)
    assert sun.azimuth_deg[0] == pytest.approx(180.0, abs=1.5)


def test_in_the_morning_it_stands_in_the_east_in_the_evening_in_the_west():
    sun = sun_at(hours_of(2026, 6, 21), **HERE)
    assert 60 < sun.azimuth_deg[7] < 120
    assert 240 < sun.azimuth_deg[17] < 300


def test_there_is_no_beam_at_night_and_most_near_noon():
    sun = sun_at(hours_of(2026, 3, 20), **HERE)
    assert (sun.direct_w_m2[sun.elevation_deg <= 0] == 0).all()
    assert sun.direct_w_m2.argmax() in (11, 12, 13)
    assert 700 < sun.direct_w_m2.max() < 1100


@given(
    st.integers(0, 50 * 365 * 24 * 60),
    st.floats(-66, 66),
    st.floats(-180, 180),
)
def test_it_stands_in_no_impossible_place(minutes, north, east):
    moment = datetime(2000, 1, 1, tzinfo=UTC) + timedelta(minutes=minutes)
    sun = sun_at([moment], latitude_deg=north, longitude_deg=east)
    assert -90.1 <= sun.elevation_deg[0] <= 90.1
    assert 0 <= sun.azimuth_deg[0] <= 360
    assert 0 <= sun.direct_w_m2[0] < 1361 * 1.04
    assert np.isfinite(sun.direct_w_m2).all()


def test_what_a_floor_takes_up_by_hand():
    """By hand: 800 W/m² at 30° are 400 on a level floor."""
    assert absorbed_w_m2(800.0, 30.0) == pytest.approx(400 * GLASS * TAKEN_UP)
    assert absorbed_w_m2(800.0, -5.0) == 0.0


def test_no_moment_has_no_sun():
    assert len(sun_at([], **HERE)) == 0


def test_all_that_is_wrong_is_told_at_once():
    with pytest.raises(Refused) as refused:
        sun_at([datetime(2026, 6, 21, 12)], latitude_deg=91.0, longitude_deg=-200.0)  # noqa: DTZ001
    assert [one.where for one in refused.value.mistakes] == [
        "starts_at",
        "place.latitude_deg",
        "place.longitude_deg",
    ]
