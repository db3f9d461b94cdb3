"""What whole houses and floors of two colours came to, and whether a said chance is a found share.

The jobs themselves stand in `bench.colour_houses` and `bench.colour_two`.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from farwall.bench.colour_houses import HouseJob, Room, Told, cost, house_job
from farwall.bench.colour_two import TwoColours, two_colours
from farwall.nouns import dataclass

EDGES = (0.0, 0.01, 0.03, 0.1, 0.3, 0.6, 0.9, 1.0)
"""Between these the chances that were said are counted together."""


@dataclass(frozen=True)
class Houses:
    """Whole jobs by one rule: per cent of houses with a room too dark, of rooms; means over all."""

    rule: str
    jobs: int
    rooms: int
    too_dark_percent: float
    rooms_too_dark_percent: float
    cost: float
    coats: float
    away: float


@dataclass(frozen=True)
class Chances:
    """Chances of too dark that were said, and how often it came, between two edges. Per cent."""

    low: float
    high: float
    count: int
    said: float
    found: float


@dataclass(frozen=True)
class Dark:
    """Where the rooms that came out too dark are, per cent of them: how it came to each.

    thirstiest: of their house · at_once: after the first coat, which is alike in all rooms ·
    said: mean chance that was said of the last coat, per cent.
    """

    rooms: int
    thirstiest: float
    at_once: float
    said: float


@dataclass(frozen=True)
class Whole:
    """All of it: houses by both rules, chances, dark rooms, two colours by both rules."""

    houses: tuple[Houses, Houses]
    chances: tuple[Chances, ...]
    dark: Dark
    two: tuple[Houses, Houses]


def score_whole(houses: Sequence[int], floors: Sequence[int]) -> Whole:
    """The jobs of those numbers: houses with rooms, floors of two colours."""
    jobs = [house_job(seed) for seed in houses]
    pairs = [two_colours(seed) for seed in floors]
    return Whole(
        houses=(
            _houses("each room by what is foreseen", [one.ours for one in jobs]),
            _houses("1:2 in all rooms, then look", [one.habit for one in jobs]),
        ),
        chances=reliability([told for one in jobs for told in one.told]),
        dark=_dark(jobs),
        two=(
            _two("two colours by what is foreseen", [one for one, _ in pairs]),
            _two("base, accent, then look", [one for _, one in pairs]),
        ),
    )


def reliability(told: Sequence[Told]) -> tuple[Chances, ...]:
    """Said chances between each two edges, and the share of them that came. Per cent."""
    said = np.array([one.said for one in told])
    came = np.array([one.came for one in told], dtype=np.float64)
    made = []
    for low, high in pairwise(EDGES):
        own = (said >= low) & ((said < high) | ((said <= high) & (high == EDGES[-1])))
        if own.any():
            made.append(
                Chances(
                    100 * low, 100 * high, int(own.sum()), float(100 * said[own].mean()),
                    float(100 * came[own].mean()),
                )
            )  # fmt: skip
    return tuple(made)


def _houses(rule: str, jobs: Sequence[Sequence[Room]]) -> Houses:
    rooms = [room for job in jobs for room in job]
    return Houses(
        rule=rule, jobs=len(jobs), rooms=len(rooms),
        too_dark_percent=float(100 * np.mean([any(one.too_dark for one in job) for job in jobs])),
        rooms_too_dark_percent=float(100 * np.mean([one.too_dark for one in rooms])),
        cost=float(np.mean([cost(job) for job in jobs])),
        coats=float(np.mean([one.coats for one in rooms])),
        away=float(np.mean([one.away for one in rooms])),
    )  # fmt: skip


def _two(rule: str, jobs: Sequence[TwoColours]) -> Houses:
    dark = float(100 * np.mean([one.too_dark for one in jobs]))
    return Houses(
        rule=rule, jobs=len(jobs), rooms=len(jobs), too_dark_percent=dark,
        rooms_too_dark_percent=dark, cost=float(np.mean([one.cost for one in jobs])),
        coats=float(np.mean([one.coats for one in jobs])),
        away=float(np.mean([one.away for one in jobs])),
    )  # fmt: skip


def _dark(jobs: Sequence[HouseJob]) -> Dark:
    dark = [room for job in jobs for room in job.ours if room.too_dark]
    if not dark:
        return Dark(0, 0.0, 0.0, 0.0)
    return Dark(
        rooms=len(dark),
        thirstiest=float(100 * np.mean([one.rank == 0 for one in dark])),
        at_once=float(100 * np.mean([one.coats == 1 for one in dark])),
        said=float(100 * np.mean([one.said for one in dark])),
    )
