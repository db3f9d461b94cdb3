"""What every part of the acid day is reckoned from."""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.job.story.noun import Story


@dataclass(frozen=True)
class Ground:
    """A job's facts, its plan, the weather it was planned with; its log so far, and told anew."""

    job: Job
    plan: Plan
    weather: WeatherFile | Forecast | None = None
    story: Story | None = None
    kept: tuple[Kept, ...] = ()
