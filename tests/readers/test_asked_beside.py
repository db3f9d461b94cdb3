"""Sun, air and water are asked for once, by whichever reader, and only while they are not told."""

from dataclasses import replace

import pytest

from farwall.facts.reading import Note, Reading
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Fixture, Floor, Room, Window
from farwall.readers.asked_beside import asks_beside

SQUARE = PolygonGeometry((((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (0.0, 0.0)),))
ROOM = Room("den", "Den", SQUARE)


def reading(**told) -> Reading:
    return Reading("DXF", "m", "m", 1.0, Floor((ROOM,), **told))


def codes(one: Reading) -> list[str]:
    return [note.code for note in asks_beside(one)]


def test_a_bare_floor_is_asked_for_all_three():
    assert codes(reading()) == ["north", "windows", "water"]


@pytest.mark.parametrize(
    ("told", "gone"),
    [
        ({"north_deg": 0.0}, "north"),
        ({"windows": (Window(((0.2, 0.0), (0.8, 0.0))),)}, "windows"),
    ],
)
def test_what_is_told_is_not_asked(told, gone):
    assert gone not in codes(reading(**told))


def test_water_names_what_is_missing_and_ends_when_all_is_there():
    fixtures = tuple(Fixture(kind, kind, SQUARE) for kind in ("drain", "tap", "outlet"))
    (note,) = [n for n in asks_beside(reading(fixtures=fixtures[:1])) if n.code == "water"]
    assert note.what == "No outlet, tap is told: say where, for rinsing and the tools."
    assert "water" not in codes(reading(fixtures=fixtures))


def test_a_reader_that_asked_already_is_not_repeated():
    asked = replace(reading(), asks=(Note("windows", "3 of 4 windows come without sill."),))
    assert codes(asked) == ["north", "water"]


def test_without_a_room_nothing_is_asked():
    assert asks_beside(Reading("DXF", "m", "m", 1.0, Floor(()))) == ()
