"""Jobs in, their calendar out: the question put together, answered, and read by the checker."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from datetime import date, datetime, timedelta, timezone, tzinfo
from typing import Any

from farwall.air.foretold import Foretold, Outdoors
from farwall.air.weather import hour_words
from farwall.days.calendar import calendar
from farwall.days.changes import Change, changes, held_to
from farwall.days.check import DayFault, check_days
from farwall.days.document import document
from farwall.days.hours import rained_on
from farwall.days.moved_why import why_moved
from farwall.days.nouns import Away, Calendar, DayCrew, Question
from farwall.days.why import NoDays
from farwall.errors import Mistake, Refused
from farwall.facts.default_table import STARTS_AT
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.job.day_houses import When, houses_and_hours
from farwall.job.day_notes import day_notes
from farwall.job.day_remedies import with_remedies
from farwall.job.lessons import labour_of
from farwall.job.say_moved import said_why
from farwall.nouns import dataclass

_LEAST_DAYS, _SPARE_DAYS, _DAYS_PER_HOUSE = 60, 45, 8


@dataclass(frozen=True)
class Ask:
    """How the calendar is asked for. Dates are those of the site.

    zone: its time zone with its summer time; the offset of the first job when left out.
    away: house id, trade and date; rain: dates. `free`, `due`: dates by house id.
    coats_from: by house id when its coats begin by a plan, in order; no coat is laid earlier.
    """

    begins: date | None = None
    crews: int = 1
    people: int = 2
    days: int | None = None
    rain: tuple[date, ...] = ()
    away: tuple[tuple[str, str, date], ...] = ()
    free: Mapping[str, date] = field(default_factory=dict)
    due: Mapping[str, date] = field(default_factory=dict)
    coats_from: Mapping[str, tuple[datetime, ...]] = field(default_factory=dict)
    exact_s: float = 20.0
    zone: tzinfo | None = None


@dataclass(frozen=True)
class Answer:
    """The calendar, as nouns and as plain JSON, its faults, and what moved against the first one.

    `first` is the calendar without rain and other trades; None when neither was asked about.
    `notes`: what has to be said beside it; in the document as well, and why each house moved.
    """

    calendar: Calendar
    document: dict[str, Any]
    faults: tuple[DayFault, ...]
    changes: tuple[Change, ...] = ()
    first: Calendar | None = None
    notes: tuple[str, ...] = ()


def plan_days(
    jobs: Sequence[Job],
    ask: Ask,
    *,
    weather: Outdoors | None = None,
    lessons: Lessons | None = None,
) -> Answer:
    """The calendar of `jobs`, hours and waits as closed jobs taught them where they did.

    Raises `Refused` and `Unanswerable` as `days.solve.settle`. With weather a no comes with the
    heat, or the date, that would make it a yes, where the weather is that of a year.
    """
    plain = question_of(jobs, ask, weather=weather, lessons=lessons)
    asked = bool(ask.rain or ask.away)
    by_id = dict(zip(house_ids(jobs), jobs, strict=True))
    try:
        first = calendar(plain, exact_s=ask.exact_s)
    except NoDays as no:
        if weather is None or (isinstance(weather, Foretold) and weather.year is None):
            raise  # of other days nothing is known that could be offered
        raise with_remedies(no, plain, by_id, weather) from no
    then = first
    moved: tuple[Change, ...] = ()
    if asked:
        begins = plain.ahead.begins.date()
        rainy = [(day - begins).days for day in ask.rain]
        question = replace(
            rained_on(held_to(plain, first), rainy),
            away=tuple(Away(house, who, (day - begins).days) for house, who, day in ask.away),
        )
        then = calendar(question, exact_s=ask.exact_s)
        moved = tuple(changes(first, then))
    notes = day_notes(then, by_id, weather)
    told = document(then) | {"notes": list(notes)}
    if asked:
        told["moved"] = _moved(first, then, moved)
    return Answer(then, told, tuple(check_days(told)), moved, first if asked else None, notes)


def _moved(first: Calendar, then: Calendar, moved: Sequence[Change]) -> list[dict[str, Any]]:
    """Why each house moved that did, in sentences, as days.json has them."""
    ahead = then.question.ahead
    return [
        {"house": one.house.house.id, "why": said_why(why_moved(first, then, one), ahead)}
        for one in moved
        if not one.stays
    ]


def question_of(
    jobs: Sequence[Job],
    ask: Ask,
    *,
    weather: Outdoors | None = None,
    lessons: Lessons | None = None,
) -> Question:
    """Houses, crews and the hours ahead; without rain or other trades."""
    ids = house_ids(jobs)
    offset = ask.zone or _offset(jobs, weather)
    begins = ask.begins or first_day(jobs)
    midnight = datetime.combine(begins, datetime.min.time(), offset)
    days = ask.days or max(
        _LEAST_DAYS, _DAYS_PER_HOUSE * len(jobs) // max(ask.crews, 1) + _SPARE_DAYS
    )
    if isinstance(weather, Foretold):
        us = all(one.wishes.units == "us" for one in jobs)
        in_time(weather, midnight, days, us=us)
    when = When(midnight, days, weather, ask.free, ask.due, lessons, ask.coats_from)
    houses, ahead = houses_and_hours(jobs, ids, when)
    labour = labour_of(lessons)
    if labour:
        houses = tuple(replace(house, labour_h=labour) for house in houses)
    crews = tuple(DayCrew(f"crew {n}", ask.people) for n in range(1, ask.crews + 1))
    return Question(houses, crews, ahead)


def in_time(weather: Foretold, midnight: datetime, days: int, *, us: bool) -> None:
    """Raises `Refused` for a forecast that holds no hour of the calendar, such as an old one.

    us: its hours are told by am and pm.
    """
    starts_at, ends_at = weather.forecast.starts_at, weather.ends_at
    if starts_at < midnight + timedelta(days=days) and ends_at > midnight:
        return
    raise Refused(
        Mistake(
            "weather",
            f"The forecast goes from {hour_words(starts_at, us=us)} to "
            f"{hour_words(ends_at, us=us)}; "
            f"the calendar begins on {midnight:%Y-%m-%d}.",
            "Fetch a forecast of these days, or begin within it.",
        )
    )


def house_ids(jobs: Sequence[Job]) -> list[str]:
    """The id of each job; where it has none its name, or its number."""
    return [job.id or job.name or f"job-{n}" for n, job in enumerate(jobs, 1)]


def first_day(jobs: Sequence[Job]) -> date:
    """The earliest start that a job tells, else a Monday that is plainly nobody's."""
    told = [datetime.fromisoformat(job.starts_at).date() for job in jobs if job.starts_at]
    return min(told, default=datetime.fromisoformat(STARTS_AT).date())


def _offset(jobs: Sequence[Job], weather: Outdoors | None) -> tzinfo | None:
    for job in jobs:
        if job.starts_at:
            return datetime.fromisoformat(job.starts_at).tzinfo
    if isinstance(weather, Foretold):
        return weather.forecast.starts_at.tzinfo
    if weather is not None:
        return timezone(timedelta(hours=weather.place.utc_offset_h))
    return datetime.fromisoformat(STARTS_AT).tzinfo
