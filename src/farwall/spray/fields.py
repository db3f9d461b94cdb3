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
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property

from farwall.errors import Unanswerable
from farwall.spray.partition import Cover, cheapest_cover
from farwall.spray.sweep import one_tank_m2
from farwall.spray.sweeps import NEVER, Pieces, Sweeps
from farwall.spray.unlike import unlike
from farwall.spray.world import Seam, World

COMFORT = 0.6
"""Share of the edge's budget that a field may use without being cut further. Rank: guess."""
SEAM_COST = {"door": 1.0, "saw cut": 1.0, "cased": 6.0}
"""Cost of a cold stop line by where it lies: under a leaf, on a cut, under a bare frame. Guess."""
SEEN_MORE = 0.8
"""A stop line that lies wholly across the view from the main window costs this share of its cost
more, one partly in sight less. Rank: guess. Steps of a tenth keep the proof of the cover exact."""
FIELD_COST = 0.4
SMALL_ROOM_M2 = 6.0
"""A room up to this size may share a field with the room its door leads to. Rank: guess."""
_MOST_TOGETHER = 6
"""So many rooms at most share a field where leaves or cuts could have parted them. Rank: guess."""
_MOST_TRIED = 4
"""Fields of several rooms that are tried, for each room: what bounds the search. Rank: guess."""
HIDDEN = frozenset({"door", "saw cut"})
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


@dataclass(frozen=True)
class _Units:
    """Pieces that are never parted (joined by wide openings), as bits of a mask."""

    groups: tuple[Pieces, ...]
    world: World

    @cached_property
    def near(self) -> tuple[frozenset[int], ...]:
        where = {piece: i for i, group in enumerate(self.groups) for piece in group}
        near: list[set[int]] = [set() for _ in self.groups]
        for seam in self.world.seams:
            if seam.b and where[seam.a] != where[seam.b]:
                near[where[seam.a]].add(where[seam.b])
                near[where[seam.b]].add(where[seam.a])
        return tuple(frozenset(found) for found in near)

    def pieces(self, units: Iterable[int]) -> Pieces:
        return frozenset().union(*(self.groups[unit] for unit in units))

    @cached_property
    def bare(self) -> tuple[frozenset[int], ...]:
        """Units next to each unit through an opening under which no stop can hide."""
        where = {piece: i for i, group in enumerate(self.groups) for piece in group}
        near: list[set[int]] = [set() for _ in self.groups]
        for seam in self.world.seams:
            if seam.b and seam.kind not in HIDDEN:
                near[where[seam.a]].add(where[seam.b])
                near[where[seam.b]].add(where[seam.a])
        return tuple(frozenset(found) for found in near)

    @cached_property
    def unlike(self) -> tuple[frozenset[int], ...]:
        """Units that each unit shares no field with: other suction, or another pour."""
        pieces = [[self.world.pieces[name] for name in group] for group in self.groups]
        return tuple(
            frozenset(
                there
                for there, others in enumerate(pieces)
                if there != here and any(unlike(one, two) for one in own for two in others)
            )
            for here, own in enumerate(pieces)
        )

    def hangs_together_bare(self, units: frozenset[int]) -> bool:
        """Whether no hidden seam is needed to join these units."""
        seen = {min(units)}
        queue = list(seen)
        while queue:
            for there in self.bare[queue.pop()] & units:
                if there not in seen:
                    seen.add(there)
                    queue.append(there)
        return seen == units

    def area_m2(self, units: frozenset[int]) -> float:
        return sum(self.world.pieces[name].shape.area for name in self.pieces(units))

    def cost(self, units: frozenset[int]) -> float:
        """Half of each stop line around the field (once a cut or an opening), and the field."""
        inside = self.pieces(units)
        half: dict[str, float] = {}
        for seam in self.world.seams:
            if seam.b and (seam.a in inside) != (seam.b in inside):
                half[seam.id] = max(half.get(seam.id, 0.0), seam_cost(seam) / 2)
        return FIELD_COST + sum(half.values())


def seam_cost(seam: Seam) -> float:
    """What a cold stop at this seam costs: by its kind, and by how much of it is seen."""
    return SEAM_COST.get(seam.kind, 0.0) * (1 + SEEN_MORE * (seam.sight or 0.0))


def cut_into_fields(sweeps: Sweeps, budget: Budget) -> Cut:
    """The fields of the house. Raises `Unanswerable` naming rooms that have no way in."""
    _insist_on_ways_in(sweeps.world)
    units = _Units(_unparted(sweeps.world), sweeps.world)

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
            remedies=["Name an outside door under `exits` whose line lies on a room."],
        )
    if shut:
        raise Unanswerable(
            f"No way in to {', '.join(shut)}: no opening joins it to a way out.",
            remedies=["Add the missing door to the plan, or leave the room out of the job."],
        )


def _unparted(world: World) -> tuple[Pieces, ...]:
    group = {name: {name} for name in world.pieces}
    for seam in world.seams:
        if seam.kind == "wide" and seam.b and group[seam.a] is not group[seam.b]:
            joined = group[seam.a] | group[seam.b]
            group.update(dict.fromkeys(joined, joined))
    unique = {id(found): found for found in group.values()}
    return tuple(frozenset(found) for found in sorted(unique.values(), key=sorted))


def _grown(
    units: _Units,
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
    units: _Units, single: Mapping[frozenset[int], float], tank_m2: float
) -> set[frozenset[int]]:
    """The first fields that are grown: each room with each neighbour that may join it."""
    return {
        group | {there}
        for group in single
        for unit in group
        for there in units.near[unit]
        if _may_join(units, single, group, there, tank_m2)
    }


def _rank(units: _Units, group: frozenset[int]) -> tuple[bool, int, float, list[int]]:
    """Which field grows first."""
    hidden = not units.hangs_together_bare(group)
    return hidden, len(group), round(units.area_m2(group), 3), sorted(group)


def _may_join(
    units: _Units,
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


def _cover(count: int, columns: Mapping[frozenset[int], float], units: _Units) -> Cover:
    """The cheapest exact cover of all units by columns; a room nobody can do costs dearly."""
    return cheapest_cover(
        count,
        {
            group: units.cost(group) + (_LOST_COST if share == NEVER else 0.0)
            for group, share in columns.items()
        },
    )
