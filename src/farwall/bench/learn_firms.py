"""Invented firms and their closed jobs, by seed: what is so, and what their logs tell.

Frozen: a digest in the tests holds them. Half of the seeds are for tuning, half for the report.
Nothing here comes from `farwall.learn`, and the truth has another structure: firms lie about
practice in two heaps, parts differ with a pointed (Laplace) law, jobs have longer tails than a
normal number, one record in thirty is wrong by three to ten times, a year's seasons drift every
quantity, hours go with a power of the floor, coverage goes smoothly with the drop seconds.
All spreads are guesses, set once.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import date, timedelta
from random import Random

from farwall.facts.closed import (
    CallBack,
    ClockName,
    ClosedJob,
    ColourSeen,
    Rinsed,
    Sprayed,
    TaskHours,
    TaskName,
    WaitSeen,
)
from farwall.facts.job import Finish
from farwall.nouns import dataclass

TUNING, TEST = range(1, 501), range(501, 1001)
LARGE = range(100_000, 102_000)
"""Firms that were drawn after all was set, once: what 500 leave open, 2,000 settle."""
ODD = 1 / 30
FINISHES: tuple[Finish, ...] = ("hard trowel", "trowel", "float")
_DROPS = {"quick drops": (3.0, 8.0), "usual drops": (8.0, 20.0), "slow drops": (20.0, 60.0)}
_BY_DROPS = 0.12
"""ln of coverage a ln of drop seconds."""
_HOURS_BY_AREA = 0.85
_TYPICAL_M2 = 139.4
_AREAS_M2 = (60.0, 250.0)
TASKS: dict[TaskName, float] = {"mask": 6.6, "rinse": 8.4}
CLOCKS: dict[ClockName, tuple[float, float, float]] = {
    "dry to recoat": (0.2, 0.3, 0.15),
    "open time": (0.14, 0.22, 0.28),
}
"""Widths of ln: of firms, of floors, of rooms."""


class Dice:
    """Throws by a seed; only `Random.random` is drawn from, whose sequence Python promises."""

    def __init__(self, seed: int) -> None:
        self.next = Random(f"firm that learns {seed}").random

    def even(self, low: float, high: float) -> float:
        """A number between the two, each as likely."""
        return low + (high - low) * self.next()

    def normal(self) -> float:
        """A standard normal number, by the Box and Muller transform."""
        radius = math.sqrt(-2 * math.log(1 - self.next()))
        return radius * math.cos(2 * math.pi * self.next())

    def pointed(self, sd: float) -> float:
        """A Laplace number about zero."""
        size = -sd / math.sqrt(2) * math.log(1 - self.next())
        return size if self.next() < 0.5 else -size

    def tailed(self, sd: float) -> float:
        """A normal number of which every eighth is twice and a half as wide."""
        return self.normal() * sd * (2.3 if self.next() < 0.125 else 0.85)

    def heaps(self, sd: float) -> float:
        """Two heaps: most firms near practice, three in ten well to one side of it."""
        side = 1.0 if self.next() < 0.5 else -1.0
        return self.normal() * sd * 0.7 if self.next() < 0.7 else side * sd * self.even(1.0, 2.0)

    def odd(self) -> float:
        """What a record is wrong by, as a factor: 1 but for one in thirty."""
        if self.next() >= ODD:
            return 1.0
        size = math.exp(self.even(math.log(3.0), math.log(10.0)))
        return size if self.next() < 0.5 else 1 / size


@dataclass(frozen=True)
class Firm:
    """What is so of a firm: centres of ln by kind and part, rates, widths, its seasons."""

    seed: int
    coverage: dict[str, float]
    rate: dict[str, float]
    clocks: dict[str, float]
    hours: dict[str, float]
    rinses: dict[str, float]
    plants: dict[str, float]
    called_back: float
    widths: dict[str, float]
    season: dict[str, tuple[float, float]]

    def true_value(self, what: str, path: tuple[str, ...]) -> float | None:
        """The quantity itself in its unit, without any job's chance; None for a whole kind."""
        if what == "coverage of coat 1" and len(path) == 2:
            low, high = _DROPS[path[1]]
            return math.exp(
                self.coverage[path[0]] + _BY_DROPS * math.log(math.sqrt(low * high) / 12.0)
            )
        if what == "spray rate" and path:
            return math.exp(self.rate[path[0]])
        if what.startswith("clock: "):
            return math.exp(self.clocks[what.removeprefix("clock: ")])
        if what.startswith("hours to "):
            return math.exp(self.hours[what.removeprefix("hours to ")] + _hours_off())
        if what == "rinses until clean" and path:
            return math.exp(self.rinses[path[0]])
        if what == "colour against the sample" and path:
            return self.plants[path[0]]
        return 100 * self.called_back if what == "call-backs" else None


def firm(seed: int) -> Firm:
    """The firm of this seed."""
    dice = Dice(seed)
    coverage = math.log(4.91) + dice.heaps(0.17)
    rate = math.log(2.787) + dice.heaps(0.17)
    rinses = math.log(4.2) + dice.heaps(0.14)
    plants = 0.25 * dice.normal()
    kinds = ("coverage", "rate", "rinses", "colour", *CLOCKS, *TASKS)
    return Firm(
        seed=seed,
        coverage={one: coverage + dice.pointed(0.12) for one in FINISHES},
        rate={f"person {n}": rate + dice.pointed(0.12) for n in range(1, 2 + int(dice.next() * 3))},
        clocks={name: dice.heaps(sd) for name, (sd, _, _) in CLOCKS.items()},
        hours={name: math.log(usual) + dice.heaps(0.22) for name, usual in TASKS.items()},
        rinses={one: rinses + dice.pointed(0.1) for one in FINISHES},
        plants={
            f"plant {n}": plants + dice.pointed(0.4) for n in range(1, 2 + int(dice.next() * 4))
        },
        called_back=min(0.5, (0.08 if dice.next() < 0.75 else 0.2) * math.exp(0.4 * dice.normal())),
        widths={one: dice.even(0.7, 1.4) for one in kinds},
        season={one: (dice.even(0.0, 0.5), dice.even(0.0, 1.0)) for one in kinds},
    )  # fmt: skip


@dataclass(frozen=True)
class Closed:
    """A closed job, and its true litres over planned: no record of it is wrong."""

    job: ClosedJob
    true_thirst: tuple[float, ...]


def closed_jobs(one: Firm, *, count: int) -> Iterator[Closed]:
    """The first jobs of a firm, one or two weeks apart."""
    dice = Dice(-one.seed)
    day = date(2021, 1, 4) + timedelta(days=int(dice.even(0, 365)))
    for number in range(count):
        day += timedelta(days=int(dice.even(6, 16)))
        yield _closed(one, dice, number, day)


@dataclass(frozen=True)
class _Off:
    """What a job is off in ln: litres a square metre, minutes a square metre."""

    thirst: float
    pace: float


def _closed(one: Firm, dice: Dice, number: int, day: date) -> Closed:
    def drift(kind: str, sd: float) -> float:
        size, phase = one.season[kind]
        year = day.timetuple().tm_yday / 365.25
        return size * sd * math.sin(2 * math.pi * (year + phase))

    def noise(kind: str, sd: float) -> float:
        wide = sd * one.widths[kind]
        return dice.tailed(wide) + drift(kind, wide)

    finish = FINISHES[min(int(dice.next() ** 1.5 * 3), 2)]
    low, high = list(_DROPS.values())[min(int(dice.next() * 3), 2)]
    drop_s = math.exp(dice.even(math.log(low), math.log(high)))
    off = _Off(noise("coverage", 0.15), noise("rate", 0.12))
    sprayed, thirst = _sprayed(one, dice, finish, drop_s, off)
    area_m2 = dice.even(*_AREAS_M2)
    waits = [
        wait
        for clock, (_, floor, room) in CLOCKS.items()
        for wait in _waits(dice, clock, one.clocks[clock] + noise(clock, floor), room)
    ]
    hours = [
        TaskHours(task, math.exp(
            one.hours[task] + _HOURS_BY_AREA * math.log(area_m2 / _TYPICAL_M2) + noise(task, 0.2)
        ) * dice.odd(), area_m2)
        for task in TASKS
    ]  # fmt: skip
    rounds = max(1, round(math.exp(one.rinses[finish] + noise("rinses", 0.16))))
    plants = list(one.plants)
    plant = plants[min(int(dice.next() ** 2 * len(plants)), len(plants) - 1)]
    return Closed(
        ClosedJob(
            version=1,
            id=f"firm-{one.seed}-{number + 1}",
            closed_on=day.isoformat(),
            sprayed=tuple(sprayed),
            waits=tuple(waits),
            hours=tuple(hours),
            rinsed=(Rinsed(rounds, finish),),
            colour=(_colour(dice, plant, one.plants[plant] + noise("colour", 0.5)),),
            called_back=(CallBack("residue"),) if dice.next() < one.called_back else (),
        ),
        thirst,
    )


def _sprayed(
    one: Firm, dice: Dice, finish: Finish, drop_s: float, off: _Off
) -> tuple[list[Sprayed], tuple[float, ...]]:
    """Three to seven fields of one coat, planned by a sample that missed the floor by a little."""
    centre = one.coverage[finish] + _BY_DROPS * math.log(drop_s / 12.0) - off.thirst
    sample_off = 0.1 * one.widths["coverage"] * dice.tailed(1.0)
    people = list(one.rate)
    person = people[min(int(dice.next() ** 2 * len(people)), len(people) - 1)]
    wrong, slow = dice.odd(), dice.odd()
    fields, true = [], []
    for number in range(3 + int(dice.next() * 5)):
        area_m2 = dice.even(5.0, 60.0)
        own = dice.tailed(0.06)
        used_l = area_m2 / math.exp(centre) * math.exp(own)
        planned_l = area_m2 / math.exp(centre) * math.exp(-sample_off)
        minutes = area_m2 / math.exp(one.rate[person] - off.pace) * math.exp(0.05 * dice.normal())
        true.append(used_l / planned_l)
        fields.append(
            Sprayed(
                coat="coat-1",
                field=f"field-{number + 1}",
                area_m2=area_m2,
                used_l=used_l * wrong,
                planned_l=planned_l,
                sampled=True,
                finish=finish,
                drop_s=drop_s,
                person=person,
                spray_min=minutes * slow,
            )
        )
    return fields, tuple(true)


def _waits(dice: Dice, clock: ClockName, floor: float, room: float) -> Iterator[WaitSeen]:
    """One to three rooms, looked into now and then; one watching in ten is left unfinished."""
    wrong = dice.odd()
    for number in range(1 + int(dice.next() * 3)):
        share = math.exp(floor + dice.tailed(room)) * wrong
        every = share * dice.even(0.02, 0.25)
        first = math.ceil(share / every) * every
        if dice.next() < 0.1:
            yield WaitSeen(clock, first - every, ended=False, room=f"room {number}")
        else:
            yield WaitSeen(clock, first, since=max(first - every, 0.0), room=f"room {number}")


def _colour(dice: Dice, plant: str, steps: float) -> ColourSeen:
    """By half steps of the sample scale; one in five does not say how many."""
    halves = round(2 * abs(steps)) / 2
    told = dice.next() < 0.8
    if halves == 0:
        return ColourSeen("right", None, plant)
    return ColourSeen(
        "darker" if steps > 0 else "lighter", min(halves, 20.0) if told else None, plant
    )


def _hours_off() -> float:
    """What a power of the floor is off from a fixed part and the rest by area: mean of ln."""
    low, high = _AREAS_M2
    areas = [low + (high - low) * (n + 0.5) / 200 for n in range(200)]
    offs = [
        _HOURS_BY_AREA * math.log(a / _TYPICAL_M2) - math.log(0.2 + 0.8 * a / _TYPICAL_M2)
        for a in areas
    ]
    return math.fsum(offs) / len(offs)
