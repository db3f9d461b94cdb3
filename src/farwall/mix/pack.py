"""Containers to buy: least cost first, or least left over first; exact.

A small integer programme (as many of each size as one likes, at least the
need in sum), solved by dynamic programming over whole multiples of a measure
that all sizes share. The answer is the best there is, not a good guess.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Literal

from farwall.errors import Mistake, Refused
from farwall.facts.job import Container

Aim = Literal["cost", "left over"]

MOST_STEPS = 200_000
"""Beyond so many measures the need is no house's; it is refused rather than waited for."""

FINEST = 64
"""Sizes are taken as multiples of a common measure down to a 64th of the smallest one."""

SLACK = 1e-9
"""Share of the need that is float noise and not a shortfall."""


@dataclass(frozen=True)
class Pack:
    """What is bought: containers with how many of each, cost, litres bought and left over."""

    containers: tuple[tuple[Container, int], ...]
    cost: Decimal
    bought_l: float
    left_over_l: float


@dataclass(frozen=True, order=True)
class _Choice:
    """The best way to an exact volume: its cost, how many containers, and the last one taken."""

    cost: Decimal
    count: int
    last: int


def pack(
    need_l: float,
    containers: Sequence[Container],
    *,
    spare_percent: float = 0.0,
    aim: Aim = "cost",
) -> Pack:
    """The containers that hold at least `need_l` and the spare, at least cost.

    Ties go to fewer litres left over, then to fewer containers; with
    `aim="left over"` the fewest litres left over come first and cost second.
    `left_over_l` is counted from the need without the spare. A need of 0 buys
    nothing. Sizes that share no measure are rounded down to a 64th of the
    smallest, so that what is bought is never short.

    Raises Refused without containers, for a negative or endless need, or for
    one beyond reckoning.
    """
    _check(need_l, containers, spare_percent)
    wanted_l = need_l * (1 + spare_percent / 100)
    sizes, measure_l = _in_measures([one.size_l for one in containers])
    wanted = max(math.ceil(wanted_l / measure_l * (1 - SLACK)), 1 if wanted_l > 0 else 0)
    if wanted > MOST_STEPS:
        what = f"{wanted_l:.6g} L in containers of {min(o.size_l for o in containers):g} L."
        raise Refused(
            Mistake("need", what, "That is no house; ask for less, or larger containers.")
        )
    best = _table(wanted + max(sizes), sizes, [Decimal(one.price) for one in containers])
    ends = [(volume, found) for volume, found in enumerate(best) if found and volume >= wanted]
    if aim == "cost":
        volume, _ = min(ends, key=lambda end: (end[1].cost, end[0], end[1].count))
    else:
        volume, _ = min(ends, key=lambda end: (end[0], end[1].cost, end[1].count))
    return _packed(volume, best, sizes, containers, need_l)


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


def _in_measures(sizes_l: Sequence[float]) -> tuple[list[int], float]:
    """The sizes as whole multiples of one measure, and that measure in litres."""
    smallest = min(sizes_l)
    shares = [Fraction(size / smallest).limit_denominator(FINEST) for size in sizes_l]
    parts = math.lcm(*(share.denominator for share in shares))
    exact = all(
        math.isclose(float(share), size / smallest, rel_tol=1e-9)
        for share, size in zip(shares, sizes_l, strict=True)
    )
    if exact and parts <= FINEST:
        return [int(share * parts) for share in shares], smallest / parts
    measure_l = smallest / FINEST
    return [int(size / measure_l + 1e-9) for size in sizes_l], measure_l


def _table(end: int, sizes: Sequence[int], prices: Sequence[Decimal]) -> list[_Choice | None]:
    """For each exact volume below `end`, in measures, the cheapest way to it or None."""
    best: list[_Choice | None] = [_Choice(Decimal(0), 0, -1)] + [None] * max(0, end - 1)
    for volume in range(1, end):
        ways = [
            _Choice(before.cost + price, before.count + 1, number)
            for number, (size, price) in enumerate(zip(sizes, prices, strict=True))
            if size <= volume and (before := best[volume - size]) is not None
        ]
        if ways:
            best[volume] = min(ways)
    return best


def _packed(
    volume: int,
    best: Sequence[_Choice | None],
    sizes: Sequence[int],
    containers: Sequence[Container],
    need_l: float,
) -> Pack:
    counts = [0] * len(containers)
    cost = Decimal(0)
    choice = best[volume]
    while choice is not None and choice.last >= 0:
        counts[choice.last] += 1
        cost += Decimal(containers[choice.last].price)
        volume -= sizes[choice.last]
        choice = best[volume]
    taken = tuple((one, count) for one, count in zip(containers, counts, strict=True) if count)
    bought_l = math.fsum(one.size_l * count for one, count in taken)
    return Pack(taken, cost, bought_l, max(0.0, bought_l - need_l))
