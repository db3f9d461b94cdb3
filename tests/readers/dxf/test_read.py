"""Drawn houses read back: every room with its area, every passage with its kind and sides."""

import io
from collections.abc import Callable
from itertools import pairwise
from typing import Any

import ezdxf
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.drawings import METRES, Manner, Pen, as_bytes, drawn
from tests.strategies.floors import OUTSIDE, House, Passage, houses

from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.floor.thresholds import join_thresholds
from farwall.readers.any_plan import read_bytes

manners = st.builds(
    Manner,
    unit=st.sampled_from(sorted(METRES)),
    wall_layer=st.sampled_from(["A-WALL", "0", "plan$0$A-WALL", "Wände", "walls"]),
    door_layer=st.sampled_from(["A-DOOR", "DOORS", "Türen"]),
    heads=st.booleans(),
    swings=st.booleans(),
    labels=st.booleans(),
    sizes=st.booleans(),
    origin=st.sampled_from([(0.0, 0.0), (-500.0, 300.0), (400_000.0, 5_000_000.0)]),
    turn_deg=st.sampled_from([0.0, 0.0, 90.0, 30.0, 12.5]),
    short_m=st.sampled_from([0.0, 0.0, 0.004]),
)


@given(houses(), manners)
def test_any_drawn_house_reads_back(house: House, manner: Manner) -> None:
    """Areas within 0.1 %: corners are kept to 0.1 mm, and short lines meet where they would."""
    reading = read_bytes(drawn(house, manner))
    wanted = sorted((x1 - x0) * (y1 - y0) for x0, y0, x1, y1 in map(house.box, house.cells))
    found = sorted(room.polygon.shape.area for room in reading.floor.rooms)
    assert found == pytest.approx(wanted, rel=1e-3)
    widths = sorted(opening.width_m or 0 for opening in reading.floor.openings)
    assert widths == pytest.approx(sorted(p.width for p in house.passages), abs=2e-3)
    outside = [o for o in reading.floor.openings if o.kind == "outside"]
    assert len(outside) == len(reading.exits) == 1
    assert faults_of(reading.floor, reading.exits) == []
    assert faults_of(join_thresholds(reading.floor), reading.exits) == []
    if manner.short_m == 0:
        assert "gap-closed" not in {note.code for note in reading.mended}


@given(houses(), st.sampled_from(sorted(METRES)), st.booleans())
def test_kinds_names_and_sides_read_back(house: House, unit: str, heads: bool) -> None:
    reading = read_bytes(drawn(house, Manner(unit=unit, heads=heads, swings=True)))
    name_of = {room.id: room.name for room in reading.floor.rooms}
    found = sorted(
        (o.kind, *sorted(name_of[room] for room in o.rooms)) for o in reading.floor.openings
    )
    kinds = {"cased": "cased" if heads else "wide"}
    wanted = sorted(
        (
            kinds.get(p.kind, p.kind),
            *sorted(f"Room {c}{r}" for c, r in p.cells if (c, r) != OUTSIDE),
        )
        for p in house.passages
    )
    assert found == wanted


@given(houses(most=2), st.sampled_from(sorted(METRES)), st.sampled_from(["", "in", "mm", "m"]))
def test_stated_sizes_overrule_the_header(house: House, unit: str, header: str) -> None:
    reading = read_bytes(drawn(house, Manner(unit=unit, header=header, sizes=True)))
    assert reading.scale_m_per_unit == METRES[unit]
    codes = {note.code for note in reading.mended}
    assert ("unit-overruled" in codes) == bool(header and header != unit)
    for room in reading.floor.rooms:
        stated = reading.stated[room.id]
        assert stated.kind == "size-text"
        assert stated.area_m2 == pytest.approx(room.polygon.shape.area, rel=0.02)  # to the cm


def asked(reading: Reading) -> list[str]:
    """Codes of what is asked, but for north, windows and water, which no drawing here tells."""
    codes = [note.code for note in reading.asks]
    return [code for code in codes if code not in {"north", "windows", "water"}]


def test_the_same_file_gives_the_same_ids() -> None:
    data = drawn(_house(), Manner())
    first, second = read_bytes(data), read_bytes(data)
    assert first == second
    assert [room.id for room in first.floor.rooms] == ["room-01", "room-11", "room-00", "room-10"]


def _house() -> House:
    return House(
        (4.0, 3.0),
        (3.0, 2.5),
        0.1,
        (
            Passage(((0, 0), OUTSIDE), "outside", 1.0, -0.1, 1.9, 0.0),
            Passage(((0, 0), (1, 0)), "door", 4.0, 1.0, 4.1, 1.8),
            Passage(((0, 0), (0, 1)), "cased", 1.0, 3.0, 1.8, 3.1),
            Passage(((1, 0), (1, 1)), "door", 5.0, 3.0, 5.8, 3.1),
        ),
    )


def sheet(draw: Callable[[Any], None], unit: int = 6) -> Reading:
    """What is read from a drawing in metres (or another header unit)."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = unit
    draw(document.modelspace())
    return read_bytes(as_bytes(document))


def lines(space: Any, layer: str, *points: tuple[float, float]) -> None:
    """A run of strokes through the points."""
    for start, end in pairwise(points):
        space.add_line(start, end, dxfattribs={"layer": layer})


def single_line_house(space: Any) -> None:
    """8 × 4 m, walls as single lines: a way out 1 m wide, a gap of 0.9 m between two rooms."""
    lines(space, "0", (2, 0), (8, 0), (8, 4), (0, 4), (0, 0), (1, 0))
    lines(space, "0", (4, 0), (4, 1))
    lines(space, "0", (4, 1.9), (4, 4))


def test_single_line_walls_with_gaps() -> None:
    reading = sheet(single_line_house)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == [16, 16]
    assert [(o.kind, o.width_m, o.threshold) for o in reading.floor.openings] == [
        ("wide", 0.9, None),
        ("outside", 1.0, None),
    ]
    assert "way-out-unsure" in {note.code for note in reading.left}


def test_single_line_walls_with_swings_are_doors() -> None:
    def draw(space: Any) -> None:
        single_line_house(space)
        space.add_arc((4, 1), 0.9, 0, 90, dxfattribs={"layer": "DOOR"})
        space.add_arc((1, 0), 1.0, 0, 90, dxfattribs={"layer": "0"})
        lines(space, "0", (1, 0), (1, 1))

    reading = sheet(draw)
    assert [o.kind for o in reading.floor.openings] == ["door", "outside"]
    assert "way-out-unsure" not in {note.code for note in reading.left}


def double_line_house(space: Any, *, jambs: bool = True, layer: str = "0") -> None:
    """Two rooms of 4 × 3 m, inner wall 0.1 m, outer 0.2 m, a way out, a door, a window."""
    lines(space, layer, (1.9, 0), (4, 0), (4, 1))
    lines(space, layer, (4, 1.8), (4, 3), (0, 3), (0, 0), (1, 0))
    lines(space, layer, (4.1, 1), (4.1, 0), (8.1, 0), (8.1, 1))
    lines(space, layer, (8.1, 2), (8.1, 3), (4.1, 3), (4.1, 1.8))
    lines(space, layer, (1.9, -0.2), (8.3, -0.2), (8.3, 1))
    lines(space, layer, (8.3, 2), (8.3, 3.2), (-0.2, 3.2), (-0.2, -0.2), (1, -0.2))
    if jambs:
        for x in (1, 1.9):
            lines(space, layer, (x, 0), (x, -0.2))
        for y0, y1 in ((1, 1.8), (1, 2)):
            x0, x1 = (4, 4.1) if y1 == 1.8 else (8.1, 8.3)
            lines(space, layer, (x0, y0), (x1, y0))
            lines(space, layer, (x0, y1), (x1, y1))


def doors_and_glass(space: Any, layer: str = "0") -> None:
    """The leaves with their swings, and three lines of glass."""
    space.add_arc((4.1, 1), 0.8, 0, 90, dxfattribs={"layer": layer})
    lines(space, layer, (4.1, 1), (4.9, 1))
    space.add_arc((1, 0), 0.9, 0, 90, dxfattribs={"layer": layer})
    lines(space, layer, (1, 0), (1, 0.9))
    for x in (8.1, 8.2, 8.3):
        lines(space, layer, (x, 1), (x, 2))


@pytest.mark.parametrize(
    ("walls", "doors", "jambs"),
    [
        ("0", "0", True),
        ("A-WALL", "A-DOOR", True),
        ("A-WALL", "A-DOOR", False),
        ("Wände", "Türen", True),
        ("Wände", "Türen", False),
        ("0", "DOOR", True),
        ("0", "DOOR", False),
        ("lines", "lines 2", True),
        # Glass on a layer that says nothing, and no jambs: nothing tells it from a wall.
    ],
)
def test_double_line_walls_however_the_layers_are_called(
    walls: str, doors: str, jambs: bool
) -> None:
    def draw(space: Any) -> None:
        double_line_house(space, layer=walls, jambs=jambs)
        doors_and_glass(space, doors)

    reading = sheet(draw)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([12, 12])
    assert [(o.kind, o.width_m) for o in reading.floor.openings] == [
        ("door", 0.8),
        ("outside", 0.9),
    ]
    (window,) = reading.floor.windows
    assert window.line == ((8.2, 1.0), (8.2, 2.0))


def test_doors_set_as_blocks() -> None:
    def draw(space: Any) -> None:
        double_line_house(space, layer="WALL")
        leaf = space.doc.blocks.new("DOOR-90")
        leaf.add_arc((0, 0), 1, 0, 90)
        leaf.add_line((0, 0), (1, 0))
        for place, wide in (((4.1, 1), 0.8), ((1, 0), 0.9)):
            space.add_blockref(
                "DOOR-90", place, dxfattribs={"layer": "DOOR", "xscale": wide, "yscale": wide}
            )

    assert [o.kind for o in sheet(draw).floor.openings][-2:] == ["door", "outside"]


def test_a_door_hard_against_a_corner() -> None:
    """Two rooms of 3 × 3 m; the door's far side is the face of the outer wall."""

    def draw(space: Any) -> None:
        lines(space, "WALL", (3, 0.8), (3, 3), (0, 3), (0, 0), (3, 0), (3.1, 0), (6.1, 0), (6.1, 3))
        lines(space, "WALL", (6.1, 3), (3.1, 3), (3.1, 0.8), (3, 0.8))
        space.add_arc((3.1, 0.8), 0.8, 270, 360, dxfattribs={"layer": "DOOR"})

    reading = sheet(draw)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx([9, 9])
    (door,) = reading.floor.openings
    assert (door.kind, door.width_m, len(set(door.rooms))) == ("door", 0.8, 2)
    assert asked(reading) == ["way-out"]


def test_room_outlines_alone_are_rooms_and_a_way_out_is_asked_for() -> None:
    def draw(space: Any) -> None:
        for x in (0.0, 5.1):
            corners = [(x, 0), (x + 5, 0), (x + 5, 4), (x, 4)]
            space.add_lwpolyline(corners, close=True, dxfattribs={"layer": "A-AREA"})

    reading = sheet(draw)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == [20, 20]
    assert asked(reading) == ["way-out"]


def test_round_walls_keep_their_area_by_hand() -> None:
    """A half circle of radius 2 on a 4 × 3 room: 12 + 2π m²; chords within 0.1 %."""

    def draw(space: Any) -> None:
        lines(space, "WALL", (0, 3), (0, 0), (4, 0), (4, 3))
        space.add_arc((2, 3), 2, 0, 180, dxfattribs={"layer": "WALL"})

    (room,) = sheet(draw).floor.rooms
    assert room.polygon.shape.area == pytest.approx(12 + 2 * 3.14159265, rel=1e-3)


def test_a_post_is_a_hole_in_its_room() -> None:
    def draw(space: Any) -> None:
        for corners in ([(0, 0), (6, 0), (6, 5), (0, 5)], [(3, 2), (3.4, 2), (3.4, 2.4), (3, 2.4)]):
            space.add_lwpolyline(corners, close=True, dxfattribs={"layer": "WALL"})

    (room,) = sheet(draw).floor.rooms
    assert len(room.polygon.coordinates) == 2
    assert room.polygon.shape.area == pytest.approx(30 - 0.16)


def test_a_door_to_floor_that_does_not_close_is_no_way_out() -> None:
    """The bedroom's far wall is missing: its door must not be told as leading outside."""

    def draw(space: Any) -> None:
        lines(space, "WALL", (4, 1), (4, 0), (0, 0), (0, 3), (4, 3), (4, 1.8))
        lines(space, "WALL", (4, 1), (4.1, 1), (4.1, 0), (8, 0))
        lines(space, "WALL", (4, 1.8), (4.1, 1.8), (4.1, 3), (8, 3))
        space.add_text("BEDROOM", height=0.2).set_placement((6, 1.4))
        space.add_text("4.0 m x 3.0 m", height=0.2).set_placement((6, 1.1))

    reading = sheet(draw)
    assert reading.exits == ()
    assert {"opening-to-unclosed", "label-lost"} <= {note.code for note in reading.left}
    assert asked(reading) == ["tracing", "way-out"]


def test_a_nameless_porch_behind_the_footprint_is_no_room() -> None:
    def draw(space: Any) -> None:
        double_line_house(space, layer="WALL")
        doors_and_glass(space, "DOOR")
        porch = [(0, -0.2), (4, -0.2), (4, -2), (0, -2)]
        space.add_lwpolyline(porch, close=True, dxfattribs={"layer": "FOOTPRINT"})

    reading = sheet(draw)
    assert len(reading.floor.rooms) == 2
    assert len(reading.exits) == 1
    assert [note.code for note in reading.left] == ["outside-slab"]


def test_hidden_layers_and_furniture_are_not_read() -> None:
    def draw(space: Any) -> None:
        double_line_house(space, layer="WALL")
        doors_and_glass(space, "DOOR")
        space.doc.layers.add("OLD-WALL").off()
        lines(space, "OLD-WALL", (0, 1.5), (4, 1.5))
        lines(space, "FURNITURE", (0, 2), (4, 2))

    assert [round(r.polygon.shape.area) for r in sheet(draw).floor.rooms] == [12, 12]


def test_without_a_scale_it_asks_and_still_finds_the_rooms() -> None:
    reading = sheet(single_line_house, unit=0)
    assert reading.scale_m_per_unit is None
    assert len(reading.floor.rooms) == 2
    assert asked(reading) == ["scale"]


def test_the_users_scale_overrules_everything() -> None:
    data = drawn(_house(), Manner(unit="mm", sizes=True))
    reading = read_bytes(data, scale_m_per_unit=0.0254)
    assert reading.scale_m_per_unit == 0.0254
    assert {"scale-told", "scale-doubted"} <= {note.code for note in reading.mended}
    widest = max(room.polygon.shape.area for room in reading.floor.rooms)
    assert widest == pytest.approx(12 * 25.4**2, rel=1e-3)


def test_openings_say_which_floor_lies_under_them() -> None:
    reading = read_bytes(drawn(_house(), Manner()))
    for opening in reading.floor.openings:
        assert opening.threshold is not None
        seam = shapely.LineString(opening.line)
        assert opening.threshold.shape.area == pytest.approx(0.1 * seam.length, rel=1e-3)
        assert opening.threshold.shape.buffer(1e-3).covers(seam)


@pytest.mark.parametrize("version", ["R2000", "R2004", "R2007", "R2010", "R2018"])
@pytest.mark.parametrize("form", ["text", "text with CRLF", "binary"])
def test_every_version_and_form_of_the_format(version: str, form: str) -> None:
    document = ezdxf.new(version)
    document.header["$INSUNITS"] = 4
    Pen(document, Manner()).house(_house())
    data = as_bytes(document)
    if form == "binary":
        stream = io.BytesIO()
        document.write(stream, fmt="bin")
        data = stream.getvalue()
    elif form == "text with CRLF":
        data = data.replace(b"\n", b"\r\n")
    reading = read_bytes(data)
    assert [room.polygon.shape.area for room in reading.floor.rooms] == pytest.approx(
        [10, 7.5, 12, 9]
    )
    assert (asked(reading), len(reading.floor.openings)) == ([], 4)


@pytest.mark.parametrize("layer", ["WALL", "0"])
def test_a_whole_plan_set_as_a_turned_block(layer: str) -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 6
    pen = Pen(document, Manner(unit="m", wall_layer=layer, door_layer=layer))
    pen.space = document.blocks.new("PLAN")
    pen.house(_house())
    document.modelspace().add_blockref("PLAN", (10, 10), dxfattribs={"rotation": 30})
    reading = read_bytes(as_bytes(document))
    areas = sorted(room.polygon.shape.area for room in reading.floor.rooms)
    assert areas == pytest.approx([7.5, 9, 10, 12], rel=1e-3)
    assert len(reading.floor.openings) == 4


def test_a_floor_drawn_on_the_paper_sheet_is_read_and_told() -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 6
    corners = [(0, 0), (4, 0), (4, 3), (0, 3)]
    document.layout("Layout1").add_lwpolyline(corners, close=True, dxfattribs={"layer": "WALL"})
    reading = read_bytes(as_bytes(document))
    assert [room.polygon.shape.area for room in reading.floor.rooms] == [12]
    assert any("paper sheets" in note.what for note in reading.mended)


def test_an_empty_drawing_asks_for_a_tracing_only() -> None:
    assert [note.code for note in read_bytes(as_bytes(ezdxf.new("R2010"))).asks] == ["tracing"]
