"""Strips one band deep: counted and measured by hand, adding up on every house."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD, ISLAND_KITCHEN, WALLED_ROOMS, box, door, outside, place
from tests.spray.hand_floors import L_ROOM, ROUND, hall, row, seam, world
from tests.spray.sweeping import laid, way_out
from tests.strategies.houses import house

from farwall.floor.nouns import Room
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.bands import Strip, border_between, cut_into_strips
from farwall.spray.building import build_world

CORNER_M = 0.03
"""A border may run on around the corner of a seam by its own width, at both jambs."""
CURVE = 0.02
"""Near a way out the level lines bend around its jambs: a border is 2 % off a straight line."""


def cut(of, *pieces, band_m=1.0):
    return laid(of, *pieces, tools=replace(ROUND, band_m=band_m)).cut


def test_the_strips_of_a_hall_by_hand():
    """By hand: 8 m of hall in bands of 1 m are 8 strips; each is 1 m deep and 2 m long."""
    strips = cut(world(hall(8, 2)))
    areas = [strip.area_m2 for strip in strips.strips]
    assert len(areas) == 8
    assert sum(areas) == pytest.approx(16.0, abs=1e-3)
    assert areas == pytest.approx([2.0] * 8, rel=0.05)
    assert [strip.level for strip in strips.strips] == [7, 6, 5, 4, 3, 2, 1, 0]


def test_strips_are_as_deep_as_fits_evenly_by_hand():
    """By hand: 7.6 m in bands of at most 1 m: 8 strips of 0.95 m, not 7 and a scrap."""
    strips = cut(world(hall(7.6, 2)))
    assert len(strips.strips) == 8
    assert strips.depth_m == pytest.approx(0.95, rel=0.01)


def test_a_small_room_is_one_strip():
    """0.9 m deep and 1 m wide with bands of 1 m: nothing to step back from."""
    strips = cut(world(hall(0.9, 1.0)))
    assert len(strips.strips) == 1
    assert strips.borders == ()


def test_the_borders_of_a_hall_are_as_long_as_it_is_wide():
    strips = cut(world(hall(8, 2)))
    assert [(b.far, b.near) for b in strips.borders] == [(i, i + 1) for i in range(7)]
    for border in strips.borders[:-1]:
        assert border.line.length == pytest.approx(2.0, rel=CURVE)


def test_a_ring_falls_apart_at_an_island():
    """Both sides of the island lie as far from the way out: two strips of one level."""
    strips = cut(world(ISLAND_KITCHEN))
    levels = [strip.level for strip in strips.strips]
    assert max(levels.count(level) for level in set(levels)) == 2


def test_an_ell_is_one_chain_of_strips():
    strips = cut(world(L_ROOM))
    levels = [strip.level for strip in strips.strips]
    assert len(levels) == len(set(levels))
    assert sum(s.area_m2 for s in strips.strips) == pytest.approx(20.0, abs=1e-3)


def test_strips_go_on_through_a_door():
    """Where a strip lies on both sides of a doorway it is one strip with two parts."""
    strips = cut(world(row(2.5, 2.5)))
    names = [sorted({name for name, _ in strip.parts}) for strip in strips.strips]
    assert ["a", "b"] in names
    assert names[0] == ["b"]
    assert names[-1] == ["a"]


def test_no_border_runs_through_a_wall():
    """Two strips on either side of a wall without thickness touch, and still do not meet."""
    of = world(row(3.0, 3.0))
    strips = cut(of)
    opening = seam(of, "ab").chord.buffer(0.03)
    wall = shapely.LineString([(3, 0), (3, 3)]).buffer(1e-3).difference(opening)
    for border in strips.borders:
        assert border.line.intersection(wall).length < CORNER_M


def test_strips_that_touch_only_across_a_corner_of_a_doorway_do_not_meet_there():
    """A border ends where a seam is crossed; it sends no stub along the seam."""
    of = world(row(3.0, 3.0))
    chord = seam(of, "ab").chord
    for border in cut(of).borders:
        along = border.line.intersection(chord.buffer(0.002))
        assert along.length < 0.01 or along.length > 0.05


def test_a_scrap_joins_the_strip_before_it_within_reach_by_hand():
    """By hand: two far corners of 0.75 m by 1 m are less than 0.8 of a square band, and no bands
    of their own where the wand still gets there: 0.75 m beyond the strip before them."""
    of = world(hall(3.0, 5.0))
    corners = [shapely.box(2.25, 0, 3, 1), shapely.box(2.25, 4, 3, 5)]
    last = shapely.difference(shapely.box(2, 0, 3, 5), shapely.union_all(corners))
    shapes = [[shapely.box(0, 0, 1, 5)], [shapely.box(1, 0, 2, 5)], [last], corners]
    rings = [[("hall", shape) for shape in ring] for ring in shapes]
    near, far = (
        cut_into_strips(of, ["hall"], rings, band_m=1.0, depth_m=1.0, reach_m=reach)
        for reach in (1.76, 1.74)
    )
    assert [strip.level for strip in near.strips] == [2, 1, 0]
    assert near.strips[0].area_m2 == pytest.approx(5.0)
    assert [strip.level for strip in far.strips] == [3, 3, 2, 1, 0]
    assert [strip.area_m2 for strip in far.strips[:2]] == pytest.approx([0.75, 0.75])


def assert_strips_make_up(of, pieces, strips):
    whole = shapely.union_all([of.pieces[name].shape for name in pieces])
    shapes = [strip.shape for strip in strips.strips]
    assert sum(strip.area_m2 for strip in strips.strips) == pytest.approx(whole.area, abs=0.005)
    assert shapely.union_all(shapes).symmetric_difference(whole).area < 0.005
    for one, two in combinations(shapes, 2):
        assert one.intersection(two).area < 1e-3


@pytest.mark.parametrize("name", AWKWARD)
def test_strips_of_awkward_floors_add_up_and_never_overlap(name):
    of = world(AWKWARD[name])
    assert_strips_make_up(of, of.pieces, cut(of))


@settings(max_examples=12)
@given(st.integers(0, 5000), st.sampled_from([0.6, 0.9, 1.2]))
def test_strips_of_every_house_add_up_and_never_overlap(seed, band_m):
    job = job_from(house(seed), about="house")
    of = build_world(join_thresholds(job.floor), job.exits)
    if len(shapely.get_parts(of.ground(sorted(of.pieces)))) > 1:
        return
    strips = cut(of, band_m=band_m)
    assert_strips_make_up(of, of.pieces, strips)
    assert all(b.line.length > 0.01 for b in strips.borders)
    levels = [strip.level for strip in strips.strips]
    assert levels == sorted(levels, reverse=True)


@settings(max_examples=8)
@given(st.integers(0, 5000))
def test_borders_of_every_house_are_where_strips_touch(seed):
    """Strips of one piece touch along a line exactly where a border says so."""
    job = job_from(house(seed), about="house")
    of = build_world(join_thresholds(job.floor), job.exits)
    strips = cut(of, way_out(of).a)
    told = {frozenset((b.far, b.near)) for b in strips.borders}
    for (i, one), (j, two) in combinations(enumerate(strips.strips), 2):
        shared = one.shape.boundary.intersection(two.shape.buffer(2e-4)).length
        if shared > 0.05:
            assert frozenset((i, j)) in told
        if shared == 0:
            assert frozenset((i, j)) not in told


def test_a_border_is_the_same_seen_from_either_side():
    strips = cut(world(WALLED_ROOMS))
    seams = world(WALLED_ROOMS).seams
    for border in strips.borders:
        one, two = strips.strips[border.far], strips.strips[border.near]
        there, back = border_between(one, two, seams), border_between(two, one, seams)
        assert there.length == pytest.approx(back.length, abs=0.01)


@pytest.mark.parametrize("hair_m", [0.0005, 0.001, 0.003, 0.01])
def test_a_strip_that_goes_a_hair_beyond_a_wide_opening_has_one_border_there_by_hand(hair_m):
    """By hand: a strip ends a hair beyond the line of an opening 4 m wide; its border with the next
    is 4 m long and not eight."""
    rooms = [Room("near", box(0, 0, 4, 3)), Room("far", box(0, 3, 4, 6))]
    wide = door("wide", ((0, 3), (4, 3)), "near", "far", kind="wide")
    of = world(place(rooms, [outside("front", ((1, 0), (2, 0)), "near"), wide]))
    here = Strip((("near", shapely.box(0, 2, 4, 3)), ("far", shapely.box(0, 3, 4, 3.001))), level=0)
    beyond = Strip((("far", shapely.box(0, 3.001, 4, 4)),), level=1)
    for one, two in ((beyond, here), (here, beyond)):
        assert border_between(one, two, of.seams).length == pytest.approx(4.0, abs=CORNER_M)


def test_a_house_whose_parts_widen_into_crossed_rings_is_cut_all_the_same():
    """House 369 in bands of 1.2 m: a valid part whose buffer of 11.5 mm is not."""
    job = job_from(house(369), about="house")
    of = build_world(join_thresholds(job.floor), job.exits)
    assert_strips_make_up(of, of.pieces, cut(of, band_m=1.2))
