"""What every part of the office side is reckoned from."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from functools import cached_property
from typing import Any

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.facts.van import Van
from farwall.facts.wares import PriceList
from farwall.floor.takeoff import Takeoff, take_off
from farwall.floor.thresholds import join_thresholds
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.washing import WashDay
from farwall.job.story.noun import Story
from farwall.nouns import dataclass


@dataclass(frozen=True)
class OfficeGround:
    """A job's facts and plan; the van, price lists and lessons of the firm where they are at hand.

    on: the day of the question, ISO; empty: that of the plan's start · calendar: the firm's, as
    days.json has it.
    """

    job: Job
    plan: Plan
    weather: WeatherFile | Forecast | None = None
    story: Story | None = None
    kept: tuple[Kept, ...] = ()
    van: Van | None = None
    wares: PriceList | None = None
    lessons: Lessons | None = None
    on: str = ""
    calendar: dict[str, Any] | None = None

    @property
    def day(self) -> str:
        """The day of the question, ISO."""
        return self.on or self.plan.starts_at[:10]

    @cached_property
    def measured(self) -> Takeoff:
        """Areas and lengths of the floor, that under the doors counted, as the run sheet has it."""
        return take_off(join_thresholds(self.job.floor))

    @cached_property
    def acid(self) -> AcidDay:
        """The acid day of the job, reckoned once."""
        from farwall.job.acid_day.day import acid_day

        return acid_day(self.acid_ground)

    @cached_property
    def washing(self) -> WashDay:
        """The wash day alone, which needs no fumes and no pours."""
        from farwall.job.acid_day.washing import washing_of

        return washing_of(self.acid_ground)

    @property
    def acid_ground(self) -> Ground:
        """The same facts, as the acid day takes them."""
        return Ground(self.job, self.plan, self.weather, self.story, self.kept)


def handed_over_on(ground: OfficeGround) -> date | None:
    """The day of hand-over as the log has it; None without a log, or before."""
    last = ground.story.last("handed-over") if ground.story is not None else None
    if last is None:
        return None
    return (datetime.fromisoformat(ground.plan.starts_at) + timedelta(minutes=last.at_min)).date()
