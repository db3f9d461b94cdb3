"""What a job may come to: ten thousand draws, always the same ones.

Every uncertain amount is told by low, likely and high, ends that hold nine times in ten, and is
taken as log-normal with a half of its own on either side of the likely figure: amounts are never
below nothing, what makes work longer multiplies, and all three told figures are kept exactly.
Amounts of one house hang together (its dirt and thirst, its crew): a share of each one's variance
is one shared factor, as `learn.kinds` parts variance between firm and job; the rest is its own.

The draws are the points of a lattice of rank 1 in the form of Korobov [korobov-1959]: point i of N
has the figures i, i·a, i·a², … modulo N, over N. They need no chance, each figure takes every slice
of its range once, and the same question gives the same answer. `a` was sought so that no two of the
first forty figures lie on few lines. Money is a float only here, inside a statistic; it is rounded
on the way out.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from farwall.nouns import dataclass

GENERATORS = {10_007: 1118, 2003: 393}
"""Primes that are numbers of draws, and the generator of each, found by our own search."""
DRAWS, FEWER = 10_007, 2003
SHARED = 0.4
"""Share of a task's variance that all tasks of a house have in common: that which `learn.kinds`
gives to the firm; a guess."""
_END = NormalDist().inv_cdf(0.95)
_SLICES = 40
_LEAST_SHARE = 5e-4
_LEAST_AMOUNT, _FAR = 1e-6, 1000.0

Draws = NDArray[np.float64]


@dataclass(frozen=True)
class Part:
    """An amount of money that will be spent: low, likely, high.

    common: what it has in common with others of that name, such as the house; shared: the share of
    its variance. times: names of factors that it is multiplied by.
    """

    name: str
    low: float
    likely: float
    high: float
    common: str = ""
    shared: float = SHARED
    times: tuple[str, ...] = ()


@dataclass(frozen=True)
class Factor:
    """What several parts are multiplied by, such as what an hour truly costs: about 1."""

    name: str
    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Event:
    """What may happen once: its chance, 0 to 1, and what it then costs."""

    name: str
    chance: float
    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Costs:
    """All that a job's cost is made of."""

    parts: tuple[Part, ...]
    factors: tuple[Factor, ...] = ()
    events: tuple[Event, ...] = ()

    @property
    def likely(self) -> float:
        """The sum of what is likely, without anything that may happen."""
        by_name = {one.name: one.likely for one in self.factors}
        return math.fsum(
            one.likely * math.prod(by_name[name] for name in one.times) for one in self.parts
        )


@dataclass(frozen=True)
class Drives:
    """How much of the spread one uncertainty explains alone: a first-order share, 0 to 1."""

    name: str
    share: float


@dataclass(frozen=True)
class Outcome:
    """The draws, and what they say: 10, 50 and 90 % points, mean, what drives the spread.

    Shares need not add up to 1: what two explain only together is in none of them.
    """

    totals: Draws
    low: float
    median: float
    high: float
    mean: float
    drives: tuple[Drives, ...] = ()

    def above(self, amount: float) -> float:
        """The chance that the job costs more than so much, 0 to 1."""
        return float(np.mean(self.totals > amount))


def outcome(costs: Costs, *, draws: int = DRAWS, drives: bool = True) -> Outcome:
    """What these costs may come to. draws: one of GENERATORS. Raises ValueError for ends out of
    order or a chance that is none.

    Source: first-order shares Var(E[Y|X]) / Var(Y) [sobol-1993], E[Y|X] as means over equal slices
    of X, less what slices of nothing would show.
    """
    _insist(costs)
    names = tuple(dict.fromkeys(_names(costs)))
    even = _even(draws, len(names)) if names else np.zeros((draws, 0))
    at = {name: even[:, n] for n, name in enumerate(names)}
    totals, events = _totals(costs, at, draws)
    low, median, high = (float(one) for one in np.quantile(totals, [0.1, 0.5, 0.9]))
    told = _drives(at, events, totals) if drives else ()
    return Outcome(totals, low, median, high, float(np.mean(totals)), told)


def _names(costs: Costs) -> Iterator[str]:
    """One figure for each thing that is drawn."""
    for part in costs.parts:
        if part.common:
            yield f"common: {part.common}"
        yield f"part: {part.name}"
    yield from (f"factor: {one.name}" for one in costs.factors)
    for event in costs.events:
        yield f"event: {event.name}"
        yield f"cost: {event.name}"


def _even(draws: int, figures: int) -> Draws:
    """Draws by figures, each strictly between 0 and 1: whole numbers until the last division."""
    generator = GENERATORS[draws]
    steps = [1]
    while len(steps) < figures:
        steps.append(steps[-1] * generator % draws)
    numbers = np.arange(draws, dtype=np.int64)[:, None] * np.array(steps, dtype=np.int64) % draws
    return (numbers + 0.5) / draws


def _spread(low: float, likely: float, high: float, z: Draws) -> Draws:
    """Log-normal with a half of its own on either side. What is likely nothing is nothing; ends lie
    within a thousand times of what is likely."""
    if likely < _LEAST_AMOUNT or low == high:
        return np.full(len(z), likely)
    least, most = max(low, likely / _FAR), min(high, likely * _FAR)
    down, up = math.log(likely / least) / _END, math.log(most / likely) / _END
    return likely * np.exp(np.where(z < 0, down, up) * z)


def _totals(costs: Costs, at: dict[str, Draws], draws: int) -> tuple[Draws, dict[str, Draws]]:
    """The draws, and of each event what it costs in them."""
    from scipy.special import ndtri

    z = {name: ndtri(even) for name, even in at.items() if not name.startswith("event: ")}
    by_name = {
        one.name: _spread(one.low, one.likely, one.high, z[f"factor: {one.name}"])
        for one in costs.factors
    }
    totals = np.zeros(draws)
    for part in costs.parts:
        own = z[f"part: {part.name}"]
        if part.common:
            both = math.sqrt(part.shared) * z[f"common: {part.common}"]
            own = both + math.sqrt(1 - part.shared) * own
        amount = _spread(part.low, part.likely, part.high, own)
        for name in part.times:
            amount = amount * by_name[name]
        totals += amount
    events = {}
    for event in costs.events:
        happens = at[f"event: {event.name}"] < event.chance
        amount = _spread(event.low, event.likely, event.high, z[f"cost: {event.name}"])
        events[event.name] = np.where(happens, amount, 0.0)
        totals += events[event.name]
    return totals, events


def _drives(at: dict[str, Draws], events: dict[str, Draws], totals: Draws) -> tuple[Drives, ...]:
    """By name, the greatest first. An event is added to the rest, so that its share is its own
    variance."""
    variance = float(np.var(totals))
    if variance <= 1e-12:
        return ()
    shares = {name: float(np.var(amount)) / variance for name, amount in events.items()}
    for name, even in at.items():
        kind, _, plain = name.partition(": ")
        if kind not in {"event", "cost"}:
            shares[plain] = _share(even, totals, variance)
    ordered = sorted(shares.items(), key=lambda one: (-round(one[1], 4), one[0]))
    return tuple(Drives(name, share) for name, share in ordered if share > _LEAST_SHARE)


def _share(even: Draws, totals: Draws, variance: float) -> float:
    """Var(E[Y|X]) / Var(Y), E as the mean over slices of X, less what slices of nothing show."""
    slices = np.array_split(totals[np.argsort(even, kind="stable")], _SLICES)
    sizes = np.array([len(one) for one in slices])
    means = np.array([one.mean() for one in slices])
    middle = np.average(means, weights=sizes)
    between = float(np.average((means - middle) ** 2, weights=sizes))
    nothing = (_SLICES - 1) / len(totals)
    return max(0.0, (between / variance - nothing) / (1 - nothing))


def _insist(costs: Costs) -> None:
    ends: Sequence[Part | Factor | Event] = (*costs.parts, *costs.factors, *costs.events)
    for one in ends:
        if not 0 <= one.low <= one.likely <= one.high:
            raise ValueError(f"{one.name}: {one.low:g}, {one.likely:g}, {one.high:g} are no range")
    for event in costs.events:
        if not 0 <= event.chance <= 1:
            raise ValueError(f"{event.name}: {event.chance:g} is no chance")
