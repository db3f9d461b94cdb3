"""The picture of a reading: every room named or lettered, kinds told apart, notes as pins."""

from dataclasses import replace
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from tests.shapes import AWKWARD, TWO_ROOMS, Place
from tests.strategies.whole_floors import wholes

from farwall.facts.reading import Note, Reading, Storey
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Floor, Room
from farwall.papers.reading.levels import levels_of
from farwall.papers.reading.picture import reading_svg

SVG = "{http://www.w3.org/2000/svg}"


def reading_of(place: Place) -> Reading:
    return Reading("DXF", "m", "m", 1.0, place.floor, place.exits)


def words_in(svg: str) -> list[str]:
    return [one.text or "" for one in ElementTree.fromstring(svg).iter(f"{SVG}text")]


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_every_room_is_named_with_its_area(place: Place) -> None:
    told = " ".join(words_in(reading_svg(reading_of(place))))
    for room in place.floor.rooms:
        assert room.label in told
        assert f"{room.polygon.shape.area:.1f} m²" in told


@given(wholes())
@settings(deadline=None, max_examples=30)
def test_any_floor_is_drawn(reading: Reading) -> None:
    svg = reading_svg(reading, title="x")
    assert svg == reading_svg(reading, title="x")
    ElementTree.fromstring(svg)


def test_notes_are_pins_by_the_numbers_of_the_list() -> None:
    reading = replace(
        reading_of(TWO_ROOMS),
        mended=(Note("recovered", "…"), Note("gap-closed", "…", (1.0, 1.0))),
        left=(Note("no-leaf", "…", (1.0, 1.0)),),
    )
    told = words_in(reading_svg(reading))
    assert "2" in told
    assert "3" in told
    assert "1" not in told  # a note without a place has no pin


def test_storeys_stand_beside_each_other_the_lowest_first() -> None:
    room = TWO_ROOMS.floor.rooms[0]
    rooms = (replace(room, id="up", storey="b"), replace(room, id="low", storey="a"))
    reading = Reading(
        "IFC",
        "m",
        "m",
        1.0,
        Floor(rooms),
        storeys=(Storey("b", "First", 2.7), Storey("a", "Ground", 0.0)),
    )
    assert [level.name for level in levels_of(reading)] == ["Ground, +0.00 m", "First, +2.70 m"]
    told = words_in(reading_svg(reading))
    assert told.index("Ground, +0.00 m") < told.index("First, +2.70 m")


def test_without_a_scale_no_area_is_told() -> None:
    told = " ".join(words_in(reading_svg(replace(reading_of(TWO_ROOMS), scale_m_per_unit=None))))
    assert "m²" not in told
    assert "No scale" in told


def test_no_room_and_unsound_outlines_are_drawn_all_the_same() -> None:
    assert "0 rooms" in " ".join(words_in(reading_svg(Reading("SVG", "", "", None, Floor(())))))
    bow = PolygonGeometry((((0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 2.0), (0.0, 0.0)),))
    svg = reading_svg(Reading("SVG", "m", "", 1.0, Floor((Room("bow", bow),))))
    assert "bow" in " ".join(words_in(svg))
