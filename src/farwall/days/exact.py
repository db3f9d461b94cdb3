"""Whole choices of house, way and van by HiGHS: all at once, or a part of a calendar anew."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite
from typing import Any

import numpy as np

from farwall.days.columns import crew_change
from farwall.days.nouns import Question
from farwall.days.search import Choice, Choices
from farwall.days.vans import Van, Way
from farwall.nouns import dataclass

_Key = tuple[int, str, int]


@dataclass(frozen=True)
class Whole:
    """What HiGHS found: choices (None when it found none) and its bound; infinite: impossible."""

    choices: Choices | None
    bound: float
    solved: bool


def chosen(
    question: Question,
    ways: Sequence[Way],
    vans: Sequence[Van],
    places: Sequence[int],
    *,
    time_limit_s: float,
) -> Whole:
    """One way for each house that `ways` name, in the vans at `places`, as loaded as they are.

    The bound holds for calendars of these ways in these vans. Time is a wall
    clock: the one place where another machine may give another, still true, answer.
    """
    from scipy.optimize import Bounds, LinearConstraint, milp

    pairs = [
        (way, n)
        for n in places
        for way in ways
        if vans[n].crew.people == way.column.people and vans[n].takes(way)
    ]
    houses = sorted({way.column.house for way in ways})
    if {way.column.house for way, _ in pairs} != set(houses):
        return Whole(None, float("inf"), solved=True)
    cost = [_cost(question, way, vans[n]) for way, n in pairs]
    each, uses, holds = _rows(pairs, vans, houses)
    answer = milp(
        np.array(cost),
        integrality=np.ones(len(pairs)),
        bounds=Bounds(0, 1),
        constraints=[LinearConstraint(each, 1, 1), LinearConstraint(uses, -np.inf, holds)],
        options={"time_limit": time_limit_s, "mip_rel_gap": 0.0},
    )
    if answer.status == 2:
        return Whole(None, float("inf"), solved=True)
    bound = getattr(answer, "mip_dual_bound", None)
    found = None
    if answer.x is not None:
        taken = [(pairs[int(i)], cost[int(i)]) for i in np.flatnonzero(answer.x > 0.5)]
        found = {way.column.house: Choice(way, n, value) for (way, n), value in taken}
    told = float(bound) if bound is not None and isfinite(bound) else -float("inf")
    return Whole(found, told, solved=answer.status == 0)


def _cost(question: Question, way: Way, van: Van) -> float:
    house = question.houses[way.column.house]
    return way.column.cost_days + crew_change(question, house, van.crew)


def _rows(
    pairs: Sequence[tuple[Way, int]], vans: Sequence[Van], houses: Sequence[int]
) -> tuple[Any, Any, Any]:
    """One way for each house; no half day, guard or spray day of a van twice."""
    from scipy.sparse import csr_array

    number = {house: n for n, house in enumerate(houses)}
    each = csr_array(
        (np.ones(len(pairs)), ([number[w.column.house] for w, _ in pairs], range(len(pairs)))),
        shape=(len(houses), len(pairs)),
    )
    rows: dict[_Key, int] = {}
    holds: list[int] = []
    row, column = [], []
    for k, (way, n) in enumerate(pairs):
        for kind in ("at", "fresh", "sprays"):
            for place in getattr(way.column, kind):
                key = (n, kind, place)
                if key not in rows:
                    rows[key] = len(rows)
                    holds.append(_left(vans[n], kind, place))
                row.append(rows[key])
                column.append(k)
    uses = csr_array((np.ones(len(row)), (row, column)), shape=(len(rows), len(pairs)))
    return each, uses, np.array(holds, dtype=float)


def _left(van: Van, kind: str, place: int) -> int:
    """How many more houses a van can have in this half day or on this day."""
    if kind == "fresh":
        return sum(not level >> place & 1 for level in van.fresh)
    return 1
