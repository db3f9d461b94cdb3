"""Base that the salts of a stain take, by hand; what cannot be counted is told."""

import pytest

from farwall.acid.salts_take import salts_taken
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
