"""The purchase of everything: which sellers, which containers; the best there is, with its proof.

Two sellers cost two deliveries, and one delivery may be free from a sum: that couples what would
else be one small sum for each material. Sellers are opened or closed one by one (branch and
bound): with every seller still open that may be, the materials by themselves (`lots`, dynamic
programming) cost a lower bound; where they use no seller beyond the opened ones it is reached. What
is left, more of one seller to have his delivery free, is found by Lagrange's bound (`free_from`).
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from farwall.errors import Mistake, Refused
from farwall.facts.wares import Seller
from farwall.mix.pack import Aim
from farwall.price.buying.choices import PLACES, Choice
from farwall.price.buying.lots import Shelf
from farwall.price.buying.nouns import Basket, BuyAim, Material, Proof, Taken, terms_of
from farwall.price.buying.parted import Bill, Search

NOTHING = Decimal(0)


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


def _searched(shelves: Sequence[Shelf], terms: dict[str, Seller]) -> Search:
    everybody = frozenset(terms)
    short = [one.material.id for one in shelves if one.choice(everybody) is None]
    if short:
        remedy = "Name another seller, or buy less of it."
        raise Refused(*(Mistake(one, "The sellers do not have enough.", remedy) for one in short))
    held = None
    if shelves and shelves[0].aim == "left over":
        held = tuple(_held(one.choice(everybody)) for one in shelves)
    search = Search(shelves, terms, held)
    search.search()
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
