import pytest

from farwall.air.conditions import REFERENCE, Conditions
from farwall.errors import Refused


def test_the_reference_is_a_mild_still_day():
    assert (REFERENCE.surface_c, REFERENCE.air_c, REFERENCE.rh_percent) == (21, 21, 45)
    assert REFERENCE.air_speed_m_s == 0.1
    assert REFERENCE.pressure_pa == 101325


def test_all_readings_that_cannot_be_are_named_at_once():
    """70 °F typed as °C, a share typed as percent is fine, a pressure typed in hPa is not."""
    with pytest.raises(Refused) as refused:
        Conditions(surface_c=77, air_c=70, rh_percent=0.45, air_speed_m_s=-1, pressure_pa=1013)
    assert [one.where for one in refused.value.mistakes] == [
        "surface_c",
        "air_c",
        "air_speed_m_s",
        "pressure_pa",
    ]


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_is_no_number_is_no_reading(value):
    with pytest.raises(Refused):
        Conditions(air_c=value)
