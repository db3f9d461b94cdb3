"""The handbook's lines by hand."""

import numpy as np
import pytest

from farwall.acid.handbook_vapour import LINES, ln_pressure_pa

HEAT_OF_SOLUTION_J_MOL = 74_840


def test_a_line_by_hand():
    """20 %, 25 °C: 10.3833 - 3245/298.15 = -0.5005; 10^-0.5005 = 0.3159 mmHg = 42.1 Pa."""
    a, b = LINES[20]
    pressure = np.exp(ln_pressure_pa(np.float64(a), np.float64(b), np.float64(298.15)))
    assert pressure == pytest.approx(42.1, abs=0.05)


def test_weak_lines_climb_by_more_than_the_heat_of_solution_allows():
    """What the module says of them: below 10 % B·2.303·R is above the heat of solution."""
    slopes = {percent: b * 2.302585 * 8.314 for percent, (_, b) in LINES.items()}
    assert all(slopes[p] > HEAT_OF_SOLUTION_J_MOL for p in (2, 4, 6, 8))
    assert all(slopes[p] < HEAT_OF_SOLUTION_J_MOL for p in slopes if p > 10)


def test_lines_fall_in_slope_with_strength():
    slopes = [b for _, b in LINES.values()]
    assert slopes == sorted(slopes, reverse=True)
