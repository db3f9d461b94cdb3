"""Which floor is sprayed in one go: the least-cost cut of the house into fields.

The rule, in this order: rooms share a field only where that keeps the edge
within `COMFORT` of its budget, or no older than its worst room needs alone;
and where a stop could have hidden under a leaf or in a saw cut, only small
rooms (a closet, a bath, a pantry) join, and only while one tank does the whole
field, for a refill is the one pause that need not be.
Floor that takes stain in more than `unlike.LEAP` times the seconds of other floor, or
was poured apart from it, shares no field with it where a stop can lie between.
Among such cuts the one with the fewest and best hidden stop lines. Exact over
all cuts into the fields that were tried: those grown room by room through
fields that hold, small ones first, at most four for each room of the house.
That adding a room never makes the oldest edge younger is assumed, not proved.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Mapping

from farwall.errors import Unanswerable
from farwall.nouns import dataclass
from farwall.spray.partition import Cover, cheapest_cover
from farwall.spray.sweep import one_tank_m2
from farwall.spray.sweeps import NEVER, Pieces, Sweeps
from farwall.spray.unparted import Units, unparted
from farwall.spray.world import World

COMFORT = 0.6
"""Share of the edge's budget that a field may use without being cut further. Rank: guess."""
SMALL_ROOM_M2 = 6.0
"""A room up to this size may share a field with the room its door leads to. Rank: guess."""
_MOST_TOGETHER = 6
"""So many rooms at most share a field where leaves or cuts could have parted them. Rank: guess."""
_MOST_TRIED = 4
"""Fields of several rooms that are tried, for each room: what bounds the search. Rank: guess."""
_ROUGHLY = 0.02
_LOST_COST = 1000.0

Budget = Callable[[Pieces], float]
"""Minutes an edge may wait in a field of these pieces."""


@dataclass(frozen=True)
class Cut:
    """The fields, the worst share of a budget that any of them needs, and what was searched.

    `proved` says that no cover by the `columns` that were weighed costs less; `gap` is how much
    less it could cost when the search of a very large house was cut short.
    """

    fields: tuple[Pieces, ...]
    worst_share: float
    cost: float
    columns: int
    proved: bool
    gap: float


def cut_into_fields(sweeps: Sweeps, budget: Budget) -> Cut:
    """The fields of the house. Raises `Unanswerable` naming rooms that have no way in."""
    _insist_on_ways_in(sweeps.world)
    units = Units(unparted(sweeps.world), sweeps.world)

    def share(group: frozenset[int]) -> float:
        pieces = units.pieces(group)
        return sweeps.best_age_min(pieces) / max(budget(pieces), 1e-9)

    tank_m2 = one_tank_m2(sweeps.tools, sweeps.litres_per_m2)
    struck: set[frozenset[int]] = set()
    guessed: set[Pieces] = set()
    sweeps.guess_ahead([units.pieces(frozenset([i])) for i in range(len(units.groups))])
    while True:
        single = {frozenset([i]): share(frozenset([i])) for i in range(len(units.groups))}
        pairs = {units.pieces(pair) for pair in _pairs(units, single, tank_m2)}
        sweeps.guess_ahead([pieces for pieces in pairs if pieces not in guessed])
        guessed |= pairs
        grown = _grown(units, single, share, tank_m2)
        columns = {
            group: value for group, value in grown.items() if len(group) == 1 or group not in struck
        }
        cover = _cover(len(units.groups), columns, units)
        chosen = {units.pieces(group): group for group in cover.columns if group not in struck}
        failed = {chosen[pieces] for pieces in sweeps.failing(chosen)}
        if not failed:
            break
        struck |= failed
    return Cut(
        tuple(units.pieces(group) for group in cover.columns),
        max(columns[group] for group in cover.columns),
        cover.cost,
        len(columns),
        cover.proved,
        cover.gap,
    )


def _insist_on_ways_in(world: World) -> None:
    reached = {seam.a for seam in world.seams if seam.is_way_out}
    queue = list(reached)
    while queue:
        here = queue.pop()
        for seam in world.seams_of(here):
            there = seam.other(here)
            if there and there not in reached:
                reached.add(there)
                queue.append(there)
    shut = sorted(set(world.pieces) - reached)
    if not any(seam.is_way_out for seam in world.seams):
        raise Unanswerable(
            "No way out: none of the exits lies on a room's wall.",
            remedies=["Name an outside opening in a room's wall as the way out."],
        )
    if shut:
        raise Unanswerable(
            f"No way in to {world.called(shut)}: no opening joins it to a way out.",
            remedies=["Add the missing door to the plan, or leave the room out of the job."],
        )


def _grown(
    units: Units,
    single: dict[frozenset[int], float],
    share: Callable[[frozenset[int]], float],
    tank_m2: float,
) -> dict[frozenset[int], float]:
    """Fields that hold, grown a room at a time; single rooms are always kept.

    Fields that no leaf or cut parts grow first, small ones before large ones; at
    most `_MOST_TRIED` a room are tried.
    """
    columns = dict(single)
    tried = set(single)
    front = [(_rank(units, group), group) for group in single]
    heapq.heapify(front)
    most = len(single) + _MOST_TRIED * len(single)
    while front and len(tried) < most:
        _, group = heapq.heappop(front)
        for there in sorted({n for unit in group for n in units.near[unit]} - group):
            grown = group | {there}
            if grown in tried or not _may_join(units, single, group, there, tank_m2):
                continue  # the same field may still be grown in another order
            tried.add(grown)
            value = share(grown)
            if value < NEVER and value <= _limit(grown, single) + _ROUGHLY:
                columns[grown] = value
                heapq.heappush(front, (_rank(units, grown), grown))
    return columns


def _pairs(
    units: Units, single: Mapping[frozenset[int], float], tank_m2: float
) -> set[frozenset[int]]:
    """The first fields that are grown: each room with each neighbour that may join it."""
    return {
        group | {there}
        for group in single
        for unit in group
        for there in units.near[unit]
        if _may_join(units, single, group, there, tank_m2)
    }


def _rank(units: Units, group: frozenset[int]) -> tuple[bool, int, float, list[int]]:
    """Which field grows first."""
    hidden = not units.hangs_together_bare(group)
    return hidden, len(group), round(units.area_m2(group), 3), sorted(group)


def _may_join(
    units: Units,
    single: Mapping[frozenset[int], float],
    group: frozenset[int],
    there: int,
    tank_m2: float,
) -> bool:
    """Whether a room may join a field: always where no stop can hide, else small ones only.

    Never one that takes stain unlike the field, unless somebody could not do it alone.
    """
    grown = group | {there}
    if any(single[frozenset([unit])] == NEVER for unit in grown):
        return True
    if units.unlike[there] & group:
        return False
    if units.hangs_together_bare(grown):
        return True
    if len(grown) > _MOST_TOGETHER or units.area_m2(grown) > tank_m2:
        return False
    return min(units.area_m2(group), units.area_m2(frozenset([there]))) <= SMALL_ROOM_M2


def _limit(group: frozenset[int], single: Mapping[frozenset[int], float]) -> float:
    """The share of its budget that a field of several rooms may need.

    A room that nobody can do alone may join any neighbour that helps.
    """
    return max(COMFORT, *(single[frozenset([unit])] for unit in group))


def _cover(count: int, columns: Mapping[frozenset[int], float], units: Units) -> Cover:
    """The cheapest exact cover of all units by columns; a room nobody can do costs dearly."""
    return cheapest_cover(
        count,
        {
            group: units.cost(group) + (_LOST_COST if share == NEVER else 0.0)
            for group, share in columns.items()
        },
    )
