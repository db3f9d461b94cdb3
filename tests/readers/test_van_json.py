"""A van file: read, written, and every mistake at once."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from farwall.errors import Refused
from farwall.readers.van_json import read_van, used_from, van_from, van_to_text

EXAMPLE = Path(__file__).resolve().parents[2] / "examples" / "van" / "van.json"


def test_the_example_is_read_and_written_back_the_same():
    van = read_van(EXAMPLE)
    assert van_from(json.loads(van_to_text(van))) == van
    assert van.sprayers[0].tank_l == pytest.approx(2 * 3.785411784)  # two gallons, by hand


def mistakes(data):
    with pytest.raises(Refused) as caught:
        van_from(data)
    return [str(one) for one in caught.value.mistakes]


def test_every_mistake_comes_at_once():
    told = mistakes({
        "sprayers": [{"id": "blue", "kind": "steel", "tank_l": -1, "colour": "blue"}],
        "stock": [{"id": "a", "kind": "stain", "amount": 2}],
    })  # fmt: skip
    text = " ".join(told)
    assert len(told) == 4
    for where in ("kind", "tank_l", "colour", "unit"):
        assert where in text


def test_what_makes_no_sense_together_is_told():
    sprayer = {"id": "blue", "kind": "cheap", "tank_l": 7, "uses": 1, "seals_at": 2}
    stock = [{"id": "blue", "kind": "stain", "amount": 2, "unit": "kg"}]
    text = " ".join(mistakes({"sprayers": [sprayer], "stock": stock}))
    assert "2 things have this id" in text
    assert "renewed at use 2" in text
    assert "counted in litres" in text
    assert "which stain" in text


def test_words_of_use():
    used = used_from(["sprayer=blue:0.7", "sprayer=green", "stain=walnut:9.5:7", "tape=40"], "2026")
    assert used.sprayers == ("blue", "green")
    assert used.flows == (("blue", 0.7),)
    assert used.stains == (("walnut", "7", 9.5),)
    assert used.things == (("tape", 40.0),)


def test_words_that_cannot_be_used_are_told_together():
    with pytest.raises(Refused) as caught:
        used_from(["sprayer", "stain=walnut", "tape=much", "film=-2"], "2026")
    assert len(caught.value.mistakes) == 4
