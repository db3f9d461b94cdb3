"""Bands along a wished direction: each field both ways, each walkable and of that direction."""

from __future__ import annotations

import pytest
from tests.shapes import Place, box, outside, place
from tests.spray.hand_floors import ROUND, world
from tests.spray.sweeping import way_out

from farwall.floor.nouns import Room
from farwall.job.seal_day.direction import apart_deg, mean_direction_deg
from farwall.spray.directed import WAYS, DirectedSweeper, directed_fronts


def room(width, depth, at):
    """A room with one door of 0.9 m in its south wall, its middle at `at` metres from the west."""
    return place(
        [Room("room", box(0, 0, width, depth), "Room")],
        [outside("door", ((at - 0.45, 0), (at + 0.45, 0)), "room")],
    )


def swept(of: Place, way):
    here = world(of)
    sweeper = DirectedSweeper(here, sorted(here.pieces), way_out(here), ROUND, l_per_m2=0.1)
    sweeper.way = way
    return sweeper, sweeper.sweep(ROUND)


@pytest.mark.parametrize(("width", "depth", "at"), [(4, 3, 2), (5, 4, 0.7), (4, 6, 2), (3, 3, 1.5)])
def test_a_room_is_swept_both_ways_and_the_two_cross(width, depth, at):
    turned = {}
    for way in WAYS:
        _, sweep = swept(room(width, depth, at), way)
        turned[way] = mean_direction_deg(one.strip.shape for one in sweep.passes)
        floor = sum(one.strip.shape.area for one in sweep.passes)
        assert floor == pytest.approx(width * depth, rel=1e-3)
    assert apart_deg(*turned.values()) > 80


def test_a_lane_to_the_door_comes_last():
    """By hand: in a room 6 m wide with its door in the middle of the long wall, bands across the
    short side come from both ends, and the metre before the door is the last."""
    sweeper, sweep = swept(room(6, 4, 3), "u")
    last = sweep.passes[-1].strip.shape.centroid
    assert abs(last.x - 3) < 0.5
    assert last.y < 1
    first = sweep.passes[0].strip.shape.centroid
    assert abs(first.x - 3) > 2
    assert sweeper.age_min(ROUND) > 0


def test_fronts_whose_edge_would_die_at_half_the_width_are_left_out():
    """By hand: a straight front as wide as a hall of 8 m is at least 8 m: at 3 m²/min and bands of
    half a metre an edge of 1.33 min. Nothing is left in 1.3 min; in 4 min everything is."""
    sweeper, _ = swept(room(8, 3, 4), "v")
    sweeper.edge_min = 1.3
    assert sweeper.leaves_out
    assert sweeper.hopeless
    other, _ = swept(room(8, 3, 4), "v")
    other.edge_min = 4.0
    assert not other.leaves_out
    assert not other.hopeless


def test_fronts_move_along_the_line_that_was_asked_for():
    sweeper, _ = swept(room(4, 3, 2), "u")
    lines = {front.name.split()[0] for front in directed_fronts(sweeper.field.ground, "u")}
    assert lines == {"straight"}
