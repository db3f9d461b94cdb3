"""Spaces: where their floors come from, what their areas measure, which storey they are on."""

import pytest
from tests.readers.gbxml.small import TWO, flat, gbxml, loop, planar, space

from farwall.readers.gbxml.spaces import Spaces, spaces_of
from farwall.readers.gbxml.units import units_of
from farwall.readers.xml_text import parse_xml


def read(data: bytes) -> Spaces:
    root = parse_xml(data)
    return spaces_of(root, units_of(root))


def codes(found: Spaces) -> list[str]:
    return [note.code for note in (*found.mended, *found.left, *found.asks)]


def shell(*faces: list[tuple[float, float, float]]) -> str:
    told = "".join(map(loop, faces))
    return f"<ShellGeometry><ClosedShell>{told}</ClosedShell></ShellGeometry>"


def test_a_floor_polygon_is_a_room() -> None:
    found = read(gbxml(TWO))
    assert [(r.id, r.name, r.shape.area) for r in found.rooms] == [
        ("a", "Hall", 12),
        ("b", "Bath", pytest.approx(11.4)),
    ]


def test_the_shell_gives_the_height_to_a_polygon_that_lies_in_it() -> None:
    inner = planar(flat(0, 0, 4, 3)) + shell(flat(0, 0, 4, 3), flat(0, 0, 4, 3, 2.4)[::-1])
    (room,) = read(gbxml(space("a", inner))).rooms
    assert room.height_m == pytest.approx(2.4)


def test_a_polygon_that_lies_elsewhere_yields_to_the_shell_and_that_is_said() -> None:
    inner = planar(flat(2, 1, 6, 4)) + shell(flat(0, 0, 4, 3), flat(0, 0, 4, 3, 2.4)[::-1])
    found = read(gbxml(space("a", inner)))
    assert found.rooms[0].shape.bounds == (0, 0, 4, 3)
    assert "polygon-misplaced" in codes(found)
    other = planar(flat(2, 1, 9, 4)) + shell(flat(0, 0, 4, 3), flat(0, 0, 4, 3, 2.4)[::-1])
    assert "two-floors" in codes(read(gbxml(space("a", other))))


def test_a_space_without_a_floor_is_left_out_by_name_and_line() -> None:
    found = read(gbxml(TWO + space("c", "", "Attic")))
    assert len(found.rooms) == 2
    (word,) = [note.what for note in found.left if note.code == "room-without-floor"]
    assert "“Attic” (line 1)" in word


@pytest.mark.parametrize(
    ("gap", "area", "kind"),
    [
        (0.2, "12", "net"),
        (0.2, "11", "net"),
        (0.2, "13", "gross"),
        (0.0, "12", "wall-centre"),
        (0.0, "11", "net"),
    ],
)
def test_the_class_of_a_stated_area_is_seen_by_touch_and_difference(
    gap: float, area: str, kind: str
) -> None:
    """12 m² are drawn. Rooms that touch are drawn to the middle of the walls."""
    one = space("a", planar(flat(0, 0, 4, 3)), area=area)
    other = space("b", planar(flat(4 + gap, 0, 8 + gap, 3)), area=area)
    found = read(gbxml(one + other))
    assert [room.stated.kind for room in found.rooms if room.stated] == [kind, kind]
    assert ("wall-centres" in codes(found)) is (gap == 0)


def test_square_feet_at_the_element() -> None:
    text = '<Area unit="SquareFeet">129.1669</Area>' + planar(flat(0, 0, 4, 3))
    (room,) = read(gbxml(space("a", text))).rooms
    assert room.stated is not None
    assert room.stated.area_m2 == pytest.approx(12, abs=1e-4)


@pytest.mark.parametrize("area", ["NaN", "-3", "0", "lots", "1e300"])
def test_a_stated_area_that_is_none_is_none(area: str) -> None:
    (room,) = read(gbxml(space("a", planar(flat(0, 0, 4, 3)), area=area))).rooms
    assert room.stated is None


def test_a_storey_that_is_not_described_is_made_and_said() -> None:
    inner = planar(flat(0, 0, 4, 3))
    found = read(gbxml(space("a", inner, given='buildingStoreyIdRef="s9"')))
    assert found.rooms[0].storey == "s9"
    assert [s.id for s in found.storeys] == ["s9"]
    assert "storey-unknown" in codes(found)


def test_decks_lie_outdoors() -> None:
    (room,) = read(gbxml(space("a", planar(flat(0, 0, 4, 3)), "Deck"))).rooms
    assert room.outdoors


def test_a_name_that_several_spaces_bear_is_told_with_the_id() -> None:
    inner = planar(flat(2, 1, 6, 4)) + shell(flat(0, 0, 4, 3), flat(0, 0, 4, 3, 2.4)[::-1])
    found = read(gbxml(space("a", inner, "Room") + space("b", planar(flat(9, 0, 12, 3)), "Room")))
    (word,) = [note for note in found.mended if note.code == "polygon-misplaced"]
    assert "“Room a”" in word.what
    assert word.where is not None
