"""Samples that contradict themselves or each other, each mistake in its place."""

import pytest

from farwall.readers.sample_sense import Around, sample_mistakes

AROUND = Around(
    rooms=("hall", "closet"), coats=("first", "second"), stains=("dark", "light"),
    told_coats={"first": {"stain": "dark", "cut": "1:1"}, "second": {"stain": "light"}},
    told_stains={"dark": {"density_kg_l": 1.2}, "light": {}},
)  # fmt: skip
WEIGHED = {"area_m2": 0.5, "sprayer_before_kg": 3.11, "sprayer_after_kg": 3.0}
"""0.11 kg of 1:1 at 1.1 kg/L on half a square metre: 5 m²/L."""


def found(*rows):
    placed = [(("samples", n), row) for n, row in enumerate(rows)]
    return [(one.where, one.what) for one in sample_mistakes(placed, AROUND)]


def test_a_ladder_in_order_is_left_alone():
    assert found(
        {"id": "A", "coat": "first", "room": "closet", "cut": "1:4", "stain": "dark", **WEIGHED},
        {"id": "B", "over": "A", "room": "closet", "cut": "1:2", "approved_on": "2026-05-01"},
        {"id": "C", "over": "B"},
        {"id": "D", "over": "A"},
    ) == []  # fmt: skip


@pytest.mark.parametrize(
    ("row", "where", "words"),
    [
        ({"room": "attic"}, "room", 'no room "attic"'),
        ({"coat": "third"}, "coat", 'no coat "third"'),
        ({"stain": "drak"}, "stain", 'no stain "drak"'),
        ({"cut": "2 to 1"}, "cut", "not a cut"),
        ({"over": "Z"}, "over", 'no sample "Z"'),
        ({"over": "A"}, "over", "over itself"),
        ({"coat": "first", "stain": "light"}, "stain", 'its coat "first" is of "dark"'),
        ({"sprayer_before_kg": 2.0, "sprayer_after_kg": 2.0}, "sprayer_after_kg", "2 kg before"),
        ({"approved_on": "12/5/26"}, "approved_on", "not a day"),
    ],
)
def test_each_mistake_in_its_place(row, where, words):
    ((place, what),) = found({"id": "A", **row})
    assert place == f"samples[0].{where}"
    assert words in what


def test_each_of_a_ring_is_told_and_what_lies_on_it_is_not():
    ring = [{"id": "A", "over": "C"}, {"id": "B", "over": "A"}, {"id": "C", "over": "B"}]
    places = [place for place, _ in found(*ring, {"id": "D", "over": "A"})]
    assert places == ["samples[0].over", "samples[1].over", "samples[2].over"]


def test_a_square_lies_in_one_room():
    ((place, _),) = found({"id": "A", "room": "hall"}, {"id": "B", "over": "A", "room": "closet"})
    assert place == "samples[1].room"


@pytest.mark.parametrize(
    ("told", "asked"),
    [
        ({"m2_per_l": 5.4, "laid_ml": 100.0}, 0),
        ({"m2_per_l": 5.6, "laid_ml": 100.0}, 1),
        ({"laid_ml": 100.0, **WEIGHED}, 0),
        ({"laid_ml": 125.0, **WEIGHED}, 1),
        ({"m2_per_l": 3.0, "laid_ml": 100.0, **WEIGHED}, 2),
    ],
)
def test_coverage_told_twice_is_asked_about_beyond_a_tenth(told, asked):
    rows = found({"id": "A", "coat": "first", "area_m2": 0.5, **told})
    assert [place.partition(".")[0] for place, _ in rows] == ["samples[0]"] * asked
    assert all(place.endswith(("laid_ml", "sprayer_after_kg")) for place, _ in rows)


def test_a_density_that_no_sheet_told_leaves_its_own_room():
    """1:1 of 1.05 to 1.33 kg/L is 1.025 to 1.165: 0.11 kg are 4.66 to 5.30 m²/L; a tenth more."""
    light = {"id": "A", "coat": "second", "cut": "1:1", **WEIGHED}
    assert found({**light, "m2_per_l": 5.80}) == []
    assert len(found({**light, "m2_per_l": 5.86})) == 1
    dark = {**light, "coat": "first"}
    assert len(found({**dark, "m2_per_l": 5.80})) == 1


@pytest.mark.parametrize("spoilt", ["", None, True, "text", -3, 0, [1], {"a": 1}])
def test_spoilt_figures_are_left_to_the_reader_of_shapes(spoilt):
    keys = ("m2_per_l", "area_m2", "laid_ml", "sprayer_before_kg", "sprayer_after_kg")
    assert found({"id": "A", **dict.fromkeys(keys[:3], spoilt)}) == []


@pytest.mark.parametrize("spoilt", ["", None, True, -3, [1], {"a": 1}])
def test_names_that_are_no_text_are_left_to_it_too(spoilt):
    keys = ("coat", "room", "stain", "cut", "over", "approved_on")
    assert found({"id": "A", **dict.fromkeys(keys, spoilt)}) == []
