import math
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.conditions import REFERENCE
from farwall.air.day import Readings, at, hours_at_slab, typed_conditions
from farwall.air.house import House
from farwall.air.weather import Weather
from farwall.errors import Refused
from farwall.evidence import Rank

START = datetime(2031, 5, 3, 8, tzinfo=UTC)


def weather(
    *, hours: int = 48, air_c=20.0, rh_percent=50.0, pressure_pa=100_000.0, wind_m_s=4.0
) -> Weather:
    """Steady weather; a list of values in place of a number gives the hours their own."""

    def row(value):
        return tuple(value) if isinstance(value, list) else (value,) * hours

    return Weather(START, row(air_c), row(rh_percent), row(pressure_pa), row(wind_m_s))


def test_steady_weather_is_the_weather_inside():
    """By hand: nothing that differs, nothing that flows; the vapour is that of outside."""
    first, *_, last = hours_at_slab(weather(air_c=20.0, rh_percent=50.0))
    assert first.starts_at == START + timedelta(hours=24)
    for one in (first, last):
        assert one.conditions.surface_c == pytest.approx(20.0)
        assert one.conditions.air_c == pytest.approx(20.0)
        assert one.conditions.rh_percent == pytest.approx(50.0)
    assert set(first.ranks.values()) == {Rank.GUESS}


def test_the_slab_lags_the_room_and_the_room_the_day():
    hours = hours_at_slab(weather(air_c=[10.0] * 24 + [20.0] * 24))
    twelve = hours[12].conditions
    assert 10 < twelve.surface_c < twelve.air_c < 20


def test_an_open_house_follows_the_day_sooner():
    told = [10.0] * 24 + [20.0] * 24
    shut, opened = (
        hours_at_slab(weather(air_c=told), house=House(one))[6].conditions
        for one in ("shut", "open")
    )
    assert shut.air_c < opened.air_c
    assert shut.surface_c < opened.surface_c


def test_the_wind_of_the_station_is_not_the_air_over_the_floor():
    def moving(wind_m_s, **house):
        hours = hours_at_slab(weather(wind_m_s=wind_m_s), house=House(**house))
        return hours[0].conditions.air_speed_m_s

    assert moving(10.0) == pytest.approx(0.2)
    assert moving(10.0, standing="open") == pytest.approx(1.0)
    assert moving(0.0) == pytest.approx(0.1)
    assert moving(0.0, fans=1) == pytest.approx(0.4)


def test_the_vapour_outside_comes_in():
    """By hand: the vapour of 30 °C and 40 % (1698 Pa of 4246, ASHRAE 2017) in a room of 30 °C."""
    steady = hours_at_slab(weather(hours=96, air_c=30.0, rh_percent=40.0))[-1].conditions
    assert steady.rh_percent == pytest.approx(40.0, abs=0.1)
    damp = [50.0] * 48 + [90.0] * 48
    after = hours_at_slab(weather(hours=96, rh_percent=damp), before_h=48)
    assert after[0].conditions.rh_percent < after[6].conditions.rh_percent < 90


@given(
    st.builds(
        Readings,
        slab_c=st.none() | st.floats(5, 40),
        air_c=st.none() | st.floats(5, 40),
        rh_percent=st.none() | st.floats(5, 100),
        air_speed_m_s=st.none() | st.floats(0, 5),
    )
)
def test_a_typed_reading_wins_at_its_hour_and_keeps_its_rank(readings):
    told = {
        "surface_c": readings.slab_c,
        "air_c": readings.air_c,
        "rh_percent": readings.rh_percent,
        "air_speed_m_s": readings.air_speed_m_s,
    }
    typed, typed_ranks = typed_conditions(readings)
    first = hours_at_slab(weather(), readings=readings)[0]
    for now, ranks in [(typed, typed_ranks), (first.conditions, first.ranks)]:
        for name, value in told.items():
            if value is not None:
                assert getattr(now, name) == pytest.approx(value, abs=1e-9)
                assert ranks[name] is Rank.MEASURED
            else:
                assert ranks[name] is not Rank.MEASURED


def test_a_reading_pulls_the_hours_after_it_less_and_less():
    read = hours_at_slab(weather(), readings=Readings(air_c=26.0))
    off = [one.conditions.air_c - 20.0 for one in read]
    assert off[0] == pytest.approx(6.0)
    assert off[6] == pytest.approx(6.0 / math.e)
    assert off == sorted(off, reverse=True)
    assert read[6].ranks["air_c"] is Rank.GUESS


def test_without_any_reading_the_mild_day_of_practice_is_taken():
    assert typed_conditions(Readings())[0] == REFERENCE


def test_a_slab_that_was_not_measured_is_taken_like_the_air_as_a_guess():
    now, ranks = typed_conditions(Readings(air_c=16.0))
    assert now.surface_c == 16.0
    assert ranks["surface_c"] is Rank.GUESS


def test_a_short_gap_is_bridged_by_a_straight_line():
    values = [20.0] * 24 + [None, None, None] + [24.0] * 21
    inside = hours_at_slab(weather(air_c=values))
    plain = hours_at_slab(weather(air_c=[20.0] * 24 + [21.0, 22.0, 23.0] + [24.0] * 21))
    assert [one.conditions.air_c for one in inside] == pytest.approx(
        [one.conditions.air_c for one in plain]
    )


def test_a_long_gap_is_refused():
    with pytest.raises(Refused, match="missing for 6 hours"):
        hours_at_slab(weather(wind_m_s=[3.0] * 30 + [None] * 6 + [3.0] * 12))


def test_a_file_without_any_pressure_takes_the_standard_one():
    hours = hours_at_slab(weather(pressure_pa=None))
    assert hours[0].conditions.pressure_pa == 101325


def test_less_than_a_day_before_is_refused():
    with pytest.raises(Refused, match="the day before"):
        hours_at_slab(weather(hours=24))


def test_storm_frost_and_fog_still_give_conditions():
    hours = hours_at_slab(weather(air_c=-40.0, rh_percent=110.0, wind_m_s=60.0))
    assert hours[0].conditions.rh_percent <= 100


def test_the_hour_of_a_moment():
    hours = hours_at_slab(weather())
    begin = hours[0].starts_at
    assert at(hours, begin + timedelta(minutes=61)) is hours[1]
    assert at(hours, begin - timedelta(hours=3)) is hours[0]
    assert at(hours, begin + timedelta(days=9)) is hours[-1]
