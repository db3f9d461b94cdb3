"""A field as a lattice: areas, links, walks and sights, by hand and as laws."""

from __future__ import annotations

import pickle
from math import dist, hypot, pi

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale
from tests.shapes import AWKWARD, ISLAND_KITCHEN, L_HALL, TWO_ROOMS, WALLED_ROOMS
from tests.spray.grounds import ground, world_of
from tests.spray.hand_floors import L_ROOM, hall, moved, without_opening
from tests.strategies.floors import floors
from tests.strategies.houses import houses

from farwall.errors import Unanswerable
from farwall.floor.thresholds import join_thresholds
from farwall.spray.building import build_world
from farwall.spray.lattice import (
    FAR_M,
    ahead,
    lattice_of,
    main_angle,
    median_of,
    turned,
    without_niches,
)
from farwall.spray.routes import Walkable, length_m

TOO_LONG = 1 / np.cos(np.arctan2(1, 2) / 2)
"""Walks along links to 16 directions: the widest gap between two of them is 26.6 degrees."""


def nearest(lattice, place):
    return int(np.argmin(np.hypot(*(lattice.xy - place).T)))


def walks(lattice, start):
    begin = np.full(len(lattice), FAR_M)
    begin[start] = 0.0
    return lattice.walks_from(begin)


@pytest.mark.parametrize("name", AWKWARD)
@pytest.mark.parametrize("degrees", [0, 17, 90])
def test_the_places_add_up_to_the_floor(name, degrees):
    here = moved(AWKWARD[name], lambda shape: rotate(shape, degrees, origin=(0, 0)))
    lattice = ground(here).lattice
    assert lattice.area_m2.sum() == pytest.approx(lattice.floor.area, rel=1e-12)
    assert lattice.area_m2.min() > 0


@settings(max_examples=10)
@given(floors())
def test_each_room_has_the_floor_of_its_places(drawn):
    """A place stands for the part of its square that lies in its own room; floor of squares
    whose middle lies in a wall is shared out: less than a step along the walls."""
    floor, exits = drawn
    of = build_world(join_thresholds(floor), exits)
    lattice = ground(of).lattice
    step = lattice.grid.step_m
    for number, piece in enumerate(lattice.pieces):
        mine = lattice.area_m2[lattice.owner == number].sum()
        assert mine == pytest.approx(piece.area, abs=step * piece.length / 2)


def test_places_of_a_round_number_of_steps_by_hand():
    """By hand: 8 m x 2 m in steps of 0.2 m: 40 columns of 10, the first 0.1 m off both walls."""
    lattice = ground(hall(8, 2)).lattice
    assert lattice.grid.size == (40, 10)
    assert lattice.xy.min(axis=0) == pytest.approx([0.1, 0.1])
    assert lattice.xy.max(axis=0) == pytest.approx([7.9, 1.9])
    assert np.median(lattice.area_m2) == pytest.approx(0.04, rel=0.01)


def test_walks_in_a_straight_hall_by_hand():
    """By hand: the straight line, at most 2.7 % longer, exact along the 16 directions."""
    lattice = ground(hall(8, 4)).lattice
    start = nearest(lattice, (0.1, 0.1))
    found, straight = walks(lattice, start), np.hypot(*(lattice.xy - lattice.xy[start]).T)
    assert (found >= straight - 1e-6).all()
    assert (found <= straight * TOO_LONG + 1e-6).all()
    assert (found / np.maximum(straight, 1e-9)).max() > 1.02
    for over, up in [(1, 0), (0, 1), (1, 1), (2, 1), (1, 2)]:
        there = nearest(lattice, lattice.xy[start] + 1.6 * np.array([over, up]))
        assert found[there] == pytest.approx(1.6 * hypot(over, up), abs=1e-6)


def test_walks_around_one_corner_by_hand():
    """By hand: from one arm of an ell to the other the walk bends at the corner (2, 2).

    On the lattice it bends at a place half a diagonal of a step aside, going and coming.
    """
    lattice = ground(L_ROOM).lattice
    start = nearest(lattice, (5.9, 1.9))
    found = walks(lattice, start)
    aside = lattice.grid.step_m * np.sqrt(2)
    for place in [(1.9, 5.9), (1.1, 4.9), (0.3, 5.5)]:
        there = nearest(lattice, place)
        bent = dist(lattice.xy[start], (2, 2)) + dist((2, 2), lattice.xy[there])
        assert bent - 1e-6 <= found[there] <= bent * TOO_LONG + aside


@pytest.mark.parametrize(
    "name", ["plain room", "walled rooms", "island kitchen", "round stair", "floor with a hole"]
)
def test_no_walk_is_shorter_than_the_true_one(name):
    """Floors whose walls are thick: the true walk is sought on floor a hair wider."""
    lattice = ground(AWKWARD[name]).lattice
    start = 0
    found, free = walks(lattice, start), Walkable(lattice.floor)
    for there in np.linspace(0, len(lattice) - 1, 15).astype(int):
        path = free.walk(tuple(lattice.xy[start]), tuple(lattice.xy[there]))
        assert path is not None
        assert found[there] >= length_m(path) - 0.02
        assert found[there] <= length_m(path) * TOO_LONG + 4 * lattice.grid.step_m


def test_a_wall_of_no_thickness_stays_shut():
    """The hall and the bedroom share a wall without thickness; their door is at y from 3 to 3.8."""
    lattice = ground(L_HALL).lattice
    for here, beside in enumerate(lattice.near):
        other = beside[lattice.owner[beside] != lattice.owner[here]]
        for there in other:
            line = shapely.LineString(lattice.xy[[here, there]])
            assert line.intersects(shapely.box(1.19, 2.99, 1.21, 3.81))
    hall_side, bed_side = nearest(lattice, (1.1, 1.5)), nearest(lattice, (1.3, 1.5))
    assert lattice.owner[hall_side] != lattice.owner[bed_side]
    assert walks(lattice, hall_side)[bed_side] > 2 * (3.0 - 1.5) - 0.1


def test_rooms_without_a_door_between_them_are_no_field():
    with pytest.raises(Unanswerable, match="falls apart"):
        ground(without_opening(TWO_ROOMS, "between"))


def test_links_lead_both_ways():
    lattice = ground(WALLED_ROOMS).lattice
    for here, beside in enumerate(lattice.near):
        assert all(here in lattice.near[there] for there in beside)


@pytest.mark.parametrize("name", AWKWARD)
def test_who_sees_whom_is_told_by_the_straight_line_on_the_floor(name):
    """What is surely clear is not looked at again: it has to agree with what is."""
    lattice = ground(AWKWARD[name]).lattice
    dice = np.random.default_rng(5)
    one, two = dice.integers(0, len(lattice), (2, 3000))
    near = np.hypot(*(lattice.xy[one] - lattice.xy[two]).T) < 2.0
    one, two = one[near], two[near]
    lines = shapely.linestrings(np.stack([lattice.xy[one], lattice.xy[two]], axis=1))
    seen = shapely.covers(lattice.floor, lines)
    assert (lattice.clear(one, two) == seen).all()
    assert seen.any()


@pytest.mark.parametrize("degrees", [0.0, 7.3, 17.0, 30.0, 45.0, 89.0])
def test_the_grid_turns_with_the_walls(degrees):
    turn = np.radians(degrees)
    floor = rotate(shapely.box(0, 0, 5, 3), degrees, origin=(0, 0))
    assert main_angle(floor) == pytest.approx(turn, abs=1e-9)
    assert main_angle(scale(floor, -1, 1)) == pytest.approx((-turn) % (pi / 2), abs=1e-9)


def test_the_grid_follows_most_of_the_walls_by_hand():
    """By hand: 12 m of upright walls against 5.7 m of slanting ones."""
    cut = shapely.Polygon([(0, 0), (4, 0), (4, 2), (2, 4), (0, 4)])
    assert main_angle(cut) == 0.0


@pytest.mark.parametrize("name", AWKWARD)
def test_a_mirror_shows_the_same_lattice(name):
    here = ground(AWKWARD[name]).lattice
    there = ground(moved(AWKWARD[name], lambda s: scale(s, -1, 1, origin=(0, 0)))).lattice
    ours = sorted(map(tuple, np.round(here.xy * [-1, 1], 6).tolist()))
    assert sorted(map(tuple, np.round(there.xy, 6).tolist())) == ours


@given(st.floats(-10, 10), st.floats(-10, 10), st.floats(0, pi / 2))
def test_to_turn_and_turn_back_changes_nothing(x, y, angle):
    places = np.array([[x, y]])
    assert turned(turned(places, angle), -angle) == pytest.approx(places, abs=1e-9)
    assert np.hypot(*turned(places, angle)[0]) == pytest.approx(hypot(x, y), abs=1e-9)


def test_the_middle_of_a_room_is_what_is_left_without_its_niches_by_hand():
    """By hand: a room of 4 m x 3 m with a doorway of 0.9 m x 0.2 m is its rectangle."""
    piece = shapely.union(shapely.box(0, 0, 4, 3), shapely.box(1, 3, 1.9, 3.2))
    assert without_niches(piece).symmetric_difference(shapely.box(0, 0, 4, 3)).area < 1e-9
    lattice = lattice_of(piece, [piece], 0.1)
    assert (lattice.core[lattice.xy[:, 1] < 3] == 0).all()
    assert (lattice.core[lattice.xy[:, 1] > 3] == -1).all()


def test_a_room_around_an_island_has_no_convex_middle():
    assert (ground(ISLAND_KITCHEN).lattice.core == -1).all()


def test_the_place_one_step_on_by_hand():
    lattice = lattice_of(shapely.box(0, 0, 3, 2), [shapely.box(0, 0, 3, 2)], 1.0)
    assert lattice.index.tolist() == [[0, 1], [2, 3], [4, 5]]
    assert ahead(lattice, (1, 0)).tolist() == [2, 3, 4, 5, -1, -1]
    assert ahead(lattice, (1, -1)).tolist() == [-1, 2, -1, 4, -1, -1]


@settings(max_examples=15)
@given(houses, st.floats(0.2, 5.0), st.integers(0, 2**32 - 1))
def test_what_is_spread_is_the_steepest_surface_below(job, slope, seed):
    """No higher than it began, no steeper than `slope` along any link, and nothing left to do.

    That it is the steepest such surface: each place keeps its own height, or hangs on a link.
    """
    of = world_of(job)
    lattice = ground(of, *_rooms_of_the_way_out(of)).lattice
    start = np.random.default_rng(seed).uniform(0, 10, len(lattice))
    low = lattice.spread(start, slope)
    assert (low <= start + 1e-9).all()
    gap = np.hypot(*(lattice.xy[lattice.near] - lattice.xy[:, None, :]).transpose(2, 0, 1))
    assert (low[:, None] <= low[lattice.near] + slope * gap + 1e-6).all()
    assert lattice.spread(low, slope) == pytest.approx(low, abs=1e-6)
    assert low.min() == pytest.approx(start.min(), abs=1e-6)


def test_rows_are_spread_each_by_its_own_slope():
    lattice = ground(hall(4, 2)).lattice
    start = np.random.default_rng(1).uniform(0, 3, (2, len(lattice)))
    both = lattice.spread(start, np.array([0.5, 2.0]))
    assert both[0] == pytest.approx(lattice.spread(start[0], 0.5))
    assert both[1] == pytest.approx(lattice.spread(start[1], 2.0))
    assert not np.allclose(both[0], lattice.spread(start[0], 2.0))


def _rooms_of_the_way_out(of):
    return [next(seam.a for seam in of.seams if seam.is_way_out)]


@given(st.lists(st.floats(-1e3, 1e3), min_size=1, max_size=9))
def test_the_median_is_that_of_the_library(values):
    assert median_of(np.array(values)) == float(np.median(values))


def test_a_lattice_is_sent_without_its_tables_and_finds_them_again():
    here = ground(L_HALL).lattice
    assert here.off_wall_m.size
    there = pickle.loads(pickle.dumps(here))
    assert "off_wall_m" not in there.__dict__
    assert (there.off_wall_m == here.off_wall_m).all()
    assert (there.index == here.index).all()


def test_who_sees_whom_is_sent_in_half_the_bytes_and_is_the_same_again():
    here = ground(L_HALL).ball
    told = pickle.dumps(here)
    there = pickle.loads(told)
    assert len(told) < 0.7 * (here.there.nbytes + here.away_m.nbytes)
    assert there.there.dtype == here.there.dtype
    assert (there.there == here.there).all()
    assert (there.away_m == here.away_m).all()
    assert (there.pairs.here == here.pairs.here).all()


def test_a_turned_floor_is_told_without_its_niches_and_without_a_warning():
    """A floor of 1.7 m by 1.2 m, turned by 30 degrees, with a doorstep: found by chance."""
    corners = [
        (0.8720169959738671, 1.8885169849735042),
        (1.4715169849735041, 0.8501830040261329),
        (1.081817129209044, 0.6251830873030035),
        (1.111817129209044, 0.5731830873030035),
        (0.4198831483097337, 0.1736830983311152),
        (0.3898831483097336, 0.2256830983311152),
        (0.0001830040261329, 0.0006830150264959),
        (-0.599316984973504, 1.039016995973867),
    ]
    floor = shapely.Polygon(corners)
    middle = without_niches(floor)
    assert 0 < floor.area - middle.area < 0.06
