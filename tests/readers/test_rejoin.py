"""Rooms joined and split as the user says: areas, openings and stated sizes follow."""

from dataclasses import replace

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from tests.strategies.floors import House, houses, name

from farwall.errors import Refused
from farwall.facts.reading import Reading, Stated
from farwall.floor.faults import faults_of
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.readers.rejoin import joined_rooms, split_room


def reading_of(house: House) -> Reading:
    floor, exits = house.floor(), house.exits()
    return Reading("DXF", "m", "m", 1.0, floor, exits)


def side_by_side() -> Reading:
    """Two rooms of 4 × 3 m that meet along an edge of 3 m; a door to a third; stated sizes."""
    boxes = {"a": (0, 0, 4, 3), "b": (4, 0, 8, 3), "c": (0, 3.1, 8, 6)}
    rooms = tuple(
        Room(key, polygon_geometry(shapely.box(*box)), key.upper()) for key, box in boxes.items()
    )
    openings = (
        Opening("air", "wide", ((4, 0), (4, 3)), ("a", "b"), 3.0),
        Opening("door", "door", ((5, 3.05), (6, 3.05)), ("b", "c"), 1.0),
        Opening("out", "outside", ((0, 1), (0, 2)), ("a",), 1.0),
    )
    stated = {"a": Stated(12.1, "net"), "b": Stated(12.2, "net"), "c": Stated(23.0, "net")}
    floor = Floor(rooms, openings)
    return Reading("gbXML", "m", "m", 1.0, floor, (Exit("e", "out"),), (), stated)


def test_two_that_meet_are_one_by_hand() -> None:
    one = joined_rooms(side_by_side(), ["a", "b"])
    assert [(r.id, r.name, r.polygon.shape.area) for r in one.floor.rooms] == [
        ("a", "A + B", pytest.approx(24)),
        ("c", "C", pytest.approx(23.2)),
    ]
    assert [(o.id, o.rooms) for o in one.floor.openings] == [("door", ("a", "c")), ("out", ("a",))]
    assert one.stated["a"].area_m2 == pytest.approx(24.3)
    assert set(one.stated) == {"a", "c"}
    assert [note.code for note in one.mended] == ["rooms-joined"]


def test_sizes_of_two_kinds_are_not_added() -> None:
    reading = side_by_side()
    mixed = replace(reading, stated=reading.stated | {"b": Stated(12.2, "gross")})
    assert set(joined_rooms(mixed, ["a", "b"]).stated) == {"c"}


@pytest.mark.parametrize(
    ("ids", "said"),
    [(["a"], "alone"), (["a", "x"], "No room"), (["a", "c"], "do not meet"), ([], "alone")],
)
def test_what_cannot_be_joined_is_refused_with_a_word(ids: list[str], said: str) -> None:
    with pytest.raises(Refused, match=said):
        joined_rooms(side_by_side(), ids)


def test_rooms_at_two_heights_are_not_joined() -> None:
    reading = replace(side_by_side(), levels_m={"a": 0.0, "b": 0.15})
    with pytest.raises(Refused, match=r"0\.150 m apart"):
        joined_rooms(reading, ["a", "b"])


@given(houses())
def test_joined_through_an_opening_the_area_is_the_sum_with_its_threshold(house: House) -> None:
    reading = reading_of(house)
    inner = [p for p in house.passages if p.kind != "outside"]
    assume(inner)
    ids = [name(cell) for cell in inner[0].cells]
    one = joined_rooms(reading, ids)
    assert len(one.floor.rooms) == len(reading.floor.rooms) - 1
    known, whole = reading.floor.room_by_id, one.floor.room_by_id[ids[0]]
    x0, y0, x1, y1 = inner[0].x0, inner[0].y0, inner[0].x1, inner[0].y1
    wanted = sum(known[i].polygon.shape.area for i in ids) + (x1 - x0) * (y1 - y0)
    assert whole.polygon.shape.area == pytest.approx(wanted, abs=1e-3)
    assert faults_of(one.floor, one.exits) == []


def test_a_room_is_split_along_a_line_by_hand() -> None:
    two = split_room(side_by_side(), "b", ((5.0, -1.0), (5.0, 4.0)))
    areas = {r.id: r.polygon.shape.area for r in two.floor.rooms}
    assert areas == pytest.approx({"a": 12, "b": 9, "b-2": 3, "c": 23.2})
    by_id = two.floor.opening_by_id
    assert by_id["air"].rooms == ("a", "b-2")
    assert by_id["door"].rooms == ("b", "c")
    (cut,) = [o for o in two.floor.openings if set(o.rooms) == {"b", "b-2"}]
    assert (cut.kind, cut.width_m) == ("wide", 3.0)
    assert "b" not in two.stated


@pytest.mark.parametrize(
    "line",
    [((5, 1), (5, 2)), ((20, 0), (20, 3)), ((5, 1), (5, 1)), ((float("nan"), 0), (5, 3))],
)
def test_a_line_that_does_not_part_the_room_is_refused(
    line: tuple[tuple[float, float], tuple[float, float]],
) -> None:
    with pytest.raises(Refused):
        split_room(side_by_side(), "b", line)


@given(houses(most=2), st.floats(0.2, 0.8))
def test_split_and_joined_again_is_the_same_floor(house: House, share: float) -> None:
    reading = reading_of(house)
    room = reading.floor.rooms[0]
    x0, y0, x1, y1 = room.polygon.shape.bounds
    x = round(x0 + share * (x1 - x0), 4)
    two = split_room(reading, room.id, ((x, y0 - 0.01), (x, y1 + 0.01)))
    parts = [r.id for r in two.floor.rooms if r.id not in reading.floor.room_by_id]
    again = joined_rooms(two, [room.id, *parts]).floor.room_by_id[room.id]
    assert shapely.symmetric_difference(again.polygon.shape, room.polygon.shape).area < 1e-3
