"""Films against the formula's own table, and pigments of a printed table by its published laws."""

import numpy as np
import pytest
from tests.published.tables import table

from farwall.colour.films import film

FUNCTION = table("colour/km_function_values")
PIGMENTS = table("colour/km_pigments_curtis1997")


@pytest.mark.parametrize("row", FUNCTION, ids=lambda row: row["R_inf"])
def test_a_thick_film_has_the_reflectance_of_the_table(row):
    """Kubelka and Munk 1931; K/S = (1 - R)²/2R is printed to six decimals, R is exact."""
    r, rounded = float(row["R_inf"]), 5e-7
    thick = film(float(row["K_over_S"]), 1.0, 1e6)
    assert float(thick.r) == pytest.approx(r, abs=1.05 * rounded * 2 * r**2 / (1 - r**2))


@pytest.mark.parametrize("row", PIGMENTS, ids=lambda row: row["pigment"])
def test_the_film_is_that_of_the_printed_equations(row):
    """R = sinh(bSx)/c and T = b/c, written out as they are printed."""
    for channel in "RGB":
        k, s = float(row[f"K_{channel}"]), float(row[f"S_{channel}"])
        a = 1 + k / s
        b = np.sqrt(a * a - 1)
        c = a * np.sinh(b * s) + b * np.cosh(b * s)
        found = film(k, s, 1.0)
        assert float(found.r) == pytest.approx(np.sinh(b * s) / c, rel=1e-9)
        assert float(found.t) == pytest.approx(b / c, rel=1e-9)
