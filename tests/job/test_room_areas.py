"""The floor of each room: with that under its doors, without what is kept dry."""

from dataclasses import replace

import pytest
import shapely
from tests.papers.office.grounds import planned

from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Fixture
from farwall.job.room_areas import areas_of

_, PLAN = planned()


def kept_dry(x0, y0, x1, y1):
    """The plan with one more fixture, that alone."""
    box = shapely.box(x0, y0, x1, y1)
    only = (Fixture("island", polygon_geometry(box)),)
    return replace(PLAN, inputs=replace(PLAN.inputs, fixtures=only))


def test_a_fixture_is_left_out_of_each_room_it_stands_in():
    """By hand: a metre square, all in one room, takes one square metre from that room alone."""
    bare = areas_of(replace(PLAN, inputs=replace(PLAN.inputs, fixtures=())))
    room = max(PLAN.inputs.floor.rooms, key=lambda one: one.polygon.shape.area)
    at = room.polygon.shape.representative_point()
    found = areas_of(kept_dry(at.x - 0.5, at.y - 0.5, at.x + 0.5, at.y + 0.5))
    assert found[room.id] == pytest.approx(bare[room.id] - 1.0)
    assert {one: m2 for one, m2 in found.items() if one != room.id} == {
        one: m2 for one, m2 in bare.items() if one != room.id
    }


def test_the_rooms_come_to_the_fields_of_a_coat():
    for coat in PLAN.inputs.coats:
        fields = sum(one.area_m2 for one in PLAN.fields if one.coat == coat.id)
        assert sum(areas_of(PLAN).values()) == pytest.approx(fields, rel=0.01)
