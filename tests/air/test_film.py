import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies import air

from farwall.air.conditions import Conditions
from farwall.air.film import film_drying, minutes_to_dry, wet_film_mm
from farwall.errors import Refused


def test_a_litre_on_five_square_metres_is_a_fifth_of_a_millimetre():
    assert wet_film_mm(m2_per_l=5) == pytest.approx(0.2)


def test_minutes_by_hand():
    """0.2 mm is 0.2 kg/m²; at 0.1 kg/(m²·h) that is 2 h."""
    assert minutes_to_dry(0.2, 0.1) == pytest.approx(120)
    assert minutes_to_dry(0.2, 0.0) is None


@given(air.conditions, st.floats(0.01, 2.0), st.floats(0.01, 2.0))
def test_a_thicker_film_never_dries_sooner(now, one, other):
    thin, thick = (film_drying(now, film_mm=mm).minutes for mm in sorted((one, other)))
    assert (thin is None) == (thick is None)
    assert thin is None or thick is None or thin <= thick


@given(air.conditions, st.floats(0.01, 2.0))
def test_low_likely_and_high_come_in_that_order(now, film_mm):
    found = film_drying(now, film_mm=film_mm)
    if found.minutes is not None:
        assert found.low_min is not None
        assert found.low_min <= found.minutes
        assert found.high_min is None or found.minutes <= found.high_min
    else:
        assert found.high_min is None


@pytest.mark.parametrize("value", [0, -1, float("nan")])
def test_a_film_or_a_coverage_of_nothing_is_refused(value):
    with pytest.raises(Refused):
        film_drying(Conditions(), film_mm=value)
    with pytest.raises(Refused):
        wet_film_mm(m2_per_l=value)
