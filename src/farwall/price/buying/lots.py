"""One material at the sellers that are open: the cheapest containers, no field out of two lots."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from functools import cached_property

from farwall.mix.pack import (
    SLACK,
    Aim,
    Measures,
    best_counts,
    in_measures,
)
from farwall.price.buying.choices import Choice, price_units
from farwall.price.buying.nouns import Material, lot_key, ordered
from farwall.price.buying.weighed import WEIGHT, kit_of, weighed

MOST_FIELDS = 8
"""Fields of one stain that are put to lots one by one; the smallest beyond stand together."""
FINE = 1 << 40
"""Sizes that share no measure: the need in so many, a thousandth of what `SLACK` lets pass."""


class Shelf:
    """A material with its wares in whole numbers, and the best of them for any set of sellers.

    Where sizes share no measure the cheapest is found among all ways (`ways`) in a measure far
    below float noise; what is left over is told apart to an 8,000th of the need (`in_measures`).
    """

    def __init__(self, material: Material, aim: Aim) -> None:
        self.material, self.aim = material, aim
        self.wares = ordered(material.wares)
        self.prices = [price_units(one.price) for one in self.wares]
        sizes = [one.size for one in self.wares]
        self.told: Measures = in_measures(material.need, sizes)
        self.fine = aim == "cost" and not self.told.exact
        if self.fine:
            self.told = _in_fine_measures(material.need, sizes)
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
        return max(math.ceil(self.in_steps(much)), 1)

    def in_steps(self, much: float) -> float:
        """An amount in measures, less what is float noise."""
        return much / self.told.measure * (1 - SLACK)

    def choice(self, sellers: frozenset[str]) -> Choice | None:
        """The best of the wares of these sellers; None where they do not have enough."""
        open_ = sellers & frozenset(one.seller for one in self.wares)
        if open_ not in self._found:
            found = self._known(open_)
            if found is None:
                found = self._best(open_)
            self._found[open_] = found
        return self._found[open_]

    def _best(self, open_: frozenset[str]) -> Choice | None:
        if self.fine:
            return self._least(open_)
        return self._split(open_) if self.split else self._whole(open_, self.told.wanted)

    def _known(self, open_: frozenset[str]) -> Choice | None:
        """The best of more sellers, where it is of these alone; then it is the best of these."""
        for more, choice in self._found.items():
            if choice is not None and open_ < more and self.used(choice.counts) <= open_:
                return choice
        return None

    def used(self, counts: Sequence[int]) -> frozenset[str]:
        """The sellers of whom something is bought."""
        return frozenset(one.seller for one, n in zip(self.wares, counts, strict=True) if n)

    def paid(self, counts: Sequence[int], seller: str) -> int:
        """What they come to with one seller, in ten-thousandths."""
        return sum(
            price * n
            for one, price, n in zip(self.wares, self.prices, counts, strict=True)
            if one.seller == seller
        )

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

    def _least(self, open_: frozenset[str]) -> Choice | None:
        """The cheapest of all ways, where sizes share no measure."""
        if not self.enough(open_):
            return None
        kit = kit_of(self, open_, {})
        found = weighed(kit)
        at_least = -(-(kit.least if found is None else found.least) // WEIGHT)
        choices = (
            []
            if found is None
            else [
                self.chosen(kit.wares, counts)
                for counts in found.ways.counts[found.ways.cost == found.ways.cost.min()].tolist()
            ]
        )
        if not choices or choices[0].cost > at_least:  # too many ways to look at them all
            choices += [one for one in (self._rounded(open_),) if one is not None]
        if not choices:
            return None
        best = min(choices, key=lambda one: (*one.key(self.aim), one.counts))
        return best if best.cost == at_least else replace(best, at_least=at_least)

    def _rounded(self, open_: frozenset[str]) -> Choice | None:
        """The best of sizes a hair smaller, so that it is enough."""
        other = Shelf(self.material, self.aim)
        other.told = in_measures(self.material.need, [one.size for one in self.wares])
        other.fine, other.split, other.boxed = False, self.split, self.boxed
        found = other.choice(open_)
        return None if found is None else self._of(dict(enumerate(found.counts)))

    def chosen(self, places: Sequence[int], counts: Sequence[int]) -> Choice:
        """So many of the wares at these places."""
        return self._of(dict(zip(places, counts, strict=True)))

    def enough(self, open_: frozenset[str]) -> bool:
        """Whether these sellers have what is wanted, no field out of two lots where that counts."""
        holds: dict[tuple[str, str], float] = {}
        for size, one in zip(self.told.sizes, self.wares, strict=True):
            if one.seller in open_ and one.in_stock != 0:
                lot = lot_key(one) if self.split else ("", "")
                there = math.inf if one.in_stock is None else size * one.in_stock
                holds[lot] = holds.get(lot, 0) + there
        if not self.split:
            return holds.get(("", ""), 0) >= self.told.wanted
        everything = (1 << len(self.parts)) - 1
        done = {0}
        for holds_ in holds.values():
            done |= {
                one | more
                for one in done
                for more in range(1, everything + 1)
                if not one & more and self.steps(more) <= holds_
            }
        return everything in done

    @staticmethod
    def _sum(one: Choice, other: Choice) -> Choice:
        counts = tuple(a + b for a, b in zip(one.counts, other.counts, strict=True))
        return Choice(counts, one.cost + other.cost, one.held + other.held)


def _in_fine_measures(wanted: float, sizes: Sequence[float]) -> Measures:
    """Sizes rounded down by a part of the need that is less than float noise."""
    whole = tuple(math.floor(size / wanted * FINE) for size in sizes)
    return Measures(math.ceil(FINE * (1 - SLACK)), whole, wanted / FINE, exact=False)


def _fewer(parts: Sequence[float]) -> tuple[float, ...]:
    """The largest first; of very many the smallest as one."""
    found = sorted(parts, reverse=True)
    if len(found) > MOST_FIELDS:
        found = [*found[: MOST_FIELDS - 1], math.fsum(found[MOST_FIELDS - 1 :])]
    return tuple(found)
