"""Rooms joined and split: areas are kept, openings stay with their walls, walls are refused."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.strategies.floors import houses
from tests.strategies.jobs import box, row_of_rooms

from farwall.errors import Refused
from farwall.floor.as_one import room_split, rooms_joined
from farwall.floor.faults import faults_of
from farwall.floor.nouns import Floor, Opening, Room, Window


def test_two_rooms_that_touch_become_one_by_hand() -> None:
    """3 m and 4 m by 3 m are 21 m²; the door between them goes, the way out stays."""
    floor = row_of_rooms([3.0, 4.0])
    found = rooms_joined(floor, "room-0", "room-1")
    (room,) = found.rooms
    assert room.id == "room-0"
    assert room.polygon.shape.area == pytest.approx(21.0)
    assert len(room.polygon.coordinates[0]) == 5
    assert [(o.id, o.rooms) for o in found.openings] == [("door-0", ("room-0",))]


def test_a_wall_apart_the_floor_under_the_opening_joins_them_by_hand() -> None:
    """Two rooms of 9 m², a wall of 0.1 m, an opening 0.9 m wide: 18.09 m²."""
    line = ((3.05, 1.0), (3.05, 1.9))
    rooms = (Room("a", box(0, 0, 3, 3), "A"), Room("b", box(3.1, 0, 3, 3), "B"))
    floor = Floor(rooms, (Opening("w", "wide", line, ("a", "b"), 0.9, box(3.0, 1.0, 0.1, 0.9)),))
    found = rooms_joined(floor, "b", "a")
    (room,) = found.rooms
    assert (room.id, room.name, found.openings) == ("b", "B + A", ())
    assert room.polygon.shape.area == pytest.approx(18.09)
    with pytest.raises(Refused, match="A wall stands between"):
        rooms_joined(replace(floor, openings=()), "a", "b")


def test_a_seam_thinner_than_a_wall_is_closed_by_hand() -> None:
    """Rooms 0.02 m apart without an opening: one space, 6.02 m by 3 m."""
    rooms = (Room("a", box(0, 0, 3, 3)), Room("b", box(3.02, 0, 3, 3)))
    (room,) = rooms_joined(Floor(rooms), "a", "b").rooms
    assert room.polygon.shape.area == pytest.approx(18.06, abs=0.02)


def test_a_room_is_split_from_wall_to_wall_by_hand() -> None:
    """6 m by 3 m cut at 2 m: 12 and 6 m²; the door at x = 0 goes with the smaller part."""
    floor = Floor(
        (Room("hall", box(0, 0, 6, 3), "Hall"),),
        (Opening("out", "outside", ((0, 1.0), (0, 1.9)), ("hall",)),),
        windows=(Window(((4.0, 3.0), (5.0, 3.0)), room="hall"),),
    )
    found = room_split(floor, "hall", ((2.0, 0.1), (2.0, 2.8)))
    assert [(r.id, r.name, r.polygon.shape.area) for r in found.rooms] == [
        ("hall", "Hall", 12.0), ("hall-2", "Hall 2", 6.0),
    ]  # fmt: skip
    assert [(o.kind, o.rooms) for o in found.openings] == [
        ("outside", ("hall-2",)), ("wide", ("hall", "hall-2")),
    ]  # fmt: skip
    assert found.openings[1].width_m == 3.0
    assert found.windows[0].room == "hall"
    assert faults_of(found) == []


@pytest.mark.parametrize(
    "line",
    [((1.0, 1.0), (1.0, 1.0)), ((1.0, 1.0), (2.0, 1.0)), ((9.0, 0.0), (9.0, 3.0)),
     ((0.0, 3.0), (6.0, 3.0))],
)  # fmt: skip
def test_a_line_that_cuts_nothing_is_refused(line) -> None:
    with pytest.raises(Refused):
        room_split(Floor((Room("hall", box(0, 0, 6, 3)),)), "hall", line)


@pytest.mark.parametrize(("first", "second"), [("a", "a"), ("a", "z"), ("z", "a"), ("a", "up")])
def test_rooms_that_cannot_be_one_are_refused(first, second) -> None:
    rooms = (Room("a", box(0, 0, 3, 3)), Room("up", box(0, 0, 3, 3), storey="up"))
    with pytest.raises(Refused):
        rooms_joined(Floor(rooms), first, second)


@given(houses(), st.data())
@settings(deadline=None)
def test_what_is_split_and_joined_again_has_the_same_floor(house, data) -> None:
    floor = house.floor()
    room = data.draw(st.sampled_from(floor.rooms))
    west, south, east, north = room.polygon.shape.bounds
    x = data.draw(st.floats(west + 0.3, east - 0.3))
    parted = room_split(floor, room.id, ((x, south), (x, north)))
    second = next(r.id for r in parted.rooms if r.id not in floor.room_by_id)
    whole = rooms_joined(parted, room.id, second).room_by_id[room.id]
    assert whole.polygon.shape.symmetric_difference(room.polygon.shape).area < 1e-3
    assert sum(r.polygon.shape.area for r in parted.rooms) == pytest.approx(
        sum(r.polygon.shape.area for r in floor.rooms), abs=1e-3
    )
