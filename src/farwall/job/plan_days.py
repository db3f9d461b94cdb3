"""Jobs in, their calendar out: the question put together, answered, and read by the checker."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta, timezone, tzinfo
from typing import Any

from farwall.air.day import LAG_H, Readings, hours_at_slab, typed_conditions
from farwall.air.weather import WeatherFile
from farwall.days.calendar import calendar
from farwall.days.changes import Change, changes, held_to
from farwall.days.check import DayFault, check_days
from farwall.days.document import document
from farwall.days.hours import NEAR_DAYS, ahead_from, hour_ahead, mild, with_rain
from farwall.days.nouns import Ahead, Away, Calendar, DayCrew, House, Question
from farwall.evidence import Rank
from farwall.facts.default_table import STARTS_AT
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.floor.takeoff import take_off
from farwall.job.lessons import labour_of

_LEAST_DAYS, _SPARE_DAYS, _DAYS_PER_HOUSE = 60, 45, 8


@dataclass(frozen=True)
class Ask:
    """How the calendar is asked for. Dates are those of the site.

    away: house id, trade and date; rain: dates. `free`, `due`: dates by house id.
    """

    begins: date | None = None
    crews: int = 1
    people: int = 2
    days: int | None = None
    rain: tuple[date, ...] = ()
    away: tuple[tuple[str, str, date], ...] = ()
    free: Mapping[str, date] = field(default_factory=dict)
    due: Mapping[str, date] = field(default_factory=dict)
    exact_s: float = 20.0


@dataclass(frozen=True)
class Answer:
    """The calendar, as nouns and as plain JSON, its faults, and what moved against the first one.

    `first` is the calendar without rain and other trades; None when neither was asked about.
    """

    calendar: Calendar
    document: dict[str, Any]
    faults: tuple[DayFault, ...]
    changes: tuple[Change, ...] = ()
    first: Calendar | None = None


def plan_days(
    jobs: Sequence[Job],
    ask: Ask,
    *,
    weather: WeatherFile | None = None,
    lessons: Lessons | None = None,
) -> Answer:
    """The calendar of `jobs`, its hours as closed jobs taught them where there are lessons.

    Raises `Refused` and `Unanswerable` as `days.solve.settle`.
    """
    plain = question_of(jobs, ask, weather=weather, lessons=lessons)
    asked = bool(ask.rain or ask.away)
    first = calendar(plain, exact_s=ask.exact_s)
    then = first
    moved: tuple[Change, ...] = ()
    if asked:
        begins = plain.ahead.begins.date()
        rainy = [(day - begins).days for day in ask.rain]
        question = replace(
            held_to(plain, first),
            ahead=with_rain(plain.ahead, rainy),
            away=tuple(Away(house, who, (day - begins).days) for house, who, day in ask.away),
        )
        then = calendar(question, exact_s=ask.exact_s)
        moved = tuple(changes(first, then))
    told = document(then)
    return Answer(then, told, tuple(check_days(told)), moved, first if asked else None)


def question_of(
    jobs: Sequence[Job],
    ask: Ask,
    *,
    weather: WeatherFile | None = None,
    lessons: Lessons | None = None,
) -> Question:
    """Houses, crews and the hours ahead; without rain or other trades."""
    ids = house_ids(jobs)
    offset = _offset(jobs, weather)
    begins = ask.begins or first_day(jobs)
    midnight = datetime.combine(begins, datetime.min.time(), offset)
    days = ask.days or max(
        _LEAST_DAYS, _DAYS_PER_HOUSE * len(jobs) // max(ask.crews, 1) + _SPARE_DAYS
    )
    labour = labour_of(lessons)
    houses = tuple(
        House(
            id=name,
            name=job.name or name,
            area_m2=take_off(job.floor).net_m2,
            coats=max(1, len(stains_and_coats(job)[1])),
            free_from_day=max(0, (ask.free.get(name, begins) - begins).days),
            due_day=(ask.due[name] - begins).days if name in ask.due else None,
            labour_h=labour,
        )
        for name, job in zip(ids, jobs, strict=True)
    )
    crews = tuple(DayCrew(f"crew {n}", ask.people) for n in range(1, ask.crews + 1))
    return Question(houses, crews, _ahead(jobs, midnight, days, weather))


def house_ids(jobs: Sequence[Job]) -> list[str]:
    """The id of each job; where it has none its name, or its number."""
    return [job.id or job.name or f"job-{n}" for n, job in enumerate(jobs, 1)]


def first_day(jobs: Sequence[Job]) -> date:
    """The earliest start that a job tells, else a Monday that is plainly nobody's."""
    told = [datetime.fromisoformat(job.starts_at).date() for job in jobs if job.starts_at]
    return min(told, default=datetime.fromisoformat(STARTS_AT).date())


def _offset(jobs: Sequence[Job], weather: WeatherFile | None) -> tzinfo | None:
    for job in jobs:
        if job.starts_at:
            return datetime.fromisoformat(job.starts_at).tzinfo
    if weather is not None:
        return timezone(timedelta(hours=weather.place.utc_offset_h))
    return datetime.fromisoformat(STARTS_AT).tzinfo


def _ahead(
    jobs: Sequence[Job], midnight: datetime, days: int, weather: WeatherFile | None
) -> Ahead:
    if weather is not None:
        around = timedelta(days=NEAR_DAYS)
        hours = weather.weather(
            starts_at=midnight - around, hours=24 * (days + 2 * NEAR_DAYS), before_h=LAG_H
        )
        return ahead_from(hours_at_slab(hours), begins=midnight, days=days)
    survey = jobs[0].survey if len(jobs) == 1 else None
    if survey is None or (survey.slab_c is None and survey.air_c is None):
        return mild(midnight, days)
    # One house and no weather: what was read there is taken to last, and says so.
    now, _ = typed_conditions(
        Readings(survey.slab_c, survey.air_c, survey.rh_percent, survey.air_speed_m_s)
    )
    return Ahead(
        midnight,
        (hour_ahead(now),) * (24 * days),
        Rank.GUESS,
        "the survey's readings, taken to last for days",
    )
