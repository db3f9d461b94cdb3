"""The vapour over the acid: its limits, its laws, and its two ways against each other."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid import vapour
from farwall.acid.vapour import hcl_pressure, hcl_pressure_pa, water_pressure_pa
from farwall.acid.water import density_kg_l, saturation_pressure_pa
from farwall.air.moist import psychrolib  # as we load it: without numba, which compiles for seconds
from farwall.errors import Refused

PERCENTS = st.floats(0.05, 38)
WARMTHS = st.floats(0, 40)


def test_numbers_give_a_number_and_arrays_broadcast():
    assert isinstance(hcl_pressure_pa(hcl_percent=10, temperature_c=20), float)
    many = hcl_pressure_pa(hcl_percent=np.array([[5.0], [10.0]]), temperature_c=[10.0, 20.0, 30.0])
    assert many.shape == (2, 3)
    assert many[1, 1] == pytest.approx(hcl_pressure_pa(hcl_percent=10, temperature_c=20), rel=1e-12)
    assert water_pressure_pa(hcl_percent=[1.0, 2.0], temperature_c=20).shape == (2,)


def test_plain_water_gives_off_no_acid_and_its_own_vapour():
    assert hcl_pressure_pa(hcl_percent=0, temperature_c=20) == 0
    for celsius in (0.5, 10.0, 20.0, 40.0):
        ours = water_pressure_pa(hcl_percent=0, temperature_c=celsius)
        assert ours == pytest.approx(psychrolib.GetSatVapPres(celsius), rel=3e-4)


def test_known_densities_of_water():
    """Tables of the density of water: 0.999972 at 4 °C, 0.998207 at 20 °C (from memory)."""
    assert density_kg_l(4) == pytest.approx(0.999972, abs=5e-6)
    assert density_kg_l(20) == pytest.approx(0.998207, abs=5e-6)
    assert saturation_pressure_pa(np.float64(373.124)) == pytest.approx(101325, rel=1e-3)


@pytest.mark.parametrize("tell", [hcl_pressure_pa, water_pressure_pa, hcl_pressure])
@pytest.mark.parametrize("percent", [-0.1, 38.1, float("nan")])
def test_outside_is_refused_with_both_mistakes(tell, percent):
    with pytest.raises(Refused) as refused:
        tell(hcl_percent=percent, temperature_c=41)
    assert [mistake.where for mistake in refused.value.mistakes] == ["hcl_percent", "temperature_c"]


@given(PERCENTS, st.floats(0.05, 2), WARMTHS)
def test_stronger_gives_off_more_acid_and_less_water(percent, more, celsius):
    strong = min(percent + more, 38.0)
    if strong - percent < 0.01:
        return
    weak, strong_ = (
        hcl_pressure(hcl_percent=one, temperature_c=celsius) for one in (percent, strong)
    )
    assert strong_.likely_pa > weak.likely_pa
    assert strong_.by_activity_pa > weak.by_activity_pa
    assert strong_.by_handbook_pa > weak.by_handbook_pa
    assert water_pressure_pa(hcl_percent=strong, temperature_c=celsius) < water_pressure_pa(
        hcl_percent=percent, temperature_c=celsius
    )


@given(PERCENTS, st.floats(0, 39), st.floats(0.1, 1))
def test_warmer_gives_off_more_of_both(percent, celsius, more):
    for tell in (hcl_pressure_pa, water_pressure_pa):
        assert tell(hcl_percent=percent, temperature_c=celsius + more) > tell(
            hcl_percent=percent, temperature_c=celsius
        )


@given(PERCENTS, WARMTHS)
def test_the_range_holds_both_ways_with_a_tenth_to_spare(percent, celsius):
    found = hcl_pressure(hcl_percent=percent, temperature_c=celsius)
    for way in (found.by_activity_pa, found.by_handbook_pa):
        assert found.low_pa <= way * 0.9 * (1 + 1e-12)
        assert found.high_pa >= way * 1.1 * (1 - 1e-12)
    middle = (found.by_activity_pa * found.by_handbook_pa) ** 0.5
    ends = sorted((middle, found.by_handbook_pa))
    assert ends[0] * (1 - 1e-9) <= found.likely_pa <= ends[1] * (1 + 1e-9)
    if percent <= 6:
        assert found.likely_pa == pytest.approx(middle, rel=1e-9)
    if percent >= 12:
        assert found.likely_pa == pytest.approx(found.by_handbook_pa, rel=1e-9)


def test_gibbs_and_duhem_hold_at_every_temperature():
    """m·d ln(p_acid) + 55.5·d ln(p_water) = 0 along strength, at 25 °C and carried by heats."""
    percent = np.linspace(2, 38, 20001)
    molal = percent / (100 - percent) / 0.036458
    middle = (molal[1:] + molal[:-1]) / 2
    for celsius in (0.0, 25.0, 40.0):
        acid = vapour._ln_by_activity(percent, np.float64(celsius + 273.15))
        water = np.log(water_pressure_pa(hcl_percent=percent, temperature_c=celsius))
        lost = middle * np.diff(acid) + np.diff(water) * 1000 / 18.015
        assert np.abs(lost).max() < 1e-6 * np.abs(middle * np.diff(acid)).max()
