"""Where a floor could be cut: worked by hand, and true of any rectangle."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.spray.remedies.places import cut_places, middle_cut, where_words

ELL = shapely.Polygon([(0, 0), (8, 0), (8, 3), (3, 3), (3, 9), (0, 9)])


def test_the_middle_cut_of_a_hall_by_hand():
    """By hand: across the long way at half: x = 4.5 from wall to wall."""
    cut = middle_cut(shapely.box(0, 0, 9, 5))
    xs, ys = zip(*cut.line, strict=True)
    assert xs == (4.5, 4.5)
    assert sorted(ys) == [0.0, 5.0]


@given(st.floats(1, 9), st.floats(1, 9), st.floats(0, 90))
def test_the_middle_cut_halves_any_rectangle_across_its_long_way(length, width, turn):
    shape = shapely.affinity.rotate(shapely.box(0, 0, length, width), turn, origin=(0, 0))
    line = shapely.LineString(middle_cut(shape).line)
    assert line.length == pytest.approx(min(length, width), abs=0.01)
    longer = shapely.affinity.scale(line, 1.01, 1.01)
    halves = shapely.ops.split(shape, longer).geoms
    assert [half.area for half in halves] == pytest.approx([shape.area / 2] * 2, rel=0.02)


def test_the_corner_of_an_ell_is_where_it_is_cut_by_hand():
    """By hand: on from the inner corner (3, 3) either way: 24 or 18 m² and 18 or 15 of 42 m²."""
    lines = [set(line) for line in cut_places(ELL, most=9)]
    assert {(3.0, 0.0), (3.0, 3.0)} in lines
    assert {(0.0, 3.0), (3.0, 3.0)} in lines


@given(st.floats(2, 9), st.floats(2, 9), st.floats(0, 90))
def test_every_place_parts_the_floor_from_wall_to_wall(length, width, turn):
    shape = shapely.affinity.rotate(shapely.box(0, 0, length, width), turn, origin=(0, 0))
    places = cut_places(shape, most=6)
    assert places
    for line in places:
        whole = shapely.LineString(line)
        assert whole.length >= min(length, width) - 0.01
        halves = shapely.ops.split(shape, shapely.affinity.scale(whole, 1.01, 1.01)).geoms
        assert max(half.area for half in halves) <= 0.86 * shape.area


def test_an_island_is_looked_over():
    """A cut is one line from wall to wall, whatever stands on it."""
    hall = shapely.box(0, 0, 9, 5).difference(shapely.box(4, 2, 5, 3))
    assert {(4.5, 0.0), (4.5, 5.0)} in [set(line) for line in cut_places(hall, most=9)]


def test_the_words_measure_from_the_nearer_wall_by_hand():
    """By hand: x = 2.7 of 0 to 9: 2.70 m from the left; y = 4 of 5: 1 m from the top."""
    hall = shapely.box(0, 0, 9, 5)
    assert where_words(hall, ((2.7, 0), (2.7, 5)), us=True) == (
        "16' 5\" (5.00 m) long, 8' 10½\" (2.70 m) from the wall at the left of the plan"
    )
    told = where_words(hall, ((0, 4), (9, 4)), us=True)
    assert "3' 3½\" (1.00 m) from the wall at the top" in told


def test_a_job_in_metres_is_told_metres_first():
    hall = shapely.box(0, 0, 9, 5)
    assert where_words(hall, ((2.7, 0), (2.7, 5)), us=False) == (
        "5.00 m (16' 5\") long, 2.70 m (8' 10½\") from the wall at the left of the plan"
    )
