"""Lengths as people type them: the same cases as the screen's own reader has in `draw.test.ts`."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.units import M_PER_FT as FT
from farwall.units import M_PER_IN as IN
from farwall.web.pages.typed_lengths import length_of

TOLD = [
    ("12' 6 1/2\"", 12 * FT + 6.5 * IN), ("12ft6", 12 * FT + 6 * IN), ("12' 6", 12 * FT + 6 * IN),
    ("12'-6\"", 12 * FT + 6 * IN), ("12′ 6½″", 12 * FT + 6.5 * IN), ("12.5", 12.5 * FT),
    ("12 ft 6 in", 12 * FT + 6 * IN), ('6"', 6 * IN), ("6 1/2 in", 6.5 * IN), ('½"', 0.5 * IN),
    ("12'", 12 * FT), ("3.81 m", 3.81), ("3,81 m", 3.81), ("381cm", 3.81), ("3810 mm", 3.81),
    ("12 pies 6 pulg", 12 * FT + 6 * IN), ("12' 1/4\"", 12 * FT + 0.25 * IN), ("0", 0),
]  # fmt: skip
NONE = ["", " ", "twelve", "-3 m", "12 6", "6 1/0 in", "1/2", "99999 m", "1e3", "12'6'6", "m", "'"]


@pytest.mark.parametrize(("text", "metres"), TOLD)
def test_a_length_is_read_as_it_is_written(text, metres):
    assert length_of(text) == pytest.approx(metres, abs=1e-9)


def test_a_bare_number_is_metres_where_units_are_metric():
    assert length_of("3.81", us=False) == 3.81


@pytest.mark.parametrize("text", NONE)
def test_what_is_no_length_is_none(text):
    assert length_of(text) is None


@given(st.text(alphabet="0123456789 '\"/.,ftinmc½-", max_size=20))
def test_whatever_is_typed_is_a_length_of_a_house_or_none(text):
    found = length_of(text)
    assert found is None or 0 <= found <= 5000
