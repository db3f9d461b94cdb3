"""JSON text: stricter than the standard library, and calm about it."""

from __future__ import annotations

import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.readers.json_text import inspect, parse, place_text, read_text

plain_json = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-(10**17), 10**17)
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.text("abc äß€", max_size=5),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text("abc", max_size=3), inner),
    max_leaves=15,
)


@given(plain_json)
def test_sound_json_comes_through_as_the_standard_library_reads_it(data):
    text = json.dumps(data)
    parsed = parse(text, about="it")
    assert parsed.data == json.loads(text)
    assert parsed.mistakes == ()


@given(st.text(max_size=40))
def test_any_text_is_json_or_refused_with_its_place(text):
    try:
        parse(text, about="noise")
    except Refused as refusal:
        where = refusal.mistakes[0].where
    else:
        where = ""
    assert where == "" or where.startswith("line ")


def test_a_place_reads_like_people_write_it():
    assert place_text(("floor", "rooms", 2, "polygon")) == "floor.rooms[2].polygon"
    assert place_text((0, "a")) == "[0].a"
    assert place_text(()) == ""
    assert len(place_text(("x" * 500,))) < 70


def test_each_doubled_key_is_named_where_it_stands():
    parsed = parse('{"a": {"b": 1, "b": 2, "c": 3, "c": 4}}', about="it")
    assert [(one.where, one.what) for one in parsed.mistakes] == [
        ("a", "The key `b` is there twice."),
        ("a", "The key `c` is there twice."),
    ]


@pytest.mark.parametrize("text", ["NaN", "-Infinity", "1e999", "9" * 400])
def test_a_number_that_is_none_is_named_and_taken_out(text):
    parsed = parse(f'{{"a": [1, {text}]}}', about="it")
    assert [one.where for one in parsed.mistakes] == ["a[1]"]
    assert parsed.data == {"a": [1, None]}
    assert parsed.spoilt == {("a", 1)}


def test_a_text_that_cannot_be_printed_or_is_endless_is_named():
    parsed = parse(
        json.dumps({"a": "x\ud800", "b": "y\x00", "c": "z" * 30_000, "d\x07": 1}), about=""
    )
    assert len(parsed.mistakes) == 4


def test_line_ends_and_tabs_are_printable():
    assert parse(json.dumps({"a": "one\ntwo\tthree"}), about="").mistakes == ()


@pytest.mark.parametrize("depth", [100, 5000])
def test_nesting_that_only_an_accident_makes_is_refused(depth):
    with pytest.raises(Refused, match="Nested too deeply"):
        parse("[" * depth + "]" * depth, about="it")


def test_values_that_json_does_not_have_are_named():
    assert [one.where for one in inspect({"a": {1, 2}, "b": b"x"}, about="").mistakes] == ["a", "b"]


def test_what_was_handed_over_is_not_changed():
    data = {"a": [math.inf]}
    inspect(data, about="")
    assert data == {"a": [math.inf]}


def test_a_file_that_is_no_text_or_far_too_big_is_refused(tmp_path, monkeypatch):
    path = tmp_path / "job.json"
    path.write_bytes(b"\xff\xfe{")
    with pytest.raises(Refused, match="not UTF-8"):
        read_text(path)
    monkeypatch.setattr("farwall.readers.json_text.MOST_BYTES", 1)
    with pytest.raises(Refused, match="larger than"):
        read_text(path)


@pytest.mark.parametrize(
    ("inside", "remedy"),
    [
        ((), "Name a file."),
        (("plan.json",), "Name the file in it: monday/plan.json."),
        (("job.json", "plan.json"), "Name the file in it: monday/plan.json or monday/job.json."),
    ],
)
def test_a_folder_is_told_to_be_one_with_the_file_in_it(inside, remedy, tmp_path):
    folder = tmp_path / "monday"
    folder.mkdir()
    for name in inside:
        (folder / name).write_text("{}")
    with pytest.raises(Refused) as refused:
        read_text(folder)
    assert str(refused.value.mistakes[0]) == f"This is a folder. {remedy}"
