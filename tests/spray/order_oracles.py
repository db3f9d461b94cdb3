"""Four other ways to the least worst share of any order; none shares code with the planner.

They read the tables of a `Leaving` (doors, minutes, share of a budget for a minute of age) and
nothing that it reckons. Minutes must be whole multiples of `SLOT_MIN`. What is compared is the
least, over all orders in which nobody is shut in, of the worst share among the fields, each left
by its best door: unequal fields, and budgets that change from hour to hour.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from ortools.sat.python import cp_model
from scipy.optimize import Bounds, LinearConstraint, milp

from farwall.spray.leaving import Leaving

SLOT_MIN = 30
_SCALE = 10**6


def _leads_out(house: Leaving, dry: frozenset[int]) -> set[int]:
    """Of the dry fields those from which a walk over dry floor leads outside."""
    out: set[int] = set()
    while True:
        more = {
            i
            for i in dry - out
            if any(d.into == len(house.doors) or d.into in out for d in house.doors[i])
        }
        if not more:
            return out
        out |= more


def _share(house: Leaving, index: int, dry: frozenset[int]) -> float:
    """Share of field `index` when it and `dry` are left: the best door that lets somebody out."""
    out = _leads_out(house, dry)
    ages = [d.age_min for d in house.doors[index] if d.into == len(house.doors) or d.into in out]
    begun = sum(house.minutes) - sum(house.minutes[i] for i in dry | {index})
    return min(ages, default=float("inf")) * house.share_per_min(index, begun)


def by_all_orders(house: Leaving) -> float:
    """Brute force: every order, each step judged by walking over what is still dry."""

    def least(dry: frozenset[int], worst: float) -> float:
        if not dry:
            return worst
        found = float("inf")
        for index in dry:
            share = _share(house, index, dry - {index})
            if share < float("inf"):
                found = min(found, least(dry - {index}, max(worst, share)))
        return found

    return least(frozenset(range(len(house.doors))), 0.0)


def by_sets(house: Leaving) -> float:
    """Dynamic program over sets of dry fields, from the first field on."""

    @cache
    def least(dry: frozenset[int]) -> float:
        return min(
            (max(_share(house, i, dry - {i}), least(dry - {i})) for i in dry),
            default=0.0,
        )

    return least(frozenset(range(len(house.doors))))


def _slots(house: Leaving) -> list[int]:
    slots = [round(minutes / SLOT_MIN) for minutes in house.minutes]
    assert [SLOT_MIN * slot for slot in slots] == list(house.minutes)
    return slots


def by_milp(house: Leaving) -> float:
    """Time-indexed: y says that a field begins in this slot and is left by this door.

    Each field once; each slot one field; a door into another field only while that one begins
    later. By induction on the order somebody leaving so always gets outside.
    """
    slots = _slots(house)
    whole = sum(slots)
    y = [
        (index, door, slot)
        for index, doors in enumerate(house.doors)
        for door in doors
        for slot in range(whole - slots[index] + 1)
    ]
    rows, low, high = [], [], []

    def row(coefficients: dict[int, float], least: float, most: float) -> None:
        line = np.zeros(len(y) + 1)
        line[list(coefficients)] = list(coefficients.values())
        rows.append(line)
        low.append(least)
        high.append(most)

    for field in range(len(slots)):
        mine = [k for k, (index, _, _) in enumerate(y) if index == field]
        row(dict.fromkeys(mine, 1.0), 1, 1)
        shares = {
            k: y[k][1].age_min * house.share_per_min(field, float(SLOT_MIN * y[k][2])) for k in mine
        }
        row({**{k: -share for k, share in shares.items()}, len(y): 1.0}, 0, np.inf)
        for into in {y[k][1].into for k in mine} - {len(slots)}:
            for slot in range(whole):
                before = {k: -1.0 for k in mine if y[k][1].into == into and y[k][2] == slot}
                later = {k: 1.0 for k, (i, _, at) in enumerate(y) if i == into and at > slot}
                row({**before, **later}, 0, np.inf)
    for slot in range(whole):
        row({k: 1.0 for k, (i, _, at) in enumerate(y) if at <= slot < at + slots[i]}, 1, 1)
    answer = milp(
        np.append(np.zeros(len(y)), 1.0),
        integrality=np.append(np.ones(len(y)), 0),
        bounds=Bounds(0, np.append(np.ones(len(y)), np.inf)),
        constraints=LinearConstraint(np.array(rows), low, high),
        options={"mip_rel_gap": 0.0},
    )
    assert answer.status == 0, answer.message
    return float(answer.fun)


def by_cp_sat(house: Leaving) -> float:
    """Intervals that do not overlap, a door for each field, its share looked up by its begin."""
    slots = _slots(house)
    whole = sum(slots)
    model = cp_model.CpModel()
    begin = [model.new_int_var(0, whole - slot, f"begin {i}") for i, slot in enumerate(slots)]
    model.add_no_overlap(
        model.new_fixed_size_interval_var(begin[i], slot, f"field {i}")
        for i, slot in enumerate(slots)
    )
    worst = model.new_int_var(0, 100 * _SCALE, "worst")
    for index, doors in enumerate(house.doors):
        taken = [model.new_bool_var(f"{index} by {door.number}") for door in doors]
        model.add_exactly_one(taken)
        for door, is_taken in zip(doors, taken, strict=True):
            table = [
                round(_SCALE * door.age_min * house.share_per_min(index, float(SLOT_MIN * at)))
                for at in range(whole)
            ]
            share = model.new_int_var(0, 100 * _SCALE, "")
            model.add_element(begin[index], table, share)
            model.add(worst >= share).only_enforce_if(is_taken)
            if door.into < len(slots):
                later = begin[door.into] >= begin[index] + slots[index]
                model.add(later).only_enforce_if(is_taken)
    model.minimize(worst)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return solver.objective_value / _SCALE
