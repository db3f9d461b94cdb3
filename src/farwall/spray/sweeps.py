"""Every field that was asked for, ready to be swept: ages guessed, ways out, what can be walked."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import field
from functools import partial

from farwall.beside import Beside, at_once
from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.nouns import dataclass
from farwall.spray.fronts import Floors
from farwall.spray.sweep import Sweep, one_tank_m2, pause_min
from farwall.spray.sweeper import Sweeper, Tried
from farwall.spray.world import Seam, World

NEVER = float("inf")
_LATTICES = 24
_ALWAYS_M2 = 10.0
"""A field takes as long to try as its floor and so much more: measured here on 26 fields of four
houses. To begin another process and to send what it found takes about as long."""

Pieces = frozenset[str]
_Tried = tuple[
    Pieces,
    bool,
    dict[Seam, Tried],
    dict[tuple[Pieces, Seam], float | Unanswerable],
    dict[tuple[Pieces, Seam], dict[str, float]],
]
_Guessed = tuple[
    dict[tuple[Pieces, Seam], float | Unanswerable],
    dict[tuple[Pieces, Seam], dict[str, float]],
]


@dataclass
class Sweeps:
    """Every field asked for so far: a cache, since the same field is asked for many times."""

    world: World
    tools: PlanTools
    litres_per_m2: float
    helper: bool
    kept: dict[tuple[Pieces, Seam], Sweeper] = field(default_factory=dict)
    ages: dict[tuple[Pieces, Seam], float | Unanswerable] = field(default_factory=dict)
    floors: Floors = field(default_factory=dict)
    parts: dict[tuple[Pieces, Seam], dict[str, float]] = field(default_factory=dict)
    beside: Beside = at_once

    def sweeper(self, pieces: Pieces, seam: Seam) -> Sweeper:
        """The field of `pieces` that is left by `seam`."""
        key = (pieces, seam)
        if key not in self.kept:
            self.kept[key] = self._made(pieces, seam)
        return self.kept[key]

    def _made(self, pieces: Pieces, seam: Seam) -> Sweeper:
        while len(self.floors) > _LATTICES:
            del self.floors[next(iter(self.floors))]
        return Sweeper(
            self.world,
            sorted(pieces),
            seam,
            self.tools,
            l_per_m2=self.litres_per_m2,
            kept=self.floors,
        )

    def of(self, pieces: Pieces, seam: Seam) -> Sweep:
        """The sweep of `pieces` toward `seam`; raises `Unanswerable` when a body cannot do it."""
        return self.sweeper(pieces, seam).sweep(self.tools)

    def age_min(self, pieces: Pieces, seam: Seam) -> float:
        """A guess at the oldest edge, with the pause of a refill where one tank is not enough.

        Raises `Unanswerable` when a body cannot do it.
        """
        key = (pieces, seam)
        if key not in self.ages:
            try:
                self.ages[key] = self._age_min(pieces, seam)
            except Unanswerable as no:
                self.ages[key] = no
        age = self.ages[key]
        if isinstance(age, Unanswerable):
            raise age
        return age

    def _age_min(self, pieces: Pieces, seam: Seam) -> float:
        # Of fields of many rooms most are never asked for again: they are not kept.
        sweeper = self.sweeper(pieces, seam) if len(pieces) == 1 else self._made(pieces, seam)
        age, parts = sweeper.guess()
        floor_m2 = sum(self.world.pieces[name].shape.area for name in pieces)
        if floor_m2 > one_tank_m2(self.tools, self.litres_per_m2):
            way_m = 0.0 if self.helper else sweeper.way_out_m()
            pause = pause_min(self.tools, helper=self.helper, way_m=way_m)
            parts = {room: (part * age + pause) / (age + pause) for room, part in parts.items()}
            age += pause
        self.parts[pieces, seam] = parts
        return age

    def room_parts(self, pieces: Pieces) -> dict[str, float]:
        """Of each room the part (0 to 1) of the field's oldest edge that its own may reach.

        By the best way out; empty when there is none. A refill may fall into any room.
        """
        guesses = self._guesses(pieces)
        if not guesses:
            return {}
        _, seam = min(guesses, key=lambda guess: guess[0])
        return self.parts.get((pieces, seam), {})

    def guess_ahead(self, fields: Collection[Pieces]) -> None:
        """Guess at these fields by all their ways out, half of the work beside the other half."""
        mine, others = self._halves(fields)
        later = self.beside(partial(self._guessed, others)) if others else None
        for pieces in mine:
            self._guesses(pieces)
        if later:
            ages, parts = later()
            self.ages.update(ages)
            self.parts.update(parts)

    def _guessed(self, fields: Sequence[Pieces]) -> _Guessed:
        for pieces in fields:
            self._guesses(pieces)
        asked = set(fields)
        return (
            {key: age for key, age in self.ages.items() if key[0] in asked},
            {key: parts for key, parts in self.parts.items() if key[0] in asked},
        )

    def failing(self, fields: Collection[Pieces]) -> set[Pieces]:
        """Those that a body, tried in earnest, can do by none of their ways out.

        Half of the work is done beside the other half.
        """
        mine, others = self._halves(fields)
        later = self.beside(partial(self._tried, others)) if others else None
        failed = {pieces for pieces in mine if self.fails(pieces)}
        for pieces, fails, found, refused, parts in later() if later else ():
            for seam, tried in found.items():
                self.sweeper(pieces, seam).take(tried)
            self.ages.update(refused)
            self.parts.update(parts)
            if fails:
                failed.add(pieces)
        return failed

    def _halves(self, fields: Collection[Pieces]) -> tuple[list[Pieces], list[Pieces]]:
        """Those for this process and those for another, so that both end at about the same time."""
        halves: tuple[list[Pieces], list[Pieces]] = [], []
        work_m2 = [0.0, _ALWAYS_M2]
        area_m2 = {
            pieces: sum(self.world.pieces[name].shape.area for name in pieces) for pieces in fields
        }
        for pieces in sorted(fields, key=lambda pieces: (-area_m2[pieces], sorted(pieces))):
            half = int(work_m2[1] < work_m2[0])
            halves[half].append(pieces)
            work_m2[half] += area_m2[pieces] + _ALWAYS_M2
        return halves

    def _tried(self, fields: Sequence[Pieces]) -> list[_Tried]:
        """What came of trying these fields: all that the next questions about them ask for."""
        return [
            (
                pieces,
                self.fails(pieces),
                {seam: kept.tried() for (of, seam), kept in self.kept.items() if of == pieces},
                {key: age for key, age in self.ages.items() if key[0] == pieces},
                {key: parts for key, parts in self.parts.items() if key[0] == pieces},
            )
            for pieces in fields
        ]

    def fails(self, pieces: Pieces) -> bool:
        """Whether a body, tried in earnest, can do the field by none of its ways out."""
        return not any(
            self.walked(pieces, seam)
            for _, seam in sorted(self._guesses(pieces), key=lambda guess: guess[0])
        )

    def walked(self, pieces: Pieces, seam: Seam) -> bool:
        """Whether that sweep can be walked; if not, it is not offered again."""
        try:
            self.of(pieces, seam)
        except Unanswerable as no:
            self.ages[pieces, seam] = no
            return False
        return True

    def _guesses(self, pieces: Pieces) -> list[tuple[float, Seam]]:
        found = []
        for seam in self.ways_out(pieces):
            try:
                found.append((self.age_min(pieces, seam), seam))
            except Unanswerable:
                continue
        return found

    def ways_out(self, pieces: Pieces, keep_off: Pieces = frozenset()) -> list[Seam]:
        """Seams by which a person may leave `pieces` for the outside, avoiding `keep_off`."""
        free = self._leads_out(pieces | keep_off)
        return [
            seam
            for seam in self.world.seams
            if (seam.a in pieces) != (seam.b in pieces)
            and (seam.is_way_out or (seam.b and _far(seam, pieces) in free))
        ]

    def _leads_out(self, blocked: Pieces) -> set[str]:
        """Pieces from which the outside is reached without crossing `blocked` ones."""
        free = {seam.a for seam in self.world.seams if seam.is_way_out and seam.a not in blocked}
        queue = list(free)
        while queue:
            here = queue.pop()
            for seam in self.world.seams_of(here):
                there = seam.other(here)
                if there and there not in blocked and there not in free:
                    free.add(there)
                    queue.append(there)
        return free

    def best_age_min(self, pieces: Pieces) -> float:
        """The oldest edge by the best way out, infinite when there is none."""
        return min((age for age, _ in self._guesses(pieces)), default=NEVER)


def _far(seam: Seam, pieces: Pieces) -> str:
    return seam.b if seam.a in pieces else seam.a
