"""More of one seller, so that his delivery is free: a mixed integer programme, solved by HiGHS.

    least   sum of price * count + sum of delivery * (open - free)
    where   each material is held; one lot for each field;
            count is 0 at a seller that is not open; free only where what he is paid reaches his sum

What can not be in a cheaper purchase is left out first, by the cost of each material alone; that
same cost, as a row, makes the relaxed programme tight. HiGHS stops after a number of nodes, never
after a time, so that the same inputs give the same answer.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import ceil, floor, gcd, inf, isfinite

from farwall.facts.wares import Seller
from farwall.price.buying.lots import Choice, Shelf, price_units
from farwall.price.buying.nouns import lot_key

MOST_HIGHS_NODES = 500


@dataclass(frozen=True)
class Around:
    """Shelves and sellers; those who are open and those paid for surely; what has to be beaten.

    least_held: of each shelf, where as little as can be is to be left over.
    """

    shelves: Sequence[Shelf]
    terms: dict[str, Seller]
    open: frozenset[str]
    sure: frozenset[str]
    beat: int
    least_held: tuple[int, ...] | None


@dataclass(frozen=True)
class Cheaper:
    """A cheaper purchase, None where none was found; a bound where the search was stopped."""

    choices: tuple[Choice, ...] | None
    at_least: int | None = None


@dataclass
class _Programme:
    """Rows and columns, as they are put down; `places`: the column of each ware of a shelf."""

    cost: list[float] = field(default_factory=list)
    most: list[float] = field(default_factory=list)
    least: list[float] = field(default_factory=list)
    places: dict[tuple[int, int], int] = field(default_factory=dict)
    rows: list[int] = field(default_factory=list)
    columns: list[int] = field(default_factory=list)
    values: list[float] = field(default_factory=list)
    low: list[float] = field(default_factory=list)
    high: list[float] = field(default_factory=list)

    def row(self, entries: Sequence[tuple[int, float]], low: float, high: float = inf) -> None:
        """A sum between two bounds."""
        self.rows += [len(self.low)] * len(entries)
        self.columns += [column for column, _ in entries]
        self.values += [value for _, value in entries]
        self.low.append(low)
        self.high.append(high)

    def column(self, cost: float, most: float, least: float = 0.0) -> int:
        """A whole number between two bounds, at so much each."""
        self.cost.append(cost)
        self.most.append(most)
        self.least.append(least)
        return len(self.cost) - 1


def cheaper_by_free_delivery(around: Around) -> Cheaper:
    """The best purchase below `beat` of the open sellers, the sure ones paid for."""
    names = sorted(around.open)
    own = [shelf.choice(around.open) for shelf in around.shelves]
    least = sum(one.cost for one in own if one is not None)
    spare = (
        around.beat
        - 1
        - least
        - sum(
            price_units(around.terms[name].delivery)
            for name in around.sure
            if around.terms[name].free_from is None
        )
    )
    if spare < 0 or None in own:
        return Cheaper(None)
    made = _Programme()
    for m, choice in enumerate(own):
        assert choice is not None
        _material(made, around, m, choice.cost, spare)
    _sellers(made, around, names)
    step = gcd(*(int(cost) for cost in made.cost)) or 1
    all_ = [(n, cost / step) for n, cost in enumerate(made.cost) if cost]
    made.row(all_, -inf, (around.beat - 1) // step + 0.5)
    return _solved(made, around, step)


def _material(made: _Programme, around: Around, m: int, alone: int, spare: int) -> None:
    shelf = around.shelves[m]
    worth = shelf.worth(around.open, alone + spare)
    held = []
    for n, ware in enumerate(shelf.wares):
        if ware.seller not in around.open or not worth[n]:
            continue
        most = ceil((shelf.told.wanted + max(shelf.told.sizes)) / shelf.told.sizes[n])
        if shelf.prices[n]:  # more than is needed, where that makes the delivery free
            most = (alone + spare) // shelf.prices[n]
        most = most if ware.in_stock is None else min(most, ware.in_stock)
        made.places[m, n] = made.column(float(shelf.prices[n]), float(most))
        held.append((made.places[m, n], shelf.told.sizes[n] / shelf.told.wanted))
    cap = inf if around.least_held is None else around.least_held[m] / shelf.told.wanted
    made.row(held, 1.0, cap)
    if alone:
        cost = [(column, made.cost[column] / alone) for column, _ in held]
        made.row(cost, 1.0)
    if shelf.split:
        _one_lot_each(made, m, shelf)


def _one_lot_each(made: _Programme, m: int, shelf: Shelf) -> None:
    """Each field takes one lot, and each lot holds what its fields take."""
    fields = [shelf.in_steps(one) / shelf.told.wanted for one in shelf.parts]
    chosen = {(f, lot): made.column(0.0, 1.0) for f in range(len(fields)) for lot in shelf.lots}
    for f in range(len(fields)):
        made.row([(chosen[f, lot], 1.0) for lot in shelf.lots], 1.0, 1.0)
    for lot in shelf.lots:
        held = [
            (column, shelf.told.sizes[n] / shelf.told.wanted)
            for (own, n), column in made.places.items()
            if own == m and lot_key(shelf.wares[n]) == lot
        ]
        made.row([*held, *((chosen[f, lot], -one) for f, one in enumerate(fields))], -1e-9)


def _sellers(made: _Programme, around: Around, names: Sequence[str]) -> None:
    for name in names:
        seller = around.terms[name]
        fee = price_units(seller.delivery)
        own = [
            (m, n, column)
            for (m, n), column in made.places.items()
            if around.shelves[m].wares[n].seller == name
        ]
        if not fee or not own:
            continue
        sure = name in around.sure
        opened = made.column(float(fee), 1.0, 1.0 if sure else 0.0)
        if not sure:
            for _, _, column in own:
                made.row([(opened, made.most[column]), (column, -1.0)], 0.0)
        if seller.free_from is not None:
            free = made.column(-float(fee), 1.0)
            made.row([(opened, 1.0), (free, -1.0)], 0.0)
            sum_ = price_units(seller.free_from)
            if sum_ > 0:
                paid = [(column, around.shelves[m].prices[n] / sum_) for m, n, column in own]
                made.row([*paid, (free, -1.0)], 0.0)


def _solved(made: _Programme, around: Around, step: int) -> Cheaper:
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import csr_array

    table = csr_array(
        (made.values, (made.rows, made.columns)), shape=(len(made.low), len(made.cost))
    )
    # Presolve is left out: undoing it may find an answer a hair off, and HiGHS then prints so.
    answer = milp(
        np.array(made.cost) / step,
        integrality=np.ones(len(made.cost)),
        bounds=Bounds(np.array(made.least), np.array(made.most)),
        constraints=LinearConstraint(table, made.low, made.high),
        options={"mip_rel_gap": 0.0, "node_limit": MOST_HIGHS_NODES, "presolve": False},
    )
    if answer.status == 2:
        return Cheaper(None)
    bound = None
    if answer.status != 0:
        told = getattr(answer, "mip_dual_bound", None)
        bound = 0 if told is None or not isfinite(told) else floor(told - 1e-6) * step
    if answer.x is None:
        return Cheaper(None, bound)
    choices = []
    for m, shelf in enumerate(around.shelves):
        counts = tuple(
            round(answer.x[made.places[m, n]]) if (m, n) in made.places else 0
            for n in range(len(shelf.wares))
        )
        choices.append(Choice(counts, shelf.cost(counts), shelf.held(counts)))
    sound = all(one.held >= s.told.wanted for one, s in zip(choices, around.shelves, strict=True))
    return Cheaper(tuple(choices), bound) if sound else Cheaper(None, 0)
