"""Units typed behind a number: one spelling of each; what is no unit of the blank stays."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.web.pages.typed_units import parted, unit_of, without


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("8 in", "8", "in"), ("8in.", "8", "in"), ("0.5 gpm", "0.5", "gal/min"),
        ("0.5 gallons per minute", "0.5", "gal/min"), ("30 ft2/min", "30", "ft2/min"),
        (" 30 sq. ft/min ", "30", "ft2/min"), ("67F", "67", "f"), ("67 °F", "67", "f"),
        ("-3 deg C", "-3", "c"), ("1,500 sq ft", "1,500", "ft2"),
        ("1,500\u00a0ft²", "1,500", "ft2"),
        ("45%", "45", "%"), ("8 pulgadas", "8", "in"), ("6 días", "6", "days"), ("3m", "3", "m"),
        ("3,9 gal", "3,9", "gal"), ("12", "12", ""), ("", "", ""), ("six", "six", ""),
        ("1 1/2", "1 1/2", ""), (".5 h", ".5", "h"),
    ],
)  # fmt: skip
def test_a_number_and_its_unit_are_parted(text, number, unit):
    assert parted(text) == (number, unit)


def test_minutes_are_not_metres_nor_gallons_litres():
    assert (
        len({unit_of(one) for one in ("m", "min", "mi", "gal", "l", "ml", "m2", "ft", "ft2")}) == 9
    )


def test_only_a_unit_of_the_blank_is_left_out():
    assert without("45 %", ["%"]) == "45"
    assert without("6 weeks", ["days"]) == "6 weeks"
    assert without(" 6 ", ["days"]) == "6"


@given(st.text(max_size=30))
def test_nothing_that_is_typed_breaks_it(text):
    number, unit = parted(text)
    assert number in text
    assert not unit or any(one.isdigit() for one in number)
