"""Fixtures along the walls are kept dry; shelves, overhangs and symbols are told instead."""

from pathlib import Path
from typing import Any

import pytest
from tests.readers.dxf.test_read import lines, sheet

from farwall.readers.any_plan import read_plan

HOUSE = (
    Path(__file__).parents[2] / "published" / "data" / "plans" / "single_storey_house_inches.dxf"
)
IN = 0.0254


def room_with_a_door(space: Any, name: str) -> None:
    """4 × 3 m, a way out at the lower left, a name in the middle."""
    lines(space, "WALL", (1.2, 0), (4, 0), (4, 3), (0, 3), (0, 0), (0.3, 0))
    lines(space, "WALL", (1.2, 0), (1.2, -0.1), (4.1, -0.1), (4.1, 3.1), (-0.1, 3.1), (-0.1, -0.1))
    lines(space, "WALL", (-0.1, -0.1), (0.3, -0.1), (0.3, 0))
    space.add_text(name, height=0.2).set_placement((1.5, 1.2))


@pytest.mark.parametrize(
    ("name", "corners", "kind", "area"),
    [
        ("KITCHEN", [(4, 2.4), (0.5, 2.4), (0.5, 3)], "cabinet", 3.5 * 0.6),
        ("BATH", [(2.2, 3), (2.2, 2.5), (4, 2.5)], "cabinet", 1.8 * 0.5),
        ("KITCHEN", [(2, 1), (3.2, 1), (3.2, 1.8), (2, 1.8), (2, 1)], "island", 0.96),
    ],
)
def test_casework_along_the_walls_by_hand(
    name: str, corners: list[tuple[float, float]], kind: str, area: float
) -> None:
    def draw(space: Any) -> None:
        room_with_a_door(space, name)
        lines(space, "CASEWORK", *corners)

    reading = sheet(draw)
    (fixture,) = reading.floor.fixtures
    assert fixture.kind == kind
    assert fixture.polygon.shape.area == pytest.approx(area)
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert "fixtures-to-check" in {note.code for note in reading.left}


@pytest.mark.parametrize(
    ("name", "code"), [("CLOSET", "shelves"), ("PANTRY", "shelves"), ("KITCHEN", "overhang")]
)
def test_shelves_and_overhangs_are_told_and_sprayed_under(name: str, code: str) -> None:
    def draw(space: Any) -> None:
        room_with_a_door(space, name)
        lines(space, "CASEWORK", (0, 2.7), (4, 2.7))

    reading = sheet(draw)
    assert reading.floor.fixtures == ()
    assert code in {note.code for note in reading.left}


def test_dashed_casework_hangs_overhead() -> None:
    def draw(space: Any) -> None:
        room_with_a_door(space, "KITCHEN")
        space.doc.linetypes.add("HIDDEN", [0.2, 0.1, -0.1])
        space.add_line((0, 2.4), (4, 2.4), dxfattribs={"layer": "CASE", "linetype": "HIDDEN"})

    assert sheet(draw).floor.fixtures == ()


def test_casework_that_would_block_the_door_is_no_fixture() -> None:
    """A line across the whole room would leave a door on each side of it."""

    def draw(space: Any) -> None:
        lines(space, "WALL", (1.2, 0), (4, 0), (4, 1.0))
        lines(space, "WALL", (4, 2), (4, 3), (0, 3), (0, 0), (0.3, 0))
        lines(space, "CASEWORK", (0, 0.6), (4, 0.6))
        space.add_text("KITCHEN", height=0.2).set_placement((1.5, 1.2))

    reading = sheet(draw)
    assert len(reading.exits) == 2
    assert reading.floor.fixtures == ()
    assert "casework-unclear" in {note.code for note in reading.left}


def test_symbols_are_counted_by_their_name() -> None:
    def draw(space: Any) -> None:
        room_with_a_door(space, "BATH")
        bowl = space.doc.blocks.new("WC")
        bowl.add_lwpolyline([(-0.2, 0), (0.2, 0), (0.2, 0.7), (-0.2, 0.7)], close=True)
        for x in (1.5, 3.0):
            space.add_blockref("WC", (x, 2.0), dxfattribs={"layer": "A-FIXT"})

    (note,) = [note for note in sheet(draw).left if note.code == "symbol"]
    assert note.what.startswith("2 × symbol “WC”")


def test_the_real_house_has_two_tubs_and_its_cabinets() -> None:
    """Tubs 60 in along the wall, 30 in deep and a 2 in front: drawn so, lettered nowhere."""
    fixtures = read_plan(HOUSE).floor.fixtures
    tubs = [f.polygon.shape.area for f in fixtures if f.kind == "tub"]
    assert tubs == pytest.approx([60 * 32 * IN**2] * 2, rel=0.01)
    cabinets = sorted(f.polygon.shape.area / IN**2 for f in fixtures if f.kind == "cabinet")
    # By hand from the drawn corners: 24 × 24; 24 × 33; vanity 84 × 24; a U 24 in deep.
    kitchen = 24 * (144 + 61.42 + 48)
    assert cabinets[:3] == pytest.approx([576, 792, 2016], rel=0.005)
    assert cabinets[3] == pytest.approx(kitchen, rel=0.005)
