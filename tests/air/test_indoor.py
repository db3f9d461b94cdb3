"""The room over the slab: balances by hand, readings that win and pull, laws of any weather."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.house import House
from farwall.air.indoor import PULL_H, SOAKS, Outside, ReadingsAt, room_over_slab


def outside(hours=72, air_c=20.0, rh_percent=50.0, wind_m_s=3.0, sun_w_m2=None):
    def row(value):
        return value if isinstance(value, list) else [value] * hours

    return Outside(
        row(air_c), row(rh_percent), row(wind_m_s), None if sun_w_m2 is None else row(sun_w_m2)
    )


def test_a_heater_by_hand():
    """By hand, ground as warm as the air outside, a year of the same: 6 kW on 120 m² are 50 W/m².

    They leave by glass 0.7, walls 0.7·12/12.7 = 0.661, air n·2.5·1200/3600, and the slab:
    1/(1/7 + 0.0625 + 1.3333) = 0.650 W/(m²·K).
    """
    told = room_over_slab(
        outside(24 * 300, air_c=5.0, wind_m_s=0.0), house=House(heat_kw=6.0), ground_c=5.0
    )
    warmer = told.air_c[-1] - 5.0
    passes = 0.7 + 0.7 * 12 / 12.7 + told.air_changes_h[-1] * 2.5 / 3 + 1 / (1 / 7 + 0.0625 + 4 / 3)
    assert warmer == pytest.approx(50 / passes, rel=2e-3)


def test_vapour_by_hand():
    """By hand: each hour brings n/(n + 4) of the difference of vapour; warmth stays at 20 °C."""
    damp = [40.0] * 48 + [80.0] * 24
    told = room_over_slab(outside(72, rh_percent=damp))
    share = told.air_changes_h[50] / (told.air_changes_h[50] + SOAKS)
    expected = 80 - 40 * (1 - share) ** 3
    assert told.rh_percent[50] == pytest.approx(expected, rel=1e-6)


def test_readings_win_at_their_hour_and_pull_about_it():
    read = ReadingsAt(48, slab_c=14.0, air_c=24.0, rh_percent=35.0, air_speed_m_s=0.5)
    told = room_over_slab(outside(96), read=read)
    free = room_over_slab(outside(96))
    at = [told.face_c, told.air_c, told.rh_percent, told.air_speed_m_s]
    assert [one[48] for one in at] == pytest.approx([14.0, 24.0, 35.0, 0.5])
    hours = 48 + int(PULL_H)
    assert told.air_c[hours] - free.air_c[hours] == pytest.approx(4.0 / math.e)
    assert told.air_speed_m_s[hours] == pytest.approx(0.1 + 0.4 / math.e)
    assert told.air_c[95] == pytest.approx(free.air_c[95], abs=0.01)
    # The slab remembers longer than the air.
    assert told.face_c[95] < free.face_c[95] - 1.0


def test_the_sun_on_the_floor_warms_slab_and_room():
    sun = [0.0] * 60 + [150.0] * 4 + [0.0] * 8
    lit, dull = (room_over_slab(outside(72, sun_w_m2=one)) for one in (sun, None))
    assert lit.face_c[63] > dull.face_c[63] + 5
    assert lit.air_c[63] > dull.air_c[63] + 0.5
    assert lit.rh_percent[63] < dull.rh_percent[63]


@given(
    st.lists(st.floats(-15, 40), min_size=30, max_size=50),
    st.floats(5, 100),
    st.floats(0, 20),
    st.sampled_from(["shut", "open"]),
)
def test_the_room_stays_within_the_weather(air_c, rh_percent, wind_m_s, standing):
    """No heater, no sun: neither air nor slab leaves the span of what they meet."""
    hours = len(air_c)
    told = room_over_slab(
        outside(hours, air_c=air_c, rh_percent=rh_percent, wind_m_s=wind_m_s), house=House(standing)
    )
    assert min(air_c) - 0.5 <= min(told.air_c) <= max(told.air_c) <= max(air_c) + 0.5
    assert min(air_c) - 0.5 <= min(told.face_c) <= max(told.face_c) <= max(air_c) + 0.5
    assert all(0 <= one <= 100 for one in told.rh_percent)
    assert len(told.face_c) == hours


def test_a_thermostat_holds_the_air_and_gives_no_heat_where_it_is_warm_enough():
    cold, warm = outside(24 * 20, air_c=0.0), outside(24 * 20, air_c=25.0)
    kept = House(heat_kw=40.0, heat_to_c=21.0)
    held = room_over_slab(cold, house=kept, ground_c=10.0)
    assert held.air_c[48:] == pytest.approx([21.0] * (24 * 18), abs=1e-6)
    assert room_over_slab(warm, house=kept) == room_over_slab(warm)


@given(st.floats(0.0, 30.0), st.floats(-10.0, 25.0))
def test_a_thermostat_never_warms_more_than_a_heater_that_burns_on(heat_kw, air_c):
    burning = room_over_slab(outside(48, air_c=air_c), house=House(heat_kw=heat_kw))
    kept = room_over_slab(outside(48, air_c=air_c), house=House(heat_kw=heat_kw, heat_to_c=18.0))
    assert all(a <= b + 1e-9 for a, b in zip(kept.air_c, burning.air_c, strict=True))
