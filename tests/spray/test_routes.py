"""Walks of a body on free ground, by hand and as laws."""

from __future__ import annotations

from math import hypot, sqrt

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box

from farwall.spray.routes import Walkable, gap_m, length_m, nearest_on, part_with

ELL = shapely.Polygon([(0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)])
RING = shapely.Polygon(box(0, 0, 6, 6).exterior.coords, [box(2, 2, 4, 4).exterior.coords])


def test_a_walk_in_sight_is_straight():
    assert Walkable(ELL).walk((1, 1), (5, 1)) == ((1, 1), (5, 1))


def test_a_walk_around_a_corner_by_hand():
    """By hand: from (5, 1) to (1, 5) over the corner (2, 2): twice √10 m."""
    way = Walkable(ELL).walk((5, 1), (1, 5))
    assert way == ((5, 1), (2, 2), (1, 5))
    assert length_m(way) == pytest.approx(2 * sqrt(10))


def test_a_walk_around_a_hole_takes_the_shorter_side_by_hand():
    """By hand: from (1, 1) to (5, 4.5) over (4, 2): √10 + √(1 + 2.5²)."""
    way = Walkable(RING).walk((1, 1), (5, 4.5))
    assert way[1] == (4.0, 2.0)
    assert length_m(way) == pytest.approx(sqrt(10) + hypot(1, 2.5))


def test_there_is_no_walk_to_a_place_off_the_ground():
    assert Walkable(ELL).walk((1, 1), (5, 5)) is None


def test_the_part_of_ground_under_a_place():
    ground = shapely.union(box(0, 0, 1, 1), box(2, 0, 3, 1))
    assert part_with(ground, (2.5, 0.5)).equals(box(2, 0, 3, 1))
    assert part_with(ground, (1.5, 0.5)) is None
    assert part_with(ground, (1.003, 0.5)).equals(box(0, 0, 1, 1)), "rounding is forgiven"
    assert part_with(shapely.Polygon(), (0, 0)) is None


def test_the_nearest_place_on_the_ground():
    assert nearest_on(box(0, 0, 2, 2), (3, 1)) == (2.0, 1.0)
    assert nearest_on(box(0, 0, 2, 2), (1, 1)) == (1.0, 1.0)


def test_lengths_by_hand():
    assert length_m(((0, 0), (3, 4), (3, 5))) == pytest.approx(6.0)
    assert length_m(((1, 1),)) == 0.0
    assert gap_m((0, 0), (3, 4)) == 5.0


places = st.tuples(st.floats(0.05, 5.95), st.floats(0.05, 5.95))


@given(places, places, places, st.sampled_from([ELL, RING]))
def test_a_walk_stays_on_the_ground_and_no_detour_is_shorter(a, b, c, ground):
    assume(all(ground.buffer(-0.01).covers(shapely.Point(p)) for p in (a, b, c)))
    walkable = Walkable(ground)
    way = walkable.walk(a, b)
    assert (way[0], way[-1]) == (a, b)
    assert ground.buffer(0.0041, join_style="mitre").covers(shapely.LineString(way))
    assert length_m(way) >= gap_m(a, b) - 1e-9
    detour = length_m(walkable.walk(a, c)) + length_m(walkable.walk(c, b))
    assert length_m(way) <= detour + 0.03, "a body may cut a corner by 4 mm, once a walk"
    assert length_m(walkable.walk(b, a)) == pytest.approx(length_m(way), abs=0.02)
