"""Walks against all sight lines tested one by one, on drawn grounds with posts and niches."""

from __future__ import annotations

import heapq
import itertools

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.spray.routes import Walkable, length_m
from farwall.spray.shortest import ON_M, Sights, corners_of
from farwall.spray.world import mitred

ROOM = shapely.box(0, 0, 8, 6)


def all_pairs_m(ground, start, end):
    """Shortest walk by Dijkstra over all vertices that see each other, and no other rule."""
    roomy = mitred(ground, ON_M)
    xy = np.vstack([start, np.unique(shapely.get_coordinates(ground), axis=0), end])
    best = {0: 0.0}
    queue = [(0.0, 0)]
    done = set()
    while queue:
        walked, here = heapq.heappop(queue)
        if here in done:
            continue
        done.add(here)
        for there in set(range(len(xy))) - done:
            if roomy.covers(shapely.LineString(xy[[here, there]])):
                found = walked + float(np.hypot(*(xy[there] - xy[here])))
                if found < best.get(there, np.inf):
                    best[there] = found
                    heapq.heappush(queue, (found, there))
    return best.get(len(xy) - 1)


spots = st.tuples(st.integers(2, 78), st.integers(2, 58)).map(lambda xy: (xy[0] / 10, xy[1] / 10))
sizes = st.tuples(st.floats(0.2, 2.5), st.floats(0.2, 2.5))
posts = st.tuples(spots, sizes, st.sampled_from(["box", "disc", "wedge"]))


def post(at, size, kind):
    x, y = at
    if kind == "disc":
        return shapely.Point(x, y).buffer(size[0] / 2, quad_segs=4)
    corners = [(x, y), (x + size[0], y), (x + size[0], y + size[1]), (x, y + size[1])]
    return shapely.Polygon(corners if kind == "box" else corners[:3])


def drawn(several):
    """The room less some posts: its largest part."""
    ground = shapely.difference(ROOM, shapely.union_all([post(*each) for each in several]))
    return max(shapely.get_parts(ground).tolist(), key=lambda part: part.area)


@settings(max_examples=60, deadline=None)
@given(st.lists(posts, min_size=1, max_size=7), spots, spots)
def test_no_walk_over_any_corners_is_shorter(several, start, end):
    """A corner may be cut by `ON_M`, so that walks over other corners differ by hairs."""
    ground = drawn(several)
    way = Walkable(ground).walk(start, end)
    least_m = all_pairs_m(ground, start, end)
    if least_m is None:
        assert way is None
    else:
        assert length_m(way) == pytest.approx(least_m, abs=0.002)


@settings(max_examples=30, deadline=None)
@given(st.lists(posts, min_size=2, max_size=7), st.lists(spots, min_size=2, max_size=4))
def test_what_was_seen_before_changes_no_walk(several, places):
    """Sight lines of the ground before the last posts stood are kept while posts come and go."""
    before = mitred(drawn(several[:1]), ON_M)
    shapely.prepare(before)
    sights = Sights(before)
    for many in (len(several), 1, 2, len(several)):
        ground = shapely.intersection(drawn(several[:many]), drawn(several[:1]))
        ground = max(shapely.get_parts(ground).tolist(), key=lambda part: part.area)
        for start, end in itertools.pairwise(places):
            kept = Walkable(ground, sights).walk(start, end)
            fresh = Walkable(ground).walk(start, end)
            assert (kept is None) == (fresh is None)
            if kept is not None:
                assert length_m(kept) == pytest.approx(length_m(fresh), abs=0.03)


def test_a_corner_is_one_that_a_walk_may_turn_around():
    """By hand: of an L's six corners one turns inward, and all four of a hole."""
    ell = shapely.Polygon([(0, 0), (6, 0), (6, 2), (2, 2), (2, 6), (0, 6)])
    assert corners_of(ell).places.tolist() == [[2, 2]]
    ring = shapely.Polygon(ROOM.exterior.coords, [shapely.box(2, 2, 4, 4).exterior.coords])
    assert len(corners_of(ring).places) == 4
