"""A pattern against a text: by hand, and against a regular expression that says the same."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.phrasebook.patterns import pattern_of


@pytest.mark.parametrize(
    ("english", "text", "parts"),
    [
        ("{#1} in {1}", "3.5 to 4 gal in the tub", ("3.5 to 4 gal", "the tub")),
        ("{#1} in {1}", "some in the tub", None),
        ("field {#1} {#2}", "field 2 7:33", ("2", "7:33")),
        ("field {#1} {#2}", "field 2 gal", None),
        ("{1}, {2}", "a, b, c", ("a", "b, c")),
        ("{@1} of {@2}", "Hall of  of Bath", ("Hall", " of Bath")),
        ("{&1} is new", "survey.rooms is new", ("survey.rooms",)),
        ("wait {1}", "wait ", None),
        ("{1} and {2}", "this and that", ("this", "that")),
        ("{1}.", "..", (".",)),
        ("a{1}a", "a", None),
    ],
)
def test_by_hand(english, text, parts):
    assert pattern_of(english, "").parts_of(text) == parts


@given(
    st.lists(st.sampled_from(["a", "b", ", ", " and ", ""]), min_size=2, max_size=5),
    st.text("ab, nd", max_size=14),
)
def test_places_of_any_text_are_filled_as_a_regular_expression_fills_them(literals, text):
    english = "".join(
        f"{one}{{{n}}}" if n < len(literals) - 1 else one for n, one in enumerate(literals)
    )
    source = "(.+?)".join(re.escape(one) for one in literals)
    found = re.fullmatch(source, text, re.DOTALL)
    assert pattern_of(english, "").parts_of(text) == (found.groups() if found else None)
