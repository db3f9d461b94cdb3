"""kg of base for hydrochloric acid, computed with chempy 0.10.2 from the same molar masses."""

import pytest
from tests.job.sums.sums import reckon
from tests.published.tables import table

ROWS = table("neutralisation_equivalents")


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["formula"])
def test_kilograms_for_a_kilogram_of_acid_and_for_a_gallon(row):
    """Four decimals are printed: to their last digit."""
    found = reckon("neutraliser", base=row["formula"], hcl_kg=1)
    assert found["base_kg"] == pytest.approx(float(row["kg_base_per_kg_HCl"]), abs=0.00015)
    assert found["co2_kg"] == pytest.approx(float(row["kg_CO2_per_kg_HCl"]), abs=0.00015)
    printed = float(row["equivalent_mass_g_per_mol_HCl"])
    assert found["equivalent_mass_g_per_mol"] == pytest.approx(printed, abs=0.0006)
    gallon = reckon("neutraliser", base=row["formula"], acid_gal=1, baume=20)
    assert gallon["base_kg"] == pytest.approx(
        float(row["kg_base_per_US_gal_20Be_acid"]), abs=0.0015
    )
