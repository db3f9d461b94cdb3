"""Doorways are taken out of rooms so that joining brings the same floor back; else they stay."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import TWO_ROOMS, box, door, outside, place

from farwall.floor.nouns import Room
from farwall.floor.parted import part_thresholds
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from


def alike(one, other):
    """Whether two floors have the same rooms, to a square centimetre."""
    return all(
        shapely.symmetric_difference(a.polygon.shape, b.polygon.shape).area < 1e-4
        for a, b in zip(one.rooms, other.rooms, strict=True)
    )


def two(*, gap, at, wide):
    """Two rooms a wall apart with a door between, and a way out with a threshold of its own."""
    x = 4 + gap / 2
    rooms = [Room("a", box(0, 0, 4, 3)), Room("b", box(4 + gap, 0, 8, 3))]
    line = ((x, at), (x, at + wide))
    threshold = box(4, at, 4 + gap, at + wide) if gap else None
    out = outside("out", ((1, 0), (2, 0)), "a")
    return place(rooms, [door("between", line, "a", "b", threshold=threshold), out]).floor


def test_a_doorway_that_was_joined_is_a_threshold_again_and_the_walls_are_straight():
    floor = two(gap=0.12, at=1, wide=0.8)
    parted = part_thresholds(join_thresholds(floor))
    assert [len(room.polygon.coordinates[0]) for room in parted.rooms] == [5, 5]
    assert parted.openings[0].threshold.shape.equals(floor.openings[0].threshold.shape)
    assert alike(join_thresholds(parted), join_thresholds(floor))


def test_a_floor_whose_doorways_are_told_stays_as_it_is():
    floor = two(gap=0.12, at=1, wide=0.8)
    assert part_thresholds(floor) == floor
    assert part_thresholds(TWO_ROOMS.floor) == TWO_ROOMS.floor


def test_a_bay_that_is_no_doorway_stays_in_its_room():
    """By hand: a bay of 0.5 m beside a door on another wall; only a line over its end makes one."""
    bay = shapely.union(shapely.box(0, 0, 4, 3), shapely.box(1, 3, 2, 3.5))
    from farwall.floor.geometry import polygon_geometry

    rooms = [Room("a", polygon_geometry(bay))]
    floor = place(rooms, [outside("out", ((0, 1), (0, 2)), "a")]).floor
    assert part_thresholds(floor) == floor


def test_a_door_in_the_corner_of_a_room_is_left_where_it_is():
    """Its notch has no wall on one side: cut back, the room would not come out the same."""
    floor = join_thresholds(two(gap=0.12, at=0, wide=0.8))
    assert alike(join_thresholds(part_thresholds(floor)), join_thresholds(floor))


@given(
    st.sampled_from([0.0, 0.1, 0.12, 0.3]), st.floats(0.01, 2.0).map(lambda x: round(x, 4)),
    st.floats(0.4, 0.95).map(lambda x: round(x, 4)),
)  # fmt: skip
def test_joining_brings_back_what_parting_took(gap, at, wide):
    joined = join_thresholds(two(gap=gap, at=at, wide=wide))
    assert alike(join_thresholds(part_thresholds(joined)), joined)


@pytest.mark.parametrize("name", ["quince-street", "sorrel-rise", "thistle-end"])
def test_of_the_invented_houses_every_doorway_is_found(name, request):
    facts = json.loads((request.config.rootpath / "examples" / name / "job.json").read_text())
    joined = join_thresholds(job_from(facts, name).floor)
    parted = part_thresholds(joined)
    assert all(one.threshold is not None for one in parted.openings)
    assert all(len(room.polygon.coordinates[0]) == 5 for room in parted.rooms)
    assert alike(join_thresholds(parted), joined)
    assert replace(parted, rooms=(), openings=()) == replace(joined, rooms=(), openings=())
