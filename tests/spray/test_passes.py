"""Where the person walks while spraying: off the wet, in reach, along each front once."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD, ISLAND_KITCHEN, box, door, outside, place
from tests.spray.hand_floors import (
    CLOSET_BEHIND_A_GAP,
    LARGE_HALL,
    ROUND,
    TINY_ROOM,
    hall,
    row,
    seam,
    world,
)
from tests.spray.sweeping import swept, way_out
from tests.strategies.houses import house

from farwall.errors import Unanswerable
from farwall.floor.nouns import Fixture, Room
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.building import build_world
from farwall.spray.world import BODY_M

ALL = {
    **AWKWARD,
    "hall": hall(8, 2),
    "row of rooms": row(3, 2, 3),
    "large hall": LARGE_HALL,
    "tiny room": TINY_ROOM,
}


def line(each):
    return shapely.LineString(each.path) if len(each.path) > 1 else shapely.Point(each.path[0])


STRAIGHTENED_M = 0.005
"""A path is straightened by up to 4 mm; the replay forgives ten."""


def assert_off_the_wet_and_in_reach(found, reach_m=ROUND.reach_m):
    wet = []
    for each in found.passes:
        wet.append(each.strip.shape)
        assert min(line(each).distance(shape) for shape in wet) >= BODY_M - STRAIGHTENED_M
        corners = shapely.points(shapely.get_coordinates(each.strip.shape))
        assert shapely.distance(corners, line(each)).max() <= reach_m + 0.01


def test_the_first_pass_of_a_hall_by_hand():
    """By hand: strips of 1 m, the person 0.2525 m before each, 0.253 m from the side walls.

    The far strip lies between 7 and 8 m from the end: the body is at x = 6.75. Its end is found
    on a lattice of 0.21 m and may be a quarter of a step off.
    """
    first = swept(hall(8, 2)).passes[0]
    xs, ys = zip(*first.path, strict=True)
    assert list(xs) == pytest.approx([6.75] * len(xs), abs=0.21 / 4)
    assert (min(ys), max(ys)) == pytest.approx((0.253, 1.747), abs=0.002)
    assert first.length_m == pytest.approx(2 - 2 * 0.253, rel=0.01)


def test_the_last_pass_is_walked_outside():
    last = swept(hall(8, 2)).passes[-1]
    assert max(x for x, _ in last.path) == pytest.approx(-0.2525, abs=0.005)


def test_the_overlap_is_wetted_too_by_hand():
    """By hand: 2 m² and an overlap of 0.2 m along 2 m of border; the first strip has none."""
    tools = replace(ROUND, overlap_m=0.2)
    passes = swept(hall(8, 2), tools=tools).passes
    assert passes[0].wetted_m2 == pytest.approx(passes[0].strip.area_m2)
    for each in passes[1:]:
        assert each.wetted_m2 == pytest.approx(each.strip.area_m2 + 0.4, abs=0.02)


def test_a_closet_behind_a_gap_is_sprayed_from_the_room():
    """Nobody of 0.5 m goes through a door of 0.45 m; 0.7 m of closet are within reach."""
    of = world(CLOSET_BEHIND_A_GAP)
    found = swept(of, "closet", by="gap")
    assert_off_the_wet_and_in_reach(found)
    assert all(x < 4 for each in found.passes for x, _ in each.path)


def test_a_deep_closet_behind_a_gap_cannot_be_done():
    deep = place(
        [Room("room", box(0, 0, 4, 3)), Room("closet", box(4, 0.5, 8, 1.7))],
        [
            outside("front", ((1, 0), (2, 0)), "room"),
            door("gap", ((4, 0.9), (4, 1.35)), "room", "closet"),
        ],
    )
    with pytest.raises(Unanswerable):
        swept(deep, "closet", by="gap")


def test_a_tiny_room_of_half_a_square_metre_takes_one_pass():
    found = swept(TINY_ROOM, "meter", by="meter-door")
    assert [each.strip.area_m2 for each in found.passes] == pytest.approx([0.5])
    assert_off_the_wet_and_in_reach(found)


def test_a_front_that_crosses_a_doorway_is_walked_once():
    """A band that goes on through a door: its path is not much longer than its front."""
    of = world(row(3.0, 3.0, kind="wide"))
    for each in swept(of).passes:
        reach = each.strip.shape.minimum_rotated_rectangle.length
        assert each.length_m <= reach


def test_the_person_goes_around_an_island_and_not_over_it():
    of = world(ISLAND_KITCHEN)
    island = ISLAND_KITCHEN.floor.fixtures[0].polygon.shape
    for each in swept(of).passes:
        assert line(each).distance(island) >= BODY_M - STRAIGHTENED_M


def test_a_body_keeps_out_of_doorways_to_other_fields():
    """Beyond the door to b the floor may be wet already."""
    of = world(row(3.0, 3.0))
    chord = seam(of, "ab").chord
    for each in swept(of, "a").passes:
        assert line(each).distance(chord) >= BODY_M - STRAIGHTENED_M


@pytest.mark.parametrize("name", ALL)
def test_awkward_floors_are_sprayed_off_the_wet_and_in_reach(name):
    assert_off_the_wet_and_in_reach(swept(ALL[name]))


@settings(max_examples=8)
@given(st.integers(0, 5000))
def test_rooms_of_every_house_are_sprayed_off_the_wet_and_in_reach(seed):
    job = job_from(house(seed), about="house")
    of = build_world(join_thresholds(job.floor), job.exits)
    exit_seam = way_out(of)
    assume(exit_seam.chord.length >= 0.6)  # a saw cut may leave less of a doorway than a body needs
    assert_off_the_wet_and_in_reach(swept(of, exit_seam.a, by=exit_seam))


def test_a_fixture_that_fills_the_way_leaves_nowhere_to_stand():
    """A bench leaves 0.4 m along a room 6 m long: no body gets to its far end."""
    bench = Fixture("bench", box(0.5, 0.4, 6.0, 1.2), "bench")
    room = Room("room", box(0, 0, 6, 1.2))
    narrow = place([room], [outside("front", ((0, 0.2), (0, 1.0)), "room")], (bench,))
    with pytest.raises(Unanswerable):
        swept(narrow)
