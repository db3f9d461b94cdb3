"""The purchase of everything: which sellers, which containers; the best there is, with its proof.

Two sellers cost two deliveries, and one delivery may be free from a sum: that couples what would
else be one small sum for each material. Sellers are opened or closed one by one (branch and
bound): with every seller still open that may be, the materials by themselves (`lots`, dynamic
programming) cost a lower bound; where they use no seller beyond the opened ones it is reached. What
is left, more of one seller to have his delivery free, is found by Lagrange's bound (`free_from`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from farwall.errors import Mistake, Refused
from farwall.facts.wares import Seller
from farwall.mix.pack import Aim
from farwall.price.buying.free_from import Around, cheaper_by_free_delivery
from farwall.price.buying.lots import PLACES, Choice, Shelf, price_units
from farwall.price.buying.nouns import Basket, BuyAim, Material, Proof, Taken, terms_of

DEAR_NODE = 100
"""Nodes that one counts for in which a sum is to be reached."""
MOST_NODES = 4_000
"""Sets of sellers looked at, at most; beyond, the answer says how good it is at least."""
NOTHING = Decimal(0)


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


@dataclass
class _Search:
    shelves: Sequence[Shelf]
    terms: dict[str, Seller]
    least_held: tuple[int, ...] | None
    best: Bill | None = None
    left: int = MOST_NODES
    bounds: list[int] = field(default_factory=list)
    """Lower bounds of what was not looked at to its end."""

    def choices(self, open_: frozenset[str]) -> tuple[Choice, ...] | None:
        found = []
        for n, shelf in enumerate(self.shelves):
            choice = shelf.choice(open_)
            if choice is None:
                return None
            if self.least_held is not None and choice.held > self.least_held[n]:
                return None
            found.append(choice)
        return tuple(found)

    def keep(self, bill: Bill) -> None:
        if self.best is None or bill.key < self.best.key:
            self.best = bill

    def look(self, paying: frozenset[str], free: frozenset[str], open_: frozenset[str]) -> None:
        """All purchases of the open sellers, some paid for their way and some paid their sum."""
        choices = self.choices(open_)
        if choices is None:
            return
        fees = sum(map(self._fee, paying))
        least = sum(one.least for one in choices) + fees
        if self.best is not None and least >= self.best.cost:
            return
        if self.left <= 0:
            self.bounds.append(least)
            return
        self.left -= 1
        self.keep(bill_of(self.shelves, choices, self.terms))
        if any(not self._met(choices, name) for name in free):
            self.left -= DEAR_NODE
            found = cheaper_by_free_delivery(
                Around(
                    self.shelves, self.terms, open_, paying, free, self.best_cost, self.least_held
                )
            )
            if found.at_least is not None:
                self.bounds.append(max(least, found.at_least))
            if found.choices is None:
                return
            choices = found.choices
            self.keep(bill_of(self.shelves, choices, self.terms))
        elif least < sum(one.cost for one in choices) + fees:
            self.bounds.append(least)
        self._part(paying, free, open_, choices)

    def _part(
        self,
        paying: frozenset[str],
        free: frozenset[str],
        open_: frozenset[str],
        choices: tuple[Choice, ...],
    ) -> None:
        """The dearest way that is used and not yet spoken of: free, paid or not gone."""
        used = {
            name
            for s, one in zip(self.shelves, choices, strict=True)
            for name in s.used(one.counts)
        }
        unsure = [name for name in used - paying - free if self._fee(name) > 0]
        if not unsure:
            return
        name = max(unsure, key=lambda one: (self._fee(one), one))
        ways = [(paying | {name}, free, open_), (paying, free, open_ - {name})]
        if self.terms[name].free_from is not None:
            met = self._met(choices, name)
            ways.insert(0 if met else 2, (paying, free | {name}, open_))
        for way in ways:
            self.look(*way)

    def _met(self, choices: Sequence[Choice], name: str) -> bool:
        """Whether a seller is paid the sum from which he comes for nothing."""
        spent = sum(
            shelf.paid(one.counts, name) for shelf, one in zip(self.shelves, choices, strict=True)
        )
        return spent >= price_units(self.terms[name].free_from or "0")

    @property
    def best_cost(self) -> int:
        assert self.best is not None
        return self.best.cost

    def _fee(self, name: str) -> int:
        return price_units(self.terms[name].delivery)


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


def buy(materials: Sequence[Material], sellers: Sequence[Seller], aim: BuyAim) -> Basket:
    """The containers of all materials, deliveries with them.

    cheapest: the least total; at the same total fewer containers. fewest left over: of each
    material the least that is left over, at the least total. The same inputs in any order give the
    same answer. Raises Refused, each material that the sellers do not have enough of by its id.
    """
    wanted = sorted((one for one in materials if one.need > 0), key=lambda one: one.id)
    terms = terms_of([ware for one in wanted for ware in one.wares], sellers)
    how: Aim = "cost" if aim == "cheapest" else "left over"
    shelves = [Shelf(one, how) for one in wanted]
    for shelf in shelves:
        shelf.box()
    search = _searched(shelves, terms)
    assert search.best is not None
    bounds = [search.best.cost, *search.bounds]
    return _basket(shelves, search.best, min(bounds))


def _searched(shelves: Sequence[Shelf], terms: dict[str, Seller]) -> _Search:
    everybody = frozenset(terms)
    short = [one.material.id for one in shelves if one.choice(everybody) is None]
    if short:
        remedy = "Name another seller, or buy less of it."
        raise Refused(*(Mistake(one, "The sellers do not have enough.", remedy) for one in short))
    held = None
    if shelves and shelves[0].aim == "left over":
        held = tuple(_held(one.choice(everybody)) for one in shelves)
    search = _Search(shelves, terms, held)
    search.look(frozenset(), frozenset(), everybody)
    return search


def _held(choice: Choice | None) -> int:
    assert choice is not None
    return choice.held


def _basket(shelves: Sequence[Shelf], bill: Bill, at_least: int) -> Basket:
    taken, left = [], []
    for shelf, choice in zip(shelves, bill.choices, strict=True):
        own = [
            Taken(shelf.material.id, ware, n)
            for ware, n in zip(shelf.wares, choice.counts, strict=True)
            if n
        ]
        held = sum(one.ware.size * one.count for one in own)
        taken += own
        left.append((shelf.material.id, max(held - shelf.material.need, 0.0)))
    delivery = tuple((name, _money(due)) for name, due in bill.delivery if due)
    total, least = _money(bill.cost), _money(at_least)
    return Basket(
        taken=tuple(taken),
        goods=total - sum((due for _, due in delivery), start=NOTHING),
        delivery=delivery,
        total=total,
        left_over=tuple(left),
        boxed=tuple(one.material.id for one in shelves if one.boxed),
        proof=Proof("best" if least == total else "within", least, total - least),
    )


def _money(units: int) -> Decimal:
    return Decimal(units).scaleb(-PLACES)
