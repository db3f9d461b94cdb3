"""Coats, fields and bands by numbers, and back."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.papers.invented_plan import small_house

from farwall.facts.numbered import by_number, named, stain_named

COATS = ("first", "first.wash", "2")


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("first", "1"),
        ("first.3", "1.3"),
        ("first.3.14", "1.3.14"),
        ("first.wash", "2"),
        ("first.wash.1", "2.1"),
        ("2.5", "3.5"),
        ("another.1", "another.1"),
        ("firsts", "firsts"),
        ("", ""),
    ],
)
def test_by_number(name, told):
    assert by_number(COATS, name) == told


@pytest.mark.parametrize(
    ("told", "name"),
    [
        ("1", "first"),
        ("1.3.14", "first.3.14"),
        ("first.3", "first.3"),
        ("2.5", "2.5"),  # an id before a number: what the file says counts
        ("3.5", "2.5"),
        ("4.1", "4.1"),
        ("0", "0"),
        ("hall", "hall"),
        ("²", "²"),
    ],
)
def test_named(told, name):
    assert named(COATS, told) == name


@given(
    st.lists(st.from_regex(r"[a-z]{1,3}(-[0-9])?", fullmatch=True), min_size=1, unique=True),
    st.data(),
)
def test_there_and_back(coats, data):
    coat = data.draw(st.sampled_from(coats))
    tail = data.draw(st.sampled_from(["", ".1", ".2.11"]))
    assert named(coats, by_number(coats, coat + tail)) == coat + tail


def test_a_stain_without_a_name_is_told_by_its_id():
    plan = replace(small_house(), stain_names={"ochre-brown": "ochre, the brown one"})
    assert stain_named(plan, "ochre-brown") == "ochre, the brown one"
    assert stain_named(plan, "another") == "another"
