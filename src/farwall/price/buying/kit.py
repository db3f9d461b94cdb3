"""One material's wares as arrays, at the prices of the moment, and what a rest costs at least.

Prices are weighed: what is paid to a seller who is to be paid more counts less (`free_from`).
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

from farwall.nouns import dataclass

if TYPE_CHECKING:
    from numpy.typing import NDArray

GRID = 2048
"""Steps in which the cost of a rest is told at least; the ways themselves are in finer measures."""
NONE = 1 << 60
"""A cost that nothing has."""


@dataclass(frozen=True)
class Kit:
    """Wares of one material in the order of their lots; whole numbers all.

    sizes: in measures · prices: weighed, 0 or more · plain: as they are · most: how many there are
    · watched (ware, seller): what one of it pays to each seller whose sum is watched · lots: the
    number of each ware's lot, rising · takes: what each set of fields takes, by its bits; the last
    is all that is wanted · exactly: what is to be held in sum, None for the need or more · wares:
    their numbers on the shelf.
    """

    sizes: NDArray[np.int64]
    prices: NDArray[np.int64]
    plain: NDArray[np.int64]
    most: NDArray[np.int64]
    watched: NDArray[np.int64]
    lots: NDArray[np.int64]
    takes: NDArray[np.int64]
    exactly: int | None = None
    wares: tuple[int, ...] = ()

    @property
    def wanted(self) -> int:
        """What is to be held at least, in measures."""
        return int(self.takes[-1])

    @cached_property
    def steps(self) -> int:
        """Steps of the grid: exact where what is wanted has no more measures."""
        return min(self.wanted, GRID) if self.exactly is None else self.exactly

    @cached_property
    def steps_each(self) -> NDArray[np.int64]:
        """The size of each ware in steps, rounded up, so that a rest costs no less than told."""
        if self.exactly is not None:
            return np.minimum(self.sizes, self.steps + 1)
        shares = [-(-int(one) * self.steps // self.wanted) for one in self.sizes]
        return np.minimum(np.array(shares, dtype=np.int64), self.steps)

    @cached_property
    def table(self) -> NDArray[np.int64]:
        """For 0, 1, … steps: the least that so much costs (or exactly so much, see `exactly`)."""
        return self._tables(range(len(self.sizes)))[0]

    @property
    def least(self) -> int:
        """Nothing that holds what is wanted costs less; NONE where nothing does."""
        return int(self.table[-1])

    def worth(self, limit: int) -> NDArray[np.int64]:
        """The wares that can be in a way that costs at most the limit."""
        rest = self.steps - self.steps_each
        if self.exactly is None:
            rest = np.maximum(rest, 0)
        found = self.prices + self.table[np.maximum(rest, 0)] <= limit
        return np.flatnonzero(found & (rest >= 0) & (self.most > 0))

    def of(self, places: NDArray[np.int64]) -> Kit:
        """The same with these wares alone."""
        kit = Kit(
            self.sizes[places], self.prices[places], self.plain[places], self.most[places],
            self.watched[places], self.lots[places], self.takes, self.exactly,
            tuple(self.wares[n] for n in places),
        )  # fmt: skip
        kit.__dict__["steps_each"] = self.steps_each[places]
        return kit

    @cached_property
    def rests(self) -> list[NDArray[np.int64]]:
        """`table` with the wares from each one on, at last with none."""
        return self._tables(range(len(self.sizes)), keep=True)

    @cached_property
    def per_measure(self) -> list[float]:
        """The least price of a measure with the wares from each one on, at last endless."""
        each = self.prices / self.sizes
        least = np.minimum.accumulate(each[::-1])[::-1]
        return [*(least * (1 - 1e-9)).tolist(), 0.0]

    def _tables(self, places: Sequence[int], *, keep: bool = False) -> list[NDArray[np.int64]]:
        table = np.full(self.steps + 1, NONE, dtype=np.int64)
        table[0] = 0
        found = [table.copy()] if keep else []
        for n in reversed(places):
            self._offer(table, n)
            if keep:
                found.append(table.copy())
        return found[::-1] if keep else [table]

    def _offer(self, table: NDArray[np.int64], n: int) -> None:
        """So many of a ware as heaps of 1, 2, 4, … of it, each at most once."""
        size, price = int(self.steps_each[n]), int(self.prices[n])
        over = self.exactly is None
        left = min(int(self.most[n]), -(-self.steps // size) if over else self.steps // size)
        heap = 1
        while left > 0:
            many = min(heap, left)
            volume, cost = many * size, many * price
            if volume <= self.steps:
                ways = table[: self.steps + 1 - volume] + cost
                np.minimum(table[volume:], ways, out=table[volume:])
            if over:
                np.minimum(table[1:volume], cost, out=table[1:volume])
            left, heap = left - many, heap * 2
