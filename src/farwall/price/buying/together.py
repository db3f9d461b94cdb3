"""One way of each material so that watched sellers are paid their sums, at the least cost.

Material by material; of two choices so far that do alike only the better is followed (dominance),
and none that has already cost more than may be.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from farwall.nouns import dataclass
from farwall.price.buying.kit import NONE

if TYPE_CHECKING:
    from numpy.typing import NDArray

MOST_TOGETHER = 4_000
"""Choices of all materials so far that are followed side by side."""
DEAR, COST, FIRST = range(3)
"""Columns: weighed cost beyond the least, whole cost; then what is paid to each watched seller."""


@dataclass(frozen=True)
class Offer:
    """Ways of a material. dear (way): weighed cost beyond the least · cost · paid (way, seller)."""

    dear: NDArray[np.int64]
    cost: NDArray[np.int64]
    paid: NDArray[np.int64]

    def rows(self) -> NDArray[np.int64]:
        """One row a way, see the columns."""
        return np.column_stack((self.dear, self.cost, self.paid))


@dataclass(frozen=True)
class Found:
    """The place of the way of each material, None where nothing does; see `Ways.beyond`."""

    places: tuple[int, ...] | None
    beyond: int


def best_together(offers: Sequence[Offer], sums: Sequence[int], room: int, plain: int) -> Found:
    """The cheapest choice that pays the sums, dear by `room` and costing `plain` at most in all."""
    if not all(len(one.cost) for one in offers):
        return Found(None, NONE)
    wanted = np.array(sums, dtype=np.int64)
    after, costs = [np.zeros_like(wanted)], [0]
    for one in reversed(offers):
        after.append(after[-1] + one.paid.max(axis=0))
        costs.append(costs[-1] + int(one.cost.min()))
    states = np.zeros((1, FIRST + len(sums)), dtype=np.int64)
    trail: list[tuple[NDArray[np.int64], NDArray[np.int64]]] = []
    beyond = NONE
    for n, one in enumerate(offers):
        rows = one.rows()
        own = undominated(rows, wanted)
        rows = rows[own]
        both = (states[:, None, :] + rows[None, :, :]).reshape(-1, states.shape[1])
        fit = (both[:, DEAR] <= room) & (both[:, COST] + costs[-2 - n] <= plain)
        fit &= (both[:, FIRST:] + after[-2 - n] >= wanted).all(axis=1)
        kept = np.flatnonzero(fit)
        kept = kept[undominated(both[kept], wanted)]
        if len(kept) > MOST_TOGETHER:
            kept = kept[np.argsort(both[kept, DEAR], kind="stable")]
            beyond = min(beyond, int(both[kept[MOST_TOGETHER], DEAR]))
            kept = kept[:MOST_TOGETHER]
        if not len(kept):
            return Found(None, beyond)
        states = both[kept]
        trail.append((kept // len(rows), own[kept % len(rows)]))
    return Found(_places(trail, int(states[:, COST].argmin())), beyond)


def _places(
    trail: Sequence[tuple[NDArray[np.int64], NDArray[np.int64]]], at: int
) -> tuple[int, ...]:
    found = []
    for before, own in reversed(trail):
        found.append(int(own[at]))
        at = int(before[at])
    return tuple(reversed(found))


def undominated(rows: NDArray[np.int64], wanted: NDArray[np.int64]) -> NDArray[np.int64]:
    """Places of the rows than which none at hand costs less and pays as much, up to the sums.

    With several sellers only those are compared that pay the same to all but the first.
    """
    if len(rows) < 2:
        return np.arange(len(rows))
    paid = np.minimum(rows[:, FIRST:], wanted)
    others = [paid[:, n] for n in range(1, paid.shape[1])]
    order = np.lexsort((-paid[:, 0], rows[:, COST], *others))
    groups = np.zeros(len(rows), dtype=bool)
    for one in others:
        groups[1:] |= np.diff(one[order]) != 0
    # Groups are set apart so that one running maximum serves all of them.
    apart = paid[order, 0] + np.cumsum(groups) * (int(wanted[0]) + 1)
    before = np.maximum.accumulate(apart)
    better = np.ones(len(rows), dtype=bool)
    better[1:] = (apart[1:] > before[:-1]) | groups[1:]
    return order[better]
