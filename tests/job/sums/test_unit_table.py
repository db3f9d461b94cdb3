from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.job.sums.unit_table import UNITS, converted, of_dimension, unit

names = st.sampled_from(sorted(UNITS))


@given(names, st.data(), st.fractions(-1000, 1000, max_denominator=1000))
def test_there_and_back_is_exact(name, data, value):
    here = UNITS[name]
    there = UNITS[data.draw(st.sampled_from(of_dimension(here.dimension)))]
    if here.dimension == "temperature":
        value = abs(value)
    assert converted(converted(value, here, there), there, here) == value


@given(names, names)
def test_two_dimensions_are_refused(one, other):
    if UNITS[one].dimension != UNITS[other].dimension:
        with pytest.raises(Refused):
            converted(Fraction(1), UNITS[one], UNITS[other])


@pytest.mark.parametrize(
    ("value", "source", "target", "expected"),
    [
        (32, "F", "C", 0),
        (212, "F", "C", 100),
        (-40, "C", "F", -40),
        (70, "F", "C", "190/9"),
        (0, "C", "K", "273.15"),
        (1, "US qt", "L", "0.946352946"),
        (1, "oz", "g", "28.349523125"),
        (1, "ft3", "L", "28.316846592"),
        (1, "cfm", "m3/h", "1.69901079552"),
        (1, "US gal", "US fl oz", 128),
        (1, "yd3", "ft3", 27),
        (1, "mi", "ft", 5280),
        (60, "mph", "ft/s", 88),
        (1, "atm", "Pa", 101325),
        (1, "lb/ft3", "oz/US gal", Fraction(16 * 231, 1728)),
        (1, "d", "min", 1440),
        (1, "kg/L", "g/L", 1000),
        (1, "ug/m2/s", "g/m2/h", "0.0036"),
    ],
)
def test_conversions_by_hand(value, source, target, expected):
    """From the definitions: inch 25.4 mm, gallon 231 in³, pound 0.45359237 kg."""
    assert converted(Fraction(value), UNITS[source], UNITS[target]) == Fraction(expected)


@pytest.mark.parametrize(
    ("source", "target", "printed"),
    [
        # Within half of the last figure. NIST SP 811 appendix B prints these to seven figures.
        ("psi", "Pa", "6894.757"),
        ("lb/US gal", "g/L", "119.8264"),
        ("inHg", "Pa", "3386.389"),
    ],
)
def test_nist_sp811_appendix_b_rounded_factors(source, target, printed):
    half = 0.5 * 10.0 ** -len(printed.partition(".")[2])
    found = float(converted(Fraction(1), UNITS[source], UNITS[target]))
    assert found == pytest.approx(float(printed), abs=half)


@pytest.mark.parametrize(
    ("written", "name"),
    [("°F", "F"), ("degC", "C"), ("US_gal", "US gal"), (" US  gal ", "US gal"), ("ft²", "ft2"),
     ("ft2/gal", "ft2/US gal"), ("µm", "um")],
)  # fmt: skip
def test_other_spellings(written, name):
    assert unit(written).name == name


def test_a_gallon_alone_is_not_clear():
    with pytest.raises(Refused, match="Nearest: US gal, Imperial gal"):
        unit("gal")


def test_below_absolute_zero_is_refused():
    with pytest.raises(Refused, match="absolute zero"):
        converted(Fraction(-274), UNITS["C"], UNITS["F"])
