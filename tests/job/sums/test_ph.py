"""The sums `ph` and `neutraliser`: refusals, twins, what goes without saying."""

import pytest
from tests.job.sums.sums import reckon

from farwall.errors import Refused


def test_gas_that_is_left_out_is_fresh_fizz_for_what_fizzes_and_shut_in_for_what_does_not():
    soda = reckon("ph", hcl_molal=0.1, base="NaHCO3", base_molal=0.1)
    lime = reckon("ph", hcl_molal=0.1, base="lime", base_molal=0.05)
    assert (soda["co2"], lime["co2"]) == ("1atm", "closed")


def test_the_proof_comes_with_the_answer():
    found = reckon("ph", hcl_molal=0.1, base="NaHCO3", base_molal=0.2, co2="closed")
    assert set(found["left_over_molal"]) >= {"charge", "carbon", "chloride"}
    assert max(abs(one) for one in found["left_over_molal"].values()) < 1e-10


def test_a_shut_vessel_is_warned_of():
    found = reckon("ph", hcl_molal=0.1, base="Na2CO3", base_molal=0.05, co2="closed")
    assert found["co2_atm"] > 1
    assert any("burst" in one for one in found["warnings"])


@pytest.mark.parametrize(
    ("raw", "what"),
    [
        ({"base_molal": 0.1}, "An amount of what"),
        ({"base": "NaHCO3"}, "How much"),
        ({"base": "vinegar", "base_molal": 0.1}, "acid itself"),
        ({"base": "Na2CO3", "base_molal": 5}, "So much"),
        ({"hcl_molal": 7}, "at most 6"),
        ({"hcl_molal": 1, "co2": "half"}, "none of the choices"),
    ],
)
def test_refusals_of_ph(raw, what):
    with pytest.raises(Refused, match=what):
        reckon("ph", **raw)


@pytest.mark.parametrize(
    ("raw", "what"),
    [
        ({"base": "vinegar", "hcl_kg": 1}, "acid itself"),
        ({"base": "NaHCO3", "acid_gal": 1}, "strength of the acid"),
        ({"base": "NaHCO3", "hcl_kg": 1, "baume": 20}, "Leave it out"),
        ({"base": "NaHCO3"}, "start from"),
        ({"base": "NaHCO3", "found_ph": 3}, "How much water"),
        ({"base": "NaHCO3", "found_ph": 6, "water_l": 10}, "does not tell"),
        ({"base": "NaHCO3", "found_ph": 3, "water_l": 10, "baume": 20}, "Leave it out"),
        ({"base": "NaHCO3", "acid_gal": 1, "baume": 30}, "at most 23.5"),
    ],
)
def test_refusals_of_neutraliser(raw, what):
    with pytest.raises(Refused, match=what):
        reckon("neutraliser", **raw)


def test_bicarbonate_cools_the_tub_and_lime_warms_it():
    told = {"hcl_kg": 0.36458, "water_l": 10}
    assert reckon("neutraliser", base="NaHCO3", **told)["warming_k"] == pytest.approx(-7.4, abs=0.1)
    assert reckon("neutraliser", base="Ca(OH)2", **told)["warming_k"] == pytest.approx(
        15.4, abs=0.1
    )
    assert reckon("neutraliser", base="NaHCO3", hcl_kg=1)["warming_k"] is None


def test_twins_agree():
    litres = reckon("neutraliser", base="NaHCO3", acid_l=3.785411784, baume=20)
    assert reckon("neutraliser", base="NaHCO3", acid_gal=1, baume=20) == litres
    assert reckon("ph", hcl_molal=0.1, f=68) == reckon("ph", hcl_molal=0.1, c=20)


def test_a_drum_by_what_its_strip_reads():
    found = reckon("neutraliser", base="NaHCO3", found_ph=2, water_gal=55)
    assert found["base_kg"] == pytest.approx(0.191, abs=0.002)
    assert any("tells the least" in one for one in found["warnings"])


def test_ammonia_that_endangers_life_is_named():
    strong = reckon("ph", hcl_molal=0.1, base="NH3", base_molal=0.2)
    assert any("300 ppm" in one for one in strong["warnings"])
    assert not any("300 ppm" in one for one in reckon("ph", hcl_molal=0.1)["warnings"])


@pytest.mark.parametrize(("base", "kelvin"), [("Na2CO3", 11.4), ("NaHCO3", -7.5)])
def test_a_strong_acid_warms_the_tub_by_its_own_thinning_too(base, kelvin):
    # Hand-worked: 37.84 mol give off 12.98 kJ each when thinned, and 14.67 (soda ash) or -31.1
    # (bicarbonate) with the base, into 18.93 kg of water and 3.01 kg that came with the acid.
    found = reckon("neutraliser", base=base, acid_gal=1, baume=20, water_gal=5)
    assert found["warming_k"] == pytest.approx(kelvin, abs=0.15)


def test_lime_is_told_to_be_hazardous_from_the_very_limit_on():
    """40 CFR 261.22(a)(1): at 12.5 and above, not above it alone."""
    assert "from 12.5 on" in reckon("neutraliser", base="Ca(OH)2", hcl_kg=1)["warnings"][0]
