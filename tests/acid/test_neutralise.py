"""Doses, gas, heat, and the shares that bring water to a pH."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.acid.bases import BASES
from farwall.acid.equilibrium import equilibrium
from farwall.acid.equilibrium_species import Totals
from farwall.acid.neutralise import (
    acid_of_reading,
    ammonia_ppm,
    dose,
    ph_after,
    share_to_reach,
    warming_k,
)
from farwall.errors import Refused

BASE = st.sampled_from(sorted(BASES))


def test_gas_of_a_gallon_of_trade_acid_by_hand():
    """37.84 mol by 24.055 L/mol at 20 °C: 910 L, a wheelbarrow's room ten times over."""
    found = dose(BASES["NaHCO3"], 37.84, temperature_c=20)
    assert found.co2_l == pytest.approx(910, abs=1)
    assert found.co2_kg == pytest.approx(37.84 * 0.044009, rel=1e-6)
    assert found.base_kg == pytest.approx(3.179, abs=0.001)


@given(BASE, st.lists(st.floats(0, 100), min_size=1, max_size=6))
def test_doses_of_parts_sum_to_the_dose_of_the_whole(formula, parts):
    base = BASES[formula]
    split = [dose(base, one) for one in parts]
    whole = dose(base, sum(parts))
    for what in ("base_kg", "co2_kg", "co2_l", "heat_kj"):
        assert sum(getattr(one, what) for one in split) == pytest.approx(
            getattr(whole, what), abs=1e-9
        )


def test_lime_warms_a_tub_by_hand():
    """10 mol of acid in 10 kg of water: 642.8 kJ over 41.8 kJ/K."""
    assert warming_k(dose(BASES["Ca(OH)2"], 10).heat_kj, 10) == pytest.approx(15.4, abs=0.1)


def test_the_equivalent_dose_of_bicarbonate_stays_below_five_until_the_gas_leaves():
    """N13 and N14 of the reference: 3.895 in fresh fizz, 5.583 at rest."""
    fresh, rested = (
        ph_after("NaHCO3", 0.1, 1.0, way, air_ppm=10**2.62) for way in ("1atm", "open")
    )
    assert fresh.ph == pytest.approx(3.895, abs=0.02)
    assert rested.ph == pytest.approx(5.583, abs=0.02)
    assert fresh.co2_off + fresh.dissolved_carbon == pytest.approx(0.1)


@given(
    st.sampled_from(["NaHCO3", "Na2CO3", "NH3", "Ca(OH)2"]),
    st.floats(4.2, 9.5),
    st.floats(0.02, 1.0),
    st.sampled_from(["1atm", "open"]),
)
def test_the_share_found_gives_the_ph_asked_for(formula, ph, acid_molal, co2):
    share = share_to_reach(BASES[formula], ph, acid_molal=acid_molal, co2=co2)
    if share is not None:
        assert ph_after(formula, acid_molal, share, co2).ph == pytest.approx(ph, abs=0.05)


def test_bicarbonate_never_reaches_eight_in_fresh_fizz():
    assert share_to_reach(BASES["NaHCO3"], 8, acid_molal=0.1, co2="1atm") is None
    assert share_to_reach(BASES["NaHCO3"], 7, acid_molal=0.1, co2="1atm") == pytest.approx(
        3.27, abs=0.05
    )
    assert share_to_reach(BASES["NaHCO3"], 8, acid_molal=0.1, co2="open") == pytest.approx(
        1.009, abs=0.002
    )


def test_lime_overshoots_and_ammonia_does_not():
    assert ph_after("Ca(OH)2", 0.1, 1.1, "closed").ph > 11.5
    assert ph_after("Ca(OH)2", 0.1, 4.0, "closed").ph < 12.6
    assert ph_after("NH3", 0.1, 2.0, "closed").ph < 10


def test_ammonia_over_a_tenth_by_hand():
    """Half of 0.2 mol/kg is free: 0.1/59 atm is 1,700 ppm, past the 300 that endanger life."""
    assert ammonia_ppm(ph_after("NH3", 0.1, 2.0, "closed")) == pytest.approx(1730, abs=40)


def test_sour_water_needs_no_base_to_be_sour():
    assert share_to_reach(BASES["NH3"], 0.5, acid_molal=0.1, co2="closed") == 0.0


@given(st.floats(0.001, 1.0))
def test_a_reading_gives_back_the_acid_that_made_it(molal):
    assert acid_of_reading(equilibrium(Totals(hcl=molal)).ph) == pytest.approx(molal, rel=1e-6)


def test_a_drum_that_reads_two_by_hand():
    """10^-2 over an activity coefficient of 0.91 is 0.0109 mol/kg; a drum of 208 L holds 2.28 mol,
    191 g of bicarbonate."""
    assert acid_of_reading(2.0) == pytest.approx(0.0109, abs=0.0001)
    grams = acid_of_reading(2.0) * 208.2 * BASES["NaHCO3"].equivalent_g
    assert grams == pytest.approx(191, abs=2)


@pytest.mark.parametrize("ph", [-0.5, 4.6, 7])
def test_other_readings_tell_nothing_of_acid(ph):
    with pytest.raises(Refused, match="does not tell"):
        acid_of_reading(ph)
