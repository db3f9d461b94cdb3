"""Edges that part off an area of a convex floor, and the bound by them."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.shapes import outside, place, poly
from tests.spray.grounds import ground

from farwall.floor.nouns import Room
from farwall.spray.bound import (
    convex_m,
    front_of_rectangle_m,
    least_front_m,
    strongest_bound_m,
)
from farwall.spray.convex import arcs_of, convex_inside, front_of_convex_m, least_edges_m
from farwall.spray.crowding import crowding_m
from farwall.spray.fronts import plain_fronts, shortest_known

SIDE_M = 6.0


def polygon(*corners: tuple[float, float]) -> shapely.Polygon:
    return shapely.orient_polygons(shapely.Polygon(corners))


def triangle() -> shapely.Polygon:
    return polygon((0, 0), (SIDE_M, 0), (SIDE_M / 2, SIDE_M * np.sqrt(3) / 2))


def test_an_equilateral_triangle_by_hand():
    """A sixth of a circle about a corner parts off half: its length is sqrt(pi/3 S), and the edge
    gets pi/3 shorter for each metre on. So in w/2 on either side pi/3 w/4 is lost on average."""
    half_m = np.sqrt(np.pi / 3 * triangle().area)
    ends = np.linspace(0, triangle().area, 601)
    assert least_edges_m(triangle(), ends).max() == pytest.approx(half_m, rel=2e-3)
    by_hand = half_m - np.pi / 3 * 1.1 / 4
    assert front_of_convex_m(triangle(), 1.1) == pytest.approx(by_hand, rel=3e-3)
    assert front_of_convex_m(triangle(), 1.1) <= by_hand


@pytest.mark.parametrize(("wide", "long", "depth"), [(4, 7, 1.1), (4, 4, 1.1), (2, 2.2, 1.6)])
def test_a_rectangle_has_the_bound_of_the_rectangle(wide: float, long: float, depth: float):
    known = float(front_of_rectangle_m(np.array([wide]), np.array([long]), depth)[0])
    found = front_of_convex_m(polygon((0, 0), (wide, 0), (wide, long), (0, long)), depth)
    assert found == pytest.approx(known, rel=5e-3)


def test_walls_that_run_toward_each_other_by_hand():
    """A trapezoid from 4 m to 2 m wide in 3 m: its sides meet 3 m beyond the short one. Of the
    triangle there 3 m2 are not floor."""
    sides = polygon((-2, 0), (2, 0), (1, 3), (-1, 3))
    meeting = [arcs for arcs in arcs_of(sides) if arcs.beyond_m2 > 0.01]
    assert [arcs.beyond_m2 for arcs in meeting] == [pytest.approx(3.0)]
    assert meeting[0].turn == pytest.approx(2 * np.arctan(1 / 3))
    assert meeting[0].radius_m == pytest.approx((np.sqrt(10), 2 * np.sqrt(10)))


def test_a_corner_on_a_straight_wall_changes_nothing():
    plain = polygon((0, 0), (4, 0), (4, 7), (0, 7))
    split = polygon((0, 0), (2, 0), (4, 0), (4, 7), (0, 7), (0, 3))
    assert front_of_convex_m(split, 1.1) == pytest.approx(front_of_convex_m(plain, 1.1))


@given(
    spots=st.lists(st.tuples(st.floats(0, 8), st.floats(0, 8)), min_size=3, max_size=9),
    middle=st.tuples(st.floats(-8, 16), st.floats(-8, 16)),
    radius=st.floats(0.3, 20),
)
def test_no_disc_parts_off_floor_by_a_shorter_edge(
    spots: list[tuple[float, float]], middle: tuple[float, float], radius: float
):
    """What is taken from memory, tried: discs anywhere, large ones nearly straight lines."""
    hull = shapely.convex_hull(shapely.MultiPoint(spots))
    inside = convex_inside(hull) if hull.area > 1 else None
    if inside is None:
        return
    disc = shapely.Point(middle).buffer(radius, quad_segs=64)
    part = shapely.intersection(disc, inside).area
    if not 0.02 * inside.area < part < 0.98 * inside.area:
        return
    edge_m = shapely.intersection(disc.exterior, inside).length
    ends = np.linspace(0, inside.area, 601)
    least = np.interp(part, (ends[1:] + ends[:-1]) / 2, least_edges_m(inside, ends))
    assert edge_m >= least * (1 - 0.01)


def test_a_floor_with_a_corner_that_points_inward_is_none():
    bent = polygon((0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6))
    assert convex_inside(bent) is None


def test_a_round_floor_is_told_a_hair_too_small():
    inside = convex_inside(shapely.Point(0, 0).buffer(3, quad_segs=16))
    assert inside is not None
    assert len(shapely.get_coordinates(inside)) <= 65
    assert shapely.Point(0, 0).buffer(3, quad_segs=16).covers(inside)
    assert front_of_convex_m(inside, 1.1) < 6


def test_no_front_of_a_triangular_room_is_below_it_and_no_other_bound_is_as_high():
    shape = poly((0, 0), (SIDE_M, 0), (SIDE_M / 2, SIDE_M * np.sqrt(3) / 2))
    here = ground(place([Room("three", shape)], [outside("side", ((4.5, 0), (5.3, 0)), "three")]))
    found = convex_m(here, 1.0)
    assert found > 1.1 * max(least_front_m(here, 1.0), crowding_m(here, 1.0))
    assert found == strongest_bound_m(here, 1.0)
    assert found <= shortest_known(here, plain_fronts(here)).equivalent_m
