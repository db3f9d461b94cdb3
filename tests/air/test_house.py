"""What passes through a house: by hand, and by the laws that any house keeps."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.house import House, air_changes_h, over_floor_m_s

HOUSES = st.builds(
    House, standing=st.sampled_from(["shut", "open"]), fans=st.integers(0, 4),
    floor_m2=st.floats(20, 600),
)  # fmt: skip


def changes(house, inside_c=20.0, outside_c=10.0, wind_m_s=3.0):
    return air_changes_h(house, inside_c=inside_c, outside_c=outside_c, wind_m_s=wind_m_s)


def test_a_shut_house_by_hand():
    """By hand: 4 cm²/m²·sqrt(0.000145·10 + 0.000104·9) = 0.1954 L/s m²; over 2.5 m 0.2814 1/h."""
    assert changes(House()) == pytest.approx(0.1954e-3 * 3600 / 2.5, rel=1e-3)


def test_a_shut_house_leaks_as_houses_do():
    """Common practice, no source: a quarter to one change an hour, most of the time."""
    assert 0.1 < changes(House(), wind_m_s=1.0) < 1.0
    assert 0.1 < changes(House(), outside_c=-10.0, wind_m_s=6.0) < 1.0


def test_a_fan_by_hand():
    """By hand: 0.8 m³/s out of 100 m² by 2.5 m is 11.52 an hour; still, level air adds nothing."""
    told = changes(House(fans=1, floor_m2=100.0), inside_c=10.0, wind_m_s=0.0)
    assert told == pytest.approx(11.52)


def test_an_open_house_by_hand():
    """By hand: 0.01 m²/m² each way, 0.3·5 m/s of wind, no difference: 0.015 m/s, 21.6 an hour."""
    told = changes(House("open"), inside_c=10.0, wind_m_s=5.0)
    leaks = 4 * math.sqrt(0.000104 * 25) / 1000
    assert told == pytest.approx((0.015 + leaks) * 1440)


@given(HOUSES, st.floats(-20, 40), st.floats(-20, 40), st.floats(0, 20), st.floats(0, 10))
def test_wind_openings_and_fans_never_lessen_it(house, inside_c, outside_c, wind_m_s, more):
    def at(one, wind):
        return changes(one, inside_c, outside_c, wind)

    here = at(house, wind_m_s)
    assert here >= 0
    assert at(house, wind_m_s + more) >= here - 1e-12
    opened = House("open", house.fans, house.heat_kw, house.floor_m2)
    assert at(opened, wind_m_s) >= here - 1e-12
    fanned = House(house.standing, house.fans + 1, house.heat_kw, house.floor_m2)
    assert at(fanned, wind_m_s) > here
    assert over_floor_m_s(opened, wind_m_s=wind_m_s) >= over_floor_m_s(house, wind_m_s=wind_m_s)
    assert over_floor_m_s(fanned, wind_m_s=wind_m_s) >= 0.1
