"""What every part of the acid day is reckoned from."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plan import Plan


@dataclass(frozen=True)
class Ground:
    """The facts of a job, its plan, the weather that it was planned with, its log so far."""

    job: Job
    plan: Plan
    weather: WeatherFile | Forecast | None = None
    kept: tuple[Kept, ...] = ()
