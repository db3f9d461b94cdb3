"""Water at rest: against PHREEQC, and the laws that hold for every water."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.acid.drawn_water import GIVES, drawn, water_with
from tests.acid.phreeqc import ph_of

from farwall.acid.equilibrium import CO2_WAYS, equilibrium
from farwall.acid.equilibrium_species import Totals
from farwall.errors import Refused

ACID = st.floats(1e-4, 3)
SHARE = st.floats(0, 2)
BASE = st.sampled_from(sorted(GIVES))
WAY = st.sampled_from(CO2_WAYS)


@pytest.mark.parametrize("seed", range(6))
def test_within_a_tenth_of_phreeqc_in_thin_water_and_two_tenths_in_strong(seed):
    """250 drawn waters a seed. The tolerances are what two of PHREEQC's own databases part by."""
    for totals, co2 in drawn(250, seed):
        found = equilibrium(totals, co2=co2, air_ppm=10**2.62)
        theirs, strength = ph_of(totals, co2=co2)
        allowed = 0.1 if strength <= 0.3 else 0.2
        assert found.ph == pytest.approx(theirs, abs=allowed), (totals, co2)


def test_most_agree_far_better_than_that():
    """A factor of two in one constant is 0.3 of a pH: the middle of all must be within 0.01."""
    gaps = sorted(
        abs(equilibrium(totals, co2=co2, air_ppm=10**2.62).ph - ph_of(totals, co2=co2)[0])
        for totals, co2 in drawn(100, 99)
    )
    assert gaps[50] < 0.01


@given(ACID, SHARE, SHARE, BASE, BASE, WAY, st.floats(5, 40))
def test_charge_carbon_calcium_sodium_and_chloride_are_kept(
    hcl, one, two, base, other, co2, temperature_c
):
    if base == other:
        two = 0.0
    totals = water_with(hcl, {base: one, other: two} if two else {base: one})
    if max(vars(totals).values()) > 6:
        return
    found = equilibrium(totals, co2=co2, temperature_c=temperature_c)
    left = vars(found.proof)
    assert max(abs(one) for one in left.values()) < 1e-10, left
    carbon = found.dissolved_carbon + found.co2_off + found.calcite
    assert carbon == pytest.approx(totals.carbon, abs=1e-10)


ANY = st.just(0.0) | st.floats(-9, 0.77).map(lambda power: 10**power)


@given(ANY, ANY, ANY, ANY, ANY, ANY, WAY, st.floats(0, 50), st.floats(10, 1e5))
def test_the_proof_holds_for_any_water_at_all(
    hcl, sodium, calcium, potassium, ammonia, carbon, co2, temperature_c, air_ppm
):
    """Also for soda water: its own acid is weak, and must be within the bracket."""
    totals = Totals(hcl, sodium, calcium, potassium, ammonia, carbon)
    found = equilibrium(totals, co2=co2, temperature_c=temperature_c, air_ppm=air_ppm)
    assert max(abs(one) for one in vars(found.proof).values()) < 1e-10
    assert min(found.species) >= 0


def test_soda_water_under_pressure_by_hand():
    """6 mol/kg: √(10^-6.352·6) is 1.63e-3, pH 2.79; activity coefficients take 0.02 off either."""
    assert equilibrium(Totals(carbon=6.0)).ph == pytest.approx(2.79, abs=0.02)


@given(ACID, st.floats(0, 1.5), st.floats(0.001, 0.5), BASE, WAY)
def test_more_base_never_lowers_the_ph(hcl, share, more, base, co2):
    """Bicarbonate lowers what stands above its own pH near 8, so it is looked at below 7.5; 0.02
    is what more salt alone may take off."""
    less, later = (
        equilibrium(water_with(hcl, {base: each}), co2=co2).ph for each in (share, share + more)
    )
    if base == "NaHCO3" and less > 7.5:
        return
    assert later >= less - 0.02


@given(ACID, st.floats(0, 2), st.sampled_from(["NaHCO3", "Na2CO3", "CaCO3"]))
def test_the_more_gas_leaves_the_higher_the_ph(hcl, share, base):
    """Up to the pH at which the air gives back: there open water lies below shut water."""
    totals = water_with(hcl, {base: share})
    closed, fizzed, rested = (equilibrium(totals, co2=way) for way in CO2_WAYS)
    assert closed.ph <= fizzed.ph + 1e-9
    if rested.co2_off >= 0:
        assert fizzed.ph <= rested.ph + 1e-6


def test_pure_water_is_neutral():
    assert equilibrium(Totals()).ph == pytest.approx(6.9975, abs=0.001)


def test_rain_by_hand():
    """Water at rest with air: √(K1·KH·p) = √(10^(-6.352-1.468)·425e-6) = 10^-5.596."""
    assert equilibrium(Totals(), co2="open").ph == pytest.approx(5.596, abs=0.002)


def test_calcite_dissolves_no_further_than_it_can():
    shut = equilibrium(Totals(calcium=0.01, carbon=0.01))
    assert shut.calcite == pytest.approx(0.00988, abs=0.0001)
    assert shut.ph == pytest.approx(9.91, abs=0.02)


def test_lime_and_calcite_may_lie_together():
    found = equilibrium(Totals(calcium=0.5, carbon=0.2))
    assert found.lime > 0.2
    assert found.calcite > 0.19
    assert found.ph == pytest.approx(12.46, abs=0.01)


def test_amounts_that_are_no_water_are_refused_all_at_once():
    with pytest.raises(Refused) as refused:
        equilibrium(Totals(hcl=-1, sodium=7, carbon=float("nan")), air_ppm=0)
    assert len(refused.value.mistakes) == 4
