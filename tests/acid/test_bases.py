"""Equivalents and heats of the bases; what is no base is refused with its reason."""

import pytest

from farwall.acid.bases import BASES, base_of
from farwall.errors import Refused


def test_a_pound_of_bicarbonate_by_hand():
    """453.6 g over 84.006 g/mol take 5.4 mol: 1.7 L of stain at 3.2 mol/L, as finishers reckon."""
    assert 453.6 / BASES["NaHCO3"].equivalent_g / 3.2 == pytest.approx(1.69, abs=0.01)


@pytest.mark.parametrize(
    ("formula", "kj"),
    [
        ("NaOH", 100.6),
        ("NH3", 52.97),
        ("Ca(OH)2", 64.3),
        ("Na2CO3", 14.7),
        ("NaHCO3", -31.1),
        ("CaCO3", 7.7),
    ],
)
def test_heat_of_a_mole_of_acid_by_hand(formula, kj):
    """Products less reactants, such as -240.34 - 393.51 - 285.83 + 950.81 = 31.13 taken up by
    bicarbonate. Lye: 44.5 of solution and 55.8 of neutralisation are 100.3."""
    assert BASES[formula].heat_kj_equivalent == pytest.approx(kj, abs=0.1)


@pytest.mark.parametrize("said", ["vinegar", "Acetic acid", "citric acid"])
def test_vinegar_is_refused_with_the_reason(said):
    with pytest.raises(Refused, match="acid itself"):
        base_of(said)


def test_bleach_is_refused_with_the_gas_it_gives():
    with pytest.raises(Refused, match="chlorine"):
        base_of("bleach")


@pytest.mark.parametrize(
    ("said", "formula"),
    [("baking soda", "NaHCO3"), ("Soda Ash", "Na2CO3"), ("lime", "Ca(OH)2"), ("nahco3", "NaHCO3")],
)
def test_plain_words_are_known(said, formula):
    assert base_of(said).formula == formula


def test_what_is_unknown_is_refused_with_what_to_take():
    with pytest.raises(Refused, match="Take bicarbonate"):
        base_of("floor wax")


@pytest.mark.parametrize(
    ("formula", "equivalent_g", "gas"),
    [
        ("NaHCO3", 84.007, 1),
        ("Na2CO3", 52.994, 1),
        ("NH3", 17.031, 0),
        ("CaCO3", 50.043, 1),
        ("Ca(OH)2", 37.046, 0),
        ("NaOH", 39.997, 0),
    ],
)
def test_what_takes_a_mole_of_acid_and_the_gas_it_gives_by_hand(formula, equivalent_g, gas):
    """By hand: formula masses by the acid each takes; each carbonate gives one of gas."""
    base = BASES[formula]
    assert base.equivalent_g == pytest.approx(equivalent_g, abs=0.002)
    assert base.kg_per_kg_hcl == pytest.approx(equivalent_g / 36.461, rel=1e-4)
    assert base.gas == gas
