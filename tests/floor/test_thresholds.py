"""The floor under the doors goes to the rooms: nothing lost, nothing twice, seams touch."""

from dataclasses import replace
from itertools import combinations

import pytest
import shapely
from hypothesis import given
from tests.shapes import AWKWARD, WALLED_ROOMS, Place, box
from tests.strategies.floors import floors

from farwall.floor.faults import faults_of
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Exit, Floor
from farwall.floor.thresholds import join_thresholds

# Corners are rounded to 0.1 mm: over a door's perimeter of a few metres that is 1e-3 m².
ROUNDING_M2 = 1e-3


def area(floor: Floor) -> float:
    return sum(room.polygon.shape.area for room in floor.rooms)


def assert_touch_along_their_lines(floor: Floor) -> None:
    for opening in floor.openings:
        line = shapely.LineString(opening.line)
        for room in opening.rooms:
            edge = floor.room_by_id[room].polygon.shape.boundary
            if opening.rooms.count(room) == 1:
                assert edge.intersection(line.buffer(1e-3)).length >= line.length - 1e-3


def test_walled_rooms_by_hand() -> None:
    """Front 4 × 3 = 12, half of 0.8 × 0.12 and half of 0.9 × 0.16 come to it: 12.12 m²."""
    joined = join_thresholds(WALLED_ROOMS.floor)
    front, back = (room.polygon.shape.area for room in joined.rooms)
    assert front == pytest.approx(12 + 0.8 * 0.06 + 0.9 * 0.08)
    assert back == pytest.approx(4 * 2.88 + 0.8 * 0.06)
    assert all(opening.threshold is None for opening in joined.openings)
    assert_touch_along_their_lines(joined)


@given(floors())
def test_pieces_add_up_and_never_overlap(drawn: tuple[Floor, tuple[Exit, ...]]) -> None:
    floor, exits = drawn
    joined = join_thresholds(floor)
    given_away = sum(
        opening.threshold.shape.area / (2 if opening.kind == "outside" else 1)
        for opening in floor.openings
        if opening.threshold is not None
    )
    assert area(joined) == pytest.approx(area(floor) + given_away, abs=ROUNDING_M2)
    shapes = [room.polygon.shape for room in joined.rooms]
    assert all(shape.is_valid for shape in shapes)
    assert all(a.intersection(b).area < 1e-3 for a, b in combinations(shapes, 2))
    assert_touch_along_their_lines(joined)
    assert faults_of(joined, exits) == []


@given(floors())
def test_a_door_without_a_threshold_gets_the_floor_between_the_wall_faces(
    drawn: tuple[Floor, tuple[Exit, ...]],
) -> None:
    floor, _ = drawn
    bare = replace(floor, openings=tuple(replace(o, threshold=None) for o in floor.openings))
    joined = join_thresholds(bare)
    assert area(joined) == pytest.approx(area(join_thresholds(floor)), abs=2 * ROUNDING_M2)
    assert_touch_along_their_lines(joined)


@given(floors())
def test_joining_twice_changes_nothing(drawn: tuple[Floor, tuple[Exit, ...]]) -> None:
    once = join_thresholds(drawn[0])
    again = join_thresholds(once)
    for before, after in zip(once.rooms, again.rooms, strict=True):
        assert after.polygon.shape.area == pytest.approx(before.polygon.shape.area, abs=1e-4)


@pytest.mark.parametrize("place", AWKWARD.values(), ids=AWKWARD.keys())
def test_awkward_shapes_stay_sound(place: Place) -> None:
    joined = join_thresholds(place.floor)
    assert faults_of(joined, place.exits) == []
    assert area(joined) >= area(place.floor) - 1e-9


def test_an_opening_within_one_room_gives_it_both_sides() -> None:
    """Two halves of one room joined by a gap in a wall: 0.8 × 0.12 m comes to the room."""
    u_shape = shapely.unary_union(
        [shapely.box(0, 0, 4, 3), shapely.box(0, 3.12, 4, 6), shapely.box(0, 0, 1, 6)]
    )
    between = replace(WALLED_ROOMS.floor.openings[1], rooms=("front", "front"), kind="cased")
    room = replace(WALLED_ROOMS.floor.rooms[0], polygon=polygon_geometry(u_shape))
    joined = join_thresholds(Floor((room,), (between,)))
    assert area(joined) == pytest.approx(u_shape.area + 0.8 * 0.12)
    assert faults_of(joined) == []


def test_an_opening_that_reaches_no_room_is_returned_as_it_came() -> None:
    lost = replace(WALLED_ROOMS.floor.openings[1], line=((20, 20), (21, 20)),
                   threshold=box(20, 19.9, 21, 20.1))  # fmt: skip
    floor = replace(WALLED_ROOMS.floor, openings=(lost,))
    assert join_thresholds(floor) == floor
