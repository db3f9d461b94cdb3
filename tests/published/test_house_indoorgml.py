"""house_indoorgml.gml (MIT): 14 cells and 30 transitions of a real house.

Source: names of the cells and number of transitions in reference_xml.json; the file states no
area. The openings between cells are 0.76 to 1.385 m wide in the shapes of the cells themselves.
"""

import itertools

import pytest
from tests.published.packed_plans import packed, reference

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.xml_text import parse_xml

NAME = "house_indoorgml.gml"


@pytest.fixture(scope="module")
def house() -> Reading:
    return read_bytes(packed(NAME))


def test_every_cell_is_a_room_by_its_name(house: Reading) -> None:
    assert [room.name for room in house.floor.rooms] == reference(NAME)["cells"]


def test_areas_equal_the_lowest_faces_of_the_file(house: Reading) -> None:
    """The lowest flat face of each cell by the shoelace formula, apart from the reader's code."""
    found = {room.name: room.polygon.shape.area for room in house.floor.rooms}
    flat = {name: area for name, area in _lowest_faces().items() if name not in {"101", "201"}}
    assert {name: found[name] for name in flat} == pytest.approx(flat, rel=1e-3)
    # The two stair halls have a step of 8 cm: their lowest face is the foot of the stair alone.
    assert found["101"] > 17
    assert found["201"] > 22


def _lowest_faces() -> dict[str, float]:
    areas = {}
    for cell in parse_xml(packed(NAME)).walk("CellSpace"):
        rings = [
            [tuple(float(v) for v in pos.text.split()) for pos in ring.all("pos")]
            for ring in cell.walk("LinearRing")
        ]
        low = min(z for ring in rings for _, _, z in ring)
        x0, y0, _ = rings[0][0]
        areas[cell.word("name")] = sum(
            abs(sum((a[0] - x0) * (b[1] - y0) - (b[0] - x0) * (a[1] - y0)
                    for a, b in itertools.pairwise(ring))) / 2
            for ring in rings
            if max(z for _, _, z in ring) - low < 1e-3
        )  # fmt: skip
    return areas


def test_all_30_transitions_come_out_or_are_listed(house: Reading) -> None:
    placed = [own for o in house.floor.openings for own in o.id.split("+")]
    stairs = [note.what for note in house.left if note.code == "between-storeys"]
    assert len(placed) == 26
    assert len(stairs) == 2
    listed = {word for what in stairs for word in what.split("(")[1].split(")")[0].split(", ")}
    assert len(set(placed) | listed) == reference(NAME)["transitions"] == 30
    (word,) = [note.what for note in house.mended if note.code == "transitions-paired"]
    assert "30 transitions make 15 ways" in word


def test_openings_join_the_cells_that_their_transitions_join(house: Reading) -> None:
    names = {room.id: room.name for room in house.floor.rooms}
    joined = sorted(sorted(names[r] for r in o.rooms) for o in house.floor.openings)
    assert joined == [
        ["001", "002"], ["001", "003"], ["001", "004"], ["001", "005"], ["001", "006"],
        ["101", "102"], ["101", "102"], ["101", "103"], ["101", "104"], ["102", "103"],
        ["201", "202"], ["201", "203"], ["201", "204"],
    ]  # fmt: skip
    widths = sorted(round(o.width_m or 0, 3) for o in house.floor.openings)
    assert widths == [0.76, *[0.885] * 10, 1.01, 1.385]


def test_metres_are_said_and_leaves_are_asked(house: Reading) -> None:
    assert "unit-metres" in {note.code for note in house.mended}
    assert {"leaf", "way-out"} <= {note.code for note in house.asks}
    left = [note.code for note in house.left]
    assert left.count("no-leaf") == 13
    assert left.count("not-read") == 1
