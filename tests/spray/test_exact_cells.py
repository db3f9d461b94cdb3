"""The exact front of floors of cells: by hand, against another search, the planner beside it."""

from __future__ import annotations

import hashlib

import pytest
from tests.spray.bandwidth import bandwidth
from tests.spray.cells import bound_of, cell_floor, planned
from tests.spray.exact_cells import least_front
from tests.spray.grid_cases import MOST_CELLS, drawn, grid_cases, rastered
from tests.spray.polyominoes import free_polyominoes

FROZEN = "6b9712bc43ff106aebe1356b700d3998918889d31d94f70965a1090979b5732a"


def rows(columns, deep):
    return [(x, y) for x in range(columns) for y in range(deep)]


def test_rectangles_by_hand():
    """By hand: left at a corner, row after row along the shorter side, as without an exit
    [chvatalova-1975]. Six in a row left in the third: three beyond it on one side, with one of the
    other two between each and the next: 2."""
    for columns, deep in ((1, 6), (5, 3), (4, 4), (8, 8)):
        floor = cell_floor(rows(columns, deep))
        least = least_front(floor, list(range(len(floor)))[::-1], seconds=60)
        assert (least.high, least.proved) == (min(columns, deep), True)
        assert least.order[-1] == floor.exit
    row = cell_floor(rows(6, 1), 2)
    assert least_front(row, [0, 1, 3, 4, 5, 2], seconds=60).high == 2


@pytest.mark.parametrize("count", [5, 7, 9])
def test_the_other_search_finds_the_same(count):
    for number, cells in enumerate(free_polyominoes(count)[:: max(1, FREE_SHARE[count])]):
        floor = cell_floor(cells, number % count)
        least = least_front(floor, planned(floor, levelling=False), seconds=60)
        assert least.proved
        assert least.high == floor.width_of(least.order)
        assert least.high == bandwidth(count, floor.edges, last=floor.exit).width


FREE_SHARE = {5: 1, 7: 6, 9: 60}


def test_the_cases_are_frozen_and_small():
    told = hashlib.sha256()
    names = []
    for name, floor in grid_cases():
        names.append(name)
        told.update(repr((name, floor.cells, floor.edges, floor.exit)).encode())
        assert 4 <= len(floor) <= MOST_CELLS
    assert len(names) == len(set(names)) == 113
    assert told.hexdigest() == FROZEN


@pytest.mark.parametrize(
    "floor", [rastered("small square"), drawn(3), drawn(8)], ids=["square", "a", "b"]
)
def test_bound_exact_and_planned_in_their_order(floor):
    best = planned(floor)
    least = least_front(floor, best, seconds=60)
    assert least.proved
    assert bound_of(floor) <= least.high <= floor.width_of(best) <= 1.6 * least.high
