from dataclasses import replace

import pytest
from hypothesis import given
from tests.floor.walk.test_lay import joined
from tests.strategies.walks import rectangle, walks

from farwall.floor.faults import faults_of
from farwall.floor.walk.closed import close_walk
from farwall.floor.walk.floor_of import floor_of
from farwall.floor.walk.nouns import LEFT, RIGHT, Walk, WalkRoom, WalkWall, WalkWay


def made(walk):
    return floor_of(close_walk(walk), tuple(room.name for room in walk.rooms))


def test_two_rooms_and_their_door():
    walk = joined()
    out = WalkWay(1, 0.5, 0.9, "outside")
    hall = replace(walk.rooms[1], ways=(*walk.rooms[1].ways, out))
    floor, exits, crossed = made(replace(walk, rooms=(walk.rooms[0], hall)))
    assert [room.polygon.shape.area for room in floor.rooms] == pytest.approx([12.0, 6.0], abs=1e-3)
    door, way_out = floor.openings
    assert (door.kind, door.rooms) == ("door", ("Den", "Hall"))
    assert door.width_m == pytest.approx(0.8, abs=1e-3)
    assert door.threshold.shape.area == pytest.approx(0.8 * 0.115, abs=1e-3)
    assert way_out.rooms == ("Hall",)
    assert [one.opening for one in exits] == [way_out.id]
    assert crossed == ()
    assert faults_of(floor, exits) == []


@given(walks)
def test_an_exact_room_has_its_own_area(walk):
    room = walk.rooms[0]
    floor, _, _ = made(walk)
    high, wide = room.walls[0].length_m, room.walls[-1].length_m
    if len(room.walls) == 4:
        wanted = high * wide
    else:
        wanted = high * wide - room.walls[2].length_m * room.walls[3].length_m
    assert floor.rooms[0].polygon.shape.area == pytest.approx(wanted, rel=1e-4, abs=1e-3)


def test_rooms_that_no_door_joins_lie_apart():
    floor, _, _ = made(Walk((rectangle(3, 4, name="A"), rectangle(2, 2, name="B"))))
    assert floor.rooms[0].polygon.shape.distance(floor.rooms[1].polygon.shape) > 1.0


def test_walls_that_cross_are_left_out():
    turns = (LEFT, LEFT, LEFT, RIGHT, RIGHT, LEFT, LEFT, LEFT)
    lengths = (10.0, 4.0, 4.0, 6.0, 2.0, 6.0, 4.0, 4.0)
    walls = tuple(WalkWall(a, t) for a, t in zip(lengths, turns, strict=True))
    _, _, crossed = made(Walk((WalkRoom("Knot", walls), rectangle(3, 4))))
    assert crossed == (0,)
