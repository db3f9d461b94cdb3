"""Openings and air surfaces: leaf or none, inside or outside, upright or flat."""

import pytest
from tests.readers.gbxml.small import DOOR, TWO, flat, gbxml, opening, planar, surface, upright

from farwall.readers.gbxml.openings import Ways, ways_of
from farwall.readers.gbxml.spaces import spaces_of
from farwall.readers.gbxml.units import units_of
from farwall.readers.xml_text import parse_xml


def read(surfaces: str, spaces: str = TWO) -> Ways:
    root = parse_xml(gbxml(spaces, surfaces))
    units = units_of(root)
    return ways_of(root, units, spaces_of(root, units).pieces)


@pytest.mark.parametrize(
    ("kind", "leaf"), [("NonSlidingDoor", True), ("SlidingDoor", True), ("Air", False)]
)
def test_doors_have_a_leaf_and_air_has_none(kind: str, leaf: bool) -> None:
    ways = read(surface("InteriorWall", ["a", "b"], opening(kind, planar(DOOR))))
    (way,) = ways.openings
    assert (way.leaf, way.relations, way.said_outside) == (leaf, ("a", "b"), False)
    assert (way.width_m, way.height_m, way.foot_m) == (0.9, 2.03, 0)
    assert way.seam == ((4.1, 1), (4.1, 1.9))


def test_a_door_in_an_outside_wall_leads_outside() -> None:
    face = upright((1, 0), (1.9, 0), 0, 2)
    ways = read(surface("ExteriorWall", ["a"], opening("NonSlidingDoor", planar(face))))
    assert ways.openings[0].said_outside is True
    unsure = read(surface("InteriorWall", ["a"], opening("NonSlidingDoor", planar(face))))
    assert unsure.openings[0].said_outside is None


def test_a_door_that_nothing_places_keeps_its_relations() -> None:
    (way,) = read(surface("InteriorWall", ["a", "b"], opening("NonSlidingDoor", ""))).openings
    assert (way.seam, way.relations) == (None, ("a", "b"))


def test_windows_have_sill_and_height() -> None:
    face = upright((1, 0), (2, 0), 0.9, 2.1)
    ways = read(surface("ExteriorWall", ["a"], opening("OperableWindow", planar(face))))
    (window,) = ways.windows
    assert (window.sill_m, window.height_m, window.room) == (0.9, 1.2, "a")
    assert ways.left == []


def test_a_window_to_the_floor_may_be_a_door_and_is_said() -> None:
    face = upright((1, 0), (2, 0), 0, 2.1)
    ways = read(surface("ExteriorWall", ["a"], opening("FixedWindow", planar(face))))
    assert [note.code for note in ways.left] == ["window-to-the-floor"]


def test_skylights_and_strange_kinds_are_counted() -> None:
    inner = opening("FixedSkylight", planar(flat(1, 1, 2, 2, 2.5))) + opening("Portal", "")
    ways = read(surface("Roof", ["a"], inner))
    assert [note.what for note in ways.left] == [
        "1 × opening of the kind portal left aside.",
        "1 × skylight left aside.",
    ]


def test_an_air_surface_is_an_opening_and_one_room_is_asked() -> None:
    ways = read(surface("Air", ["a", "b"], planar(upright((4.1, 0), (4.1, 3), 0, 2.5))))
    (way,) = ways.openings
    assert (way.leaf, way.relations, way.width_m) == (False, ("a", "b"), 3)
    assert [note.code for note in ways.asks] == ["one-room"]
    assert "“Hall” and “Bath”" in ways.asks[0].what
    assert ways.asks[0].where == (4.1, 1.5)


def test_air_that_lies_flat_is_a_void_and_no_opening() -> None:
    ways = read(surface("Air", ["a", "b"], planar(flat(0, 0, 1, 3, 2.5))))
    assert ways.openings == []
    assert [note.code for note in ways.left] == ["open-through-floor"]
    assert [note.code for note in ways.asks] == ["one-room"]


def test_air_with_one_known_room_is_counted() -> None:
    ways = read(surface("Air", ["a", "nobody"], planar(upright((0, 0), (1, 0), 0, 2))))
    assert (ways.openings, ways.asks) == ([], [])
    assert "air surface" in ways.left[0].what
