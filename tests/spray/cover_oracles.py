"""Three other ways to the cheapest exact cover; none shares code with the planner.

Each gives the least cost and, among covers of that cost, the least number of columns.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from ortools.sat.python import cp_model
from scipy.optimize import Bounds, LinearConstraint, milp

Columns = dict[frozenset[int], float]
Least = tuple[float, int]


def all_partitions(units: list[int]) -> Iterator[list[frozenset[int]]]:
    """Every partition of the units: each further unit joins a part or begins one."""
    if not units:
        yield []
        return
    for smaller in all_partitions(units[1:]):
        yield [frozenset(units[:1]), *smaller]
        for index, part in enumerate(smaller):
            yield [*smaller[:index], part | {units[0]}, *smaller[index + 1 :]]


def by_all_partitions(count: int, columns: Columns) -> Least:
    """Brute force: all partitions into columns that there are (4140 partitions of 8 units)."""
    return min(
        (round(sum(columns[part] for part in parts), 6), len(parts))
        for parts in all_partitions(list(range(count)))
        if all(part in columns for part in parts)
    )


def by_milp(count: int, columns: Columns) -> Least:
    """The textbook model with a dense matrix, solved for cost, then for number at that cost."""
    groups = list(columns)
    cost = np.array([columns[group] for group in groups])
    holds = np.array([[float(unit in group) for group in groups] for unit in range(count)])
    once = LinearConstraint(holds, 1, 1)
    options = {"mip_rel_gap": 0.0}
    kind = {"integrality": np.ones(len(groups)), "bounds": Bounds(0, 1), "options": options}
    first = milp(cost, constraints=[once], **kind)
    assert first.status == 0
    cheap = LinearConstraint(cost[np.newaxis, :], -np.inf, first.fun + 1e-5)
    second = milp(np.ones(len(groups)), constraints=[once, cheap], **kind)
    assert second.status == 0
    return round(float(first.fun), 6), round(second.fun)


def by_cp_sat(count: int, columns: Columns) -> Least:
    """Clauses and whole millionths of cost; the number of columns is the last digits."""
    model = cp_model.CpModel()
    taken = {group: model.new_bool_var(str(sorted(group))) for group in columns}
    for unit in range(count):
        model.add_exactly_one(var for group, var in taken.items() if unit in group)
    weight = {group: round(columns[group] * 1e6) * (count + 1) + 1 for group in columns}
    model.minimize(sum(weight[group] * var for group, var in taken.items()))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    micro, number = divmod(round(solver.objective_value), count + 1)
    return micro / 1e6, number


def covered_once(count: int, chosen: tuple[frozenset[int], ...]) -> bool:
    """Whether every unit stands in exactly one of the chosen columns."""
    held = [sum(unit in group for group in chosen) for unit in range(count)]
    return held == [1] * count
