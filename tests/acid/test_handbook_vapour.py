"""The handbook's lines by hand."""

import numpy as np
import pytest

from farwall.acid.handbook_vapour import LINE_A, LINE_B, LINES, PERCENTS, ln_pressure_pa

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


def test_the_printed_pressure_of_a_strong_acid():
    """22 % at 30 °C: 1.02 mmHg, as a university's tutorial quotes the handbook."""
    a, b = LINES[22]
    pressure = np.exp(ln_pressure_pa(np.float64(a), np.float64(b), np.float64(303.15)))
    assert pressure / 133.322 == pytest.approx(1.02, abs=0.005)


def test_lines_lie_two_per_cent_apart_and_one_is_left_out():
    assert list(LINES) == [*range(2, 35, 2), 38]
    assert PERCENTS.tolist() == list(LINES)


@pytest.mark.parametrize("celsius", [0, 20, 25, 40, 60])
def test_the_lines_are_one_even_row_at_any_warmth(celsius):
    """A law: more acid, more pressure. From 8 % on the logarithm grows by the same from line to
    line within 0.016, so that a figure wrong in its second place stands out; below, by more, the
    weaker the more, as the pressure of weak acid goes with its molality squared."""
    of = dict(zip(LINES, (a - b / (273.15 + celsius) for a, b in LINES.values()), strict=True))
    steps = np.diff([of[percent] for percent in range(2, 35, 2)])
    even = float(np.median(steps[3:]))
    assert np.abs(steps[3:] - even).max() < 0.016
    assert (np.diff([*steps[:3], even]) < 0).all()
    assert steps[0] < 2.3 * even
    assert 1.8 * even < of[38] - of[34] < 2.2 * even


def test_both_constants_fall_with_strength():
    assert LINE_A.tolist() == sorted(LINE_A.tolist(), reverse=True)
    assert LINE_B.tolist() == sorted(LINE_B.tolist(), reverse=True)
