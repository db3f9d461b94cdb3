"""Sellers opened, paid for their way, or paid the sum from which they come for nothing: searched.

All purchases are parted by what is done with one seller after the other (branch and bound). The
materials by themselves at the sellers that are open cost a lower bound. What they do not settle,
sums that are to be reached, is put off and taken up by the lowest bound (`free_from`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from functools import cached_property
from heapq import heappop, heappush

from farwall.facts.wares import Seller
from farwall.nouns import dataclass
from farwall.price.buying.choices import Choice, price_units
from farwall.price.buying.free_from import Around, cheaper_by_free_delivery
from farwall.price.buying.lots import Shelf
from farwall.price.buying.weighed import Scales

MOST_LOOKS = 2_000
"""Looks at a material at prices that count less, at most, to reach sums (`free_from`)."""
MOST_NODES = 4_000
"""Sets of sellers looked at, at most; beyond, the answer says how good it is at least."""


@dataclass(frozen=True)
class Bill:
    """A purchase in ten-thousandths: choices in the order of the shelves, goods, deliveries."""

    choices: tuple[Choice, ...]
    delivery: tuple[tuple[str, int], ...]
    cost: int

    @property
    def key(self) -> tuple[int, int, tuple[str, ...]]:
        """Cheapest first, then fewest containers, then sellers by name."""
        many = sum(sum(one.counts) for one in self.choices)
        return self.cost, many, tuple(name for name, _ in self.delivery)


@dataclass(frozen=True)
class _Part:
    """A part of all purchases: who is paid for his way, who is paid his sum, who is open at all.

    above: the best goods of a part that holds this one, None where there is none.
    """

    paying: frozenset[str]
    free: frozenset[str]
    open: frozenset[str]
    above: tuple[Choice, ...] | None = None


@dataclass(frozen=True)
class _Goods:
    """The best goods that pay some sums, None where none was cheap enough; no goods come to less.

    cut: where the search was cut short, what no goods come to less than.
    """

    choices: tuple[Choice, ...] | None = None
    least: int = 0
    cut: int | None = None


@dataclass
class Search:
    """The best purchase, and lower bounds of what was not looked at to its end.

    least_held: of each shelf what is to be held, where as little as can be is to be left over.
    """

    shelves: Sequence[Shelf]
    terms: dict[str, Seller]
    least_held: tuple[int, ...] | None
    best: Bill | None = None
    left: int = MOST_NODES
    later: list[tuple[int, int, _Part]] = field(default_factory=list)
    """By their bounds, parts in which sums are still to be reached."""
    bounds: list[int] = field(default_factory=list)
    known: dict[tuple[frozenset[str], frozenset[str]], _Goods] = field(default_factory=dict)
    """By who is open and who is paid his sum."""

    @cached_property
    def scales(self) -> list[Scales]:
        """The materials, to be weighed at other prices."""
        held = self.least_held or [None] * len(self.shelves)
        return [Scales(shelf, much) for shelf, much in zip(self.shelves, held, strict=True)]

    def choices(self, open_: frozenset[str]) -> tuple[Choice, ...] | None:
        """The best of the open sellers, each material by itself."""
        found = []
        for n, shelf in enumerate(self.shelves):
            choice = shelf.choice(open_)
            if choice is None:
                return None
            if self.least_held is not None and choice.held > self.least_held[n]:
                return None
            found.append(choice)
        return tuple(found)

    def keep(self, choices: tuple[Choice, ...]) -> None:
        """The purchase, where it is better than the best so far."""
        bill = bill_of(self.shelves, choices, self.terms)
        if self.best is None or bill.key < self.best.key:
            self.best = bill

    def search(self) -> None:
        """All purchases: first what materials settle by themselves, then by the lowest bound."""
        self.look(_Part(frozenset(), frozenset(), frozenset(self.terms)))
        while self.later:
            least, _, part = heappop(self.later)
            if least >= self.best_cost:
                break
            if sum(one.looks for one in self.scales) >= MOST_LOOKS:
                self.bounds.append(least)
                break
            choices = self._with_sums(part, least)
            if choices is not None:
                self._parted(part, choices)

    def look(self, part: _Part) -> None:
        """All purchases of a part; what has sums to be reached is put off."""
        choices = part.above
        if choices is None or not self._in(part, choices):
            choices = self.choices(part.open)
            if choices is None:
                return
        least = max(goods_of(choices), goods_of(part.above or ())) + self._fees(part)
        if self.best is not None and least >= self.best.cost:
            return
        if self.left <= 0:
            self.bounds.append(least)
            return
        self.left -= 1
        self.keep(choices)
        if not self._in(part, choices):
            heappush(self.later, (least, self.left, part))
            return
        if goods_of(choices) < sum(one.cost for one in choices):
            self.bounds.append(least)
        self._parted(part, choices)

    def _in(self, part: _Part, choices: tuple[Choice, ...]) -> bool:
        """Whether they are of the open sellers and pay the sums."""
        return self._used(choices) <= part.open and all(self._met(choices, n) for n in part.free)

    def _with_sums(self, part: _Part, least: int) -> tuple[Choice, ...] | None:
        """The best goods that pay the sums; None where nothing is cheaper than the best so far."""
        fees = self._fees(part)
        key = part.open, part.free
        goods = self.known.get(key, _Goods())
        if goods.choices is None and goods.least + fees < self.best_cost:
            around = Around(
                self.scales, self.terms, part.open, part.paying, part.free, self.best_cost
            )
            found = cheaper_by_free_delivery(around)
            whole = self.best_cost if found.choices is None else fees + goods_of(found.choices)
            cut = None if found.at_least is None else found.at_least - fees
            self.known[key] = goods = _Goods(found.choices, whole - fees, cut)
        if goods.cut is not None:
            self.bounds.append(max(least, goods.cut + fees))
        if goods.choices is not None:
            self.keep(goods.choices)
        return goods.choices

    def _parted(self, part: _Part, choices: tuple[Choice, ...]) -> None:
        """The dearest way that is used and not yet spoken of: free, paid or not gone."""
        paying, free, open_ = part.paying, part.free, part.open
        unsure = [n for n in self._used(choices) - paying - free if self._fee(n) > 0]
        if not unsure:
            return
        name = max(unsure, key=lambda one: (self._fee(one), one))
        parts = [
            _Part(paying | {name}, free, open_, choices),
            _Part(paying, free, open_ - {name}, choices),
        ]
        if self.terms[name].free_from is not None:
            first = 0 if self._met(choices, name) else 2
            parts.insert(first, _Part(paying, free | {name}, open_, choices))
        for one in parts:
            self.look(one)

    def _used(self, choices: Sequence[Choice]) -> frozenset[str]:
        used = (s.used(one.counts) for s, one in zip(self.shelves, choices, strict=True))
        return frozenset().union(*used)

    def _met(self, choices: Sequence[Choice], name: str) -> bool:
        """Whether a seller is paid the sum from which he comes for nothing."""
        spent = sum(s.paid(one.counts, name) for s, one in zip(self.shelves, choices, strict=True))
        return spent >= price_units(self.terms[name].free_from or "0")

    @property
    def best_cost(self) -> int:
        """What the best purchase so far comes to."""
        assert self.best is not None
        return self.best.cost

    def _fees(self, part: _Part) -> int:
        return sum(map(self._fee, part.paying))

    def _fee(self, name: str) -> int:
        return price_units(self.terms[name].delivery)


def goods_of(choices: Sequence[Choice]) -> int:
    """What they come to at least, without any delivery."""
    return sum(one.least for one in choices)


def bill_of(shelves: Sequence[Shelf], choices: Sequence[Choice], terms: dict[str, Seller]) -> Bill:
    """What these choices come to, with the delivery of each seller that is used."""
    spent: dict[str, int] = {}
    for shelf, choice in zip(shelves, choices, strict=True):
        for ware, price, n in zip(shelf.wares, shelf.prices, choice.counts, strict=True):
            if n:
                spent[ware.seller] = spent.get(ware.seller, 0) + price * n
    delivery = tuple((name, _due(terms[name], spent[name])) for name in sorted(spent))
    goods = sum(spent.values())
    return Bill(tuple(choices), delivery, goods + sum(due for _, due in delivery))


def _due(seller: Seller, spent: int) -> int:
    if seller.free_from is not None and spent >= price_units(seller.free_from):
        return 0
    return price_units(seller.delivery)
