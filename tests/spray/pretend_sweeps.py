"""Sweeps whose ages are drawn and not swept: cuts and orders can be weighed by the hundred."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

from tests.spray.hand_floors import ROUND
from tests.strategies.houses import house

from farwall.facts.plan import PlanTools
from farwall.floor.thresholds import join_thresholds
from farwall.readers.job_json import job_from
from farwall.spray.building import build_world
from farwall.spray.sweeps import Pieces, Sweeps
from farwall.spray.world import Seam, World

Age = Callable[[Pieces, Seam], float]
Refuses = Callable[[Pieces], bool]


def _nobody_refused(_pieces: Pieces) -> bool:
    return False


class PretendSweeps(Sweeps):
    """Ages by a rule of the test; ways out, areas and seams are those of the real world."""

    def __init__(
        self,
        world: World,
        age: Age,
        *,
        no_walk: Refuses = _nobody_refused,
        tools: PlanTools = ROUND,
    ) -> None:
        super().__init__(world, tools, 0.2, helper=False)
        self.age = age
        self.no_walk = no_walk

    def age_min(self, pieces: Pieces, seam: Seam) -> float:
        return self.age(pieces, seam)

    def fails(self, pieces: Pieces) -> bool:
        return self.no_walk(pieces)


def drawn_age(seed: int, *, least: float = 0.1, most: float = 1.5) -> Age:
    """An age that is always the same for the same pieces and door, and nothing else."""

    def age(pieces: Pieces, seam: Seam) -> float:
        dice = Random(f"{seed} {sorted(pieces)} {seam.id} {seam.a} {seam.b}")
        return dice.uniform(least, most) * len(pieces) ** 0.5

    return age


def drawn_refusal(seed: int, share: float) -> Refuses:
    """So many of all fields that a body cannot walk, always the same ones."""

    def refuses(pieces: Pieces) -> bool:
        return Random(f"{seed} {sorted(pieces)}").random() < share

    return refuses


def small_world(seed: int, most: int = 5) -> World:
    """The world of the first house from `seed` on with two to `most` pieces."""
    while True:
        job = job_from(house(seed), about="house")
        world = build_world(join_thresholds(job.floor), job.exits)
        if 2 <= len(world.pieces) <= most:
            return world
        seed += 1
