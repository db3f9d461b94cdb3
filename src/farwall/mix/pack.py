"""Containers to buy: least cost first, or least left over first; exact.

A small integer programme (as many of each size as one likes or as there are, at least the
need in sum), solved by dynamic programming over whole multiples of a measure
that all sizes share. The answer is the best there is, not a good guess.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Literal

from farwall.errors import Mistake, Refused
from farwall.facts.job import Container
from farwall.nouns import dataclass

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Aim = Literal["cost", "left over"]

MOST_STEPS = 200_000
"""Beyond so many measures the need is no house's; it is refused rather than waited for."""

FINEST = 64
"""Sizes are taken as multiples of a common measure down to a 64th of the smallest one."""

FINE_STEPS, FINER = 8_000, 4096
"""Sizes that share no measure: the need in so many steps, of a 4096th of the smallest at least."""

SLACK = 1e-9
"""Share of the need that is float noise and not a shortfall."""

_COUNT_BITS = 20
_MOST_COST = 1 << (62 - _COUNT_BITS)


@dataclass(frozen=True)
class Pack:
    """What is bought: containers with how many of each, cost, litres bought and left over."""

    containers: tuple[tuple[Container, int], ...]
    cost: Decimal
    bought_l: float
    left_over_l: float


@dataclass(frozen=True)
class Measures:
    """Need and sizes as whole multiples of one measure; exact where all sizes share it.

    Where they do not, sizes are rounded down, so that what is bought is never short; with
    `hopeful` they are rounded up and the need down, so that what comes out is never dearer than
    the best there is: a lower bound.
    """

    wanted: int
    sizes: tuple[int, ...]
    measure: float
    exact: bool


def in_measures(wanted: float, sizes: Sequence[float], *, hopeful: bool = False) -> Measures:
    """A need of more than 0 and the sizes, all in one unit, as whole numbers."""
    smallest = min(sizes)
    shares = _shares(smallest, sizes)
    parts = math.lcm(*(share.denominator for share in shares))
    exact = len(shares) == len(sizes) and parts <= FINEST
    if exact:
        measure = smallest / parts
        whole = tuple(share.numerator * (parts // share.denominator) for share in shares)
    else:
        measure = min(smallest / FINEST, max(smallest / FINER, wanted / FINE_STEPS))
        rounded = math.ceil if hopeful else math.floor
        off = -1e-9 if hopeful else 1e-9
        whole = tuple(rounded(size / measure + off) for size in sizes)
    steps = wanted / measure
    if hopeful and not exact:
        return Measures(max(math.floor(steps), 1), whole, measure, exact)
    return Measures(max(math.ceil(steps * (1 - SLACK)), 1), whole, measure, exact)


def _shares(smallest: float, sizes: Sequence[float]) -> list[Fraction]:
    """Sizes as simple fractions of the smallest, up to the first that is none."""
    found = []
    for size in sizes:
        share = _simple(size / smallest)
        if share is None:
            break
        found.append(share)
    return found


@lru_cache(maxsize=512)
def _simple(ratio: float) -> Fraction | None:
    share = Fraction(ratio).limit_denominator(FINEST)
    return share if math.isclose(float(share), ratio, rel_tol=1e-9) else None


def pack(
    need_l: float,
    containers: Sequence[Container],
    *,
    spare_percent: float = 0.0,
    aim: Aim = "cost",
    at_most: Sequence[int | None] | None = None,
    hopeful: bool = False,
) -> Pack:
    """The containers that hold at least `need_l` and the spare, at least cost.

    Ties go to fewer litres left over, then to fewer containers; with
    `aim="left over"` the fewest litres left over come first and cost second.
    `left_over_l` is counted from the need without the spare. A need of 0 buys
    nothing. at_most: how many there are of each, None for no end. Sizes that
    share no measure are rounded down to a fine one, so that what is bought is
    never short, and up, which counts where it truly holds the need; `hopeful`
    rounds up alone and gives a lower bound of the cost instead of a purchase.

    Raises Refused without containers, for a negative or endless need, for
    one beyond reckoning, and where there are not enough of them.
    """
    _check(need_l, containers, spare_percent)
    wanted_l = need_l * (1 + spare_percent / 100)
    if wanted_l <= 0:
        return Pack((), Decimal(0), 0.0, 0.0)
    told = in_measures(wanted_l, [one.size_l for one in containers], hopeful=hopeful)
    if told.wanted > MOST_STEPS:
        what = f"{wanted_l:.6g} L in containers of {min(o.size_l for o in containers):g} L."
        raise Refused(
            Mistake("need", what, "That is no house; ask for less, or larger containers.")
        )
    prices, places = whole_prices([one.price for one in containers])
    most = at_most or [None] * len(containers)
    counts = best_counts(told, prices, most, aim)
    if not told.exact and not hopeful:
        counts = _better_fit(counts, wanted_l, containers, prices=prices, most=most, aim=aim)
    if counts is None:
        held = math.fsum(
            one.size_l * (most or 0) for one, most in zip(containers, at_most or (), strict=True)
        )
        what = f"{wanted_l:.4g} L are wanted and all there are hold {held:.4g} L."
        raise Refused(Mistake("containers", what, "Name another size or seller."))
    taken = tuple((one, n) for one, n in zip(containers, counts, strict=True) if n)
    cost = sum(p * n for p, n in zip(prices, counts, strict=True))
    bought_l = math.fsum(one.size_l * n for one, n in taken)
    return Pack(taken, Decimal(cost).scaleb(-places), bought_l, max(0.0, bought_l - need_l))


def _better_fit(
    counts: list[int] | None,
    wanted_l: float,
    containers: Sequence[Container],
    *,
    prices: Sequence[int],
    most: Sequence[int | None],
    aim: Aim,
) -> list[int] | None:
    """Of what was found with sizes rounded down and up, the better one that truly holds the need.

    Rounded down alone, containers that hold exactly what is wanted would count as a hair short.
    """
    sizes = [one.size_l for one in containers]
    up = best_counts(in_measures(wanted_l, sizes, hopeful=True), prices, most, aim)
    if up is None or _held_l(up, sizes) < wanted_l * (1 - SLACK):
        return counts
    if counts is None:
        return up

    def worth(found: Sequence[int]) -> tuple[float, float]:
        cost = float(sum(p * n for p, n in zip(prices, found, strict=True)))
        held_l = _held_l(found, sizes)
        return (cost, held_l) if aim == "cost" else (held_l, cost)

    return min(counts, up, key=worth)


def _held_l(counts: Sequence[int], sizes: Sequence[float]) -> float:
    return math.fsum(size * n for size, n in zip(sizes, counts, strict=True))


def _check(need_l: float, containers: Sequence[Container], spare_percent: float) -> None:
    mistakes = []
    if not containers:
        mistakes.append(Mistake("containers", "No sizes to buy are given.", "Name one."))
    if not 0 <= need_l < math.inf:
        mistakes.append(Mistake("need", f"{need_l:g} L is no need.", "Give 0 or more."))
    if not 0 <= spare_percent < math.inf:
        mistakes.append(Mistake("spare_percent", f"{spare_percent:g} is no spare.", "Try 15."))
    if mistakes:
        raise Refused(*mistakes)


def whole_prices(texts: Sequence[str]) -> tuple[list[int], int]:
    """Prices as whole numbers of the smallest part that one of them names, and its places."""
    amounts = [Decimal(one) for one in texts]
    places = max(2, *(-int(one.as_tuple().exponent) for one in amounts)) if amounts else 2
    return [int(one.scaleb(places)) for one in amounts], places


def best_counts(
    told: Measures, prices: Sequence[int], at_most: Sequence[int | None], aim: Aim
) -> list[int] | None:
    """How many of each; None where there are not enough. Raises Refused for endless prices."""
    table = _Table(told, prices, at_most)
    volume = table.best(aim)
    return None if volume is None else table.counts(volume)


class _Table:
    """The cheapest way to each exact volume, and how it is come by.

    A key is cost and count in one whole number, so that the least key is the cheapest way, and of
    equally cheap ones that with fewer containers. So many of a size are taken as heaps of 1, 2,
    4, … of it, each at most once.
    """

    def __init__(
        self, told: Measures, prices: Sequence[int], at_most: Sequence[int | None]
    ) -> None:
        import numpy as np

        self.wanted, self.kinds = told.wanted, len(told.sizes)
        end = told.wanted + max(told.sizes)
        if max(prices) * end >= _MOST_COST or min(prices) < 0:
            what = "a price is below 0 or beyond any container's."
            raise Refused(Mistake("prices", what, "Correct it."))
        self.keys = np.full(end, np.iinfo(np.int64).max >> 1, dtype=np.int64)
        self.none = self.keys[0]
        self.keys[0] = 0
        self.heaps: list[tuple[int, int, int, NDArray[np.bool_]]] = []
        for number, (size, price, most) in enumerate(zip(told.sizes, prices, at_most, strict=True)):
            left = (end - 1) // size if most is None else min(most, (end - 1) // size)
            heap = 1
            while left > 0:
                self._add(number, min(heap, left), size, price)
                left, heap = left - min(heap, left), heap * 2

    def _add(self, number: int, many: int, size: int, price: int) -> None:
        import numpy as np

        volume = many * size
        ways = self.keys[:-volume] + many * ((price << _COUNT_BITS) + 1)
        better = ways < self.keys[volume:]
        self.keys[volume:] = np.where(better, ways, self.keys[volume:])
        self.heaps.append((number, many, volume, better))

    def best(self, aim: Aim) -> int | None:
        """The volume to buy, of those that hold what is wanted; None where none does."""
        ends = self.keys[self.wanted :]
        there = (ends < self.none).nonzero()[0]
        if not there.size:
            return None
        if aim == "left over":
            return self.wanted + int(there[0])
        least = int((ends >> _COUNT_BITS).min())
        return self.wanted + int(((ends >> _COUNT_BITS) == least).nonzero()[0][0])

    def counts(self, volume: int) -> list[int]:
        """How many of each make up that volume."""
        found = [0] * self.kinds
        for number, many, held, better in reversed(self.heaps):
            if volume >= held and better[volume - held]:
                found[number] += many
                volume -= held
        return found
