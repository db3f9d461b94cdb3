"""A planned day with its course in all cases: what every part of the fumes is told from."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.facts.settled import SettledJob
from farwall.job.acid_day.fumes.cases import Cases, cases
from farwall.job.acid_day.fumes.course import Course, course_of
from farwall.job.acid_day.fumes.ground_air import DayAir, day_air, rooms_of
from farwall.job.acid_day.fumes.laid import Patch, laid_of
from farwall.job.acid_day.fumes.noun import Range
from farwall.job.acid_day.ground import Ground
from farwall.job.lasting import lasting_of
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
WAYS = (("shut", 0), ("open", 0), ("open", 1), ("open", 3))
"""How a house can stand, and fans in windows, that are held beside each other."""
FREE_CHANGES_H = 200.0
"""Air that carries all off at once: then the film gives off the most."""


@dataclass(frozen=True)
class Day:
    """A day reckoned once: doubts, then the ways to let the house stand, then air without end."""

    ground: Ground
    settled: SettledJob
    patches: tuple[Patch, ...]
    air: DayAir
    tried: Cases
    changes_h: Array
    volume_m3: Array
    course: Course
    ways: tuple[tuple[str, int], ...]

    @property
    def share_to_air(self) -> Array:
        """Share of the acid laid that comes into the air, by case."""
        run = self.course.run
        share: Array = run.to_air_mol / np.maximum(self.laid_mol, 1e-12)
        return share

    @property
    def laid_mol(self) -> Array:
        """All acid that is laid, by case. [mol]"""
        run = self.course.run
        total: Array = run.to_air_mol + run.eaten_mol + run.left_mol
        return total

    @property
    def ends_min(self) -> float:
        """The last stroke."""
        return max(one.at_min + one.spray_min for one in self.patches)


def day_of(ground: Ground, settled: SettledJob, patches: tuple[Patch, ...]) -> Day:
    """The course of the day in every case. At least one patch."""
    air = day_air(lasting_of(settled, ground.weather), ground.job, ground.plan)
    ways = _ways(air)
    tried = cases(len(ways) + 1)
    changes = np.full(len(tried), air.air_changes_h)
    for n, (standing, fans) in enumerate(ways):
        changes[tried.first_extra + n] = air.changes_if(standing, fans)
    changes[-1] = FREE_CHANGES_H
    floor = ground.job.floor
    rooms = rooms_of(floor.rooms, floor.openings, tried, changes)
    where = {room.id: n for n, room in enumerate(floor.rooms)}
    laid, fate = laid_of(patches, settled, where, tried, water_m_s=air.water_m_s)
    course = course_of(laid, fate, rooms, tried, air)
    return Day(ground, settled, patches, air, tried, changes, rooms.volume_m3, course, ways)


def _ways(air: DayAir) -> tuple[tuple[str, int], ...]:
    """The usual ways and the one that was told, the least aired first."""
    own = (air.house.standing, air.house.fans)
    return tuple(sorted({*WAYS, own}, key=lambda way: air.changes_if(*way)))


def ranged(found: tuple[Array, Array, Array], n: int | None = None) -> Range:
    """Low, likely, high of one room, or of a figure of the whole house."""
    low, likely, high = (float(one if n is None else one[n]) for one in found)
    return Range(short(low), short(likely), short(high))


def short(value: float) -> float:
    """Three figures: more would boast."""
    return float(f"{value:.3g}")
