"""The farthest floor: by hand, and laws on awkward shapes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.shapes import AWKWARD, box, door, outside, place
from tests.spray.hand_floors import hall, world

from farwall.floor.nouns import Room
from farwall.spray.farthest import farthest_floor

TWO_ROOMS = place(
    [Room("front", box(0, 0, 4, 3)), Room("back", box(4, 0, 8, 3))],
    [outside("out", ((0, 1), (0, 2)), "front"), door("between", ((4, 0), (4, 1)), "front", "back")],
)


def test_a_hall_by_hand():
    """By hand: 8 m to the end wall; the middle of the last cell is 0.05 m from it.

    Pieces lie a hair (0.5 mm) from their walls.
    """
    found = farthest_floor(world(hall(8, 2)))
    assert (found.room, found.shut_in) == ("hall", ())
    assert found.walk_m == pytest.approx(7.95, abs=0.002)
    assert found.place[0] == pytest.approx(7.95, abs=0.002)


def test_a_wall_of_no_thickness_is_walked_round_by_hand():
    """By hand: from (7.95, 2.95) to the door's corner (4, 1), 4.406 m, and to (0, 1), 4 m."""
    found = farthest_floor(world(TWO_ROOMS))
    assert found.room == "back"
    assert found.place == pytest.approx((7.95, 2.95), abs=0.06)
    assert found.walk_m == pytest.approx(8.406, abs=0.1)


def test_a_room_without_a_door_is_named_and_not_the_farthest():
    shut = replace(TWO_ROOMS, floor=replace(TWO_ROOMS.floor, openings=TWO_ROOMS.floor.openings[:1]))
    found = farthest_floor(world(shut))
    assert (found.room, found.shut_in) == ("front", ("back",))


def test_without_a_way_out_there_is_none():
    assert farthest_floor(world(replace(TWO_ROOMS, exits=()))) is None


@pytest.mark.parametrize("name", AWKWARD)
def test_no_floor_is_shut_in_and_none_lies_farther_than_a_walk_round_all_walls(name):
    of = world(AWKWARD[name])
    found = farthest_floor(of)
    ground = of.ground(of.pieces)
    assert found.shut_in == ()
    way_out = next(seam for seam in of.seams if seam.is_way_out).chord
    assert way_out.distance(ground) < 0.02
    x, y = found.place
    assert 0 < found.walk_m < ground.length
    assert found.walk_m >= (
        (x - way_out.centroid.x) ** 2 + (y - way_out.centroid.y) ** 2
    ) ** 0.5 - (way_out.length / 2 + 0.1)
