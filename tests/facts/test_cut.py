"""The cut is always stain to water; what is no cut is refused in words."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.facts.cut import Cut, parse_cut

parts = st.integers(1, 50).map(float)


@pytest.mark.parametrize(
    ("text", "cut"),
    [
        ("1:2", Cut(1, 2)),
        (" 1 : 2 ", Cut(1, 2)),
        ("2:1", Cut(2, 1)),
        ("1:1.5", Cut(1, 1.5)),
        ("1:0", Cut(1, 0)),
        ("neat", Cut(1, 0)),
    ],
)
def test_a_cut_is_stain_then_water(text, cut):
    assert parse_cut(text) == cut


def test_one_to_three_is_a_quarter_stain():
    assert parse_cut("1:3").stain_share == 0.25


@pytest.mark.parametrize(
    "text", ["", "1", "1-2", "0:1", "1:", "1:2:3", "1:-2", "1/2", "1:101", "a:b"]
)
def test_what_is_no_cut_is_refused_with_an_example(text):
    with pytest.raises(Refused, match="1:2 is one of stain to two") as refusal:
        parse_cut(text, where="coats[1].cut")
    assert refusal.value.mistakes[0].where == "coats[1].cut"


@given(parts, parts)
def test_a_cut_comes_back_from_its_text(stain, water):
    assert parse_cut(str(Cut(stain, water))) == Cut(stain, water)


@given(st.text(max_size=30))
def test_any_text_is_a_cut_or_refused(text):
    try:
        share = parse_cut(text).stain_share
    except Refused:
        return
    assert 0 < share <= 1
