"""The bound by strides: by hand, below every front that is made; its passages beside fronts."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.grounds import ground
from tests.spray.hand_floors import hall
from tests.spray.strides_floors import kitchen, shortest

from farwall.spray.edges_at_once import edges_at_once_m
from farwall.spray.front import Ground
from farwall.spray.lattice import turned
from farwall.spray.parts import parts_of
from farwall.spray.passages import NO_WAY, passages_of
from farwall.spray.strides import Floor, strides_m

DEPTH_M = 1.0
FEW = 3


def floor_of(here: Ground, depth_m: float = DEPTH_M) -> Floor:
    parts = parts_of(here)
    assert parts is not None
    return Floor(parts, passages_of(here, parts, depth_m), depth_m)


def test_a_hall_is_ruled_out_below_its_width_and_not_above_by_hand():
    """A hall 8 m by 2 m can be swept straight with a front of 2 m, and with none shorter."""
    floor = floor_of(ground(hall(8, 2)))
    assert floor.rules_out(1.9)
    assert not floor.rules_out(2.001)


@pytest.mark.parametrize("name", ["L-hall", "plain room", "two rooms"])
def test_no_front_of_an_awkward_floor_is_ruled_out(name):
    here = ground(AWKWARD[name])
    longer = shortest(here).equivalent_m * (1 + 1e-6)
    assert not floor_of(here).rules_out(longer, halvings=FEW)


DRAWN = given(
    hall_dm=st.integers(12, 25),
    wide=st.integers(20, 60),
    deep=st.integers(15, 40),
    opening=st.tuples(st.integers(1, 20), st.integers(8, 25)),
    at=st.sampled_from(["hall", "kitchen"]),
)


def drawn(hall_dm: int, wide: int, deep: int, opening: tuple[int, int], at: str) -> Ground:
    east = wide / 10
    west = min(opening[0] / 10, east - 1.0)
    gap = min(west + opening[1] / 10, east - 0.1)
    return ground(kitchen(hall_dm / 10, east, deep / 10, west, gap, at))


@settings(max_examples=6, deadline=None)
@DRAWN
def test_no_front_of_a_drawn_kitchen_by_a_hall_is_ruled_out(hall_dm, wide, deep, opening, at):
    here = drawn(hall_dm, wide, deep, opening, at)
    longer = shortest(here).equivalent_m * (1 + 1e-6)
    assert not floor_of(here).rules_out(longer, halvings=FEW)


def held(here: Ground) -> int:
    """How often the passages of a floor were held against its shortest front.

    Counted on the lattice, at every twentieth of the floor: while a part is not done, so much
    of each rectangle is dry, and was one stride before. A place counts as a square,
    so that half a step about a part may be told to the wrong side.
    """
    floor, front = floor_of(here), shortest(here)
    parts, passages, step = floor.parts, floor.passages, here.lattice.grid.step_m
    x, y = turned(here.lattice.xy, -parts.angle).T
    owned = [shapely.contains_xy(one.buffer(1e-3), x, y) for one in parts.shapes]
    inside = [shapely.contains_xy(one.buffer(1e-3), x, y) for one in parts.boxes]
    area, total, asked = here.lattice.area_m2, float(here.lattice.floor.area), 0
    for at_m2 in np.linspace(0.05, 0.95, 19) * total:
        wet = front.before_m2 < at_m2
        earlier = front.before_m2 < at_m2 - front.equivalent_m * DEPTH_M
        for row, column in np.argwhere(passages.before_m2 != NO_WAY):
            done_m2 = area[owned[row] & wet].sum() + parts.shapes[row].length * step / 2
            if done_m2 >= passages.inner_m2[row, column]:
                continue
            rim_m2 = parts.boxes[column].length * step / 2
            dry_now = area[inside[column] & ~wet].sum()
            dry_before = area[inside[column] & ~earlier].sum()
            assert dry_now >= passages.now_m2[row, column] - rim_m2
            assert dry_before >= passages.before_m2[row, column] - rim_m2
            asked += 1
    return asked


@settings(max_examples=6, deadline=None)
@DRAWN
def test_fronts_that_are_made_leave_dry_what_the_passages_say(hall_dm, wide, deep, opening, at):
    held(drawn(hall_dm, wide, deep, opening, at))


def test_passages_are_asked_of_a_hall_beside_a_kitchen():
    assert held(ground(kitchen(1.4, 6.0, 2.0, 1.0, 3.4, "kitchen"))) > 20


def test_a_hall_whose_end_is_behind_the_kitchen_keeps_its_opening_dry_by_hand():
    """The kitchen is left by its far wall. From the hall beyond the opening every way leads through
    the floor before the opening: 2.4 m of it by 1.4 m."""
    here = ground(kitchen(1.4, 6.0, 2.0, 1.0, 3.4, "kitchen"))
    floor = floor_of(here)
    names = {tuple(np.round(one.bounds, 1)): n for n, one in enumerate(floor.parts.shapes)}
    east, before = names[3.4, 0.0, 8.0, 1.4], names[1.0, 0.0, 3.4, 1.4]
    boxes = [one.blocks for one in floor.parts.rectangles]
    passage = floor.passages.before_m2[:, boxes.index(frozenset({before}))]
    assert passage[east] > 0
    assert passage[before] == NO_WAY
    assert floor.passages.inner_m2[east].max() < floor.parts.area_m2[east]


# Recorded from our own output


def test_strides_raise_the_bound_of_a_room_and_a_hall_through_a_wide_opening():
    here = ground(kitchen(1.47, 6.82, 1.82, 0.72, 3.21, "whole kitchen", long=18.6), band_m=1.1)
    known = edges_at_once_m(here, 1.1, boxes=60_000)
    found = strides_m(here, 1.1, above_m=known, steps=1)
    assert found == pytest.approx(1.01 * known)
    assert found <= shortest(here).equivalent_m * (1 + 1e-6)
