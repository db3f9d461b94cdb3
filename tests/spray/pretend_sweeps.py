"""Sweeps whose ages are drawn and not swept: cuts and orders can be weighed by the hundred."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from tests.spray.hand_floors import ROUND
from tests.strategies.houses import house

from farwall.facts.plan import PlanTools
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.fields import Pieces, Sweeps
from farwall.spray.world import Seam, World, build_world

Age = Callable[[Pieces, Seam], float]


class PretendSweeps(Sweeps):
    """Ages by a rule of the test; ways out, areas and seams are those of the real world."""

    def __init__(
        self, world: World, age: Age, *, rough: float = 1.0, tools: PlanTools = ROUND
    ) -> None:
        super().__init__(world, tools, 0.2, helper=False)
        self.age = age
        self.rough = rough

    def age_min(self, pieces: Pieces, seam: Seam) -> float:
        return self.age(pieces, seam)

    def rough_age_min(self, pieces: Pieces) -> float:
        return self.rough * self.best_age_min(pieces)


def drawn_age(seed: int, *, least: float = 0.1, most: float = 1.5) -> Age:
    """An age that is always the same for the same pieces and door, and nothing else."""

    def age(pieces: Pieces, seam: Seam) -> float:
        dice = Random(f"{seed} {sorted(pieces)} {seam.id} {seam.a} {seam.b}")
        return dice.uniform(least, most) * len(pieces) ** 0.5

    return age


def small_world(seed: int, most: int = 5) -> World:
    """The world of the first house from `seed` on with two to `most` pieces."""
    while True:
        job = job_from(house(seed), about="house")
        world = build_world(join_thresholds(job.floor), job.exits)
        if 2 <= len(world.pieces) <= most:
            return world
        seed += 1
