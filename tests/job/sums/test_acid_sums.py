"""acid-solution and acid-vapour as a caller sees them: finite, one strength, refused outside."""

import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.sums.sums import reckon

from farwall.errors import Refused
from farwall.job.sums.acid_solution import CARRIED, COLD, NO_DENSITY, READ_AT_60_F
from farwall.job.sums.acid_vapour import STRONG, WEAK

NUMBERS = ("density_kg_l", "molarity", "molality", "baume", "heat_of_dilution_kj_mol")


@given(st.floats(0, 38), st.floats(0, 60))
def test_a_known_strength_is_finite_and_goes_round(percent, celsius):
    found = reckon("acid-solution", hcl_percent=percent, temperature_c=celsius)
    assert all(math.isfinite(found[key]) for key in NUMBERS)
    json.dumps(found, allow_nan=False)
    for key in ("molality", "molarity"):
        back = reckon("acid-solution", temperature_c=celsius, **{key: found[key]})
        assert back["hcl_percent"] == pytest.approx(percent, abs=1e-6)


@given(st.floats(0, 38), st.floats(0, 40))
def test_a_vapour_is_finite_and_lies_in_its_range(percent, celsius):
    found = reckon("acid-vapour", hcl_percent=percent, temperature_c=celsius)
    json.dumps(found, allow_nan=False)
    assert found["low"] <= found["hcl_pressure_pa"] == found["likely"] <= found["high"]
    assert found["ppm_over_liquid"] == pytest.approx(found["hcl_pressure_pa"] / 0.101325)


def test_thin_air_makes_more_ppm_of_the_same_pressure():
    here = reckon("acid-vapour", hcl_percent=20, temperature_c=20)
    high = reckon("acid-vapour", hcl_percent=20, temperature_f=68, pressure_pa=80_000)
    assert high["hcl_pressure_pa"] == pytest.approx(here["hcl_pressure_pa"])
    assert high["ppm_over_liquid"] == pytest.approx(here["ppm_over_liquid"] * 101325 / 80_000)


def test_beyond_38_percent_only_what_is_known_is_told():
    found = reckon("acid-solution", molality=20)
    assert found["density_kg_l"] is None
    assert found["baume"] is None
    assert found["hcl_percent"] == pytest.approx(42.17, abs=0.01)
    assert NO_DENSITY in found["warnings"]
    assert READ_AT_60_F in found["warnings"]


@pytest.mark.parametrize(
    ("words", "name", "told"),
    [
        (CARRIED, "acid-solution", {"hcl_percent": 37.8, "temperature_c": 20}),
        (COLD, "acid-solution", {"hcl_percent": 10, "temperature_c": 3}),
        (WEAK, "acid-vapour", {"hcl_percent": 1, "temperature_c": 20}),
        (STRONG, "acid-vapour", {"hcl_percent": 37, "temperature_c": 20}),
    ],
)
def test_what_is_carried_beyond_its_source_is_said(words, name, told):
    assert words in reckon(name, **told)["warnings"]
    mild = {"hcl_percent": 20, "temperature_c": 20}
    assert words not in reckon(name, **mild)["warnings"]


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("acid-vapour", {"hcl_percent": 39, "temperature_c": 20}),
        ("acid-vapour", {"hcl_percent": 10, "temperature_c": 41}),
        ("acid-vapour", {"hcl_percent": 10}),
        ("acid-solution", {"temperature_c": 20}),
        ("acid-solution", {"hcl_percent": 10, "baume": 10}),
        ("acid-solution", {"hcl_percent": 70}),
        ("acid-solution", {"hcl_percent": 10, "temperature_c": 61}),
        ("acid-solution", {"baume": 24.5}),
        ("acid-solution", {"molarity": 12.9}),
        ("acid-solution", {"hcl_percent": "nan"}),
    ],
)
def test_outside_and_unclear_is_refused(name, told):
    with pytest.raises(Refused):
        reckon(name, **told)
