"""What has to be said beside a calendar: of sealers, young slabs, heaters, sun, watched waits,
long locks."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from datetime import datetime, timedelta

from farwall.air.foretold import Foretold, Outdoors
from farwall.days.nouns import Calendar, HouseDays
from farwall.days.practice import FIRST_COAT, LONG_LOCK_DAYS
from farwall.days.words import date_words
from farwall.days.work_hours import DAY_MIN
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.go.slab_rules import least_age_days
from farwall.job.site import HEATED_TO_C, heater_warnings, house_of
from farwall.job.sunlight import sunlight_of
from farwall.nouns import dataclass
from farwall.units import clock_words, f_from_c


@dataclass(frozen=True)
class _Case:
    told: HouseDays
    begins: datetime
    job: Job
    weather: Outdoors | None


def day_notes(
    calendar: Calendar, jobs: Mapping[str, Job], weather: Outdoors | None
) -> tuple[str, ...]:
    """A line for each thing, with the houses that it holds for where they are not all."""
    begins = calendar.question.ahead.begins
    cases = [_Case(one, begins, jobs[one.house.id], weather) for one in calendar.houses]
    houses: dict[str, list[str]] = {}
    for case in cases:
        for note in _of(case):
            houses.setdefault(note, []).append(case.told.house.name)
    us = all(one.wishes.units == "us" for one in jobs.values())
    told = _foretold(calendar, weather, us=us) if isinstance(weather, Foretold) else ()
    return *told, *(
        note if len(names) == len(cases) else f"{_named(names)}: {note}"
        for note, names in houses.items()
    )


def _foretold(calendar: Calendar, weather: Foretold, *, us: bool) -> Iterator[str]:
    """How old the forecast will be, how far it goes, and what stands after it."""
    begins = calendar.question.ahead.begins
    starts_min = min(one.steps[0].start_min for one in calendar.houses)
    age_h = weather.forecast.age_h(begins + timedelta(minutes=starts_min))
    ends = weather.ends_at.astimezone(begins.tzinfo)
    if age_h is None:
        issued = "It does not say when it was issued."
    elif age_h < 0:
        issued = "It is issued after the first step begins."
    else:
        issued = f"It will be {age_h:.0f} h old when the first step begins."
    after = (
        "each day is taken like the mean of its own days (a guess); with a weather file of a year "
        "beside it a typical year stands there"
        if weather.year is None
        else "a typical year stands, which foretells no day"
    )
    yield (
        f"The forecast goes until {date_words(ends)} {clock_words(ends, us=us)}. {issued} From its "
        f"end on {after}. Ask again with a new forecast before anybody is sent."
    )


def _named(names: list[str]) -> str:
    return ", ".join(names[:5]) + (f" and {len(names) - 5} more" if len(names) > 5 else "")


def _of(case: _Case) -> Iterator[str]:
    job = case.job
    if job.sealer.type is None:
        yield (
            "Which sealer is not told: the strictest limits of all types were taken, 12 h between "
            "its coats among them. Read its label, and tell its type among the facts."
        )
    yield from _another_day(case)
    yield from _young(case)
    yield from heater_warnings(job)
    if case.weather is not None:
        yield from _by_weather(case)
    yield from _watched(case.told)
    shut = case.told.steps[-1].end_min - case.told.steps[0].start_min
    if shut > LONG_LOCK_DAYS * DAY_MIN:
        yield (
            f"More than {LONG_LOCK_DAYS} days from the first step to the last: the weather leaves "
            "too few hours between. Warm the house and tell the heater's power, or begin later."
        )


def _first_coat(case: _Case) -> datetime:
    coat = next(one for one in case.told.steps if one.id == FIRST_COAT)
    return case.begins + timedelta(minutes=coat.start_min)


def _another_day(case: _Case) -> Iterator[str]:
    """The job tells the day of its first stroke, and this calendar lays it on another."""
    if not case.job.starts_at:
        return
    told = datetime.fromisoformat(case.job.starts_at).astimezone(case.begins.tzinfo)
    if told.date() != _first_coat(case).date():
        yield (
            "Coat 1 does not fall on the day that the job tells as its start, for which its run "
            "sheet is made: agree on one day, tell it, and plan anew."
        )


def _young(case: _Case) -> Iterator[str]:
    """Where stain would come on a slab that is younger than its sheet, or the texts, allow.

    The age is taken as of the day on which the job says that it starts, else of the first day.
    """
    age_days = case.job.survey.slab_age_days
    if age_days is None:
        return
    first = _first_coat(case)
    told = case.job.starts_at
    as_of = datetime.fromisoformat(told).date() if told else case.begins.date()
    least_days = least_age_days(case.job)
    then_days = age_days + (first.date() - as_of).days
    if then_days < least_days:
        old_enough = first + timedelta(days=math.ceil(least_days - then_days))
        yield (
            f"The slab is too young: about {then_days:.0f} days old at the first coat, and "
            f"{least_days:.0f} days are asked for. Begin so that no coat comes before "
            f"{date_words(old_enough)}; the stain's sheet wins."
        )


def _by_weather(case: _Case) -> Iterator[str]:
    if house_of(case.job).heat_kw:
        yield (
            f"The heater is taken to hold the air at {f_from_c(HEATED_TO_C):.0f} °F "
            f"({HEATED_TO_C:.0f} °C) as far as it can, ten days before the first one too (a guess)."
        )
    if sunlight_of(case.job, case.weather) is not None:
        yield (
            "Stain and sealer are held to the slab in the sun as well as to the shaded one "
            "(reckoned for a clear sky, a guess)."
        )


def _watched(told: HouseDays) -> Iterator[str]:
    waits = [one for each in told.house.waits.values() for one in each]
    learned = dict.fromkeys(one.name for one in waits if one.minutes.rank is Rank.LEARNED)
    if learned:
        yield f"By what was watched on this floor: {', '.join(learned)}."
