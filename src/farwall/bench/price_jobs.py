"""Invented jobs by seed: what an estimator knows of them, and what they truly came to.

Frozen: a digest in the tests holds them. Half of the seeds are for tuning, half for the report.
Nothing here comes from the model. The truth has another structure: hours are those that a typical
house of 1,500 ft² is said to take (another line of common practice than the paces), and go with a
power of floor and wall; a crew's skill lies in two heaps; slabs are clean, dirty or foul, and a
dirty one slows some tasks and not others; each task is a mixture of a usual and a bad day; weather
and trades cost whole days; call-backs come by Poisson; prices move by a market, by sellers that
have run out, and by what was forgotten. All spreads are guesses, set once, before any model ran.
"""

from __future__ import annotations

import math
from random import Random

from farwall.nouns import dataclass

TUNING, TEST = range(1, 2001), range(2001, 4001)
TYPICAL_FT2, TYPICAL_WALL_FT = 1500.0, 540.0
TASKS: dict[str, tuple[float, float, float]] = {
    "protect and mask": (8, 11, 14),
    "clean and dry": (8, 12, 16),
    "spray": (3, 4.5, 6),
    "judge": (1, 1.5, 2),
    "neutralise and rinse": (10, 14, 18),
    "seal and finish": (6, 8, 10),
    "unmask and hand over": (3, 4, 5),
    "travel, phone, papers": (6, 8, 10),
}
"""Hours of all hands on a typical house: low, middle, high of common practice."""
_POWER = {
    "protect and mask": 0.9, "clean and dry": 0.85, "spray": 0.9, "judge": 0.5,
    "neutralise and rinse": 0.9, "seal and finish": 0.85, "unmask and hand over": 0.75,
    "travel, phone, papers": 0.15,
}  # fmt: skip
"""By which power of the floor a task goes; masking and unmasking by that of the wall."""
_BY_WALL = ("protect and mask", "unmask and hand over")
_DIRT = {"clean and dry": 1.0, "neutralise and rinse": 0.35, "protect and mask": 0.15}
"""How much of a slab's dirt each task feels."""


class Dice:
    """Throws by a seed; only `Random.random` is drawn from, whose sequence Python promises."""

    def __init__(self, seed: int) -> None:
        self.next = Random(f"job that is priced {seed}").random

    def even(self, low: float, high: float) -> float:
        """A number between the two, each as likely."""
        return low + (high - low) * self.next()

    def normal(self) -> float:
        """A standard normal number, by the Box and Muller transform."""
        radius = math.sqrt(-2 * math.log(1 - self.next()))
        return radius * math.cos(2 * math.pi * self.next())

    def count(self, mean: float) -> int:
        """A Poisson number, by waiting times."""
        found, waited = 0, -math.log(1 - self.next())
        while waited < mean:
            found += 1
            waited -= math.log(1 - self.next())
        return found

    def mixed(self, sd: float) -> float:
        """ln of a factor: a usual day, or every eighth a bad one that is longer and wider."""
        if self.next() < 0.125:
            return 0.25 + 1.6 * sd * self.normal()
        return -0.03 + 0.9 * sd * self.normal()


@dataclass(frozen=True)
class PricedJob:
    """What an estimator knows: floor and wall in feet, coats, the firm's own rates, its list.

    spray_min: planned minutes of each coat · list: what the shopping list comes to, by group ·
    signed: whether a sealed sample on the slab is signed.
    """

    seed: int
    area_ft2: float
    wall_ft: float
    spray_min: tuple[float, ...]
    sealer_coats: int
    finish_coats: int
    per_h: float
    visit: float
    list: tuple[tuple[str, float], ...]
    signed: bool
    people: int = 2


@dataclass(frozen=True)
class CameTo:
    """What it truly came to: hours of all hands, days, call-backs, the whole cost."""

    hours: float
    days: int
    called_back: int
    cost: float


def priced_job(seed: int) -> tuple[PricedJob, CameTo]:
    """The job of this seed and its truth."""
    dice = Dice(seed)
    job = _known(dice, seed)
    return job, _true(dice, job)


def _known(dice: Dice, seed: int) -> PricedJob:
    area = math.exp(dice.even(math.log(350), math.log(3500)))
    wall = area * dice.even(0.25, 0.5) * (TYPICAL_FT2 / area) ** 0.2
    coats = 1 + int(dice.next() < 0.75)
    sealer, finish = 1 + int(dice.next() < 0.85), int(dice.next() * 3)
    pace = dice.even(22, 34)
    gallons = area * coats / dice.even(350, 480)
    bought = {
        "stain": math.ceil(gallons * 1.2) * dice.even(48, 75),
        "sealer": math.ceil(area * sealer / 330) * dice.even(32, 60),
        "floor finish": math.ceil(area * finish / 1600) * dice.even(18, 32),
        "masking": wall * dice.even(0.18, 0.35),
        "protective gear": dice.even(80, 170),
        "washing and waste": area * dice.even(0.1, 0.32),
    }
    return PricedJob(
        seed=seed,
        area_ft2=area,
        wall_ft=wall,
        spray_min=(area / pace,) * coats,
        sealer_coats=sealer,
        finish_coats=finish,
        per_h=dice.even(40, 75),
        visit=dice.even(20, 70),
        list=tuple((name, much) for name, much in bought.items() if much > 0),
        signed=dice.next() < 0.7,
    )


def _true(dice: Dice, job: PricedJob) -> CameTo:
    skill = (-0.06 if dice.next() < 0.65 else 0.14) + 0.08 * dice.normal()
    dirt = _dirt(dice)
    hours = math.fsum(_task_h(dice, job, name, skill, dirt) for name in TASKS)
    delays = dice.count(0.3)
    hours += delays * dice.even(1.0, 6.0)
    days = max(3, math.ceil(hours / (job.people * 7.0) * dice.even(0.9, 1.2))) + delays + 2
    colour = 0.035 if job.signed else 0.08
    called = dice.count(0.08 + colour)
    backs = math.fsum(_call_back(dice) for _ in range(called))
    goods = _goods(dice, job)
    cost = hours * job.per_h + days * job.visit * dice.even(0.9, 1.25) + goods + backs
    return CameTo(hours, days, called, cost)


def _dirt(dice: Dice) -> float:
    """ln of what a slab's dirt takes: most are as they should be, some dirty, few foul."""
    kind = dice.next()
    if kind < 0.72:
        return -0.08 + 0.1 * dice.normal()
    return dice.even(0.2, 0.55) if kind < 0.95 else dice.even(0.6, 1.1)


def _task_h(dice: Dice, job: PricedJob, name: str, skill: float, dirt: float) -> float:
    low, middle, high = TASKS[name]
    size = job.wall_ft / TYPICAL_WALL_FT if name in _BY_WALL else job.area_ft2 / TYPICAL_FT2
    sd = math.log(high / low) / 2 / 1.2
    ln = skill + _DIRT.get(name, 0.0) * dirt + dice.mixed(sd)
    return middle * math.pow(size, _POWER[name]) * _laid(job, name) * math.exp(ln)


def _laid(job: PricedJob, name: str) -> float:
    """Against two coats of stain, two of sealer and two of finish."""
    if name == "spray":
        return len(job.spray_min) / 2
    if name == "seal and finish":
        return 0.36 * job.sealer_coats + 0.14 * job.finish_coats
    return 1.0


def _goods(dice: Dice, job: PricedJob) -> float:
    """The list, by a market of its own, sellers that have run out, and what was forgotten."""
    market = 0.05 * dice.normal()
    total = 0.0
    for _, much in job.list:
        gone = dice.even(1.15, 1.5) if dice.next() < 0.07 else 1.0
        total += much * gone * math.exp(market + 0.1 * dice.normal())
    return total + (dice.even(20, 150) if dice.next() < 0.35 else 0.0)


def _call_back(dice: Dice) -> float:
    """Most are an afternoon, few a floor stripped: no less than 150, no more than 9,000."""
    return min(9000.0, max(150.0, 850 * math.exp(0.95 * dice.normal())))
