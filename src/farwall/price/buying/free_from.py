"""More of one seller, so that his delivery is free: Lagrange's bound, then what is left between.

Sellers are paid their sums or more. What is paid to them counts less by a share each (the
multiplier): the materials by themselves at such prices cost a lower bound, the sums made good;
that any shares give a true one is arithmetic. They are raised until the sums are met or the bound
says that nothing is cheaper. What is left between bound and best is small: all ways of each
material within it are found (`ways`) and put together (`together`). Everything is in whole numbers
and stops after a number of ways, never after a time, so that the same inputs give the same answer.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import gcd

from farwall.facts.wares import Seller
from farwall.nouns import dataclass
from farwall.price.buying.choices import Choice, price_units
from farwall.price.buying.kit import NONE
from farwall.price.buying.together import Offer, best_together
from farwall.price.buying.ways import Ways, ways_within
from farwall.price.buying.weighed import WEIGHT, Scales, Weighed

MOST_LOOKS = 8
"""Shares of one seller that are tried in one go."""
FIRST_SHARE = 20
"""The share that is tried first; most are less."""
MOST_ROUNDS = 2
"""Rounds over the sellers in which their shares are tried."""
CLOSE = 2_000
"""The shares are left alone where the bound is as close to the best as a 2,000th of its cost."""
FIRST_PART = 16
"""The ways within so small a part of what is left are put together first."""


@dataclass(frozen=True)
class Around:
    """Materials and sellers; who is open, who is paid for his way, who is to be paid his sum.

    beat: the cost that has to be beaten.
    """

    scales: Sequence[Scales]
    terms: dict[str, Seller]
    open: frozenset[str]
    paying: frozenset[str]
    free: frozenset[str]
    beat: int


@dataclass(frozen=True)
class Cheaper:
    """The best purchase below what is to be beaten, None where there is none.

    at_least: where the search was cut short, what no purchase costs less than.
    """

    choices: tuple[Choice, ...] | None
    at_least: int | None = None


@dataclass(frozen=True)
class _Point:
    """Shares by seller in WEIGHT-ths, the bound they give, and the ways that give it."""

    shares: tuple[int, ...]
    bound: int
    own: tuple[Weighed, ...]
    paid: tuple[int, ...]


def cheaper_by_free_delivery(around: Around) -> Cheaper:
    """The best purchase below `beat` of the open sellers, the free ones paid their sums."""
    search = _Search(around)
    point = search.raised()
    if point is None:
        return Cheaper(None)
    return search.between(point)


class _Search:
    def __init__(self, around: Around) -> None:
        self.around = around
        self.names = tuple(sorted(around.free))
        self.sums = tuple(price_units(around.terms[n].free_from or "0") for n in self.names)
        self.fees = sum(price_units(around.terms[name].delivery) for name in around.paying)
        self.shelves = [one.shelf for one in around.scales]
        own = [shelf.choice(around.open) for shelf in self.shelves]
        self.alone = [one.least for one in own if one is not None]
        self.beat = around.beat
        self.best: tuple[Choice, ...] | None = None
        amounts = [price for one in self.shelves for price in one.prices]
        amounts += [price_units(one.delivery) for one in around.terms.values()]
        self.step = gcd(*amounts) or 1

    @property
    def room(self) -> int:
        """What a purchase that is to be found costs at most, weighed."""
        return WEIGHT * (self.beat - self.step)

    @property
    def plain(self) -> int:
        """What the goods of a purchase that is to be found cost at most."""
        return self.beat - self.step - self.fees

    def at(self, shares: tuple[int, ...]) -> _Point | None:
        """The bound at these shares. None where a material can not be had."""
        less = dict(zip(self.names, shares, strict=True))
        own = []
        spare = self.plain - sum(self.alone)
        for scales, alone in zip(self.around.scales, self.alone, strict=True):
            found = scales.at(self.around.open, less, alone + spare)
            if found is None:
                return None
            own.append(found)
        paid = tuple(int(n) for n in sum(one.ways.paid[one.place] for one in own))
        due = sum(share * sum_ for share, sum_ in zip(shares, self.sums, strict=True))
        bound = sum(one.least for one in own) + due + WEIGHT * self.fees
        if all(much >= sum_ for much, sum_ in zip(paid, self.sums, strict=True)):
            self.keep([(one.kit.wares, one.ways, one.place) for one in own])
        return _Point(shares, bound, tuple(own), paid)

    def keep(self, chosen: Sequence[tuple[tuple[int, ...], Ways, int]]) -> None:
        """A purchase that pays the sums, where it is the best so far."""
        choices = tuple(
            shelf.chosen(wares, ways.counts[place].tolist())
            for shelf, (wares, ways, place) in zip(self.shelves, chosen, strict=True)
        )
        cost = sum(one.cost for one in choices) + self.fees
        if cost < self.beat:
            self.beat, self.best = cost, choices

    def raised(self) -> _Point | None:
        """The point with the highest bound that is found; None where nothing can be cheaper."""
        best = self.at((0,) * len(self.names))
        still = 0
        for look in range(MOST_ROUNDS * len(self.names)):
            if best is None:
                return None
            if still >= len(self.names) or best.bound > self.room:
                break
            n = look % len(self.names)
            after = self.along(best, n)
            little = after.bound - best.bound <= (self.room - after.bound) // 8
            still = still + 1 if little else 0
            best = after
        return best

    def along(self, start: _Point, n: int) -> _Point:
        """The share of one seller raised or lowered to where the bound is highest (concave)."""
        low: _Point | None = None
        high: _Point | None = None
        best = point = start
        for look in range(MOST_LOOKS):
            if point.bound > best.bound:
                best = point
            if self.room - best.bound < self.room // CLOSE:
                break
            if point.paid[n] < self.sums[n]:
                low = point
            else:
                high = point
            to = self.next_share(low, high, n, lines=look % 3 == 2)
            found = None if to is None else self.at((*start.shares[:n], to, *start.shares[n + 1 :]))
            if found is None:
                break
            point = found
        return point if point.bound > best.bound else best

    def next_share(
        self, low: _Point | None, high: _Point | None, n: int, *, lines: bool
    ) -> int | None:
        """The share to look at between one that pays a seller too little and one that does not.

        Where his sum may just be met; with `lines` where the bounds' two lines meet. With no high
        one: where the bound may reach the best purchase.
        """
        if low is None:
            return 0 if high is not None and high.shares[n] > 0 else None
        share, slope = low.shares[n], self.sums[n] - low.paid[n]
        if high is None:
            to = share + -(-max(self.room - low.bound, 1) // slope)
            return min(to, 2 * share + FIRST_SHARE, WEIGHT - 1) if share < WEIGHT - 1 else None
        wide = high.shares[n] - share
        if wide < 2:
            return None
        falls = high.paid[n] - self.sums[n]
        rise = high.bound - low.bound + falls * wide if lines else slope * wide
        return share + min(max(rise // (slope + falls), 1), wide - 1)

    def between(self, point: _Point) -> Cheaper:
        """What is cheaper than the best so far, of all that the bound leaves."""
        part = max((self.room - point.bound) // FIRST_PART, 1)
        cut = NONE
        while True:
            room = self.room - point.bound
            if room < 0:
                break
            reach = min(room, part)
            spare = self.plain - sum(self.alone)
            all_ = [
                ways_within(one.kit, one.least + reach, alone + spare)
                for one, alone in zip(point.own, self.alone, strict=True)
            ]
            offers = [self.offer(one, ways) for one, ways in zip(point.own, all_, strict=True)]
            found = best_together(offers, self.sums, room, self.plain)
            if found.places is not None:
                self.keep(
                    [
                        (one.kit.wares, ways, place)
                        for one, ways, place in zip(point.own, all_, found.places, strict=True)
                    ]
                )
            if reach >= room:
                beyond = [
                    ways.beyond - one.least for one, ways in zip(point.own, all_, strict=True)
                ]
                cut = min(*beyond, found.beyond)
                break
            part *= 4
        at_least = None
        if cut <= self.room - point.bound:
            at_least = -(-(point.bound + cut) // WEIGHT)
        return Cheaper(self.best, at_least)

    def offer(self, own: Weighed, ways: Ways) -> Offer:
        return Offer(ways.cost - own.least, ways.counts @ own.kit.plain, ways.paid)
