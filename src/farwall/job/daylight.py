"""Until when there is light, for a crew that judges wet edges by eye: sunset within ten minutes.

Declination and the equation of time by their usual short formulas [from-memory], horizon at
-0.83 degrees. A test holds it to the sun of `air.sun`. Pure, and quick enough for every tap.

The hours of a working day are those of the calendar (`days.work_hours`, a guess): a coat that
would go on past them waits for a morning, unless the job tells its hour.
"""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta

from farwall.days.work_hours import DAY_MIN, EVENING_MIN, NOON_MIN, WORK_FROM_MIN
from farwall.facts.job import Job
from farwall.nouns import dataclass

_HORIZON = math.radians(-0.833)


def sunset(day: datetime, *, latitude_deg: float, longitude_deg: float) -> datetime | None:
    """The moment of sunset on the day of `day` (with offset), in that offset.

    None where the sun does not set or does not rise on that day. North and east positive.
    """
    number = day.timetuple().tm_yday
    declination = math.radians(23.45) * math.sin(2 * math.pi * (284 + number) / 365)
    b = 2 * math.pi * (number - 81) / 364
    equation_min = 9.87 * math.sin(2 * b) - 7.53 * math.cos(b) - 1.5 * math.sin(b)
    latitude = math.radians(latitude_deg)
    cosine = (math.sin(_HORIZON) - math.sin(latitude) * math.sin(declination)) / (
        math.cos(latitude) * math.cos(declination)
    )
    if not -1 < cosine < 1:
        return None
    minutes = 720 + 4 * math.degrees(math.acos(cosine)) - 4 * longitude_deg - equation_min
    noon_utc = datetime(day.year, day.month, day.day, tzinfo=UTC)
    return (noon_utc + timedelta(minutes=minutes)).astimezone(day.tzinfo)


@dataclass(frozen=True)
class LightEnds:
    """The last minute of a plan with light on one day; sun: whether the sun sets then."""

    at_min: float
    sun: bool


@dataclass(frozen=True)
class Daylight:
    """The light of the days of a plan. Minutes count from `starts_at`, which has its offset.

    Where no place is told, a day has light until the evening of the calendar.
    """

    starts_at: datetime
    latitude_deg: float | None = None
    longitude_deg: float | None = None

    def ends(self, at_min: float) -> LightEnds:
        """Until when there is light on the day of a minute: evening, or sunset where sooner."""
        day_min = at_min - self.of_day(at_min)
        set_min = self._sunset(at_min)
        if set_min is not None and NOON_MIN < set_min - day_min < EVENING_MIN:
            return LightEnds(set_min, sun=True)
        return LightEnds(day_min + EVENING_MIN, sun=False)

    def holds(self, begins_min: float, lasts_min: float) -> bool:
        """Whether work of that length lies in the light of one day."""
        early = self.of_day(begins_min) < min(self._own_hour, WORK_FROM_MIN)
        return not early and begins_min + lasts_min <= self.ends(begins_min).at_min

    def begins(self, free_min: float, lasts_min: float) -> float:
        """When work may begin that is free to from a minute on: then, or on a morning after.

        A morning is the plan's own hour where that lies before noon and leaves light enough, else
        7:30. What is longer than any day's light begins on the first morning.
        """
        if self.holds(free_min, lasts_min):
            return free_min
        own = self._own_hour if self._own_hour <= NOON_MIN else WORK_FROM_MIN
        mornings = [self._next(free_min, hour) for hour in (own, WORK_FROM_MIN)]
        return next((at for at in mornings if self.holds(at, lasts_min)), min(mornings))

    def coat_begins(self, free_min: float, lasts_min: float, not_before: str | None) -> float:
        """When a coat begins that is free to from a minute on and lasts about so long.

        not_before: a moment with offset that the job tells. Who tells an hour without light has
        seen to lamps.
        """
        told = self.minute(not_before)
        if told is None:
            return self.begins(free_min, lasts_min)
        begins = max(free_min, told)
        return self.begins(begins, lasts_min) if self.holds(told, lasts_min) else begins

    def minute(self, moment: str | None) -> float | None:
        """A moment with offset as a minute of the plan, at least 0; None where none is told."""
        if moment is None:
            return None
        told = (datetime.fromisoformat(moment) - self.starts_at).total_seconds() / 60
        return max(round(told, 1), 0.0)

    def of_day(self, at_min: float) -> float:
        """Minutes since midnight on the wall."""
        return (self._own_hour + at_min) % DAY_MIN

    @property
    def _own_hour(self) -> float:
        at = self.starts_at
        return at.hour * 60.0 + at.minute + at.second / 60

    def _next(self, free_min: float, hour_min: float) -> float:
        return free_min + (hour_min - self.of_day(free_min)) % DAY_MIN

    def _sunset(self, at_min: float) -> float | None:
        if self.latitude_deg is None or self.longitude_deg is None:
            return None
        day = self.starts_at + timedelta(minutes=at_min)
        found = sunset(day, latitude_deg=self.latitude_deg, longitude_deg=self.longitude_deg)
        return None if found is None else (found - self.starts_at).total_seconds() / 60


def daylight_of(job: Job, starts_at: str) -> Daylight:
    """The light of a job's days; by the sun only where the job tells its own start."""
    return Daylight(datetime.fromisoformat(starts_at), *(sun_of(job) or (None, None)))


def sun_of(job: Job) -> tuple[float, float] | None:
    """Latitude and longitude by which the sun sets on a job's days; None where that is not told."""
    latitude, longitude = job.place.latitude_deg, job.place.longitude_deg
    if job.starts_at is None or latitude is None or longitude is None:
        return None
    return latitude, longitude
