"""The houses of a calendar: what each job tells of its floor, its waits, its sealer, its hours."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta

from farwall.air.day import LAG_H, HourAtSlab, Readings, hours_at_slab, typed_conditions
from farwall.air.foretold import Foretold, Outdoors
from farwall.air.house import House as Standing
from farwall.air.sealers import SealerLimits, limits_of
from farwall.air.waits import Wait as FloorWait
from farwall.air.weather import WeatherFile
from farwall.days.hours import NEAR_DAYS, ahead_from, hour_ahead, mild
from farwall.days.nouns import Ahead, House, Wait
from farwall.days.waits import spanned, waits_of
from farwall.evidence import Rank, Span
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.floor.takeoff import take_off
from farwall.job.lasting import Lasting
from farwall.job.lessons import with_lessons
from farwall.job.patches import planned_floor
from farwall.job.site import kept_warm
from farwall.job.sun_slab import sun_warmth
from farwall.job.sunlight import Sunlight, sunlight_of
from farwall.job.waits import Waits
from farwall.nouns import dataclass


@dataclass(frozen=True)
class When:
    """Midnight of the first day, so many days, the weather, dates by house id, lessons.

    coats_from: by house id when its coats begin, in order, on the clock of the site.
    """

    midnight: datetime
    days: int
    weather: Outdoors | None = None
    free: Mapping[str, date] | None = None
    due: Mapping[str, date] | None = None
    lessons: Lessons | None = None
    coats_from: Mapping[str, Sequence[datetime]] | None = None


def houses_and_hours(
    jobs: Sequence[Job], ids: Sequence[str], when: When
) -> tuple[tuple[House, ...], Ahead]:
    """Each job as a house, and the hours of the first; who has other hours carries them along."""
    aheads = _Aheads(jobs, when)
    shared = aheads.of(jobs[0])
    houses = []
    for name, job in zip(ids, jobs, strict=True):
        own = aheads.of(job)
        houses.append(
            replace(_house(job, name, when, aheads.slab(job)), ahead=None if own is shared else own)
        )
    return tuple(houses), shared


def _house(job: Job, name: str, when: When, hours: tuple[HourAtSlab, ...]) -> House:
    limits = limits_of(job.sealer)
    waits = job_waits(job, limits, hours=hours, lessons=when.lessons)
    begins, midnight = when.midnight.date(), when.midnight.replace(tzinfo=None)
    due = (when.due or {}).get(name)
    return House(
        id=name,
        name=job.name or name,
        area_m2=take_off(planned_floor(job)).net_m2,
        coats=sum(step.startswith("coat-") for step in waits) + 1,
        free_from_day=max(0, ((when.free or {}).get(name, begins) - begins).days),
        due_day=None if due is None else (due - begins).days,
        seal_coats=limits.coats,
        waits=waits,
        not_before_min=tuple(
            (f"coat-{n}", (at.replace(tzinfo=None) - midnight).total_seconds() / 60)
            for n, at in enumerate((when.coats_from or {}).get(name, ()), start=1)
        ),
    )


def job_waits(
    job: Job,
    limits: SealerLimits,
    *,
    hours: tuple[HourAtSlab, ...] = (),
    lessons: Lessons | None = None,
) -> dict[str, tuple[Wait, ...]]:
    """What each step of this job waits for, after what was watched on its floor and how it is laid.

    hours: where a sighting tells no air or slab, that of the job's first hour in these is taken,
    as its clocks do. What was watched is carried over to the pace of that hour, as in a plan.
    lessons: what the firm's closed jobs taught, as a plan takes them.
    """
    settled = with_lessons(settle(job), lessons)
    clocks = Waits(Lasting(settled, hours))
    coats = settled.coats

    def worth(wait: FloorWait, n: int) -> Span:
        coat = coats[n - 1]
        firm = settled.firm_waits.get(wait.name)
        if firm is None and not job.seen:
            return spanned(wait, None, m2_per_l=coat.m2_per_l)
        found = clocks.factor(wait, coat, clocks.pace(wait, 0.0))
        jobs = 0 if firm is None else firm.jobs
        return spanned(wait, found, m2_per_l=coat.m2_per_l, jobs=jobs)

    return waits_of(len(coats), limits.coats, worth, limits)


class _Aheads:
    """Hours by what they depend on, each reckoned once."""

    def __init__(self, jobs: Sequence[Job], when: When) -> None:
        self.when = when
        self.alone = len(jobs) == 1
        self._slabs: dict[object, tuple[HourAtSlab, ...]] = {}
        self._aheads: dict[object, Ahead] = {}

    def of(self, job: Job) -> Ahead:
        sunlight = None if self.when.weather is None else sunlight_of(job, self.when.weather)
        windows = None if sunlight is None else id(job)  # its windows are nobody else's
        key = (_standing_key(job), limits_of(job.sealer), self.alone, windows)
        if key not in self._aheads:
            self._aheads[key] = self._ahead(job, sunlight)
        return self._aheads[key]

    def slab(self, job: Job) -> tuple[HourAtSlab, ...]:
        """Slab and air hour by hour from `NEAR_DAYS` before the first day; nothing, no weather."""
        weather, when = self.when.weather, self.when
        if weather is None:
            return ()
        key = _standing_key(job)
        if key not in self._slabs:
            self._slabs[key] = slab_hours(
                weather, kept_warm(job), job.site.ground_c, first=when.midnight, days=when.days
            )
        return self._slabs[key]

    def _ahead(self, job: Job, sunlight: Sunlight | None) -> Ahead:
        when, limits = self.when, limits_of(job.sealer)
        if when.weather is not None:
            hours = self.slab(job)
            return ahead_from(
                hours, begins=when.midnight, days=when.days, limits=limits,
                sunlit=sunlit_hours(sunlight, hours), told_by=told_by(when.weather),
                years=not _only_foretold(when.weather),
            )  # fmt: skip
        survey = job.survey
        if not self.alone or (survey.slab_c is None and survey.air_c is None):
            return mild(when.midnight, when.days)
        # One house and no weather: what was read there is taken to last, and says so.
        now, _ = typed_conditions(
            Readings(survey.slab_c, survey.air_c, survey.rh_percent, survey.air_speed_m_s)
        )
        return Ahead(
            when.midnight,
            (hour_ahead(now, limits),) * (24 * when.days),
            Rank.GUESS,
            "the survey's readings, taken to last for days",
        )


def told_by(weather: Outdoors) -> str:
    """What the hours come from, in words."""
    if isinstance(weather, WeatherFile):
        return "weather file"
    return "forecast" if weather.year is None else "forecast, weather file"


def _only_foretold(weather: Outdoors) -> bool:
    return isinstance(weather, Foretold) and weather.year is None


def slab_hours(
    weather: Outdoors,
    house: Standing,
    ground_c: float | None,
    *,
    first: datetime,
    days: int,
) -> tuple[HourAtSlab, ...]:
    """Slab and air of a house, with `NEAR_DAYS` before the first day and after the last."""
    around = timedelta(days=NEAR_DAYS)
    hours = weather.weather(
        starts_at=first - around, hours=24 * (days + 2 * NEAR_DAYS), before_h=LAG_H
    )
    ground = weather.mean_air_c if ground_c is None else ground_c
    return hours_at_slab(hours, house=house, before_h=LAG_H, ground_c=ground)


def sunlit_hours(
    sunlight: Sunlight | None, hours: Sequence[HourAtSlab]
) -> list[tuple[HourAtSlab, ...]]:
    """The hours in each room that the sun reaches, its path looked at once a week."""
    warmth = sun_warmth(sunlight, hours[0].starts_at, len(hours))
    return list(warmth.hours(hours).values())


def _standing_key(job: Job) -> tuple[Standing, float | None]:
    house = kept_warm(job)
    if not house.fans and not house.heat_kw:
        house = replace(house, floor_m2=1.0)  # its size moves nothing then
    return house, job.site.ground_c
