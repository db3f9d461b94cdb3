"""Coverage and wet film against printed examples and exact units."""

import pytest
from tests.published.tables import table

from farwall.job.sums.arguments import given
from farwall.job.sums.registry import find

ROWS = {row["id"]: row for row in table("coverage_conversions")}


def coverage(**raw):
    asked = find("coverage")
    return asked.reckon(given(asked, raw))


def printed(key):
    return float(ROWS[key]["value"])


def test_c1_a_gallon_at_one_mil_covers_1604_ft2():
    """231 in³ at 1 mil is 1604.1667 ft²; the row prints seven figures."""
    assert coverage(wet_film_mil=1)["ft2_per_gal"] == pytest.approx(printed("C1"), abs=5e-4)


def test_c2_theoretical_spreading_rate_at_65_percent_solids_and_5_mil_dry():
    """The data sheet rounds 1604.17 to 1604 before dividing: 0.011 %."""
    wet_mil = 5.0 / 0.65
    found = coverage(wet_film_mil=wet_mil)["ft2_per_gal"]
    assert found == pytest.approx(printed("C2"), rel=1.2e-4)


def test_c4_a_gallon_over_400_ft2_is_4_thousandths_of_an_inch():
    """Printed as 0.004 in, one figure: half of its last."""
    assert coverage(ft2_per_gal=400)["wet_film_mil"] / 1000 == pytest.approx(
        printed("C4"), abs=5e-4
    )


def test_c5_a_litre_at_a_micrometre_covers_1000_m2():
    assert coverage(wet_film_um=1)["m2_per_l"] == pytest.approx(printed("C5"), rel=1e-12)


@pytest.mark.parametrize(("key", "ft2_per_gal"), [("C6", 200), ("C8", 400), ("C9", 1)])
def test_c6_c8_c9_wet_film_of_a_coverage(key, ft2_per_gal):
    """Five decimals are printed."""
    assert coverage(ft2_per_gal=ft2_per_gal)["wet_film_mm"] == pytest.approx(
        printed(key), abs=5.1e-6
    )


def test_c10_a_litre_on_a_square_metre_is_a_millimetre():
    assert coverage(m2_per_l=1)["wet_film_mm"] == printed("C10")
