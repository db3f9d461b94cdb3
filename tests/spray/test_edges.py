"""The age of live edges: shares of a path and peaks by hand."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from tests.spray.hand_floors import hall
from tests.spray.sweeping import swept

from farwall.spray.bands import Strip
from farwall.spray.edges import (
    Edge,
    EdgeTable,
    ages_by_pass_min,
    flipped,
    moments_of,
    peak_age_min,
    shares,
)
from farwall.spray.passes import Pass


def points(*places):
    return np.asarray(shapely.points(places))


def test_shares_of_a_path_by_hand():
    """By hand: along (0, 0) to (4, 0) the body passes x = 1 after a quarter of the way."""
    path = ((0, 0), (4, 0))
    places = points((1, 1), (4, 2), (-3, 0), (2, 0))
    assert shares(path, places, standing=0.0) == (0.25, 1.0, 0.0, 0.5)


def test_shares_of_a_bent_path_go_by_length_by_hand():
    """By hand: 3 m up and 1 m across; the corner is reached after three quarters."""
    assert shares(((0, 0), (0, 3), (1, 3)), points((-1, 3)), standing=0.0) == (0.75,)


@pytest.mark.parametrize("standing", [0.0, 1.0])
def test_who_stands_still_may_spray_a_point_at_either_end_of_the_stand(standing):
    assert shares(((2, 2),), points((0, 0), (9, 9)), standing=standing) == (standing, standing)


def test_shares_the_other_way_round():
    assert flipped((0.0, 0.25, 1.0), turned=True) == (1.0, 0.75, 0.0)
    assert flipped((0.0, 0.25, 1.0), turned=False) == (0.0, 0.25, 1.0)


ALONG = tuple(np.linspace(0, 1, 5))
TWO = (Edge(0, 1, ALONG, ALONG),)
TIMES = [(0.0, 2.0), (2.5, 4.0)]


def test_two_passes_the_same_way_by_hand():
    """By hand: 2 min from 0, then 4 min from 2.5: 6.5 - 2 min lie between their ends."""
    assert peak_age_min(TWO, TIMES) == pytest.approx(4.5)


def test_two_passes_there_and_back_by_hand():
    """By hand: the place sprayed first is met last: 6.5 min; where they turn only 0.5."""
    back = (Edge(0, 1, ALONG, ALONG[::-1]),)
    assert peak_age_min(back, TIMES) == pytest.approx(6.5)
    assert EdgeTable(TWO).peak_age_min(TIMES, turned=[False, True]) == pytest.approx(6.5)


def test_turning_both_passes_mirrors_the_edge():
    """By hand: turned both, the first place of both is met 2.5 min after, the last 6.5 - 2."""
    assert EdgeTable(TWO).peak_age_min(TIMES, turned=[True, True]) == pytest.approx(4.5)


def test_a_field_without_edges_has_no_age():
    assert peak_age_min((), [(0.0, 1.0)]) == 0.0


def test_the_oldest_of_several_edges_counts():
    """By hand: pass 2 meets pass 0 at its end, which was made at 0: 5 + 1 = 6 min."""
    edges = (
        Edge(0, 1, (1.0,), (0.0,)),
        Edge(1, 2, (1.0,), (0.0,)),
        Edge(0, 2, (0.0,), (1.0,)),
    )
    assert peak_age_min(edges, [(0, 1), (2, 1), (5, 1)]) == pytest.approx(6.0)


def passes(*paths):
    strip = Strip((("room", shapely.box(0, 0, 1, 1)),), 0)
    return [Pass(strip, path, 1.0) for path in paths]


def test_every_pass_tells_the_oldest_edge_it_meets_by_hand():
    """By hand: both walk from x = 0 to 4; x = 1 is made at 0.5 of 2 min and met at 3 + 0.25 min."""
    edge = Edge(0, 1, (0.25,), (0.25,), points=((1.0, 0.5),))
    two = passes(((0, 0), (4, 0)), ((0, 1), (4, 1)))
    assert ages_by_pass_min(moments_of([edge], two), [(0, 2), (3, 1)]) == pytest.approx([0.0, 2.75])


def test_where_a_path_passes_twice_the_worse_moment_counts_by_hand():
    """By hand: there and back in 2 min, x = 1 is passed at 0.25 and at 1.75; the edge is made at
    the earlier moment, 0.25, or met at the later one, 3 + 1.75."""
    there_and_back = ((0, 0), (4, 0), (0, 0))
    first = Edge(0, 1, (0.125,), (0.25,), points=((1.0, 0.5),))
    two = passes(there_and_back, ((0, 1), (4, 1)))
    assert ages_by_pass_min(moments_of([first], two), [(0, 2), (3, 1)])[1] == pytest.approx(
        3.25 - 0.25
    )
    two = passes(((0, 1), (4, 1)), there_and_back)
    assert ages_by_pass_min(moments_of([first], two), [(0, 1), (3, 2)])[1] == pytest.approx(
        4.75 - 0.25
    )


def test_where_both_paths_leap_around_something_each_side_keeps_its_own_pair_by_hand():
    """By hand: both walk 2 m, 8 m around a block and 2 m, a metre a minute. The middle of the
    block, x = 3, is as near to the end of the first part as to the start of the last: made at
    2 and met at 22 min from the one side, made at 10 and met at 30 from the other: 20 min."""
    around = ((0, 0), (2, 0), (2, -3), (4, -3), (4, 0), (6, 0))
    points = tuple((2.01 + 0.04 * n, 0.25) for n in range(50))
    edge = Edge(0, 1, (0.0,) * 50, (0.0,) * 50, points=points)
    two = passes(around, around)
    ages = ages_by_pass_min(moments_of([edge], two), [(0, 12), (20, 12)])
    assert ages[1] == pytest.approx(20, abs=0.01)


def test_where_one_path_leaps_at_a_single_place_both_sides_of_it_are_told_by_hand():
    """By hand: the first walks straight on beside the edge, 6 m in 6 min; the second goes around
    the block as above. Just before x = 3 it meets at 20 + 2 what was made at 3: 19 min; just
    after at 20 + 10: 27."""
    around = ((0, 0), (2, 0), (2, -3), (4, -3), (4, 0), (6, 0))
    points = tuple((2.01 + 0.04 * n, 0.25) for n in range(50))
    edge = Edge(0, 1, (0.0,) * 50, (0.0,) * 50, points=points)
    two = passes(((0, 0.5), (6, 0.5)), around)
    ages = ages_by_pass_min(moments_of([edge], two), [(0, 6), (20, 12)])
    assert ages[1] == pytest.approx(27, abs=0.01)


def test_the_age_may_turn_where_a_path_ends_beside_the_edge_by_hand():
    """By hand: the edge lies from x = 0 to 4 and is told every 4 cm or so; the second pass ends at
    x = 1.23, 8 min after it began at 3.3, and from there on its last moment counts. The first
    pass goes from 4 to 0 in 4 min: it makes 1.23 at 2.77, met at 13, before that sooner made."""
    line = np.linspace(0, 4, 101)
    there = tuple(zip(line.tolist(), [0.0] * 101, strict=True))
    two = passes(((4, -1), (0, -1)), ((3.3, 1), (1.23, 1)))
    edge = Edge(0, 1, (), (), there)
    ages = ages_by_pass_min(moments_of([edge], two), [(0, 4), (5, 8)])
    assert ages[1] == pytest.approx(13 - 2.77, abs=1e-9)


ENDS = st.tuples(st.floats(-1, 5), st.floats(0.2, 1.5))


@given(st.tuples(ENDS, ENDS), st.tuples(ENDS, ENDS))
def test_law_no_place_of_an_edge_is_older_than_told_by_straight_passes(one, two):
    """Against places a millimetre apart."""
    walked = passes(one, tuple((x, -y) for x, y in two))
    ages = []
    for count in (101, 4001):
        line = tuple((x, 0.0) for x in np.linspace(0, 4, count).tolist())
        (where,) = moments_of([Edge(0, 1, (), (), line)], walked)
        ages.append(where.oldest_min([(0.0, 3.0), (4.0, 5.0)]))
    assert ages[0] >= ages[1] - 1e-6


def test_who_stands_still_makes_an_edge_at_once_and_meets_it_at_the_end_by_hand():
    """By hand: 1 min of standing from 0, and another from 2: 3 - 0."""
    edge = Edge(0, 1, (0.0,), (1.0,), points=((1.0, 0.5),))
    assert (
        ages_by_pass_min(moments_of([edge], passes(((0, 0),), ((0, 1),))), [(0, 1), (2, 1)])[1]
        == 3.0
    )


def test_the_edges_of_a_hall_are_its_borders_in_turn():
    found = swept(hall(5, 2))
    assert [(edge.first, edge.then) for edge in found.edges] == [(0, 1), (1, 2), (2, 3), (3, 4)]


share_lists = st.lists(st.floats(0, 1), min_size=3, max_size=3)


@given(share_lists, share_lists, st.floats(0.1, 5), st.floats(0.1, 5), st.floats(0, 5))
def test_a_pause_between_two_passes_makes_the_edge_older_by_just_that(first, then, a, b, pause):
    edges = (Edge(0, 1, tuple(first), tuple(then)),)
    soon = EdgeTable(edges).peak_age_min([(0, a), (a, b)])
    late = EdgeTable(edges).peak_age_min([(0, a), (a + pause, b)])
    assert late == pytest.approx(soon + pause)


@given(share_lists, share_lists, st.floats(0.1, 5), st.floats(0.1, 5))
def test_no_edge_is_younger_than_the_gap_nor_older_than_both_passes(first, then, a, b):
    age = peak_age_min((Edge(0, 1, tuple(first), tuple(then)),), [(0, a), (a, b)])
    assert 0 <= age <= a + b
