"""What every part of the acid day is reckoned from."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.story.noun import Story


@dataclass(frozen=True)
class Ground:
    """The facts of a job, its plan, the weather that it was planned with, and its log so far."""

    job: Job
    plan: Plan
    weather: WeatherFile | Forecast | None = None
    story: Story | None = None
