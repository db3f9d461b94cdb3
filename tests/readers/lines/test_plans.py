"""Several drawings on one sheet: the plan is told from elevations, storeys by their lettering."""

from typing import Any

import ezdxf
import pytest
from tests.drawings import Manner, Pen, as_bytes
from tests.strategies.floors import OUTSIDE, House, Passage

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes

BESIDE = {"north", "windows", "water"}
"""What a bare drawing is always asked for."""
HOUSE = House(
    (4.0, 3.0),
    (3.0,),
    0.1,
    (
        Passage(((0, 0), OUTSIDE), "outside", 1.0, -0.1, 1.9, 0.0),
        Passage(((0, 0), (1, 0)), "door", 4.0, 1.0, 4.1, 1.8),
    ),
)


def sheet(*plans: tuple[float, str], labels: bool = True, elevation: bool = False) -> Reading:
    """Plans so far to the right of each other, each lettered under it; maybe an elevation."""
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = 6
    for right, text in plans:
        pen = Pen(document, Manner(unit="m", origin=(right, 0.0), labels=labels))
        pen.house(HOUSE)
        if text:
            pen.words("A-TEXT", text, 3.5, -1.5, 0.4)
    if elevation:
        _elevation(document.modelspace())
    return read_bytes(as_bytes(document))


def _elevation(space: Any) -> None:
    """A front seen from the street: outline, roof, two windows, a door."""
    attribs = {"layer": "A-WALL"}
    for x0, y0, x1, y1 in ((0, 20, 7, 23), (1, 21, 2, 22), (4, 21, 5, 22), (3, 20, 3.8, 22)):
        corners = [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
        space.add_lwpolyline(corners, close=True, dxfattribs=attribs)


def test_an_elevation_beside_the_plan_is_left_out_and_told() -> None:
    reading = sheet((0, ""), elevation=True)
    assert sorted(round(r.polygon.shape.area, 3) for r in reading.floor.rooms) == [9, 12]
    (note,) = [n for n in reading.left if n.code == "other-drawing"]
    assert "elevations or details" in note.what
    assert {note.code for note in reading.asks} == BESIDE


def test_plans_lettered_as_storeys_are_storeys() -> None:
    reading = sheet((0, "FIRST FLOOR PLAN"), (15, "SECOND FLOOR PLAN"))
    assert [(s.id, s.name) for s in reading.storeys] == [
        ("storey-1", "First floor"),
        ("storey-2", "Second floor"),
    ]
    for storey, low in (("storey-1", 0), ("storey-2", 15)):
        own = [r.polygon.shape for r in reading.floor.rooms if r.storey == storey]
        assert sorted(round(shape.area, 3) for shape in own) == [9, 12]
        assert min(shape.bounds[0] for shape in own) == pytest.approx(low)
    assert "storeys" not in {note.code for note in reading.asks}


@pytest.mark.parametrize("second", ["", "FIRST FLOOR"])
def test_plans_that_bear_no_storeys_of_their_own_are_asked_about(second: str) -> None:
    reading = sheet((0, "FIRST FLOOR"), (15, second))
    assert len(reading.floor.rooms) == 4
    assert len(reading.storeys) == 1
    (note,) = [n for n in reading.asks if n.code == "storeys"]
    assert "2 plans" in note.what
    assert "First floor" in note.what


def test_a_lone_plan_is_one_storey_without_a_word() -> None:
    reading = sheet((0, "FIRST FLOOR"))
    assert [storey.id for storey in reading.storeys] == ["storey-1"]
    assert {note.code for note in reading.asks} == BESIDE
