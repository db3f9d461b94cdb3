"""Take-off worked by hand, and the laws that every take-off keeps."""

from math import pi, sin

import pytest
from hypothesis import given
from tests.shapes import (
    FLOOR_WITH_A_HOLE,
    ISLAND_KITCHEN,
    L_HALL,
    ROUND_STAIR,
    TWO_ROOMS,
    WALLED_ROOMS,
    Place,
    box,
    door,
    outside,
    place,
)
from tests.strategies.floors import floors

from farwall.floor.nouns import Exit, Fixture, Floor, Room
from farwall.floor.takeoff import take_off
from farwall.floor.thresholds import join_thresholds


def test_two_rooms_by_hand() -> None:
    """Two rooms of 4 × 3: each 12 m²; edges 14 m each, less 0.9 + 0.8 and less 0.8."""
    result = take_off(TWO_ROOMS.floor)
    assert [room.net_m2 for room in result.rooms] == pytest.approx([12, 12])
    assert [room.mask_m for room in result.rooms] == pytest.approx([14 - 1.7, 14 - 0.8])
    assert (result.net_m2, result.mask_m) == pytest.approx((24, 28 - 2.5))
    assert result.openings == {"outside": 1, "door": 1}
    assert result.opening_width_m == pytest.approx(1.7)
    assert result.rooms[0].opening_widths_m == pytest.approx({"way-out": 0.9, "between": 0.8})


def test_island_kitchen_by_hand() -> None:
    """5 × 4 less an island of 1.4 × 0.9; its four sides are masked too, 4.6 m."""
    (kitchen,) = take_off(ISLAND_KITCHEN.floor).rooms
    assert kitchen.fixtures_m2 == pytest.approx(1.26)
    assert kitchen.net_m2 == pytest.approx(20 - 1.26)
    assert kitchen.mask_m == pytest.approx(18 - 1.8 + 4.6)


def test_a_tub_against_the_wall_is_masked_on_its_free_sides_by_hand() -> None:
    """A tub 1.5 × 0.8 in the corner of a 3 × 2 bath hides 2.3 m of wall and shows 2.3 m."""
    bath = place(
        [Room("bath", box(0, 0, 3, 2))],
        [outside("door", ((2, 0), (2.8, 0)), "bath")],
        (Fixture("tub", box(0, 1.2, 1.5, 2)),),
    )
    (room,) = take_off(bath.floor).rooms
    assert room.net_m2 == pytest.approx(6 - 1.2)
    assert room.mask_m == pytest.approx(10 - 0.8)


def test_a_fixture_in_two_rooms_counts_in_each_by_its_share_by_hand() -> None:
    """A hatch counter of 1 × 0.6 lies half in each of two rooms of 12 m²."""
    counter = Fixture("counter", box(0.5, 2.7, 1.5, 3.3))
    rooms = list(TWO_ROOMS.floor.rooms)
    result = take_off(Floor(tuple(rooms), (), (counter,)))
    assert [room.net_m2 for room in result.rooms] == pytest.approx([11.7, 11.7])


def test_holes_are_masked_and_not_sprayed_by_hand() -> None:
    """7 × 5 less 2 × 1; edges 24 + 6 less the way out of 1 m."""
    (ring,) = take_off(FLOOR_WITH_A_HOLE.floor).rooms
    assert (ring.net_m2, ring.mask_m) == pytest.approx((33, 29))


def test_round_stair_by_hand() -> None:
    """A 64-sided ring of radius 0.9: area n/2·r²·sin(2π/n), edge 2nr·sin(π/n)."""
    (hall,) = take_off(ROUND_STAIR.floor).rooms
    assert hall.net_m2 == pytest.approx(36 - 32 * 0.81 * sin(2 * pi / 64), abs=1e-3)
    assert hall.mask_m == pytest.approx(24 - 1 + 128 * 0.9 * sin(pi / 64), abs=1e-3)


def test_l_hall_by_hand() -> None:
    """6 × 1.2 and 1.2 × 3.8; edge 22 m less 0.9 m and 0.8 m."""
    hall = take_off(L_HALL.floor).rooms[0]
    assert hall.net_m2 == pytest.approx(7.2 + 4.56)
    assert hall.mask_m == pytest.approx(22 - 1.7)


def test_thresholds_not_yet_joined_leave_their_width_unmasked_by_hand() -> None:
    front, back = take_off(WALLED_ROOMS.floor).rooms
    assert front.mask_m == pytest.approx(14 - 0.9 - 0.8)
    assert back.mask_m == pytest.approx(2 * (4 + 2.88) - 0.8)


def test_a_joined_threshold_adds_its_jambs_to_the_edge_by_hand() -> None:
    """Half a wall of 0.12 m at both jambs of the door, 0.08 m at both of the way out."""
    front, _ = take_off(join_thresholds(WALLED_ROOMS.floor)).rooms
    assert front.mask_m == pytest.approx(14 - 0.9 - 0.8 + 2 * 0.06 + 2 * 0.08)


@given(floors())
def test_sums_are_the_sum_of_the_rooms(drawn: tuple[Floor, tuple[Exit, ...]]) -> None:
    floor, _ = drawn
    result = take_off(floor)
    assert result.net_m2 == pytest.approx(sum(r.polygon.shape.area for r in floor.rooms))
    assert sum(result.openings.values()) == len(floor.openings)
    for room in result.rooms:
        wide = sum(o.width_m or 0 for o in floor.openings if room.room in o.rooms)
        edge = floor.room_by_id[room.room].polygon.shape.length
        assert room.mask_m == pytest.approx(edge - wide, abs=1e-6)


@pytest.mark.parametrize("where", [(0.5, 0.5), (1.0, 1.5), (2.5, 2.0)])
def test_net_area_does_not_depend_on_where_a_fixture_stands(where: tuple[float, float]) -> None:
    x, y = where
    home: Place = place(
        [Room("room", box(0, 0, 4, 3))],
        [door("way", ((1, 0), (2, 0)), "room", kind="outside")],
        (Fixture("post", box(x, y, x + 0.5, y + 0.5)),),
    )
    assert take_off(home.floor).net_m2 == pytest.approx(12 - 0.25)
