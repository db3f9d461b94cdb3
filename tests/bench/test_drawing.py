"""Corners to rings: closed, turned the right way, rounded."""

from math import hypot

import pytest
import shapely

from farwall.bench.drawing import arc, box, opening, polygon, ring, round_of, shape, turned


def test_a_ring_closes_on_its_first_corner_and_runs_counter_clockwise_by_hand():
    assert ring([(0, 0), (0, 2), (3, 2), (3, 0)]) == ((0, 0), (3, 0), (3, 2), (0, 2), (0, 0))
    assert ring(box(0, 0, 3, 2)) == ((0, 0), (3, 0), (3, 2), (0, 2), (0, 0))


def test_a_hole_runs_clockwise():
    made = polygon(box(0, 0, 5, 5), [box(1, 1, 2, 2)])
    assert shapely.LinearRing(made.coordinates[0]).is_ccw
    assert not shapely.LinearRing(made.coordinates[1]).is_ccw
    assert made.shape.area == pytest.approx(24)


def test_a_round_has_its_radius_and_an_arc_both_ends():
    assert all(hypot(x - 1, y - 2) == pytest.approx(0.5) for x, y in round_of((1, 2), 0.5, 8))
    points = arc((0, 0), 2, 0, 180, legs=6)
    assert len(points) == 7
    assert points[0] == pytest.approx((2, 0))
    assert points[-1] == pytest.approx((-2, 0))


def test_turning_keeps_lengths_and_a_quarter_turn_is_known_by_hand():
    assert turned([(1, 0)], 90)[0] == pytest.approx((0, 1))
    (x0, y0), (x1, y1) = turned([(0, 0), (3, 4)], 17)
    assert hypot(x1 - x0, y1 - y0) == pytest.approx(5)


def test_an_opening_is_as_wide_as_its_line():
    assert opening("d", "door", [(1, 1), (4, 5)], "a", "b").width_m == 5


def test_a_shape_names_what_stands_on_it():
    made = shape("s", box(0, 0, 4, 4), [(1, 0), (2, 0)], dry=[("tub", box(0, 3, 1, 4))])
    assert [one.id for one in made.floor.fixtures] == ["tub-1"]
    assert made.exit.opening == made.floor.openings[-1].id
