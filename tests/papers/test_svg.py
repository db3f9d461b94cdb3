"""SVG text: short numbers, nothing that XML forbids."""

from __future__ import annotations

from xml.etree import ElementTree

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.svg import Svg, number, numbers, plain

coordinate = st.floats(-1e5, 1e5) | st.integers(-500, 500).map(lambda hundredths: hundredths / 100)


def test_numbers_are_short():
    assert [number(v) for v in (0.0, -0.0, -0.001, 1.5, 2.0, 3.14159, 10.0, 100.0)] == [
        "0", "0", "0", "1.5", "2", "3.14", "10", "100",
    ]  # fmt: skip


@given(st.lists(st.tuples(coordinate, coordinate), min_size=1))
def test_a_row_of_places_is_written_as_its_numbers_are(places):
    assert numbers(np.array(places)) == " ".join(f"{number(x)},{number(y)}" for x, y in places)


@given(st.text())
def test_an_attribute_comes_back_as_it_was_but_for_what_xml_forbids(text):
    svg = Svg(width=1, height=1, family="x")
    svg.element("path", d=text)
    (node,) = ElementTree.fromstring(svg.document(title="", description="")).iter(
        "{http://www.w3.org/2000/svg}path"
    )
    assert node.get("d") == plain(text)


@given(st.text(max_size=80))
def test_law_any_text_makes_a_file_that_parses_and_says_it(text: str):
    svg = Svg(width=10, height=10, family="sans-serif", ident="t")
    svg.text((1, 2), text, 9)
    root = ElementTree.fromstring(svg.document(title=text, description=text))
    (said,) = [node.text or "" for node in root.iter() if node.tag.endswith("}text")]
    kept = [c for c in text if c.isprintable()]
    # XML reads a carriage return as a line feed; what is printable must survive as it is.
    assert [c for c in said if c.isprintable()] == kept
