"""The order of strips in one field: farther before nearer, no edge waiting longer than need be.

A strip may be sprayed once every strip behind it is done, so that the floor
still dry always hangs together with the way out. Among such orders the one is
kept whose longest wait of an edge is shortest; the search is a hill climb from
two starts (level by level, and arm by arm), so "no better order" is not
claimed.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely

from farwall.nouns import dataclass
from farwall.spray.bands import Strip, Strips

_ROUNDS = 4


@dataclass(frozen=True)
class Pace:
    """How fast: square metres sprayed and metres walked in a minute."""

    spray_m2_min: float
    walk_m_min: float


def order_strips(cut: Strips, pace: Pace) -> tuple[list[int], float]:
    """Indices of the strips in the order of spraying, and the longest wait of an edge [min]."""
    table = _Table.of(cut, pace)
    starts = [_by_level(table), _arm_by_arm(table)]
    best = min((_climb(table, start) for start in starts), key=table.cost)
    return best, table.cost(best)[0]


@dataclass(frozen=True)
class _Table:
    minutes: tuple[float, ...]
    centres: np.ndarray
    behind: tuple[frozenset[int], ...]
    borders: tuple[tuple[int, int], ...]
    walk_m_min: float

    @cached_property
    def hops_min(self) -> list[list[float]]:
        """The walk from the middle of each strip to that of each other, in minutes."""
        east, north = self.centres.T
        away = np.hypot(east[:, None] - east, north[:, None] - north)
        return (away / self.walk_m_min).tolist()  # type: ignore[no-any-return]

    @staticmethod
    def of(cut: Strips, pace: Pace) -> _Table:
        behind: list[set[int]] = [set() for _ in cut.strips]
        for border in cut.borders:
            if cut.strips[border.far].level > cut.strips[border.near].level:
                behind[border.near].add(border.far)
        return _Table(
            tuple(strip.area_m2 / pace.spray_m2_min for strip in cut.strips),
            np.array([_centre(strip) for strip in cut.strips]),
            tuple(frozenset(found) for found in behind),
            tuple((border.far, border.near) for border in cut.borders),
            pace.walk_m_min,
        )

    def cost(self, order: Sequence[int]) -> tuple[float, float]:
        """The longest wait of an edge, then all the walking, in minutes."""
        start = [0.0] * len(order)
        now = walked = 0.0
        last: int | None = None
        for strip in order:
            if last is not None:
                hop_min = self.hops_min[strip][last]
                now += hop_min
                walked += hop_min
            start[strip] = now
            now += self.minutes[strip]
            last = strip
        waits = [abs(start[a] - start[b]) for a, b in self.borders]
        return (round(max(waits, default=0.0), 3), walked)

    def allows(self, order: Sequence[int], *, without: int) -> bool:
        """Whether each strip comes after those behind it, wherever the one left out comes."""
        done = {without}
        for strip in order:
            if not self.behind[strip] <= done:
                return False
            done.add(strip)
        return True


def _centre(strip: Strip) -> tuple[float, float]:
    point = shapely.centroid(strip.shape)
    return (point.x, point.y)


def _by_level(table: _Table) -> list[int]:
    """Far levels first, each time the nearest strip that may be sprayed."""
    order: list[int] = []
    left = set(range(len(table.minutes)))
    depth = _depths(table)
    while left:
        free = [s for s in left if table.behind[s] <= set(order)]
        deepest = max(depth[s] for s in free)
        here = table.centres[order[-1]] if order else table.centres.mean(axis=0)
        order.append(
            min(
                (s for s in free if depth[s] == deepest),
                key=lambda s: (float(np.hypot(*(table.centres[s] - here))), s),
            )
        )
        left.discard(order[-1])
    return order


def _depths(table: _Table) -> list[int]:
    """Longest chain of strips from each strip to the exit."""
    count = len(table.minutes)
    depth = [0] * count
    for _ in range(count):
        for near, behind in enumerate(table.behind):
            for far in behind:
                depth[far] = max(depth[far], depth[near] + 1)
    return depth


def _arm_by_arm(table: _Table) -> list[int]:
    """Each arm to its end before the next, the longest wait at a junction last."""
    order: list[int] = []
    seen: set[int] = set()

    def visit(strip: int) -> None:
        if strip in seen:
            return
        seen.add(strip)
        for far in sorted(table.behind[strip], key=lambda s: -_mass(table, s)):
            visit(far)
        order.append(strip)

    depth = _depths(table)
    for strip in sorted(range(len(table.minutes)), key=lambda s: depth[s]):
        visit(strip)
    return order


def _mass(table: _Table, strip: int) -> float:
    """Minutes of everything behind a strip, itself included."""
    seen = {strip}
    queue = [strip]
    while queue:
        for far in table.behind[queue.pop()]:
            if far not in seen:
                seen.add(far)
                queue.append(far)
    return sum(table.minutes[s] for s in seen)


def _allowed(table: _Table, rest: Sequence[int], strip: int) -> Sequence[int]:
    """Where this strip may come among the rest, which are in an order that is allowed or not."""
    if not table.allows(rest, without=strip):
        return ()
    behind = table.behind[strip]
    first = max((place + 1 for place, other in enumerate(rest) if other in behind), default=0)
    before = (place for place, other in enumerate(rest) if strip in table.behind[other])
    return range(first, min(before, default=len(rest)) + 1)


def _climb(table: _Table, start: list[int]) -> list[int]:
    """Move one strip at a time as long as that helps."""
    best, cost = start, table.cost(start)
    for _ in range(_ROUNDS):
        before = cost
        for strip in list(best):
            rest = [s for s in best if s != strip]
            for position in _allowed(table, rest, strip):
                trial = [*rest[:position], strip, *rest[position:]]
                if trial != best:
                    found = table.cost(trial)
                    if found < cost:
                        best, cost = trial, found
        if cost == before:
            break
    return best
