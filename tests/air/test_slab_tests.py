"""How many slab tests an area asks for, by hand and by law."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.slab_tests import (
    UG_M2_S_PER_LB,
    moisture_tests_by_area,
    readings_by_area,
    sheets_by_area,
)
from farwall.units import M2_PER_FT2

BY_AREA = {"tests": moisture_tests_by_area, "readings": readings_by_area, "sheets": sheets_by_area}


@pytest.mark.parametrize(
    ("area_ft2", "tests", "readings", "sheets"),
    [(500, 3, 2, 1), (501, 3, 4, 2), (1000, 3, 4, 2), (1001, 4, 6, 3), (3200, 6, 14, 7)],
)
def test_counts_by_hand(area_ft2, tests, readings, sheets):
    """By hand: 3 + 1 for each further thousand or part; two, and one, for each 500 or part."""
    area_m2 = area_ft2 * M2_PER_FT2
    assert moisture_tests_by_area(area_m2) == tests
    assert readings_by_area(area_m2) == readings
    assert sheets_by_area(area_m2) == sheets


@given(st.floats(0.1, 5000), st.floats(0, 500), st.sampled_from(sorted(BY_AREA)))
def test_more_floor_never_asks_for_fewer(area_m2, more_m2, name):
    count = BY_AREA[name]
    assert 1 <= count(area_m2) <= count(area_m2 + more_m2)


def test_a_pound_in_si_by_hand():
    """By hand: 0.45359237 kg over 92.90304 m² and 86 400 s."""
    assert pytest.approx(0.45359237e9 / 92.90304 / 86_400) == UG_M2_S_PER_LB
