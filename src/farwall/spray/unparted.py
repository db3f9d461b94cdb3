"""Floor that is never parted, and what a stop at its edges costs: what a cut into fields weighs."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cached_property

from farwall.nouns import dataclass
from farwall.spray.sweeps import Pieces
from farwall.spray.unlike import unlike
from farwall.spray.world import Seam, World

SEAM_COST = {"door": 1.0, "saw cut": 1.0, "cased": 6.0}
"""Cost of a cold stop line by where it lies: under a leaf, on a cut, under a bare frame. Guess."""
SEEN_MORE = 0.8
"""A stop line that lies wholly across the view from the main window costs this share of its cost
more, one partly in sight less. Rank: guess. Steps of a tenth keep the proof of the cover exact."""
FIELD_COST = 0.4
HIDDEN = frozenset({"door", "saw cut"})


@dataclass(frozen=True)
class Units:
    """Pieces that are never parted (joined by wide openings), as bits of a mask."""

    groups: tuple[Pieces, ...]
    world: World

    @cached_property
    def near(self) -> tuple[frozenset[int], ...]:
        """Units next to each unit, whatever lies between."""
        where = {piece: i for i, group in enumerate(self.groups) for piece in group}
        near: list[set[int]] = [set() for _ in self.groups]
        for seam in self.world.seams:
            if seam.b and where[seam.a] != where[seam.b]:
                near[where[seam.a]].add(where[seam.b])
                near[where[seam.b]].add(where[seam.a])
        return tuple(frozenset(found) for found in near)

    def pieces(self, units: Iterable[int]) -> Pieces:
        """The pieces of some units."""
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
        """The floor of some units. [m2]"""
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


def unparted(world: World) -> tuple[Pieces, ...]:
    """The pieces of a house in groups that wide openings join."""
    group = {name: {name} for name in world.pieces}
    for seam in world.seams:
        if seam.kind == "wide" and seam.b and group[seam.a] is not group[seam.b]:
            joined = group[seam.a] | group[seam.b]
            group.update(dict.fromkeys(joined, joined))
    unique = {id(found): found for found in group.values()}
    return tuple(frozenset(found) for found in sorted(unique.values(), key=sorted))
