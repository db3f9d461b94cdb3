"""Floors cut into blocks, and the rectangles of them."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from farwall.spray.blocks import blocks_of
from farwall.spray.lattice import turned

T_SHAPE = [(2.5, 0), (4.5, 0), (4.5, 4), (7, 4), (7, 7), (0, 7), (0, 4), (2.5, 4)]


def test_a_t_has_four_blocks_and_eight_rectangles():
    blocks = blocks_of(shapely.Polygon(T_SHAPE), 0.0, most=9)
    assert blocks is not None
    assert sorted(blocks.area_m2) == [6.0, 7.5, 7.5, 8.0]
    sides = sorted((one.short_m, one.long_m) for one in blocks.rectangles)
    assert sides == [(2, 3), (2, 4), (2, 7), (2.5, 3), (2.5, 3), (3, 4.5), (3, 4.5), (3, 7)]


def test_a_ring_has_eight_blocks_and_none_in_its_hole():
    ring = shapely.box(0, 0, 6, 5).difference(shapely.box(1, 1.5, 4, 3))
    blocks = blocks_of(ring, 0.0, most=9)
    assert blocks is not None
    assert len(blocks) == 8
    assert blocks.area_m2.sum() == pytest.approx(ring.area)


def test_the_least_floor_is_lost_where_there_are_too_many():
    """A room 6 m by 4 m with a niche of 0.1 m: of three blocks the niche is left out first."""
    room = shapely.box(0, 0, 6, 4).union(shapely.box(2, 4, 3, 4.1))
    blocks = blocks_of(room, 0.0, most=1)
    assert blocks is not None
    assert blocks.area_m2.tolist() == [24.0]


THIN_WALL = (
    shapely.box(0, 0, 12, 1.4).union(shapely.box(0, 1.401, 4, 4)).union(shapely.box(2, 1, 3, 2))
)
"""A hall and a kitchen, a wall of a millimetre between them with an opening of a metre."""


@pytest.mark.parametrize("most", [3, 5, 9])
def test_rooms_on_both_sides_of_a_wall_of_no_thickness_are_blocks(most: int):
    blocks = blocks_of(THIN_WALL, 0.0, most=most)
    assert blocks is not None
    assert blocks.area_m2.sum() == pytest.approx(THIN_WALL.area, abs=0.002)


def test_only_through_its_opening_does_a_rectangle_reach_across_a_wall():
    blocks = blocks_of(THIN_WALL, 0.0, most=9)
    assert blocks is not None
    across = [one for one in blocks.rectangles if one.loose_m2 > 1e-6]
    assert sorted(one.long_m for one in across) == pytest.approx([1.401, 2.6, 4.0])
    assert [one.short_m for one in across] == pytest.approx([1.0] * 3)
    assert [one.loose_m2 for one in across] == pytest.approx([0.001] * 3)
    for one in blocks.rectangles:
        sides = blocks.sides_m[sorted(one.blocks)]
        box = shapely.box(*sides.min(axis=0)[:2], *sides.max(axis=0)[2:])
        assert THIN_WALL.buffer(1e-5).covers(box)
        assert box.area == pytest.approx(one.short_m * one.long_m, abs=one.loose_m2 + 1e-6)


@pytest.mark.parametrize("corners", [[(0, 0), (4, 0), (0, 4)], [(0, 0), (3, 1), (4, 4), (1, 3)]])
def test_a_floor_without_upright_blocks_has_none(corners):
    assert blocks_of(shapely.Polygon(corners), 0.0, most=9) is None


@given(angle=st.floats(0.05, 1.5))
def test_a_turned_floor_has_the_same_blocks(angle: float):
    corners = turned(np.array(T_SHAPE), angle)
    blocks = blocks_of(shapely.Polygon(corners), angle, most=9)
    assert blocks is not None
    assert sorted(blocks.area_m2) == pytest.approx([6.0, 7.5, 7.5, 8.0], abs=1e-6)


@given(
    dry=st.lists(
        st.tuples(st.integers(0, 6), st.integers(0, 6), st.integers(1, 4), st.integers(1, 4)),
        max_size=4,
    ),
    most=st.integers(1, 9),
)
def test_blocks_lie_on_the_floor_do_not_overlap_and_make_up_their_rectangles(dry, most):
    holes = [shapely.box(x, y, x + wide, y + deep) for x, y, wide, deep in dry]
    floor = shapely.box(0, 0, 8, 7).difference(shapely.union_all(holes))
    if not isinstance(floor, shapely.Polygon) or floor.is_empty:
        return
    blocks = blocks_of(floor, 0.0, most=most)
    if blocks is None:
        return
    assert len(blocks) <= most
    drawn = [shapely.box(*sides) for sides in blocks.sides_m]
    assert all(floor.buffer(1e-5).covers(one) for one in drawn)
    assert shapely.union_all(drawn).area == pytest.approx(blocks.area_m2.sum())
    for one in blocks.rectangles:
        whole = shapely.union_all([drawn[n] for n in one.blocks])
        assert whole.area == pytest.approx(one.short_m * one.long_m)
        assert shapely.minimum_rotated_rectangle(whole).area == pytest.approx(whole.area)
