"""A sweep cut into rings: a hall by hand, and all floor in rings on every shape."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from tests.shapes import AWKWARD
from tests.spray.grounds import along, bare, field, world_of
from tests.spray.hand_floors import L_ROOM, LARGE_HALL, hall
from tests.strategies.houses import houses

from farwall.spray.fronts import plain_fronts
from farwall.spray.rings import rings_of


def shapes_of(here):
    return [here.world.pieces[name].shape for name in here.pieces]


def cut(here, front, depth_m=1.0):
    return rings_of(here.ground, front, here.pieces, shapes_of(here), depth_m)


def area(rings):
    return sum(part.area for ring in rings for _, part in ring)


def test_the_rings_of_a_hall_by_hand():
    """By hand: 8 m x 2 m in eight rings of 2 m2, the exit's first; the one at the exit may hold the
    half of a place more."""
    here = field(hall(8, 2))
    rings, depth_m = cut(here, bare(here.ground, -along(here.ground)))
    assert depth_m == pytest.approx(1.0, rel=0.01)
    assert [len(ring) for ring in rings] == [1] * 8
    areas = [ring[0][1].area for ring in rings]
    assert areas[1:-1] == pytest.approx([2.0] * 6, abs=0.02)
    assert areas[0] + areas[-1] == pytest.approx(4.0, abs=0.02)
    middles = [ring[0][1].centroid.x for ring in rings]
    assert middles == sorted(middles)


@pytest.mark.parametrize("of", [LARGE_HALL, AWKWARD["round stair"]], ids=["hall", "round stair"])
def test_the_last_ring_lies_at_the_exit_though_the_sweep_runs_along_a_long_wall(of):
    """Swept toward the wall of the way out, the last floor lies along all of it: cut once more by
    the walk, so that nobody has to stand before 16 m of wall at once."""
    here = field(of)
    front = next(front for front in plain_fronts(here.ground) if front.name == "wall")
    rings, _ = cut(here, front)
    corners = np.vstack([shapely.get_coordinates(part) for _, part in rings[0]])
    away = shapely.distance(shapely.points(corners), here.exit.chord)
    assert away.max() <= 1.35 + here.ground.lattice.grid.step_m
    assert area(rings[:1]) < 4.0


def test_a_crumb_joins_what_it_lies_against():
    """No part of a ring is smaller than 0.15 m2 unless its whole room is."""
    here = field(AWKWARD["round stair"])
    for front in plain_fronts(here.ground):
        rings, _ = cut(here, front)
        assert min(part.area for ring in rings for _, part in ring) >= 0.15 - 1e-6


@pytest.mark.parametrize("name", [*AWKWARD, "ell"])
@pytest.mark.parametrize("depth_m", [0.6, 1.0])
def test_all_floor_lies_in_one_ring(name, depth_m):
    here = field({"ell": L_ROOM, **AWKWARD}[name])
    floor = shapely.union_all(shapes_of(here))
    for front in plain_fronts(here.ground):
        rings, deep = cut(here, front, depth_m)
        assert all(rings)
        assert deep <= depth_m
        _insist(rings, floor)


@settings(max_examples=10)
@given(houses)
def test_all_floor_of_any_house_lies_in_one_ring(job):
    of = world_of(job)
    out = next(seam for seam in of.seams if seam.is_way_out)
    here = field(of, out.a, by=out.id)
    for front in plain_fronts(here.ground):
        _insist(cut(here, front)[0], shapely.union_all(shapes_of(here)))


def _insist(rings, floor):
    parts = [part for ring in rings for _, part in ring]
    assert sum(part.area for part in parts) == pytest.approx(floor.area, rel=1e-4)
    assert shapely.union_all(parts).symmetric_difference(floor).area < 1e-3 * floor.area


@pytest.mark.parametrize("name", AWKWARD)
def test_a_ring_farther_out_comes_earlier(name):
    here = field(AWKWARD[name])
    lattice = here.ground.lattice
    front = plain_fronts(here.ground)[-1]
    rings, _ = cut(here, front)
    middles = []
    for ring in rings:
        held = np.zeros(len(lattice), dtype=bool)
        for _, part in ring:
            held |= shapely.contains_xy(part, lattice.xy[:, 0], lattice.xy[:, 1])
        middles.append(float(np.median(front.late[held])) if held.any() else np.nan)
    told = [late for late in middles if not np.isnan(late)]
    assert told == sorted(told, reverse=True)
