"""The cheapest exact cover: every unit in exactly one of the chosen columns, with its proof.

Up to `EXACT_UNITS` units by dynamic programming over sets of what is left, exact in whole
millionths of a unit of cost; above that as a set partitioning problem [set-partitioning] by HiGHS.
Nothing here knows rooms: units are numbers, columns are sets of them with a cost.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import ceil, gcd, isfinite

from farwall.errors import Unanswerable
from farwall.nouns import dataclass

EXACT_UNITS = 16
"""Up to so many units the cover is found by dynamic programming. Measured: bench/partition.py."""
TIME_LIMIT_S = 20.0
"""What HiGHS may take before it hands over the best cover so far. Rank: guess."""
_MICRO = 1_000_000
_MOST_STEPS = 10_000_000
_TOLERANCE = 1e-6

Units = frozenset[int]


@dataclass(frozen=True)
class Cover:
    """Chosen columns by their least unit, their cost, and a floor under the cost of every cover.

    `proved` says that no cover is cheaper: by whole numbers for the dynamic program, within the
    solver's tolerance (a millionth of the cost) for HiGHS. Then `gap` is 0.
    """

    columns: tuple[Units, ...]
    cost: float
    lower_bound: float
    proved: bool

    @property
    def gap(self) -> float:
        """How much cheaper another cover could be at most."""
        return 0.0 if self.proved else max(self.cost - self.lower_bound, 0.0)


@dataclass(frozen=True)
class _Column:
    """A column as bits, its cost in millionths."""

    units: Units
    mask: int
    micro: int


def cheapest_cover(
    count: int,
    cost: Mapping[Units, float],
    *,
    exact_units: int = EXACT_UNITS,
    time_limit_s: float = TIME_LIMIT_S,
) -> Cover:
    """The cheapest exact cover of units 0 to `count` - 1 by columns of `cost`.

    Costs are at least 0 and are told apart to a millionth. Among equally cheap covers one with the
    fewest columns is taken (by HiGHS too where costs are multiples of a common step that is not
    too small beside them), and always the same one, whatever the order of the mapping. HiGHS may
    take `time_limit_s`; when it needs more, the best cover so far comes back with its gap.

    Raises `ValueError` for a column that is empty or has a unit out of range or a cost that is
    negative or not finite; `Unanswerable` when no cover exists or none was found in time.
    """
    columns = [_column(count, units, value) for units, value in cost.items()]
    columns.sort(key=lambda column: (column.micro, sorted(column.units)))
    if count <= exact_units:
        return _by_subsets(count, columns)
    return _by_highs(count, columns, time_limit_s)


def _column(count: int, units: Units, cost: float) -> _Column:
    if not units or min(units) < 0 or max(units) >= count:
        raise ValueError(f"A column holds units of 0 to {count - 1}, and at least one: {units}")
    if not (isfinite(cost) and cost >= 0):
        raise ValueError(f"A cost is finite and not below 0; that of {sorted(units)} is {cost}")
    return _Column(units, sum(1 << unit for unit in units), round(cost * _MICRO))


def _by_subsets(count: int, columns: Sequence[_Column]) -> Cover:
    """Exact: the least unit that is left is covered first, by each column that may."""
    holding: list[list[tuple[int, int]]] = [[] for _ in range(count)]
    weigh = count + 1
    for column in columns:
        # One whole number for cost first and number of columns second.
        holding[min(column.units)].append((column.mask, column.micro * weigh + 1))
    best: dict[int, int] = {0: 0}
    taken: dict[int, int] = {}

    def least(left: int) -> int:
        if left in best:
            return best[left]
        found, by = -1, 0
        for mask, weight in holding[(left & -left).bit_length() - 1]:
            if mask & ~left or (found >= 0 and weight >= found):
                continue
            rest = least(left ^ mask)
            if rest >= 0 and (found < 0 or weight + rest < found):
                found, by = weight + rest, mask
        best[left], taken[left] = found, by
        return found

    left = (1 << count) - 1
    total = least(left)
    if total < 0:
        raise _no_cover()
    chosen = []
    by_mask = {column.mask: column.units for column in columns}
    while left:
        chosen.append(by_mask[taken[left]])
        left ^= taken[left]
    cost = total // weigh / _MICRO
    return Cover(tuple(chosen), cost, cost, proved=True)


def _by_highs(count: int, columns: Sequence[_Column], time_limit_s: float) -> Cover:
    """Set partitioning: least cost, each unit in exactly one chosen column."""
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import csc_array

    if {unit for column in columns for unit in column.units} != set(range(count)):
        raise _no_cover()
    step, tie = _scale(count, columns)
    weights = np.array([column.micro / step + tie for column in columns])
    sizes = [len(column.units) for column in columns]
    rows = np.concatenate([sorted(column.units) for column in columns])
    starts = np.concatenate([[0], np.cumsum(sizes)])
    holds = csc_array((np.ones(len(rows)), rows, starts), shape=(count, len(columns)))
    answer = milp(
        weights,
        integrality=np.ones(len(columns)),
        bounds=Bounds(0, 1),
        constraints=LinearConstraint(holds, 1, 1),
        options={"time_limit": time_limit_s, "mip_rel_gap": 0.0},
    )
    if answer.status == 2:
        raise _no_cover()
    chosen = [] if answer.x is None else [columns[int(i)] for i in np.flatnonzero(answer.x > 0.5)]
    bound = getattr(answer, "mip_dual_bound", None)
    if bound is None or not isfinite(bound):
        bound = 0.0
    if tie:  # whole steps: what the ties add is less than one step and may be taken off
        bound = ceil(bound - count * tie - _TOLERANCE)
    floor = max(bound * step / _MICRO, _shared_floor(count, columns))
    return _checked(count, chosen or _units_alone(columns), floor, solved=answer.status == 0)


def _scale(count: int, columns: Sequence[_Column]) -> tuple[float, float]:
    """The step in which HiGHS counts, and what a column costs beside its cost, in steps.

    All costs are whole steps; `count` columns together then add less than one step.
    """
    step = gcd(*(column.micro for column in columns)) or _MICRO
    most = max(column.micro for column in columns) * count
    if most / step <= _MOST_STEPS:
        return step, 1 / (count + 1)
    return most / count / 100, 0.0


def _shared_floor(count: int, columns: Sequence[_Column]) -> float:
    """A cost that no cover undercuts: each unit pays its part of the column that asks least."""
    least = [float("inf")] * count
    for column in columns:
        part = column.micro / len(column.units)
        for unit in column.units:
            least[unit] = min(least[unit], part)
    return sum(least) / _MICRO


def _units_alone(columns: Sequence[_Column]) -> list[_Column]:
    """Every unit on its own: a cover where all these columns exist."""
    return [column for column in columns if len(column.units) == 1]


def _checked(count: int, chosen: Sequence[_Column], floor: float, *, solved: bool) -> Cover:
    """The cover of these columns, looked at once more: nothing rounded, nothing twice."""
    if sorted(unit for column in chosen for unit in column.units) != list(range(count)):
        raise Unanswerable(
            f"No cover of the {count} units was found in the time that the solver had.",
            remedies=["Give it more time, or offer every unit alone as a column."],
        )
    cost = sum(column.micro for column in chosen) / _MICRO
    proved = solved or floor >= cost * (1 - _TOLERANCE)
    units = sorted((column.units for column in chosen), key=min)
    return Cover(tuple(units), cost, cost if proved else min(floor, cost), proved)


def _no_cover() -> Unanswerable:
    return Unanswerable(
        "No set of columns holds every unit exactly once.",
        remedies=["Offer every unit alone as a column."],
    )
