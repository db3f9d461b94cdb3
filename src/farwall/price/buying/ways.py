"""All ways to hold what is wanted of one material that cost at most so much.

Ware by ware, so many of it or one more, as long as the rest can still be had within the limit; of
two that do alike only the better is followed (dominance). Where there are too many the dearest are
left out, and what they cost at least is told.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from farwall.nouns import dataclass
from farwall.price.buying.kit import NONE, Kit

if TYPE_CHECKING:
    from numpy.typing import NDArray

MOST_WAYS = 1_000
"""Ways of one material that are followed side by side."""
FEW = 128
"""So many are followed as they are: to compare them would take longer."""

COST, PLAIN, HELD, ALL, DONE, FIRST = range(6)
"""Columns of a way: its cost, weighed and plain, what it holds of the lot at hand and in all, the
fields that have their lot; then what it pays to the watched sellers, then the count of each ware.
"""


@dataclass(frozen=True)
class Ways:
    """cost (way): weighed · paid (way, seller): to the watched ones · counts (way, ware).

    beyond: what is left out costs at least so much; NONE where nothing is.
    """

    cost: NDArray[np.int64]
    paid: NDArray[np.int64]
    counts: NDArray[np.int64]
    beyond: int = NONE


class _Followed:
    def __init__(self, kit: Kit, limit: int, plain: int) -> None:
        self.kit, self.limit, self.plain = kit, limit, plain
        self.sellers = kit.watched.shape[1]
        self.beyond = NONE

    def least(self, ways: NDArray[np.int64], n: int) -> NDArray[np.int64]:
        """What each costs at least at its end, with the wares from number n on."""
        kit = self.kit
        if kit.exactly is not None:
            left = kit.exactly - ways[:, ALL]
            found = ways[:, COST] + kit.rests[n][np.maximum(left, 0)]
            found[left < 0] = NONE
            return found
        left = self.left(ways)
        steps = np.maximum(left * kit.steps // kit.wanted, left > 0)
        rest = kit.rests[n][steps]
        by_measure = (left * kit.per_measure[n]).astype(np.int64)
        return ways[:, COST] + np.maximum(rest, by_measure)

    def left(self, ways: NDArray[np.int64]) -> NDArray[np.int64]:
        """What has still to be held, in measures."""
        takes = self.kit.takes
        left: NDArray[np.int64] = takes[len(takes) - 1 - ways[:, DONE]] - ways[:, HELD]
        return np.maximum(left, 0)

    def more_of(self, ways: NDArray[np.int64], n: int) -> NDArray[np.int64]:
        """None, one, two, … of ware n added to each."""
        row = np.zeros(ways.shape[1], dtype=np.int64)
        row[COST], row[PLAIN] = self.kit.prices[n], self.kit.plain[n]
        row[HELD] = row[ALL] = self.kit.sizes[n]
        row[FIRST : FIRST + self.sellers] = self.kit.watched[n]
        row[FIRST + self.sellers + n] = 1
        endless = bool(self.kit.watched[n].any()) and self.kit.prices[n] > 0
        found = [ways]
        for _ in range(int(self.kit.most[n])):
            if not endless and self.kit.exactly is None:
                ways = ways[self.left(ways) > 0]
            ways = ways + row
            within = (self.least(ways, n) <= self.limit) & (ways[:, PLAIN] <= self.plain)
            ways = ways[within]
            if not len(ways):
                break
            found.append(ways)
        return self.fewer(np.concatenate(found) if len(found) > 1 else found[0], n + 1)

    def lot_ends(self, ways: NDArray[np.int64], n: int) -> NDArray[np.int64]:
        """Fields put to the lot that ends before ware n, in every way that it holds enough for."""
        found = []
        for fields in range(len(self.kit.takes)):
            free = ways[:, DONE] & fields == 0
            own = ways[free & (ways[:, HELD] >= self.kit.takes[fields])]
            own[:, DONE] |= fields
            own[:, HELD] = 0
            found.append(own)
        return self.fewer(np.concatenate(found), n)

    def fewer(self, ways: NDArray[np.int64], n: int) -> NDArray[np.int64]:
        """Those that can end within the limit, the dominated and the too many left out."""
        least = self.least(ways, n)
        ways = ways[least <= self.limit]
        if len(ways) > FEW:
            ways = ways[self._better(ways)]
        if len(ways) > MOST_WAYS:
            least = self.least(ways, n)
            order = np.argsort(least, kind="stable")
            self.beyond = min(self.beyond, int(least[order[MOST_WAYS]]))
            ways = ways[order[:MOST_WAYS]]
        return ways

    def _better(self, ways: NDArray[np.int64]) -> NDArray[np.int64]:
        """Places of those than which none at hand is cheaper with as much held and paid."""
        paid = [ways[:, FIRST + n] for n in range(self.sellers)]
        same = [ways[:, DONE]]
        if self.kit.exactly is not None:
            same += [ways[:, ALL], ways[:, HELD]]
        elif paid:
            same.append(self.left(ways))
        if paid:
            most, same = paid[0], [*same, *paid[1:]]
        else:
            most = -self.left(ways)
        many = ways[:, FIRST + self.sellers :].sum(axis=1)
        order = np.lexsort((many, ways[:, ALL], -most, ways[:, PLAIN], *same))
        groups = np.zeros(len(ways), dtype=bool)
        for one in same:
            groups[1:] |= np.diff(one[order]) != 0
        number = np.cumsum(groups)
        # Groups are set apart so that one running maximum serves all of them.
        apart = most[order].astype(np.float64) - float(most.min())
        apart += number * (float(apart.max()) + 1.0)
        before = np.maximum.accumulate(apart)
        better = np.ones(len(ways), dtype=bool)
        better[1:] = (apart[1:] > before[:-1]) | groups[1:]
        return order[better]


def ways_within(whole: Kit, limit: int, plain: int = NONE) -> Ways:
    """Every way that costs at most the limit, and as prices are at most `plain`.

    Those that another one makes needless are left out.
    """
    sellers = whole.watched.shape[1]
    places = whole.worth(limit)
    kit = whole.of(places)
    followed = _Followed(kit, limit, plain)
    ways = np.zeros((1, FIRST + sellers + len(places)), dtype=np.int64)
    ends = np.flatnonzero(np.diff(kit.lots, append=-1)).tolist()
    for n in range(len(places)):
        ways = followed.more_of(ways, n)
        if n in ends:
            ways = followed.lot_ends(ways, n + 1)
        if not len(ways):
            break
    ways = ways[(ways[:, DONE] == len(kit.takes) - 1) & (ways[:, COST] <= limit)]
    counts = np.zeros((len(ways), len(whole.sizes)), dtype=np.int64)
    if len(places):
        counts[:, places] = ways[:, FIRST + sellers :]
    return Ways(ways[:, COST], ways[:, FIRST : FIRST + sellers], counts, followed.beyond)


def least_ways(kit: Kit, most: int = NONE) -> Ways:
    """The cheapest way of all, of those up to `most`, and maybe others that cost little more.

    None where there is none. Where there are too many to look at none may be found either; then
    `beyond` is below NONE.
    """
    least = kit.least
    many = np.minimum(kit.most, -(-kit.wanted // kit.sizes) + len(kit.takes))
    most = min(int((kit.prices * many).sum()), most)
    exact = kit.steps == kit.wanted or kit.exactly is not None
    room = 0 if exact else 1 + least * 4 // kit.steps
    while True:
        found = ways_within(kit, min(least + room, most))
        if len(found.cost) or least + room >= most:
            return found
        room = max(room * 2, 1 + least // (256 if len(kit.takes) == 2 else 64))
