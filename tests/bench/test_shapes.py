"""The shapes are floors that can be planned on, each one field, open to a body everywhere."""

import pytest
import shapely
from tests.bench.bodies import AT_DOOR_M, dry_floor, middle, reached_rooms, standing

from farwall.bench.shapes import SHAPES
from farwall.floor.faults import faults_of

WITHIN_M = 1.5
"""No floor farther than this from a body: below the usual reach of 1.9 m."""

each = pytest.mark.parametrize("shape", SHAPES.values(), ids=SHAPES)


def test_there_are_at_least_forty_of_names_of_their_own():
    assert len(SHAPES) >= 40
    assert all(name == shape.name for name, shape in SHAPES.items())


def test_no_shape_stands_twice_under_two_names():
    floors = [(shape.floor.rooms, shape.floor.openings, shape.floor.fixtures)
              for shape in SHAPES.values()]  # fmt: skip
    assert len(set(floors)) == len(SHAPES)


@each
def test_a_shape_has_no_fault(shape):
    assert [str(one) for one in faults_of(shape.floor, (shape.exit,))] == []


@each
def test_a_shape_is_one_field_with_one_way_out(shape):
    outside = [one.id for one in shape.floor.openings if one.kind == "outside"]
    assert outside == [shape.exit.opening]
    assert {one.kind for one in shape.floor.openings} <= {"outside", "wide"}
    assert not shape.floor.saw_cuts
    assert reached_rooms(shape.floor, (shape.exit.opening,)) == set(shape.floor.room_by_id)


@each
def test_a_body_gets_everywhere(shape):
    for room in shape.floor.room_by_id:
        stands = standing(shape.floor, room)
        assert isinstance(stands, shapely.Polygon)
        assert not stands.is_empty
        far = dry_floor(shape.floor, room).difference(stands.buffer(WITHIN_M))
        assert far.area < 0.05
        doors = [one for one in shape.floor.openings if room in one.rooms]
        assert all(middle(one).distance(stands) < AT_DOOR_M for one in doors)


@each
def test_a_shape_is_of_the_size_of_a_house(shape):
    area = sum(dry_floor(shape.floor, room).area for room in shape.floor.room_by_id)
    assert 1 < area < 95
    assert all(0.75 <= one.width_m <= 5 for one in shape.floor.openings)
