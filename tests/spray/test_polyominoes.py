"""Every floor of up to ten cells with every exit: bound <= optimum <= what the planner's sweep has.

Cells are of one band's depth, a body has no width, the exit cell comes last (`tests.spray.cells`).
Free polyominoes are enough: bound and optimum know no left and right, and each of the eight floors
that are one free polyomino has the same exits. The optimum is the exact bandwidth with the exit
last, by a search that shares no code with the planner (`tests.spray.bandwidth`).
"""

from __future__ import annotations

from collections import Counter

import numpy as np
import pytest
from tests.spray.bandwidth import bandwidth
from tests.spray.cells import CellFloor, cell_floor, ground_of, order_of
from tests.spray.polyominoes import FREE, free_polyominoes

from farwall.spray.crowding import exit_last_m
from farwall.spray.front import Front
from farwall.spray.fronts import levelled_front, plain_fronts

HAIR = 1e-6
SHARE = 0.8
"""Recorded: the planner's sweep is an optimum on 82 % of floors of ten cells, on more of fewer."""


def checked(floor: CellFloor, *, levelling: bool) -> int:
    """By how much the planner's best order is wider than the optimum, each step of it looked at."""
    ground = ground_of(floor)
    bound = exit_last_m(ground, 1.0)
    exact = bandwidth(len(floor), floor.edges, last=floor.exit)
    assert floor.width_of(exact.order) == exact.width
    assert bound <= exact.width + HAIR
    fronts = plain_fronts(ground)
    fronts += [levelled_front(ground, fronts)] if levelling else []
    found = min(widths(floor, front, bound) for front in fronts)
    assert exact.width <= found
    return found - exact.width


def widths(floor: CellFloor, front: Front, bound: float) -> int:
    assert front.equivalent_m >= bound - HAIR
    order = order_of(floor, front)
    assert sorted(order) == list(range(len(floor)))
    assert order[-1] == floor.exit
    assert front.late[floor.exit] == front.late.max(), "the exit comes last by itself"
    return floor.width_of(order)


def share_of_optima(count: int, block: int, blocks: int, *, levelling: bool) -> float:
    over = Counter(
        checked(cell_floor(cells, exit_), levelling=levelling)
        for cells in free_polyominoes(count)[block::blocks]
        for exit_ in range(count)
    )
    return over[0] / over.total()


@pytest.mark.parametrize("count", range(1, 11))
def test_there_are_as_many_as_are_known(count):
    assert len(free_polyominoes(count)) == FREE[count - 1]


@pytest.mark.parametrize("count", range(2, 7))
def test_bound_optimum_and_levelled_sweep_of_all_to_six_cells(count):
    assert share_of_optima(count, 0, 1, levelling=True) >= SHARE


@pytest.mark.parametrize("count", [7, 8])
def test_bound_optimum_and_plain_sweep_of_all_to_eight_cells(count):
    assert share_of_optima(count, 0, 1, levelling=False) >= SHARE


@pytest.mark.slow
@pytest.mark.parametrize("block", range(8))
@pytest.mark.parametrize("count", [9, 10])
def test_bound_optimum_and_plain_sweep_of_all_to_ten_cells(count, block):
    """All 1285 and 4655 of them with each exit: 58 115 floors, some two minutes in all."""
    assert share_of_optima(count, block, 8, levelling=False) >= SHARE - 0.05


def test_a_square_of_four_by_hand():
    """By hand: of a square of four cells a corner's two neighbours cannot both come next: width 2.

    Within one step of the exit lie three cells, within two all four; the planner's bound adds 1.21
    steps (half a step, half a diagonal) to each walk: all four cells within 3.21 steps, and a span
    of three hops may be stretched by a tenth: 4 / 3.21.
    """
    floor = cell_floor([(0, 0), (0, 1), (1, 0), (1, 1)])
    assert bandwidth(4, floor.edges, last=0).width == 2
    assert exit_last_m(ground_of(floor), 1.0) == pytest.approx(4 / 3.21)
    assert checked(floor, levelling=True) == 0


def test_a_wrong_bound_or_sweep_would_be_seen(monkeypatch):
    """By hand: three times the bound is above the optimum of a row; a row begun at its exit is no
    sweep at all."""
    row = cell_floor([(x, 0) for x in range(6)])
    true = exit_last_m
    monkeypatch.setattr(f"{__name__}.exit_last_m", lambda ground, depth: 3 * true(ground, depth))
    with pytest.raises(AssertionError):
        checked(row, levelling=False)
    late = np.arange(6.0)
    with pytest.raises(AssertionError, match="last by itself"):
        widths(row, Front("wrong way", late, late, 1.0), 0.0)
