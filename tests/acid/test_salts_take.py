"""Base that the salts of a stain take, by hand; what cannot be counted is told."""

import pytest

from farwall.acid.masses import WATER_G_MOL
from farwall.acid.salts_take import TAKES, salts_taken
from farwall.facts.contents import Content


def test_iron_chloride_by_hand():
    """20 % FeCl3 in 1.3 kg/L is 260 g/L over 162.2 g/mol, three times: 4.81 mol/L; as crystals with
    six waters, 270.3 g/mol, 2.89."""
    found = salts_taken([Content("iron(III) chloride", 20, 20)], (1.3, 1.3))
    assert found.high_mol_l == pytest.approx(4.81, abs=0.01)
    assert found.low_mol_l == pytest.approx(2.89, abs=0.01)
    assert found.not_counted == ()


def test_an_open_end_counts_as_the_end_that_is_told_and_is_named():
    found = salts_taken([Content("copper(II) chloride", 10, None)], (1.2, 1.3))
    assert found.low_mol_l == pytest.approx(0.1 * 1200 / 170.476 * 1.5, rel=1e-4)
    assert found.high_mol_l == pytest.approx(0.1 * 1300 / 134.446 * 2, rel=1e-4)
    assert found.not_counted == ("copper(II) chloride above 10 %",)


def test_manganese_may_take_none_by_ph_eight():
    assert salts_taken([Content("manganese(II) chloride", 15, 20)], (1.2, 1.3)).low_mol_l == 0


def test_the_unknown_is_named_and_not_guessed():
    found = salts_taken([Content("other", 5, 10), Content("other oxidiser")], (1.2, 1.3))
    assert found.high_mol_l == 0
    assert found.not_counted == ("other", "other oxidiser")


@pytest.mark.parametrize(
    ("substance", "dry_g_mol", "crystals_g_mol"),
    [
        ("iron(II) chloride", 126.75, 198.81),
        ("iron(III) chloride", 162.20, 270.30),
        ("manganese(II) chloride", 125.84, 197.90),
        ("copper(II) chloride", 134.45, 170.48),
        ("copper(II) sulfate", 159.61, 249.68),
        ("chromium(III) chloride", 158.35, 266.44),
        ("sodium dichromate", 261.97, 298.00),
        ("potassium dichromate", 294.18, 294.18),
        ("calcium chloride", 110.98, 147.01),
        ("ammonium chloride", 53.49, 53.49),
        ("phosphoric acid", 97.99, 97.99),
        ("nitric acid", 63.01, 63.01),
        ("sulfuric acid", 98.08, 98.08),
        ("hydrogen peroxide", 34.01, 34.01),
    ],
)
def test_masses_of_dry_substances_and_their_crystals(substance, dry_g_mol, crystals_g_mol):
    """Formula masses as every handbook has them, from memory; a hundredth is the last figure."""
    taking = TAKES[substance]
    assert taking.g_mol == pytest.approx(dry_g_mol, abs=0.02)
    assert taking.g_mol + taking.waters * WATER_G_MOL == pytest.approx(crystals_g_mol, abs=0.03)


@pytest.mark.parametrize(
    ("substance", "least", "most"),
    [
        ("iron(II) chloride", 0, 2),
        ("iron(III) chloride", 3, 3),
        ("manganese(II) chloride", 0, 2),
        ("copper(II) chloride", 1.5, 2),
        ("copper(II) sulfate", 1.5, 2),
        ("chromium(III) chloride", 3, 3),
        ("calcium chloride", 0, 2),
    ],
)
def test_no_salt_takes_more_base_than_its_acid_can_hold_by_hand(substance, least, most):
    """By hand, a law of charge: what is left dissolved is common salt, one base to each chloride,
    two to a sulfate, whether the metal falls as hydroxide, as carbonate or, by air, as rust. Iron:
    4 Fe(II) + O2 + 8 OH + 2 H2O are 4 Fe(OH)3, two to each. Basic copper salts keep a quarter."""
    taking = TAKES[substance]
    assert (taking.least, taking.most) == (least, most)
    charge = {"chloride": {"(II)": 2, "(III)": 3, "calcium": 2}, "sulfate": {"(II)": 2}}
    told = charge[substance.split()[-1]]
    assert taking.most == next(value for key, value in told.items() if key in substance)


@pytest.mark.parametrize(
    ("substance", "least", "most"),
    [
        ("nitric acid", 1, 1),
        ("sulfuric acid", 2, 2),
        ("phosphoric acid", 1, 2),
        ("sodium dichromate", 2, 2),
        ("potassium dichromate", 2, 2),
        ("hydrogen peroxide", 0, 0),
    ],
)
def test_acids_take_base_for_each_hydrogen_that_is_gone_by_ph_eight_by_hand(substance, least, most):
    """By hand: phosphoric acid's second hydrogen goes at pH 7.2, its third at 12.3; dichromate and
    two of base are two chromate; peroxide is no acid there."""
    assert (TAKES[substance].least, TAKES[substance].most) == (least, most)
