from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.conditions import REFERENCE
from farwall.air.day import Readings, at, hours_at_slab, typed_conditions
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


def test_the_slab_follows_the_mean_of_the_day_before_by_hand():
    """24 h at 10 °C, then 24 h at 20 °C: at first the slab has 10, the air 10 + (20-10)/2 = 15."""
    first, *_, last = hours_at_slab(weather(air_c=[10.0] * 24 + [20.0] * 24))
    assert first.starts_at == START + timedelta(hours=24)
    assert first.conditions.surface_c == pytest.approx(10.0)
    assert first.conditions.air_c == pytest.approx(15.0)
    # 23 of the 24 hours before the last one were at 20.
    assert last.conditions.surface_c == pytest.approx((10 + 23 * 20) / 24)
    assert set(first.ranks.values()) == {Rank.GUESS}


def test_the_wind_of_the_station_is_not_the_air_over_the_floor():
    shut = hours_at_slab(weather(wind_m_s=10.0))[0].conditions
    opened = hours_at_slab(weather(wind_m_s=10.0), windows_open=True)[0].conditions
    calm = hours_at_slab(weather(wind_m_s=0.0))[0].conditions
    assert shut.air_speed_m_s == pytest.approx(0.2)
    assert opened.air_speed_m_s == pytest.approx(2.0)
    assert calm.air_speed_m_s == pytest.approx(0.1)


def test_the_vapour_outside_is_the_vapour_inside():
    """Air of 30 °C and 40 % that is 25 °C indoors holds the same vapour: 0.4·4246/3169 = 53.6 %.

    Saturation pressures 4246 and 3169 Pa from the ASHRAE 2017 table, by hand.
    """
    outside = weather(air_c=[20.0] * 24 + [30.0] * 24, rh_percent=40.0)
    inside = hours_at_slab(outside)[0].conditions
    assert inside.air_c == pytest.approx(25.0)
    assert inside.rh_percent == pytest.approx(53.6, abs=0.1)


@given(
    st.builds(
        Readings,
        slab_c=st.none() | st.floats(5, 40),
        air_c=st.none() | st.floats(5, 40),
        rh_percent=st.none() | st.floats(5, 100),
        air_speed_m_s=st.none() | st.floats(0, 5),
    )
)
def test_a_typed_reading_always_wins_and_keeps_its_rank(readings):
    told = {
        "surface_c": readings.slab_c,
        "air_c": readings.air_c,
        "rh_percent": readings.rh_percent,
        "air_speed_m_s": readings.air_speed_m_s,
    }
    typed, typed_ranks = typed_conditions(readings)
    hours = [(one.conditions, one.ranks) for one in hours_at_slab(weather(), readings=readings)]
    for now, ranks in [(typed, typed_ranks), *hours]:
        for name, value in told.items():
            if value is not None:
                assert getattr(now, name) == value
                assert ranks[name] is Rank.MEASURED
            else:
                assert ranks[name] is not Rank.MEASURED


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
