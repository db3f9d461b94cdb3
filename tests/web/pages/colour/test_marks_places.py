"""Places of marks as they are typed and told, in feet and in metres."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.web.pages.colour.marks_places import off_told, place_of, place_told


@pytest.mark.parametrize(
    ("text", "units", "metres"),
    [
        ("10", "us", 3.048), ("10", "metric", 10.0), ("2,5", "metric", 2.5), ("3.81 m", "us", 3.81),
        ("12' 6\"", "us", 3.81), ("-4", "us", -1.2192), ("\N{MINUS SIGN}4 m", "us", -4.0),
        ("far", "us", None), ("", "metric", None), ("nan", "metric", None), ("1e9", "metric", None),
    ],
)  # fmt: skip
def test_a_bare_number_is_of_the_jobs_unit(text, units, metres):
    assert place_of(text, units) == pytest.approx(metres)


@given(st.floats(-900, 900), st.sampled_from(["us", "metric"]))
def test_what_a_blank_shows_is_read_back_as_the_same_place(metres, units):
    assert place_of(place_told(metres, units), units) == pytest.approx(metres, abs=0.001)


def test_how_far_off_is_said_in_the_jobs_unit():
    assert (off_told(25.4, "us"), off_told(25.4, "metric")) == ("1.0 in", "25 mm")
