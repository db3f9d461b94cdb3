"""A thousand spoilt drawings: each gives a sound floor or a calm refusal, never a traceback."""

import json
from functools import cache
from pathlib import Path

import ezdxf
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawings import Manner, Pen, as_bytes
from tests.mutations import spoilt
from tests.strategies.floors import OUTSIDE, House, Passage

from farwall.errors import Refused
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes
from farwall.readers.reading_json import reading_json

HOUSE = (
    Path(__file__).parents[2] / "published" / "data" / "plans" / "single_storey_house_inches.dxf"
)
CHUNK = 100


@cache
def small_drawing() -> bytes:
    """Four rooms with doors, labels, a tub set as a block, a dimension, curves and notes."""
    document = ezdxf.new("R2000")
    document.header["$INSUNITS"] = 4
    house = House(
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
    Pen(document, Manner(unit="mm", sizes=True)).house(house)
    space = document.modelspace()
    tub = document.blocks.new("TUB")
    tub.add_lwpolyline([(0, 0), (1500, 0), (1500, 700), (0, 700)], close=True)
    tub.add_circle((700, 350), 200)
    space.add_blockref("TUB", (100, 3200), dxfattribs={"layer": "A-FIXT", "rotation": 10})
    space.add_linear_dim(base=(0, -500), p1=(0, 0), p2=(4000, 0)).render()
    space.add_mtext("NOTE\\Pslab", dxfattribs={"insert": (100, 100), "char_height": 100})
    space.add_spline([(0, 0), (100, 200), (300, 300)])
    space.add_ellipse((500, 500), (100, 0), 0.5)
    space.add_polyline2d([(0, 0), (10, 10), (20, 0)])
    return as_bytes(document)


def assert_read_or_refused(data: bytes) -> bool:
    """True when a sound floor came out, false for a refusal in sentences."""
    try:
        reading = read_bytes(data, name="spoilt.dxf")
    except Refused as refusal:
        told = [f"{m.what} {m.remedy}" for m in refusal.mistakes]
        if not told or any("Traceback" in text or not text.strip() for text in told):
            pytest.fail(f"no calm sentence: {told}")
        return False
    json.dumps(reading_json(reading), allow_nan=False)
    if reading.scale_m_per_unit is not None and reading.floor.rooms:
        assert faults_of(reading.floor, reading.exits) == []
    return bool(reading.floor.rooms)


def test_the_unspoilt_drawing_reads() -> None:
    assert [r.name for r in read_bytes(small_drawing()).floor.rooms] == [
        "Room 01",
        "Room 11",
        "Room 00",
        "Room 10",
    ]


@pytest.mark.slow
@pytest.mark.parametrize("chunk", range(10))
def test_a_thousand_spoilt_drawings_are_read_or_refused(chunk: int) -> None:
    read = [
        assert_read_or_refused(spoilt(small_drawing(), number))
        for number in range(chunk * CHUNK, (chunk + 1) * CHUNK)
    ]
    assert len(read) == CHUNK
    assert any(read)  # spoiling leaves some of them readable, or it would try nothing
    assert not all(read)


@pytest.mark.slow
@pytest.mark.parametrize("number", range(1000, 1010))
def test_the_real_house_spoilt_is_read_or_refused(number: int) -> None:
    assert assert_read_or_refused(spoilt(HOUSE.read_bytes(), number)) in {True, False}


@given(st.binary(max_size=400))
def test_noise_is_refused(noise: bytes) -> None:
    assert not assert_read_or_refused(noise)


@given(st.binary(max_size=300))
def test_noise_that_begins_like_a_drawing_is_refused_or_empty(noise: bytes) -> None:
    head = b"  0\nSECTION\n  2\nENTITIES\n"
    assert not assert_read_or_refused(head + noise)
    assert not assert_read_or_refused(head + noise + b"\n  0\nENDSEC\n  0\nEOF\n")


coordinate = st.integers(0, 40).map(lambda n: n * 0.15) | st.floats(-5, 10)
point = st.tuples(coordinate, coordinate)
LAYERS = ["0", "WALL", "DOOR", "HEADER", "FOOTPRINT", "AREA", "CASE", "STAIR"]


@given(
    st.lists(st.tuples(point, point, st.sampled_from(LAYERS)), max_size=40),
    st.lists(st.tuples(point, st.floats(0.1, 2), st.floats(0, 360), st.sampled_from(LAYERS)),
             max_size=5),
    st.lists(st.tuples(point, st.sampled_from(["BED", "2668", "10' x 12'", "DECK", "3.0 x 4.0"])),
             max_size=5),
)  # fmt: skip
def test_any_soup_of_strokes_is_a_sound_floor_or_none(
    strokes: list[tuple[tuple[float, float], tuple[float, float], str]],
    arcs: list[tuple[tuple[float, float], float, float, str]],
    words: list[tuple[tuple[float, float], str]],
) -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 6
    space = document.modelspace()
    for start, end, layer in strokes:
        space.add_line(start, end, dxfattribs={"layer": layer})
    for centre, radius, turn, layer in arcs:
        space.add_arc(centre, radius, turn, turn + 90, dxfattribs={"layer": layer})
    for at, text in words:
        space.add_text(text, height=0.2).set_placement(at)
    assert assert_read_or_refused(as_bytes(document)) in {True, False}


def test_lettering_in_a_broken_encoding_can_be_printed() -> None:
    data = small_drawing().replace(b"ROOM 01", b"R\xe9\xff\xfe01 K")
    for room in read_bytes(data).floor.rooms:
        assert room.name.encode("utf-8").decode("utf-8") == room.name
