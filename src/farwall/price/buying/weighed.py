"""A material's wares as a kit, prices weighed by seller; and the cheapest way at such prices."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.price.buying.kit import NONE, Kit
from farwall.price.buying.nouns import lot_key
from farwall.price.buying.ways import Ways, least_ways

if TYPE_CHECKING:
    from farwall.price.buying.lots import Shelf

WEIGHT = 256
"""A price counts so much; what is paid to a seller who is to be paid more counts less."""
ENDLESS = 1 << 40
"""So many of a ware are more than anybody buys."""
LOTS_LOOK = 8
"""Looks at a material that one with lots and fields counts for."""
LARGEST = 1 << 44
"""Sizes in measures up to here: one of them is more than anybody needs."""
MOST_PAID = NONE >> 6
"""What a need costs in one ware at most, weighed; sums of it stay whole numbers of the machine."""


def kit_of(
    shelf: Shelf, open_: frozenset[str], less: Mapping[str, int], held: int | None = None
) -> Kit:
    """The wares of the open sellers, lot by lot.

    less: by watched seller, how much less than WEIGHT his prices count · held: what is to be held
    in sum, in measures; None for the need or more.
    """
    there = [n for n, one in enumerate(shelf.wares) if one.seller in open_]
    if shelf.split:
        there.sort(key=lambda n: (lot_key(shelf.wares[n]), n))
    own = [shelf.wares[n] for n in there]
    numbers = {lot: n for n, lot in enumerate(shelf.lots)}
    fields = len(shelf.parts) if shelf.split else 1
    prices = np.array([shelf.prices[n] for n in there], dtype=np.int64)
    watched = [[price * (one.seller == name) for name in less]
               for price, one in zip(prices.tolist(), own, strict=True)]  # fmt: skip
    most = [ENDLESS if one.in_stock is None else min(one.in_stock, ENDLESS) for one in own]
    _check(shelf, there)
    weights = np.array([WEIGHT - less.get(one.seller, 0) for one in own], dtype=np.int64)
    takes = [0, *(shelf.steps(mask) for mask in range(1, 1 << fields))]
    return Kit(
        sizes=np.array([min(max(shelf.told.sizes[n], 1), LARGEST) for n in there], dtype=np.int64),
        prices=prices * weights,
        plain=prices,
        most=np.array(most, dtype=np.int64),
        watched=np.array(watched, dtype=np.int64).reshape(len(own), len(less)),
        lots=np.array([numbers[lot_key(one)] * shelf.split for one in own], dtype=np.int64),
        takes=np.array(takes if shelf.split else [0, shelf.told.wanted], dtype=np.int64),
        exactly=held,
        wares=tuple(there),
    )


def _check(shelf: Shelf, there: Sequence[int]) -> None:
    """Raises Refused for a price that is none, or with which a need costs beyond reckoning."""
    for n in there:
        many = shelf.told.wanted // max(shelf.told.sizes[n], 1) + 1
        if not 0 <= shelf.prices[n] * many * WEIGHT < MOST_PAID:
            what = f"{shelf.wares[n].id}: a price is below 0 or beyond any container's."
            raise Refused(Mistake("prices", what, "Correct it."))


@dataclass(frozen=True)
class Weighed:
    """The cheapest way at weighed prices, and no way costs less than `least`."""

    kit: Kit
    ways: Ways
    place: int
    least: int


def weighed(kit: Kit, known: Sequence[int] | None = None) -> Weighed | None:
    """The cheapest; of equals that which pays the watched most. None where there is none.

    known: counts of the kit's wares that do, for where there are too many ways to look at.
    """
    counts = np.array([known or ()], dtype=np.int64)
    ways = least_ways(kit, NONE if known is None else int((counts @ kit.prices)[0]))
    if not len(ways.cost):
        if known is None or ways.beyond >= NONE:
            return None
        ways = Ways(counts @ kit.prices, counts @ kit.watched, counts, kit.least)
    cost = int(ways.cost.min())
    equal = (ways.cost == cost).nonzero()[0]
    place = int(equal[int(ways.paid[equal].sum(axis=1).argmax())])
    return Weighed(kit, ways, place, min(cost, ways.beyond))


class Scales:
    """A material weighed at any prices, and how often it was.

    held: what is to be held in sum, see `kit_of`.
    """

    def __init__(self, shelf: Shelf, held: int | None) -> None:
        self.shelf, self.held, self.looks = shelf, held, 0
        self._kits: dict[frozenset[str], Kit] = {}
        self._found: dict[
            tuple[frozenset[str], tuple[tuple[str, int], ...]], tuple[int, Weighed | None]
        ] = {}

    def at(self, open_: frozenset[str], less: Mapping[str, int], most: int) -> Weighed | None:
        """The cheapest of the open sellers where some prices count less (`kit_of`).

        Of those alone that cost up to `most` as prices are. None where there is none.
        """
        own = open_ & frozenset(one.seller for one in self.shelf.wares)
        key = own, tuple(less.items())
        if key not in self._found or self._found[key][0] < most:
            self.looks += LOTS_LOOK if self.shelf.split else 1
            self._found[key] = most, self._looked(own, less, most)
        return self._found[key][1]

    def _looked(self, own: frozenset[str], less: Mapping[str, int], most: int) -> Weighed | None:
        choice = self.shelf.choice(own)
        if choice is None:
            return None
        if own not in self._kits:
            self._kits[own] = kit_of(self.shelf, own, {}, self.held)
        kit = kit_of(self.shelf, own, less, self.held)
        few = kit.of(self._kits[own].worth(most * WEIGHT))
        if set(few.wares).issuperset(n for n, many in enumerate(choice.counts) if many):
            kit = few
        return weighed(kit, [choice.counts[n] for n in kit.wares])
