"""Where bands meet, and how old the older is then: exact, and against plain sampling."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.spray.hand_plans import PLANS

from farwall.spray.check.edges import edges_of
from farwall.spray.check.nearest import legs_of, oldest_on, reach_of
from farwall.spray.check.reading import read_plan
from farwall.spray.check.world import world_of


def edges(name):
    plan = read_plan(PLANS[name]())
    return edges_of(plan.bands, world_of(plan.house, np.empty((0, 2))))


def metres_between(name, one, other):
    """Length of the edges between two sets of bands, named by id."""
    met = [
        edge
        for edge in edges(name)
        if {edge.later.id, edge.earlier.id} & one and {edge.later.id, edge.earlier.id} & other
    ]
    return sum(edge.line.length for edge in met)


def test_rooms_that_touch_meet_at_their_opening_only():
    """The wall is 3 m long and has no thickness, its opening 0.9 m."""
    bed, hall = {"A1", "A2", "A3", "A4", "A5"}, {"A6", "A7", "A8", "A9", "A10"}
    meet = metres_between("two rooms sprayed as one", bed, hall)
    assert meet == pytest.approx(0.9, abs=0.025)


def test_the_two_sides_of_a_wing_wall_do_not_meet():
    """Bands 1, 2 are on its left, 3, 4 on its right; the wall is 2 mm thick."""
    assert metres_between("a room with a wing wall", {"A1", "A2"}, {"A3", "A4"}) == 0
    assert metres_between("a room with a wing wall", {"A1"}, {"A2"}) == pytest.approx(
        1.999, abs=0.002
    )


def test_bands_that_touch_at_a_corner_do_not_meet():
    """Islands have four corners, each with bands across it."""
    assert metres_between("a room with an island", {"A2"}, {"A5"}) == 0


def test_a_saw_cut_inside_a_field_is_an_edge_like_any_other():
    with_cut = edges("a room with a saw cut that is no stop line")
    without = edges("a room turned half")
    assert len(with_cut) == len(without) == 6


coordinate = st.floats(-4, 4).map(lambda v: round(v, 3))
point = st.tuples(coordinate, coordinate)


@st.composite
def paths(draw):
    """Paths of up to seven legs, with waits, turning back, crossing themselves."""
    points = draw(st.lists(point, min_size=1, max_size=7))
    if draw(st.booleans()):
        points += points[::-1]
    gaps = st.floats(0, 3)
    clock, rows = 0.0, []
    for x, y in [*points, points[-1]]:
        rows.append((x, y, clock))
        clock += draw(gaps)
    return np.array(rows)


def sampled(edge, later, earlier, count=400):
    """The oldest of many places, none of them one that round numbers single out: a tie at a single
    place is no stretch of floor."""
    oldest = 0.0
    for u in (np.arange(count) + 2**-0.5) / count:
        place = edge[0] + u * (edge[1] - edge[0])
        oldest = max(oldest, abs(moment(later, place) - moment(earlier, place)))
    return oldest


def moment(path, place):
    best, when = np.inf, 0.0
    for one, other in pairwise(path):
        way = other[:2] - one[:2]
        square = float(way @ way)
        share = min(max(float((place - one[:2]) @ way) / square, 0.0), 1.0) if square else 0.0
        gap = float(np.hypot(*(one[:2] + share * way - place)))
        if gap < best - 1e-12:
            best, when = gap, one[2] + share * (other[2] - one[2])
    return when


@given(edge=st.tuples(point, point), later=paths(), earlier=paths())
def test_the_oldest_place_is_never_younger_than_any_sampled_one(edge, later, earlier):
    edge = np.array(edge)
    found = oldest_on(edge, legs_of(later), legs_of(earlier)).age_min
    if np.hypot(*(edge[1] - edge[0])) > 1e-6:
        assert found >= sampled(edge, later, earlier) - 1e-6


def test_a_wait_at_a_single_place_of_an_edge_does_not_count_by_hand():
    """The later band waits a minute on the edge's start, then covers the edge at once; the earlier
    comes straight at that start after a minute. All but the start was met by both at minute 1."""
    edge = np.array([(0.0, 0.0), (1.0, 0.0)])
    later = np.array([(0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 1.0)])
    earlier = np.array([(0.0, 1.0, 0.0), (0.0, 0.0, 1.0)])
    assert oldest_on(edge, legs_of(later), legs_of(earlier)).age_min == 0.0


@given(edge=st.tuples(point, point), later=paths(), earlier=paths())
def test_the_oldest_place_is_met_at_a_moment_of_each_path(edge, later, earlier):
    """Not too old either: near the place that is named, both paths do pass at such moments."""
    edge = np.array(edge)
    if np.hypot(*(edge[1] - edge[0])) <= 1e-6:
        return
    found = oldest_on(edge, legs_of(later), legs_of(earlier))
    place = np.array([found.x, found.y])
    ages = [abs(a - b) for a in near(later, place) for b in near(earlier, place)]
    assert min(abs(age - found.age_min) for age in ages) < 1e-3


def near(path, place):
    """Moments at which a path is as near to a place as it ever is, a hair aside."""
    rows = []
    for one, other in pairwise(path):
        way = other[:2] - one[:2]
        square = float(way @ way)
        share = min(max(float((place - one[:2]) @ way) / square, 0.0), 1.0) if square else 0.0
        gap = float(np.hypot(*(one[:2] + share * way - place)))
        moments = [one[2] + share * (other[2] - one[2])] if square else [one[2], other[2]]
        rows += [(gap, when) for when in moments]
    least = min(gap for gap, _ in rows)
    return [when for gap, when in rows if gap <= least + 1e-5]


@given(edges=st.lists(st.tuples(point, point), min_size=1, max_size=4), path=paths())
def test_no_leg_that_is_nearest_somewhere_is_ruled_out(edges, path):
    edges = np.array(edges)
    reach = reach_of(edges, path)
    for row, edge in enumerate(edges):
        for u in np.linspace(0, 1, 21):
            when = moment(path, edge[0] + u * (edge[1] - edge[0]))
            assert reach.earliest()[row] - 1e-6 <= when <= reach.latest()[row] + 1e-6
