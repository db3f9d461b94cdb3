import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air import moist
from farwall.errors import Refused

warm_c = st.floats(0.5, 60.0)
humid = st.floats(1.0, 100.0)


@given(warm_c, humid)
def test_wet_bulb_and_dew_point_come_in_their_order(air_c, rh_percent):
    dew_c = moist.dew_point_c(air_c=air_c, rh_percent=rh_percent)
    wet_c = moist.wet_bulb_c(air_c=air_c, rh_percent=rh_percent)
    # The library stops its own iterations within 0.001 K.
    assert dew_c - 0.002 <= wet_c <= air_c + 0.002


@given(warm_c, humid)
def test_humidity_and_dew_point_go_round(air_c, rh_percent):
    dew_c = moist.dew_point_c(air_c=air_c, rh_percent=rh_percent)
    back = moist.rh_percent_from_dew_point(air_c=air_c, dew_point_c=dew_c)
    assert back == pytest.approx(rh_percent, rel=3e-4)


@given(warm_c, humid)
def test_humidity_and_vapour_pressure_go_round(air_c, rh_percent):
    held = moist.vapour_pressure_pa(air_c=air_c, rh_percent=rh_percent)
    back = moist.rh_percent_from_vapour_pressure(air_c=air_c, vapour_pressure_pa=held)
    assert back == pytest.approx(rh_percent)


def test_air_that_cannot_hold_its_vapour_is_saturated():
    held = moist.vapour_pressure_pa(air_c=30, rh_percent=90)
    assert moist.rh_percent_from_vapour_pressure(air_c=10, vapour_pressure_pa=held) == 100


def test_dry_air_of_the_standard_day_by_hand():
    """Nearly dry air at 15 °C and 101 325 Pa: p/(287.04·T) = 1.225 kg/m³, by hand."""
    found = moist.dry_air_kg_m3(air_c=15, rh_percent=0.1, pressure_pa=101325)
    assert found == pytest.approx(101325 / (287.04 * 288.15), rel=1e-4)


@pytest.mark.parametrize(
    "question",
    [
        lambda: moist.dew_point_c(air_c=20, rh_percent=0),
        lambda: moist.dew_point_c(air_c=20, rh_percent=101),
        lambda: moist.vapour_pressure_pa(air_c=20, rh_percent=-1),
        lambda: moist.saturation_pressure_pa(air_c=201),
        lambda: moist.saturation_pressure_pa(air_c=float("nan")),
        lambda: moist.wet_bulb_c(air_c=20, rh_percent=50, pressure_pa=10),
        lambda: moist.humidity_ratio(air_c=120, rh_percent=90),
        lambda: moist.saturation_humidity_ratio(air_c=120),
        lambda: moist.saturation_enthalpy_j_per_kg(air_c=120),
        lambda: moist.standard_pressure_pa(altitude_m=20_000),
    ],
)
def test_outside_the_range_a_typed_error_tells_the_value(question):
    with pytest.raises(Refused) as refused:
        question()
    assert refused.value.mistakes[0].what


def test_the_smallest_humidity_has_a_dew_point_and_all_of_the_range_answers():
    for air_c in (-40, -20, 0, 40, 90):
        for rh_percent in (0.1, 50, 100):
            assert moist.dew_point_c(air_c=air_c, rh_percent=rh_percent) <= air_c + 1e-6
