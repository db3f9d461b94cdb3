"""Floors of whole cells: the planner's own bound and sweeps on them, like beside like.

A cell is a square metre and a place of the lattice; step and band depth are one cell, neighbours
are the cells at its four sides, a body has no width, and the exit cell comes last. So a sweep is an
order of the cells, and its front is the bandwidth of that order: the longest wait of two
neighbours. The planner's lattice is filled in by hand here, and nothing of it is changed.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from itertools import groupby

import numpy as np
import shapely

from farwall.spray import lattice as planner
from farwall.spray.ball import Ball
from farwall.spray.crowding import exit_last_m
from farwall.spray.front import Front, Ground
from farwall.spray.fronts import levelled_front, plain_fronts
from farwall.spray.lattice import Lattice
from farwall.spray.stands import Stands

Cell = tuple[int, int]
SIDES = ((1, 0), (0, 1), (-1, 0), (0, -1))


@dataclass(frozen=True)
class CellFloor:
    """Cells in their order, those pairs of numbers that are neighbours, and the exit's number."""

    cells: tuple[Cell, ...]
    edges: tuple[tuple[int, int], ...]
    exit: int

    def __len__(self) -> int:
        return len(self.cells)

    @cached_property
    def near(self) -> list[list[int]]:
        """For each cell its neighbours."""
        near: list[list[int]] = [[] for _ in self.cells]
        for one, two in self.edges:
            near[one].append(two)
            near[two].append(one)
        return near

    def width_of(self, order: Iterable[int]) -> int:
        """The longest wait of two neighbours in this order."""
        place = {cell: at for at, cell in enumerate(order)}
        return max((abs(place[one] - place[two]) for one, two in self.edges), default=0)


def cell_floor(cells: Iterable[Cell], exit_: int = 0) -> CellFloor:
    """The floor of these cells, all neighbours open to each other."""
    listed = tuple(sorted(cells))
    number = {cell: at for at, cell in enumerate(listed)}
    edges = tuple(
        (at, number[there])
        for cell, at in number.items()
        for dx, dy in SIDES[:2]
        if (there := (cell[0] + dx, cell[1] + dy)) in number
    )
    return CellFloor(listed, edges, exit_)


def ground_of(floor: CellFloor) -> Ground:
    """The planner's ground of these cells."""
    lattice, ball = _laid(floor.cells, floor.edges)
    here = np.arange(len(floor))
    start = np.where(here == floor.exit, 0.0, planner.FAR_M)
    ground = Ground(lattice, lattice.walks_from(start), here == floor.exit, ball)
    stands = Stands(here, here[:, None], ball.there, here == floor.exit)
    ground.__dict__["stands"] = stands  # a body without width: nothing but its own cell under it
    return ground


@lru_cache(maxsize=1)
def _laid(cells: tuple[Cell, ...], edges: tuple[tuple[int, int], ...]) -> tuple[Lattice, Ball]:
    """The lattice and ball of the cells, whichever is the exit: made once for all exits in turn."""
    count, here = len(cells), np.arange(len(cells))
    column, row = (np.array(axis) for axis in zip(*cells, strict=True))
    column, row = column - column.min(), row - row.min()
    near = np.repeat(here[:, None], 8, axis=1)
    linked = {(1, 0): ([], []), (0, 1): ([], [])}
    for one, two in edges:
        step = (int(column[two] - column[one]), int(row[two] - row[one]))
        at = 2 * list(linked).index(step)
        near[one, at], near[two, at + 1] = two, one
        linked[step][0].append(one)
        linked[step][1].append(two)
    shape = shapely.union_all(shapely.box(column, row, column + 1, row + 1))
    size = (int(column.max()) + 1, int(row.max()) + 1)
    lattice = Lattice(
        shape, (shape,), planner.Grid(0.0, 1.0, (0.0, 0.0), size),
        np.column_stack([column + 0.5, row + 0.5]), np.ones(count), np.zeros(count, dtype=int),
        column, row, near, (),
    )  # fmt: skip
    scans = tuple(
        planner._scan(lattice, step, np.array(one, dtype=int), np.array(two, dtype=int))
        for step, (one, two) in linked.items()
    )
    ball = Ball(1.0, near[:, :4], (near[:, :4] != here[:, None]).astype(float))
    return replace(lattice, scans=scans), ball


def order_of(floor: CellFloor, front: Front) -> list[int]:
    """The cells as this front takes them, the exit last.

    Of cells that come together, those first whose earliest neighbour came first: a row follows the
    row before it from the same end.
    """
    order: list[int] = []
    place: dict[int, int] = {}
    inner = [cell for cell in range(len(floor)) if cell != floor.exit]
    for _, together in groupby(sorted(inner, key=front.late.__getitem__), front.late.__getitem__):
        group = sorted(
            together,
            key=lambda cell: min((place.get(o, len(floor)) for o in floor.near[cell]), default=0),
        )
        for cell in group:
            place[cell] = len(order)
            order.append(cell)
    return [*order, floor.exit]


def planned(floor: CellFloor, *, levelling: bool = True) -> list[int]:
    """The best order of the planner's sweeps: plain ones, and levelled ones if wanted."""
    ground = ground_of(floor)
    fronts = plain_fronts(ground)
    if levelling:
        fronts.append(levelled_front(ground, fronts))
    return min((order_of(floor, front) for front in fronts), key=floor.width_of)


def bound_of(floor: CellFloor) -> float:
    """The planner's bound by growth, in cells."""
    return exit_last_m(ground_of(floor), 1.0)
