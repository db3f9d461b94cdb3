"""Symbols in any setting, bands, bound references and what is left aside, told by its kind."""

import io
from math import dist
from typing import Any

import ezdxf
import pytest
import shapely
from ezdxf.math import Matrix44
from hypothesis import given
from hypothesis import strategies as st
from tests.drawings import as_bytes

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.dxf.gather import MOST_ENTITIES, gather
from farwall.readers.dxf.load import load
from farwall.readers.lines.sheet import Sheet

turns = st.sampled_from([0.0, 30.0, 90.0, 210.0])
scales = st.sampled_from([1.0, -1.0, 0.5, 2.0, -2.0])


def gathered(document: Any) -> Sheet:
    return gather(*load(as_bytes(document)))


def lines(sheet: Sheet) -> list[tuple[float, ...]]:
    """Every stroke by its ends, whichever way it runs, to the micrometre."""
    found = [sorted([s.start, s.end]) for s in sheet.strokes]
    return sorted(tuple(round(v, 6) + 0.0 for p in ends for v in p) for ends in found)


def symbol(document: Any, name: str) -> Any:
    """A bent line, a box and a letter."""
    block = document.blocks.new(name, base_point=(1, 2))
    block.add_line((0, 0), (3, 1))
    block.add_lwpolyline([(0, 0), (2, 0), (2, 1)], close=True)
    block.add_line((1, 1), (1, 4), dxfattribs={"layer": "WALL"})
    return block


@given(turns, scales, scales, turns, scales, st.sampled_from([1.0, -1.0]))
def test_symbols_lie_where_the_format_sets_them(
    turn: float, x: float, y: float, inner_turn: float, inner: float, up: float
) -> None:
    """Turned, mirrored, stretched, within each other, from below: against ezdxf's own matrices."""
    document = ezdxf.new("R2010")
    symbol(document, "IN")
    outer = document.blocks.new("OUT")
    attribs = {"rotation": inner_turn, "xscale": inner, "yscale": inner}
    within = outer.add_blockref("IN", (5, 1), dxfattribs=attribs)
    attribs = {"rotation": turn, "xscale": x, "yscale": y, "extrusion": (0, 0, up)}
    insert = document.modelspace().add_blockref("OUT", (10, -3), dxfattribs=attribs)
    wanted = []
    for pair in [((0, 0, 0), (3, 1, 0)), ((0, 0, 0), (2, 0, 0)), ((2, 0, 0), (2, 1, 0)),
                 ((2, 1, 0), (0, 0, 0)), ((1, 1, 0), (1, 4, 0))]:  # fmt: skip
        placed = within.matrix44().transform_vertices(pair)
        ends = sorted((p.x, p.y) for p in insert.matrix44().transform_vertices(placed))
        wanted.append(shapely.LineString(ends))
    found = [shapely.LineString([s.start, s.end]) for s in gathered(document).strokes]
    assert len(found) == len(wanted)
    for line in wanted:
        assert min(line.hausdorff_distance(other) for other in found) < 1e-6


def test_rows_of_symbols_stand_at_their_spacing() -> None:
    document = ezdxf.new("R2010")
    document.blocks.new("POST").add_line((0, 0), (1, 0))
    attribs = {"row_count": 2, "column_count": 3, "row_spacing": 5, "column_spacing": 4}
    document.modelspace().add_blockref("POST", (0, 0), dxfattribs=attribs)
    starts = sorted(s.start for s in gathered(document).strokes)
    assert starts == [(x, y) for x in (0, 4, 8) for y in (0, 5)]


def test_layer_0_in_a_symbol_is_the_layer_it_is_set_on_and_bound_names_are_freed() -> None:
    document = ezdxf.new("R2010")
    block = symbol(document, "plan|LEAF")
    del block
    space = document.modelspace()
    space.add_blockref("plan|LEAF", (0, 0), dxfattribs={"layer": "house$0$A-DOOR"})
    sheet = gathered(document)
    assert {(s.layer, s.role) for s in sheet.strokes} == {("A-DOOR", "opening"), ("WALL", "wall")}
    assert {s.block for s in sheet.strokes} == {"LEAF"}


def test_swings_stay_swings_when_mirrored_and_go_when_squeezed() -> None:
    document = ezdxf.new("R2010")
    document.blocks.new("DOOR").add_arc((0, 0), 1, 0, 90)
    space = document.modelspace()
    for place, x in (((0, 0), -0.9), ((5, 0), 2.0)):
        space.add_blockref("DOOR", place, dxfattribs={"xscale": x, "yscale": 0.9})
    (swing,) = gathered(document).swings
    assert (swing.radius, swing.sweep_deg) == (pytest.approx(0.9), pytest.approx(90))
    assert sorted(swing.ends) == [pytest.approx((-0.9, 0)), pytest.approx((0, 0.9))]


def test_a_block_within_itself_ends_and_is_counted() -> None:
    document = ezdxf.new("R2010")
    first, second = document.blocks.new("A"), document.blocks.new("B")
    first.add_line((0, 0), (1, 0))
    first.add_blockref("B", (0, 0))
    second.add_blockref("A", (0, 0))
    document.modelspace().add_blockref("A", (0, 0))
    # The library breaks the loop when it opens the file; both ways no line comes twice.
    assert len(gathered(document).strokes) <= 1


def test_blocks_that_multiply_are_refused_before_they_are_laid_out() -> None:
    document = ezdxf.new("R2010")
    document.blocks.new("B0").add_line((0, 0), (1, 0))
    for level in range(1, 9):
        block = document.blocks.new(f"B{level}")
        for n in range(10):
            block.add_blockref(f"B{level - 1}", (n, level))
    document.modelspace().add_blockref("B8", (0, 0))
    with pytest.raises(Refused, match=f"{MOST_ENTITIES:,}"):
        read_bytes(as_bytes(document))


def test_rows_without_end_are_refused() -> None:
    document = ezdxf.new("R2010")
    document.blocks.new("POST").add_line((0, 0), (1, 0))
    attribs = {"row_count": 30_000, "column_count": 30_000, "row_spacing": 1, "column_spacing": 1}
    document.modelspace().add_blockref("POST", (0, 0), dxfattribs=attribs)
    with pytest.raises(Refused):
        read_bytes(as_bytes(document))


def test_mirrored_lettering_is_stacked_as_its_letters_stand() -> None:
    document = ezdxf.new("R2010")
    block = document.blocks.new("TAG")
    block.add_text("BED", height=0.2).set_placement((0, 0))
    document.modelspace().add_blockref("TAG", (0, 0), dxfattribs={"xscale": -2, "yscale": 2})
    (words,) = gathered(document).words
    assert (words.turned_deg, words.height) == (pytest.approx(0), pytest.approx(0.4))


def test_attributes_are_lettering() -> None:
    document = ezdxf.new("R2010")
    document.blocks.new("TAG").add_attdef("NAME", (0, 0), "NAME")
    reference = document.modelspace().add_blockref("TAG", (3, 3))
    reference.add_attrib("NAME", "KITCHEN", (3, 3))
    assert [words.text for words in gathered(document).words] == ["KITCHEN"]


def test_a_drawing_seen_from_below_is_mirrored_as_it_is_shown() -> None:
    document = ezdxf.new("R2010")
    space = document.modelspace()
    space.add_lwpolyline([(0, 0), (4, 0), (4, 3)], dxfattribs={"extrusion": (0, 0, -1)})
    space.add_arc((2, 0), 1, 0, 90, dxfattribs={"extrusion": (0, 0, -1), "layer": "DOOR"})
    sheet = gathered(document)
    assert lines(sheet) == [(-4, 0, -4, 3), (-4, 0, 0, 0)]
    (swing,) = sheet.swings
    assert swing.centre == (-2, 0)
    assert all(dist(end, (-2, 0)) == pytest.approx(1) for end in swing.ends)


def test_walls_drawn_as_one_thick_line_have_two_faces() -> None:
    """A band 0.2 m wide round 5 x 4 m: 4.8 x 3.8 m are left inside; a thin one stays a line."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 6
    corners = [(0, 0), (5, 0), (5, 4), (0, 4)]
    for width, left in ((0.2, 4.8 * 3.8), (0.01, 20.0)):
        space = document.modelspace()
        space.delete_all_entities()
        wall = space.add_lwpolyline(corners, close=True, dxfattribs={"layer": "WALL"})
        wall.dxf.const_width = width
        (room,) = read_bytes(as_bytes(document)).floor.rooms
        assert room.polygon.shape.area == pytest.approx(left)


def test_multiple_lines_are_taken_apart() -> None:
    document = ezdxf.new("R2010")
    document.modelspace().add_mline([(0, 0), (5, 0)], dxfattribs={"layer": "WALL"})
    assert len(gathered(document).strokes) >= 2


def test_what_is_no_wall_is_left_aside_with_its_count() -> None:
    document = ezdxf.new("R2010")
    space = document.modelspace()
    space.add_lwpolyline([(0, 0), (4, 0), (4, 3), (0, 3)], close=True)
    for _ in range(3):
        hatch = space.add_hatch()
        hatch.paths.add_polyline_path([(0, 0), (1, 0), (1, 1)])
    space.add_leader([(0, 0), (1, 1)])
    (note,) = [n for n in read_bytes(as_bytes(document)).left if n.code == "set-aside"]
    assert "3 × hatch" in note.what
    assert "1 × leader" in note.what


def test_text_and_binary_form_hold_the_same() -> None:
    document = ezdxf.new("R2010")
    symbol(document, "S")
    space = document.modelspace()
    space.add_blockref("S", (3, 3), dxfattribs={"rotation": 20})
    space.add_line((0, 0), (9, 9))
    stream = io.BytesIO()
    document.write(stream, fmt="bin")
    plain, binary = gathered(document), gather(*load(stream.getvalue()))
    assert lines(plain) == lines(binary)


def test_stacked_fractions_stay_apart_from_their_number() -> None:
    document = ezdxf.new("R2010")
    document.modelspace().add_mtext(r"6'-10{\H0.7x;\S1/2;}\"", dxfattribs={"insert": (0, 0)})
    (words,) = gathered(document).words
    assert words.text.startswith("6'-10 1/2")


@pytest.mark.parametrize("spoilt", ["nan", "inf", "1e300", "", "ten"])
def test_a_spoilt_coordinate_costs_one_line_only(spoilt: str) -> None:
    document = ezdxf.new("R2010")
    for x in (0.0, 1.0, 77.0):
        document.modelspace().add_line((x, 0), (x, 5))
    data = as_bytes(document).replace(b"\n77.0\n", f"\n{spoilt}\n".encode(), 1)
    assert {0.0, 1.0} <= {s.start[0] for s in gather(*load(data)).strokes}


def test_a_line_is_set_by_matrix_by_hand() -> None:
    """A quarter turn about the origin, then 2 to the right."""
    from farwall.readers.dxf.pieces import Setting

    matrix = Matrix44.z_rotate(1.5707963267948966) @ Matrix44.translate(2, 0, 0)
    assert Setting.of(list(matrix)).at((3, 0)) == pytest.approx((2, 3))
