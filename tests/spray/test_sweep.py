"""A field swept: two bands by hand, fronts as long as a hall is wide, and laws of every sweep."""

from __future__ import annotations

from dataclasses import replace
from math import pi

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale, translate
from tests.shapes import AWKWARD, outside, place, poly
from tests.spray.hand_floors import (
    BLOCKED_DOOR,
    L_ROOM,
    ROUND,
    SPLIT_BY_A_COUNTER,
    hall,
    moved,
    row,
)
from tests.spray.sweeping import oldest_min, sweeper, swept

from farwall.errors import Unanswerable
from farwall.floor.nouns import Room
from farwall.spray.fronts import levelled_front, plain_fronts
from farwall.spray.routes import gap_m
from farwall.spray.sweep import pause_min


def test_the_oldest_edge_of_two_bands_by_hand():
    """By hand: a room 3 m wide and 2 m deep, its whole end the way out, bands of 1 m, 3 m²/min.

    Each band takes a minute. Walked the same way round, every place waits one minute and the
    walk back, from (0.25 m inside one wall, 0.75 m from the end) to the other wall and 0.25 m
    outside: √(2.49² + 1²) = 2.7 m or 0.045 min. There and back the first place would wait two.
    """
    found = swept(hall(2, 3))
    assert len(found.passes) == 2
    assert oldest_min(found) == pytest.approx(1.0 + 0.045, abs=0.03)


@pytest.mark.parametrize("width", [1.2, 2.0, 3.0])
def test_the_front_of_a_hall_is_its_width_by_hand(width):
    """By hand: as much floor is sprayed in a metre of depth as the hall is wide."""
    assert swept(hall(9, width)).front.equivalent_m == pytest.approx(width, rel=0.01)


def test_the_fronts_of_an_ell_by_hand():
    """By hand: rings about the way out are 2 m long in the foot. At the bend they run straight
    on through the corner and around it in quarter circles as well: from 1 to 2 m behind the
    inner corner 2 + π / 4 x (2² - 1²) = 4.36 m² a metre. Levelled, the front turns about the
    corner: 2 m, and no more than twice as much across it."""
    ground = sweeper(L_ROOM).field.ground
    plain = plain_fronts(ground)
    rings = next(front for front in plain if front.name == "rings")
    assert rings.equivalent_m == pytest.approx(2 + pi / 4 * 3, rel=0.06)
    assert 2.0 <= levelled_front(ground, plain).equivalent_m <= 2 * 2.0


def test_the_last_strip_counts_though_it_meets_nobody_by_hand():
    """By hand: a room 4 m wide at its door end and 1 m behind: the strip of 4 m² comes last.

    That is so when it is swept straight toward its wide side; along that side it is 2 m at most.
    """
    room = Room(
        "room", poly((0, 0), (1, 0), (1, 1.5), (2, 1.5), (2, 2.5), (1, 2.5), (1, 4), (0, 4))
    )
    made = sweeper(place([room], [outside("wide", ((0, 0), (0, 4)), "room")]))
    ways = {front.name: front.equivalent_m for front in plain_fronts(made.field.ground)}
    assert ways["straight -u"] == pytest.approx(4.0, rel=0.1)
    assert ways["straight v"] == pytest.approx(2.0, rel=0.1)
    assert made.sweep(ROUND).front.name.endswith("v")


def test_one_strip_has_its_own_area_for_a_front():
    found = swept(hall(0.9, 1.0))
    assert len(found.passes) == 1
    assert oldest_min(found) == 0.0
    assert found.front.equivalent_m == pytest.approx(0.9 / ROUND.band_m, rel=0.1)


def test_the_age_goes_with_the_front():
    """In a straight hall the age is front x depth / rate, and the walk from band to band."""
    found = swept(hall(9, 3))
    walks = max(
        gap_m(one.path[-1], two.path[0])
        for one, two in zip(found.passes, found.passes[1:], strict=False)
    )
    spraying = found.front.equivalent_m * found.depth_m / ROUND.spray_m2_min
    age = oldest_min(found)
    assert spraying * 0.9 <= age <= spraying + walks / ROUND.walk_m_min + 0.1


def test_areas_and_overlap_add_up():
    found = swept(hall(8, 2), tools=replace(ROUND, overlap_m=0.2))
    assert found.area_m2 == pytest.approx(16.0, abs=0.01)
    assert found.wetted_m2 == pytest.approx(16.0 + 7 * 0.2 * 2.0, rel=0.01)


def test_the_pause_of_a_refill_by_hand():
    """By hand: a swap is half a minute; alone it is 3 min of filling and a walk out and in again
    from the middle of a hall of 8 m: 8 m."""
    way_m = sweeper(hall(8, 2)).way_out_m()
    assert way_m == pytest.approx(4.0, rel=0.01)
    assert pause_min(ROUND, helper=True, way_m=way_m) == 0.5
    assert pause_min(ROUND, helper=False, way_m=way_m) == pytest.approx(3.0 + 8.0 / 60, rel=0.001)


def test_floor_that_does_not_hang_together_is_no_field():
    with pytest.raises(Unanswerable, match="falls apart"):
        swept(SPLIT_BY_A_COUNTER, by="west")


def test_a_blocked_room_is_not_swept_from_beyond_its_door():
    with pytest.raises(Unanswerable):
        swept(BLOCKED_DOOR, by="way-out")


@pytest.mark.parametrize("name", AWKWARD)
def test_turned_passes_are_no_older_than_passes_as_they_were_laid(name):
    """Each pass is walked the better way round: turning any one of them back helps nothing."""
    found = swept(AWKWARD[name])
    age = oldest_min(found)
    for index in range(len(found.passes)):
        passes = list(found.passes)
        passes[index] = replace(passes[index], path=passes[index].path[::-1])
        edges = tuple(
            replace(
                edge,
                first_share=tuple(1 - s for s in edge.first_share)
                if edge.first == index and passes[index].length_m > 1e-6
                else edge.first_share,
                then_share=tuple(1 - s for s in edge.then_share)
                if edge.then == index and passes[index].length_m > 1e-6
                else edge.then_share,
            )
            for edge in found.edges
        )
        other = replace(found, passes=tuple(passes), edges=edges)
        assert oldest_min(other) >= age - 1e-3


MOVES = {
    "mirrored": lambda shape: scale(shape, -1, 1, origin=(0, 0)),
    "shifted": lambda shape: translate(shape, 31.7, -12.3),
    "quarter-turned": lambda shape: rotate(shape, 90, origin=(0, 0)),
    "turned by 17 degrees": lambda shape: rotate(shape, 17, origin=(0, 0)),
}


@pytest.mark.parametrize("name", AWKWARD)
@pytest.mark.parametrize("move", MOVES)
def test_a_floor_that_is_moved_keeps_its_ages(name, move):
    """The same bands wherever the floor lies.

    Which way round each pass is walked is a climb from the way it was laid, and that differs in a
    mirror or after a turn: one of the two may stop a seventh short of the other.
    """
    here, there = swept(AWKWARD[name]), swept(moved(AWKWARD[name], MOVES[move]))
    assert len(there.passes) == len(here.passes)
    assert there.area_m2 == pytest.approx(here.area_m2, abs=0.01)
    age = oldest_min(here)
    assert oldest_min(there) == pytest.approx(age, rel=0.15, abs=0.03)


@settings(max_examples=15)
@given(st.floats(2.0, 9.0), st.floats(1.2, 5.0), st.floats(1.1, 2.5))
def test_a_faster_arm_never_makes_an_edge_older(length, width, faster):
    slow = swept(hall(length, width))
    quick = replace(ROUND, spray_m2_min=ROUND.spray_m2_min * faster)
    assert (
        oldest_min(swept(hall(length, width), tools=quick), quick) <= oldest_min(slow, ROUND) + 0.02
    )


@settings(max_examples=15)
@given(st.lists(st.floats(1.5, 4.0), min_size=1, max_size=3), st.sampled_from([0.6, 0.8, 1.0]))
def test_every_square_metre_is_sprayed_once_whatever_the_band(widths, band_m):
    found = swept(row(*widths), tools=replace(ROUND, band_m=band_m))
    assert found.area_m2 == pytest.approx(3 * sum(widths), abs=0.01)
    assert found.depth_m <= band_m * 1.06
