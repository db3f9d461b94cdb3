"""What no calendar of these columns can cost less than, all crews of one size taken together.

Lagrange's bound: for any prices of half days, guards and spray days, each
house takes the way that is cheapest with its prices, and what all crews
could have earned is taken off. Whatever the prices are, this undercuts every
calendar; subgradient steps make it tight [held-karp-1971]. No clock: the
number of steps is fixed. Where the columns left are few, `exact` closes what remains.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from farwall.days.columns import Column
from farwall.days.nouns import DayCrew
from farwall.days.vans import guards
from farwall.nouns import dataclass

Reals = NDArray[np.float64]
_STEPS = 600
_PATIENCE = 20


@dataclass(frozen=True)
class Pool:
    """Columns as numbers, sorted by house: `uses` is rows by columns, `holds` what rows hold."""

    columns: tuple[Column, ...]
    cost: Reals
    first: NDArray[np.int64]
    uses: Any
    holds: Reals


@dataclass(frozen=True)
class Priced:
    """A bound, and for each column what the bound would be if it had to be taken. [days]"""

    bound: float
    if_taken: Reals
    prices: Reals


def pool(columns: Sequence[Column], crews: Sequence[DayCrew]) -> Pool:
    """The columns with rows for half days, guards and spray days of each size of crew."""
    from scipy.sparse import csr_array

    ordered = sorted(columns, key=lambda one: one.house)
    rows: dict[tuple[str, int, int], int] = {}
    holds: list[float] = []
    at_row, at_column = [], []
    of_size = {p: [crew for crew in crews if crew.people == p] for p in {c.people for c in crews}}
    for number, column in enumerate(ordered):
        mine = of_size[column.people]
        most = {"at": len(mine), "fresh": sum(map(guards, mine)), "sprays": len(mine)}
        for kind, capacity in most.items():
            for place in getattr(column, kind):
                key = (kind, column.people, place)
                if key not in rows:
                    rows[key] = len(rows)
                    holds.append(float(capacity))
                at_row.append(rows[key])
                at_column.append(number)
    houses = np.array([one.house for one in ordered])
    first = np.flatnonzero(np.r_[True, houses[1:] != houses[:-1]])
    uses = csr_array((np.ones(len(at_row)), (at_row, at_column)), shape=(len(rows), len(ordered)))
    cost = np.array([one.cost_days for one in ordered])
    return Pool(tuple(ordered), cost, first, uses, np.array(holds))


def priced(pool: Pool, *, best_known: float, steps: int = _STEPS) -> Priced:
    """Lagrange's bound after so many subgradient steps. [days]

    best_known: the cost of some calendar; it sizes the steps and cannot make the bound wrong.
    """
    prices = np.zeros(len(pool.holds))
    best = Priced(-np.inf, pool.cost, prices)
    scale, idle = 1.5, 0
    by_column = pool.uses.T.tocsr()
    counts = np.diff(np.r_[pool.first, len(pool.cost)])
    for _ in range(steps):
        reduced = pool.cost + by_column @ prices
        least = np.minimum.reduceat(reduced, pool.first)
        value = float(least.sum() - prices @ pool.holds)
        if value > best.bound + 1e-9:
            best = Priced(value, value + reduced - np.repeat(least, counts), prices.copy())
            idle = 0
        else:
            idle += 1
            if idle >= _PATIENCE:
                scale, idle, prices = scale / 2, 0, best.prices.copy()
                if scale < 1e-3:
                    break
                continue
        taken = np.array([lo + int(np.argmin(reduced[lo : lo + n])) for lo, n in
                          zip(pool.first, counts, strict=True)])  # fmt: skip
        slope = np.asarray(pool.uses[:, taken].sum(axis=1)).ravel() - pool.holds
        slope[(prices <= 0) & (slope < 0)] = 0.0
        norm = float(slope @ slope)
        if norm <= 0:
            break
        length = scale * max(best_known - value, 1e-6 * abs(best_known)) / norm
        prices = np.maximum(0.0, prices + length * slope)
    return best


def kept(priced: Priced, *, best_known: float) -> NDArray[np.int64]:
    """Places of the columns that a calendar cheaper than `best_known` may still use."""
    return np.flatnonzero(priced.if_taken < best_known - 1e-9)
