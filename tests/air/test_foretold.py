"""A forecast for its own days, what is usual for all others."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from tests.strategies.weather import epw_text

from farwall.air.foretold import Foretold
from farwall.air.weather import Forecast
from farwall.errors import Refused
from farwall.readers.epw import parse_epw

BEGINS = datetime.fromisoformat("2026-06-08T05:00:00-06:00")
TWO_DAYS = Forecast(
    starts_at=BEGINS,
    air_c=tuple(float(n % 24 + 10 * (n >= 24)) for n in range(48)),
    rh_percent=(50.0,) * 48,
    wind_m_s=(2.0,) * 47 + (None,),
)


@pytest.fixture(scope="module")
def year():
    return parse_epw(epw_text())


def test_the_forecast_stands_in_its_own_hours_and_the_year_in_all_others(year):
    both = Foretold(TWO_DAYS, year).weather(starts_at=BEGINS, hours=72, before_h=24)
    usual = year.weather(starts_at=BEGINS, hours=72, before_h=24)
    assert both.starts_at == usual.starts_at
    assert both.air_c[24:72] == TWO_DAYS.air_c
    assert both.air_c[:24] + both.air_c[72:] == usual.air_c[:24] + usual.air_c[72:]
    assert both.wind_m_s[71] == usual.wind_m_s[71]  # what the forecast lacks is usual
    assert both.pressure_pa == usual.pressure_pa


def test_without_a_year_other_days_are_like_the_mean_of_those_foretold():
    lone = Foretold(TWO_DAYS).weather(
        starts_at=BEGINS + timedelta(days=5, hours=7), hours=1, before_h=24 * 9
    )
    by_time = {lone.starts_at + timedelta(hours=n): air for n, air in enumerate(lone.air_c)}
    later, before = BEGINS + timedelta(days=4, hours=3), BEGINS - timedelta(hours=21)
    assert by_time[later] == by_time[before] == (3.0 + 13.0) / 2
    assert by_time[BEGINS + timedelta(hours=27)] == 13.0
    assert set(lone.wind_m_s) == {2.0}


def test_a_forecast_of_some_hours_takes_their_mean_where_an_hour_of_the_day_is_not_told():
    short = Forecast(BEGINS, (10.0, 20.0), (50.0, 60.0), (1.0, 1.0))
    told = Foretold(short).weather(starts_at=BEGINS, hours=3, before_h=0)
    assert told.air_c == (10.0, 20.0, 15.0)
    assert told.rh_percent == (50.0, 60.0, 55.0)


def test_the_same_hours_on_another_clock_are_the_same(year):
    """Hours of an offset of our own: laid by the moment, never by the number on the clock."""
    west, here = (
        Foretold(TWO_DAYS, year).weather(starts_at=at, hours=48, before_h=0)
        for at in (datetime.fromisoformat("2026-06-08T04:00:00-07:00"), BEGINS)
    )
    assert west.air_c == here.air_c


def test_the_ground_is_that_of_the_year_or_of_the_hours_foretold(year):
    assert Foretold(TWO_DAYS, year).mean_air_c == year.mean_air_c
    assert Foretold(TWO_DAYS).mean_air_c == pytest.approx(16.5)


def test_a_time_without_an_offset_is_refused():
    with pytest.raises(Refused, match="offset"):
        Foretold(TWO_DAYS).weather(starts_at=BEGINS.replace(tzinfo=None))
