"""The least front of a floor of cells, exactly, by CP-SAT: a second opinion for bench and tests.

State: x[cell, k] says whether a cell is among the first k of the order, k = 0 to n; each has the
cells of the one before it and one more, the exit is only in the last. Neighbours are cells at the
four sides (`CellFloor.edges`). Least is the largest difference of places of two neighbours, the
bandwidth with the exit last, E in cells: at width b whoever is d steps from one of the first k is
among the first k + d b. Widths are tried downward from a known order until one is impossible. That
model proves in a second what one number a cell, all different, did not in twenty.
"""

from __future__ import annotations

from dataclasses import dataclass

from ortools.sat.python import cp_model
from tests.spray.cells import CellFloor

STEPS = 2
"""Cells so many steps apart are told to the solver as pairs; more follow."""


@dataclass(frozen=True)
class Least:
    """Widths between which the least lies, an order that has the greater, and whether they meet."""

    low: int
    high: int
    order: tuple[int, ...]

    @property
    def proved(self) -> bool:
        return self.low == self.high


def least_front(floor: CellFloor, known: list[int], *, seconds: float, workers: int = 1) -> Least:
    """The least front; `known` is an order to begin with, the exit last."""
    steps = _steps(floor)
    low, best = _counted(floor, steps), known
    while low < (high := floor.width_of(best)):
        found, seen = _within(floor, steps, high - 1, best, seconds, workers)
        if found is None:
            low = high if seen == cp_model.INFEASIBLE else low
            break
        best = found
    return Least(low, high, tuple(best))


def _within(floor, steps, width, known, seconds, workers):
    """An order of at most this width, or None and what the solver says."""
    model, count = cp_model.CpModel(), len(floor)
    first = [[model.new_bool_var("") for _ in range(count + 1)] for _ in range(count)]
    for cell, among in enumerate(first):
        sure = max(0, count - 1 - width * steps[cell][floor.exit])
        model.add_bool_and(~var for var in among[: sure + 1])
        model.add_bool_and(among[count:])
        for k in range(count):
            model.add_implication(among[k], among[k + 1])
            model.add_hint(among[k], known.index(cell) < k)
        for other, apart in enumerate(steps[cell]):
            if 0 < apart <= STEPS:
                for k in range(count + 1 - width * apart):
                    model.add_implication(among[k], first[other][k + width * apart])
    for k in range(count + 1):
        model.add(sum(among[k] for among in first) == k)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = workers
    solver.parameters.max_time_in_seconds = seconds
    seen = solver.solve(model)
    if seen not in {cp_model.OPTIMAL, cp_model.FEASIBLE}:
        return None, seen
    place = [sum(not solver.value(var) for var in among) for among in first]
    return sorted(range(count), key=place.__getitem__), seen


def _counted(floor: CellFloor, steps: list[list[int]]) -> int:
    """The least width that counting allows: balls around the exit, and around every cell."""
    most = 0
    for cell, away in enumerate(steps):
        for radius in range(1, max(away) + 1):
            ball = sum(there <= radius for there in away) - 1
            spans = radius if cell == floor.exit else 2 * radius
            most = max(most, -(-ball // spans))
    return most


def _steps(floor: CellFloor) -> list[list[int]]:
    found = []
    for start in range(len(floor)):
        away, front = {start: 0}, [start]
        while front:
            front = list({there for cell in front for there in floor.near[cell]} - away.keys())
            away.update(dict.fromkeys(front, max(away.values()) + 1))
        found.append([away[cell] for cell in range(len(floor))])
    return found
