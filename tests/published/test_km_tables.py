"""Films against the formula's own table, and pigments of a printed table by its published laws."""

import numpy as np
import pytest
from tests.published.tables import table

from farwall.colour.films import film, from_patches, k_over_s, over

FUNCTION = table("colour/km_function_values")
PIGMENTS = table("colour/km_pigments_curtis1997")


@pytest.mark.parametrize("row", FUNCTION, ids=lambda row: row["R_inf"])
def test_k_over_s_of_the_table(row):
    """Kubelka and Munk 1931; six decimals printed."""
    assert float(k_over_s(float(row["R_inf"]))) == pytest.approx(float(row["K_over_S"]), abs=5e-7)


@pytest.mark.parametrize("row", PIGMENTS, ids=lambda row: row["pigment"])
def test_the_pigment_comes_back_from_its_two_patches(row):
    """Curtis and others 1997, section 5.1: K and S found again from a patch on white and black."""
    k = np.array([float(row[f"K_{one}"]) for one in "RGB"])
    s = np.array([float(row[f"S_{one}"]) for one in "RGB"])
    one = film(k, s, 1.0)
    back_k, back_s = from_patches(over(one, 1 - 1e-13), over(one, 0.0))
    assert back_k == pytest.approx(k, rel=1e-3, abs=1e-5)
    assert back_s == pytest.approx(s, rel=1e-3, abs=1e-5)


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
