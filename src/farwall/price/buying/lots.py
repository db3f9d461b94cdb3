"""One material at the sellers that are open: the cheapest containers, no field out of two lots."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from farwall.mix.pack import (
    SLACK,
    Aim,
    Measures,
    best_counts,
    costs_to_hold,
    in_measures,
    whole_prices,
)
from farwall.price.buying.nouns import Material, lot_key, ordered

MOST_FIELDS = 8
"""Fields of one stain that are put to lots one by one; the smallest beyond stand together."""
PLACES = 4
"""Decimals of a price that are reckoned with; prices of more are refused by the reader."""


@dataclass(frozen=True)
class Choice:
    """Counts by ware, cost in ten-thousandths, what is held in measures."""

    counts: tuple[int, ...]
    cost: int
    held: int

    def key(self, aim: Aim) -> tuple[int, ...]:
        """What is made as small as can be, first things first."""
        many = sum(self.counts)
        return (self.cost, self.held, many) if aim == "cost" else (self.held, self.cost, many)


def price_units(text: str) -> int:
    """A price in ten-thousandths. Raises ArithmeticError where it has more decimals."""
    (whole,), places = whole_prices([text])
    if places > PLACES:
        raise ArithmeticError(f"{text} has more than {PLACES} decimals")
    return whole * int(10 ** (PLACES - places))


class Shelf:
    """A material with its wares in whole numbers, and the best of them for any set of sellers.

    hopeful: sizes that share no measure are rounded so that the cost is a lower bound.
    """

    def __init__(self, material: Material, aim: Aim, *, hopeful: bool = False) -> None:
        self.material, self.aim = material, aim
        self.wares = ordered(material.wares)
        self.prices = [price_units(one.price) for one in self.wares]
        sizes = [one.size for one in self.wares]
        self.told: Measures = in_measures(material.need, sizes, hopeful=hopeful)
        self._off = int(hopeful and not self.told.exact)
        self.boxed = False
        self.parts = _fewer([one for one in material.parts if one > 0]) or (material.need,)
        self.split = bool(material.parts) and len(self.lots) > 1
        self._found: dict[frozenset[str], Choice | None] = {}

    def box(self) -> None:
        """Pour all lots together where no one lot does for each field."""
        everybody = frozenset(one.seller for one in self.wares)
        if self.split and self.choice(everybody) is None:
            self.split, self.boxed = False, True
            self._found.clear()

    @cached_property
    def lots(self) -> list[tuple[str, str]]:
        """The lots there are, in a fixed order."""
        return sorted({lot_key(one) for one in self.wares})

    def steps(self, mask: int) -> int:
        """What the fields of a set take, in measures."""
        if mask == (1 << len(self.parts)) - 1:
            return self.told.wanted
        much = math.fsum(one for n, one in enumerate(self.parts) if mask >> n & 1)
        return max(math.ceil(self.in_steps(much)) - self._off, 1)

    def in_steps(self, much: float) -> float:
        """An amount in measures, less what is float noise."""
        return much / self.told.measure * (1 - SLACK)

    def choice(self, sellers: frozenset[str]) -> Choice | None:
        """The best of the wares of these sellers; None where they do not have enough."""
        open_ = sellers & frozenset(one.seller for one in self.wares)
        if open_ not in self._found:
            found = self._known(open_)
            if found is None:
                found = self._split(open_) if self.split else self._whole(open_, self.told.wanted)
            self._found[open_] = found
        return self._found[open_]

    def _known(self, open_: frozenset[str]) -> Choice | None:
        """The best of more sellers, where it is of these alone; then it is the best of these."""
        for more, choice in self._found.items():
            if choice is not None and open_ < more and self.used(choice.counts) <= open_:
                return choice
        return None

    def used(self, counts: Sequence[int]) -> frozenset[str]:
        """The sellers of whom something is bought."""
        return frozenset(one.seller for one, n in zip(self.wares, counts, strict=True) if n)

    def _whole(
        self, open_: frozenset[str], wanted: int, lot: tuple[str, str] | None = None
    ) -> Choice | None:
        there = [
            n
            for n, one in enumerate(self.wares)
            if one.seller in open_ and one.in_stock != 0 and (lot is None or lot_key(one) == lot)
        ]
        if not there:
            return None
        told = Measures(
            wanted, tuple(self.told.sizes[n] for n in there), self.told.measure, self.told.exact
        )
        counts = best_counts(
            told,
            [self.prices[n] for n in there],
            [self.wares[n].in_stock for n in there],
            self.aim,
        )
        if counts is None:
            return None
        return self._of(dict(zip(there, counts, strict=True)))

    def _of(self, counts: dict[int, int]) -> Choice:
        whole = tuple(counts.get(n, 0) for n in range(len(self.wares)))
        return Choice(whole, self.cost(whole), self.held(whole))

    def cost(self, counts: Sequence[int]) -> int:
        """What they cost, in ten-thousandths."""
        return sum(price * n for price, n in zip(self.prices, counts, strict=True))

    def held(self, counts: Sequence[int]) -> int:
        """What they hold, in measures."""
        return sum(size * n for size, n in zip(self.told.sizes, counts, strict=True))

    def _split(self, open_: frozenset[str]) -> Choice | None:
        """Every field put to one lot: the best of all ways, lot by lot over sets of fields."""
        free = self._whole(open_, self.told.wanted)
        if free is None:
            return None
        for lot in self.lots:
            alone = self._whole(open_, self.told.wanted, lot)
            if alone is not None and alone.key(self.aim) == free.key(self.aim):
                return alone  # as good as if lots did not matter
        everything = (1 << len(self.parts)) - 1
        nothing = self._of({})
        best: dict[int, Choice] = {0: nothing}
        for lot in self.lots:
            ways: dict[int, Choice | None] = {
                mask: self._whole(open_, self.steps(mask), lot) for mask in range(1, everything + 1)
            }
            then = dict(best)
            for done, before in best.items():
                rest = everything & ~done
                some = rest
                while some:
                    way = ways[some]
                    if way is not None:
                        both = self._sum(before, way)
                        old = then.get(done | some)
                        if old is None or both.key(self.aim) < old.key(self.aim):
                            then[done | some] = both
                    some = (some - 1) & rest
            best = then
        return best.get(everything)

    @staticmethod
    def _sum(one: Choice, other: Choice) -> Choice:
        counts = tuple(a + b for a, b in zip(one.counts, other.counts, strict=True))
        return Choice(counts, one.cost + other.cost, one.held + other.held)

    def worth(self, sellers: frozenset[str], most: int) -> list[bool]:
        """Which wares can be in a purchase that costs at most so much for this material."""
        there = [n for n, one in enumerate(self.wares) if one.seller in sellers]
        told = Measures(
            self.told.wanted, tuple(self.told.sizes[n] for n in there), self.told.measure,
            self.told.exact,
        )  # fmt: skip
        stock = [self.wares[n].in_stock for n in there]
        rest = costs_to_hold(told, [self.prices[n] for n in there], stock)
        found = [False] * len(self.wares)
        for n in there:
            left = max(self.told.wanted - self.told.sizes[n], 0)
            found[n] = self.prices[n] + int(rest[left]) <= most
        return found


def _fewer(parts: Sequence[float]) -> tuple[float, ...]:
    """The largest first; of very many the smallest as one."""
    found = sorted(parts, reverse=True)
    if len(found) > MOST_FIELDS:
        found = [*found[: MOST_FIELDS - 1], math.fsum(found[MOST_FIELDS - 1 :])]
    return tuple(found)
