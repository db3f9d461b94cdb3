"""Strides asked of the solver: by hand, and never above a front that is made."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from ortools.sat.python import cp_model
from tests.shapes import AWKWARD
from tests.spray.grounds import ground
from tests.spray.hand_floors import hall
from tests.spray.strides_floors import kitchen, shortest

from farwall.bench.strides_question import UNIT_M2, Question, down, up
from farwall.bench.strides_solved import nothing_fits, solved_m
from farwall.spray.front import FROM_BEYOND, Front, Ground
from farwall.spray.lattice import turned
from farwall.spray.parts import parts_of
from farwall.spray.passages import passages_of
from farwall.spray.strides import Floor

DEPTH_M = 1.0
HAIR = 1 + 1e-6


def floor_of(here: Ground) -> Floor:
    parts = parts_of(here, reach_m=FROM_BEYOND * DEPTH_M)
    assert parts is not None
    return Floor(parts, passages_of(here, parts, DEPTH_M), DEPTH_M)


def fits(floor: Floor, front: Front, here: Ground) -> bool:
    """Whether a front's own shares, counted on the lattice, answer what is asked of them.

    A place counts as a square, so that half a step about a part may be told to the wrong side.
    """
    question = Question(cp_model.CpModel(), floor, front.equivalent_m * HAIR)
    question.ask()
    parts, step = floor.parts, here.lattice.grid.step_m
    x, y = turned(here.lattice.xy, -parts.angle).T
    owned = [shapely.contains_xy(one.buffer(1e-3), x, y) for one in parts.shapes]
    moments = floor.moments_m2(question.front_m)
    for wet_m2, row in zip(moments, question.wet, strict=True):
        for own, shape, var in zip(owned, parts.shapes, row, strict=False):
            told = here.lattice.area_m2[own & (front.before_m2 < wet_m2)].sum()
            rim = shape.length * step / 2
            question.model.add(var >= down(max(told - rim, 0.0)))
            question.model.add(var <= up(told + rim))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    return bool(solver.solve(question.model) in (cp_model.OPTIMAL, cp_model.FEASIBLE))


def test_units_are_rounded_to_the_side_that_lets_more_fit():
    assert (down(0.0299), up(0.0299)) == (2, 2)
    assert down(0.03) <= 3 <= up(0.03)
    assert UNIT_M2 == 0.01


def test_a_hall_is_ruled_out_below_its_width_and_not_above_by_hand():
    """A hall 8 m by 2 m can be swept straight with a front of 2 m, and with none shorter."""
    floor = floor_of(ground(hall(8, 2)))
    assert nothing_fits(floor, 1.95)
    assert not nothing_fits(floor, 2.001)


def test_the_bound_is_sought_upward_and_stops_below_what_can_be_swept():
    here = ground(hall(8, 2))
    assert solved_m(here, DEPTH_M, above_m=1.5, first_m=1.95) == pytest.approx(1.95 * 1.01**2)
    assert solved_m(here, DEPTH_M, above_m=1.5, first_m=2.05) == 1.5


def test_a_front_of_a_hall_with_a_corner_fits():
    here = ground(AWKWARD["L-hall"])
    assert fits(floor_of(here), shortest(here), here)


@settings(max_examples=1, deadline=None)
@given(
    hall_dm=st.integers(12, 15),
    deep=st.integers(15, 20),
    gap=st.integers(12, 18),
    at=st.sampled_from(["hall", "kitchen"]),
)
def test_a_front_of_a_drawn_kitchen_by_a_hall_fits(hall_dm, deep, gap, at):
    drawn = kitchen(hall_dm / 10, 3.9, deep / 10, 0.1, 0.1 + gap / 10, at, long=6.0)
    here = ground(drawn)
    assert fits(floor_of(here), shortest(here), here)


def test_floor_out_of_a_bodys_reach_is_a_part_of_its_own_by_hand():
    """A room of 6 m by 2 m on a hall, its opening from 2 m to 4 m: both ends are cut 0.9 m in."""
    parts = parts_of(ground(kitchen(1.2, 6.0, 2.0, 2.0, 4.0, "hall")), reach_m=0.9)
    assert parts is not None
    sides = {round(float(side), 2) for shape in parts.shapes for side in shape.bounds[::2]}
    assert {1.1, 4.9} <= sides
    assert np.isclose(parts.area_m2.sum(), 6 * 2 + 8 * 1.2, atol=0.05)
