"""Units at the root and at single elements, numbers as people type them."""

import pytest

from farwall.readers.gbxml.units import area_at, length_at, metres, number, units_of
from farwall.readers.xml_text import parse_xml


@pytest.mark.parametrize(
    ("length", "area", "expected"),
    [
        ("Meters", "SquareMeters", ("m", 1.0, 1.0)),
        ("Feet", "SquareFeet", ("ft", 0.3048, 0.09290304)),
        ("Inches", "SquareInches", ("in", 0.0254, 0.00064516)),
        ("Millimeters", "SquareMeters", ("mm", 0.001, 1.0)),
        ("Cubits", "", ("", None, None)),
    ],
)
def test_units_at_the_root(
    length: str, area: str, expected: tuple[str, float | None, float | None]
) -> None:
    root = parse_xml(f'<gbXML lengthUnit="{length}" areaUnit="{area}"/>'.encode())
    units = units_of(root)
    assert (units.name, units.length_m, units.area_m2) == expected
    assert units.said == length


def test_an_element_may_say_its_own_unit() -> None:
    root = parse_xml(
        b'<gbXML lengthUnit="Meters"><Area unit="SquareFeet"/><W unit="Feet"/></gbXML>'
    )
    units = units_of(root)
    assert area_at(root.children[0], units) == pytest.approx(0.09290304)
    assert length_at(root.children[1], units) == 0.3048
    assert length_at(root, units) == 1.0
    assert area_at(root, units) == 1.0


@pytest.mark.parametrize("text", ["", "a", "NaN", "inf", "-inf", "1e999", "1 2"])
def test_what_is_no_number_is_none(text: str) -> None:
    assert number(text) is None
    assert metres(text, 1.0) is None


def test_a_comma_is_a_point_and_far_is_too_far() -> None:
    assert number(" 2,5 ") == 2.5
    assert metres("1e7", 0.3048) == pytest.approx(3048000)
    assert metres("1e8", 1.0) is None
