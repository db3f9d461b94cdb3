import json
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.readers.walk.test_json_walk import TOLD

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.reading_json import reading_json
from farwall.readers.walk.read import read_walk

EXAMPLE = (Path(__file__).parents[3] / "examples" / "walk" / "walk.txt").read_bytes()
SLIPPED = EXAMPLE.replace(b"19' 11 7/8\"", b"20' 11 7/8\"")


def codes(notes):
    return [note.code for note in notes]


def test_the_example_is_a_floor_of_four_rooms_that_closes():
    reading = read_bytes(EXAMPLE)
    assert (reading.format, reading.length_unit, reading.scale_m_per_unit) == ("walk", "ft", 0.3048)
    areas_ft2 = {room["id"]: room["area_ft2"] for room in reading_json(reading)["rooms"]}
    # By hand, from the sizes it was drawn with: 20 x 4, 14 x 13, 11 x 12 less 4 x 3, 7 x 5 ft.
    drawn = {"hall": 80.0, "living-room": 182.0, "bedroom": 120.0, "bath": 35.0}
    assert areas_ft2 == pytest.approx(drawn, rel=0.003)
    assert sorted(one.kind for one in reading.floor.openings) == ["door"] * 3 + ["outside"]
    assert codes(reading.mended) == ["misclosure"] * 4
    assert codes(reading.asks) == ["north", "windows", "water"]
    assert len(reading.exits) == 1


def test_a_foot_too_many_is_named_and_the_floor_stays():
    reading = read_bytes(SLIPPED)
    (ask,) = [one for one in reading.asks if one.code == "measure-again"]
    assert set(codes(reading.asks)) == {"measure-again", "north", "windows", "water"}
    assert ask.what.startswith("Measure wall 2 of Hall again: 20' 11 7/8\" was read, 1")
    assert "too long" in ask.what
    hall = reading.floor.room_by_id["hall"].polygon.shape.area
    assert hall == pytest.approx(read_bytes(EXAMPLE).floor.rooms[0].polygon.shape.area, rel=0.003)


def test_two_walls_that_cannot_be_told_apart_are_both_named():
    reading = read_walk(b"walk\nroom Den\n10', 8', 11', 8'\ndoor at 1' wide 3' to outside")
    (ask,) = [one for one in reading.asks if one.code == "measure-again"]
    assert "wall 1 of Den" in ask.what
    assert "wall 3 of Den" in ask.what
    assert "It may as well be" in ask.what
    assert any("a diagonal from corner" in one.what for one in reading.left)


def test_rooms_not_joined_not_walked_and_no_way_out_are_asked_for():
    text = (
        b"walk\nroom A\n10', 8', 10', 8'\ndoor in wall 1 at 1' wide 3' to C\n"
        b"door in wall 2 at 1' wide 3' to B\nroom B\n10', 8', 10', 8'"
    )
    reading = read_walk(text)
    wanted = {"not-walked", "opening-one-side", "not-joined", "no-way-out"}
    assert set(codes(reading.asks)) == wanted


def test_json_is_known_as_a_walk():
    reading = read_bytes(json.dumps(TOLD).encode())
    assert reading.format == "walk"
    assert "wall-reckoned" in codes(reading.mended)


def test_a_scale_is_not_used_and_that_is_said():
    assert "scale-not-used" in codes(read_walk(EXAMPLE, scale_m_per_unit=1.0).left)


def test_a_room_that_crosses_itself_is_refused_when_it_is_the_only_one():
    text = b"walk\nroom A\n10', left, 4', left, 4', left, 6', 2', 6', left, 4', left, 4', left"
    with pytest.raises(Refused, match="cross"):
        read_walk(text)


@settings(max_examples=150, deadline=None)
@given(
    st.lists(
        st.tuples(st.integers(0, len(EXAMPLE) - 1), st.sampled_from(b"0123456789'\", \nlrw?=\xff")),
        min_size=1,
        max_size=12,
    )
)
def test_a_walk_with_wrong_letters_is_read_or_refused(changes):
    told = bytearray(EXAMPLE)
    for place, letter in changes:
        told[place] = letter
    try:
        reading = read_walk(bytes(told))
    except Refused:
        return
    assert reading.floor.rooms
    assert json.dumps(reading_json(reading), allow_nan=False)
