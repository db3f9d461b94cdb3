"""pH of hydrochloric acid with bases, computed with PHREEQC's two databases at 25 °C."""

import pytest
from tests.job.sums.sums import reckon
from tests.published.tables import table

ROWS = table("neutralisation_ph_phreeqc")
AIR_PPM = 10**2.62
"""The rows' air: 10^-3.38 atm, 417 ppm; our own usual air is 425 ppm, 0.008 of a pH below."""


def asked(row):
    told = {"hcl_molal": row["HCl_mol_per_kg_water"], "air_co2_ppm": AIR_PPM}
    if row["added_base"] != "none":
        base, amount, _ = row["added_base"].split()
        told |= {"base": base, "base_molal": amount}
    mode = row["CO2_mode"]
    way = "open" if mode.startswith("open") else "1atm" if "1 atm" in mode else "closed"
    return told | {"co2": way}


PAIRS = [
    pytest.param(row, database, id=f"{row['id']}-{database}")
    for row in ROWS
    for database in ("pH_phreeqc_dat", "pH_pitzer_dat")
    if row[database]
]
"""One database lacks lime beyond what dissolves, the other ammonia."""


@pytest.mark.parametrize(("row", "database"), PAIRS)
def test_within_what_the_two_databases_part_by(row, database):
    """0.1 to an ionic strength of 0.3 mol/kg, 0.2 above: they part by 0.10 and by 0.17."""
    found = reckon("ph", **asked(row))
    allowed = 0.1 if found["ionic_strength_molal"] <= 0.3 else 0.2
    assert found["ph"] == pytest.approx(float(row[database]), abs=allowed)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["id"])
def test_far_nearer_to_the_database_of_the_same_kind(row):
    """Both take Truesdell and Jones' activities: 0.02, so that a wrong constant would show."""
    if row["pH_phreeqc_dat"]:
        found = reckon("ph", **asked(row))["ph"]
        assert found == pytest.approx(float(row["pH_phreeqc_dat"]), abs=0.02)


def test_every_row_is_tried():
    assert len(ROWS) == 45
    assert len(PAIRS) == 2 * 45 - 8
