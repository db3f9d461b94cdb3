"""Person-hours of the job, task by task, with their ranges."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking import Masked
from farwall.units import M2_PER_FT2, M_PER_FT


@dataclass(frozen=True)
class TaskHours:
    """A task: person-hours low, likely, high; the rule that says so, its rank and source."""

    task: str
    low_h: float
    likely_h: float
    high_h: float
    rule: str
    rank: str
    source: str


@dataclass(frozen=True)
class Hours:
    """All tasks in their order."""

    tasks: tuple[TaskHours, ...]
    warnings: tuple[str, ...] = ()

    @property
    def likely_h(self) -> float:
        """Person-hours in all, most likely."""
        return sum(one.likely_h for one in self.tasks)


_A_M2 = (
    ("clean before staining", 80, 150, 250),
    ("neutralise, scrub and rinse", 50, 90, 150),
)
"""Square feet a person-hour, low, usual, high [common-practice]."""
_A_M = (40, 65, 100)
"""Feet of wall masked a person-hour [common-practice]."""


def hours_of(ground: OfficeGround, masked: Masked) -> Hours:
    """Hours by area and by wall, as practice has them."""
    wall_ft, area_ft2 = masked.wall_m / M_PER_FT, ground.measured.net_m2 / M2_PER_FT2
    tasks = [_task("mask", wall_ft, _A_M, "ft of wall")]
    tasks += [
        _task(name, area_ft2, (low, usual, high), "ft² of floor")
        for name, low, usual, high in _A_M2
    ]
    return Hours(tuple(tasks))


def _task(name: str, much: float, pace: tuple[float, float, float], unit: str) -> TaskHours:
    low, usual, high = pace
    rule = f"{much:.0f} {unit} at {low:g} to {high:g} an hour"
    return TaskHours(
        name, much / high, much / usual, much / low, rule, Rank.PRACTICE.value, PRACTICE
    )


def hours_said(found: Hours) -> tuple[str, ...]:
    """Lines for a terminal."""
    return tuple(
        f"{one.task}: {one.likely_h:.1f} h ({one.low_h:.1f} to {one.high_h:.1f})"
        for one in found.tasks
    )
