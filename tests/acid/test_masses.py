"""Molar masses against the sums written out by hand."""

import pytest

from farwall.acid.masses import HCL_G_MOL, WATER_G_MOL, molar_mass_g_mol


def test_sums_written_out():
    assert pytest.approx(36.458) == HCL_G_MOL
    assert pytest.approx(18.015) == WATER_G_MOL
    assert molar_mass_g_mol(Na=1, H=1, C=1, O=3) == pytest.approx(84.006)


def test_an_unknown_element_is_no_zero():
    with pytest.raises(KeyError):
        molar_mass_g_mol(Xx=1)
