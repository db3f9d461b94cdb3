"""Walks around corners: by Pythagoras, against all sight lines, and as laws."""

from __future__ import annotations

import heapq
from math import acos, cos, hypot, pi, radians, sin, sqrt

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import box
from tests.shapes import ROUND_STAIR

from farwall.spray import geodesic
from farwall.spray.geodesic import walk_map

ELL = shapely.Polygon([(0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)])
RING = shapely.Polygon(box(0, 0, 6, 6).exterior.coords, [box(2, 2, 4, 4).exterior.coords])

CORNER_M = 0.003
"""Sources and corners are looked from one millimetre inside the floor; a walk has two or three."""
CELLS_M2 = 0.01
"""What a corner serves is drawn 0.2 mm wider all round, so that neighbours overlap."""
DISC = 0.004
"""Discs are drawn with 48 sides: 0.3 % of their area is missing."""


def walk_m(floor, source, *places):
    return walk_map(floor, [source]).walk_from(np.array(places, dtype=float))


def test_a_straight_walk_by_hand():
    """By hand: 2 m across and 3 m up are √13 m."""
    assert walk_m(box(0, 0, 4, 3), (2, 0), (4, 3))[0] == pytest.approx(sqrt(13), abs=CORNER_M)


def test_a_walk_around_the_corner_of_an_ell_by_hand():
    """By hand: from (6, 1) to the corner (2, 2) √17 m, and from there to (1, 6) another √17 m."""
    assert walk_m(ELL, (6, 1), (1, 6))[0] == pytest.approx(2 * sqrt(17), abs=CORNER_M)


def test_a_walk_around_a_square_hole_by_hand():
    """By hand: √5 m to its corner, 2 m along it, √5 m on; the same on either side."""
    assert walk_m(RING, (3, 0), (3, 6))[0] == pytest.approx(2 * sqrt(5) + 2, abs=CORNER_M)


def test_a_walk_around_a_round_stair_by_hand():
    """By hand: two tangents of √(3² - 0.9²) m and an arc of radius 0.9 between them.

    The stair has 64 corners that lie on the circle: its polygon is walked round a little shorter.
    """
    hall = ROUND_STAIR.floor.rooms[0].polygon.shape
    tangent = sqrt(3**2 - 0.9**2)
    arc = 0.9 * (pi - 2 * acos(0.9 / 3))
    assert walk_m(hall, (3, 0), (3, 6))[0] == pytest.approx(2 * tangent + arc, abs=0.01)


def test_a_place_off_the_floor_is_never_reached():
    assert walk_m(box(0, 0, 4, 3), (2, 0), (9, 9))[0] == np.inf


def test_the_farthest_corner_by_hand():
    """By hand: of an ell from (6, 1) it is (0, 6): √17 + √(2² + 4²)."""
    assert walk_map(ELL, [(6, 1)]).farthest_m() == pytest.approx(
        sqrt(17) + sqrt(20), abs=2 * CORNER_M
    )


def test_the_floor_within_a_walk_is_half_a_disc_by_hand():
    """By hand: from the middle of a wall, 1.5 m all round: π 1.5² / 2."""
    area = walk_map(box(0, 0, 4, 3), [(2, 0)]).region_within(1.5).area
    assert area == pytest.approx(pi * 1.5**2 / 2, rel=DISC)


def test_a_wide_exit_is_a_line_and_not_points_by_hand():
    """By hand: within 1 m of a line 2 m long at the wall: 2 x 1 and two quarters of a disc."""
    area = walk_map(box(0, 0, 6, 4), [(2, 0), (3, 0), (4, 0)]).region_within(1.0).area
    assert area == pytest.approx(2 + pi / 2, rel=DISC)


def test_the_floor_within_a_walk_behind_a_corner_by_hand():
    """By hand: behind the corner (2, 2) the walk goes on in a sector of the radius that is left.

    The sector lies between the wall (90°) and the sight line from (6, 1) through the corner.
    """
    left_m = 1.0
    region = walk_map(ELL, [(6, 1)]).region_within(sqrt(17) + left_m)
    angle = radians(90) - np.arctan2(1, 4)
    hidden = shapely.Polygon([(2, 2), (2, 6), (0, 6), (0, 2.5)])
    assert region.intersection(hidden).area == pytest.approx(angle * left_m**2 / 2, rel=0.01)


def test_all_floor_is_within_the_longest_walk():
    for floor, source in ((ELL, (6, 1)), (RING, (3, 0)), (box(0, 0, 4, 3), (2, 0))):
        walks = walk_map(floor, [source])
        assert walks.region_within(walks.farthest_m() + 0.02).area == pytest.approx(
            floor.area, rel=1e-3
        )


def brute_walks(floor, source, places):
    """Slow and plain: every sight line between all corners is tried, then Dijkstra."""
    seen = floor.buffer(1e-6)
    nodes = [source, *shapely.get_coordinates(floor).tolist(), *places]
    best, queue = {0: 0.0}, [(0.0, 0)]
    while queue:
        walked, here = heapq.heappop(queue)
        if walked > best[here]:
            continue
        for there, place in enumerate(nodes):
            onward = walked + hypot(place[0] - nodes[here][0], place[1] - nodes[here][1])
            if onward < best.get(there, np.inf) - 1e-12 and seen.covers(
                shapely.LineString([nodes[here], place])
            ):
                best[there] = onward
                heapq.heappush(queue, (onward, there))
    return [best.get(len(nodes) - len(places) + i, np.inf) for i in range(len(places))]


def nothing_touches(floor):
    """Blocks that meet at a corner leave a way without width; nobody asks how long it is."""
    corners = [tuple(xy) for ring in shapely.get_rings(floor) for xy in ring.coords[1:]]
    narrow = floor.buffer(-0.05, join_style="mitre")
    return len(corners) == len(set(corners)) and len(shapely.get_rings(narrow)) == len(
        shapely.get_rings(floor)
    )


@st.composite
def floors_with_nooks(draw):
    """A room with up to three blocks taken out of it, some at the walls, some free: one piece."""
    floor = box(0, 0, 6, 4)
    for _ in range(draw(st.integers(1, 3))):
        x, y = draw(st.integers(0, 10)) * 0.5, draw(st.integers(1, 7)) * 0.5
        wide, deep = draw(st.integers(1, 5)) * 0.5, draw(st.integers(1, 4)) * 0.5
        less = floor.difference(box(x, y, x + wide, y + deep))
        if less.geom_type == "Polygon" and nothing_touches(less):
            floor = less
    turn = draw(st.sampled_from([0.0, 17.0, 45.0]))
    return shapely.affinity.rotate(floor, turn, origin=(0, 0)), turn


@settings(max_examples=25)
@given(floors_with_nooks(), st.floats(0.1, 5.9))
def test_walks_agree_with_every_sight_line_tried(floor_and_turn, along):
    floor, turn = floor_and_turn
    source = (along * cos(radians(turn)), along * sin(radians(turn)))
    if not floor.buffer(1e-6).covers(shapely.Point(source)):
        return
    inside = floor.buffer(-0.05)
    places = shapely.get_coordinates(inside.segmentize(2.5)).tolist()
    found = walk_m(floor, source, *places)
    for place, walk, plain in zip(places, found, brute_walks(floor, source, places), strict=True):
        assert walk == pytest.approx(plain, abs=0.008), place


@settings(max_examples=20)
@given(floors_with_nooks())
def test_within_a_longer_walk_lies_more_floor_and_growing_says_the_same(floor_and_turn):
    floor, _ = floor_and_turn
    source = tuple(shapely.get_coordinates(floor.exterior)[0])
    walks = walk_map(floor, [source])
    growing = walks.growing_in(floor)
    before = told = shapely.Polygon()
    for walk in (0.7, 1.5, 2.9, 4.4, 9.0):
        region = walks.region_within(walk)
        assert before.difference(region).area < 1e-3
        told = told.union(growing.within(walk))
        assert told.symmetric_difference(region).area < CELLS_M2
        before = region


@settings(max_examples=20)
@given(floors_with_nooks(), st.floats(0.3, 6.0))
def test_the_region_holds_the_places_whose_walk_is_shorter_and_no_others(floor_and_turn, walk):
    floor, _ = floor_and_turn
    source = tuple(shapely.get_coordinates(floor.exterior)[0])
    walks = walk_map(floor, [source])
    region = walks.region_within(walk)
    places = shapely.get_coordinates(floor.buffer(-0.1).segmentize(0.4))
    for place, metres in zip(places, walks.walk_from(places), strict=True):
        if abs(metres - walk) > 0.02 + 0.003 * walk:
            assert region.buffer(1e-6).intersects(shapely.Point(place)) == (metres < walk)


def test_a_spike_of_no_width_in_what_a_corner_sees_is_passed_over():
    """Differences of sights leave legs that go out and come back: no warning, and no ground."""
    spiked = shapely.from_wkt(
        "POLYGON ((1.3495 3.479499999999999, 1.3495 1.8493, 2.8443222555206757 3.4795000000000003, "
        "2.8495 1.1010944288464841, 1.3495000000000004 1.0503, 1.5313111390657848 "
        "1.3539681390242535, 1.3495 1.8492999999999997, 1.3494999999999997 3.479499999999999, "
        "0.7534788900385725 3.4794999999996254, 0.753478890038573 3.4795000000000003, "
        "1.3495 3.479499999999999))"
    )
    opened = geodesic._opened(spiked)
    assert opened.bounds[0] > 1.34
    assert opened.area == pytest.approx(shapely.make_valid(spiked).area, abs=0.01)
