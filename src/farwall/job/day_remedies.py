"""What would make days possible that are not: heat in the house, or the first date that works."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from farwall.air.day import HourAtSlab
from farwall.air.foretold import Outdoors
from farwall.air.house import House as Standing
from farwall.air.limits import slab_verdict
from farwall.air.sealers import limits_of
from farwall.days.chain import Walked
from farwall.days.clock import PER_DAY, SLOT_MIN
from farwall.days.document import day_date
from farwall.days.hours import NEAR_DAYS, ahead_from, sealings
from farwall.days.nouns import Ahead, House, Question
from farwall.days.why import Lack, NoDays, first_chain
from farwall.days.words import date_words
from farwall.days.work_hours import WORK_FROM_MIN, WORK_UNTIL_MIN
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.job.day_houses import slab_hours, sunlit_hours
from farwall.job.site import HEATED_TO_C, house_of, kept_warm
from farwall.job.sunlight import sunlight_of
from farwall.units import f_from_c

MOST_W_M2 = 200.0
"""Heat for a square metre of floor beyond which nothing is offered: a guess."""
_YEAR_DAYS = 366
_HELD_K = 1.0
_VENTED = (
    "vented only: an unvented one brings water, soot and carbon monoxide, clouds sealer and can "
    "kill"
)


def with_remedies(
    no: NoDays, question: Question, jobs: Mapping[str, Job], weather: Outdoors
) -> Unanswerable:
    """The same no, with what stands against it by the weather, and what would make it a yes."""
    people = max(crew.people for crew in question.crews)
    reason, remedies = no.reason, []
    for lack in no.lacks[:3]:
        if lack.kind in {"long", "trade"}:
            continue
        job = jobs[lack.house.id]
        against = _against(question, lack, job, weather)
        reason += f" {against}" if against else ""
        several = f"{lack.house.name}: " if len(no.lacks) > 1 else ""
        found = [_heat(question, lack.house, job, weather, people),
                 _later(question, lack.house, job, weather, people)]  # fmt: skip
        remedies += [several + one for one in found]
    return Unanswerable(reason, remedies=remedies or no.remedies)


Found = tuple[list[Walked], tuple[HourAtSlab, ...]]


def heat_that_works(
    question: Question, house: House, job: Job, weather: Outdoors, *, people: int
) -> tuple[float, Found] | None:
    """Least whole kW that holds the house warm, with chain and hours then; None: none suffices."""

    def tried(heat_kw: float) -> Found | None:
        standing = kept_warm(job, heat_kw=heat_kw)
        ahead, hours = _hours(question, job, weather, standing, question.ahead.days)
        walked = first_chain(question, replace(house, ahead=ahead), people)
        return None if walked is None else (walked, hours)

    most = math.ceil(MOST_W_M2 * house_of(job).floor_m2 / 1000)
    best = tried(most)
    if best is None:
        return None
    holds = _held(question, best)
    low, high = 0, most
    while high - low > 1:
        middle = (low + high) // 2
        found = tried(middle)
        if found is None or (holds and not _held(question, found)):
            low = middle
        else:
            high, best = middle, found
    return float(high), best


def _lasting(question: Question, found: Found) -> tuple[datetime, datetime, datetime]:
    """Begin, first coat and end of a chain."""
    walked = found[0]
    coat = next(one for one in walked if one.step.place == "coat")
    begins, coats, ends = (
        question.ahead.begins + timedelta(minutes=slot * SLOT_MIN)
        for slot in (walked[0].start, coat.start, walked[-1].end)
    )
    return begins, coats, ends


def _during(question: Question, found: Found) -> list[HourAtSlab]:
    """The hours of a chain from its first coat on."""
    _, coats, ends = _lasting(question, found)
    return [one for one in found[1] if coats <= one.starts_at < ends]


def _held(question: Question, found: Found) -> bool:
    """Whether the heater holds its warmth from the first coat on."""
    coldest = min(one.conditions.air_c for one in _during(question, found))
    return coldest >= HEATED_TO_C - _HELD_K


def _heat(question: Question, house: House, job: Job, weather: Outdoors, people: int) -> str:
    found = heat_that_works(question, house, job, weather, people=people)
    if found is None:
        return (
            f"Heat alone does not help: with {MOST_W_M2:.0f} W/m² and {_both(HEATED_TO_C)} of air "
            "there is still no chain of days."
        )
    heat_kw, then = found
    begins, _, ends = _lasting(question, then)
    slabs = [one.conditions.surface_c for one in _during(question, then)]
    since = question.ahead.begins - timedelta(days=NEAR_DAYS)
    return (
        f"Heat the house to {_both(HEATED_TO_C)} from {date_words(since.date())} on, for a slab "
        f"warms slowly, with a heater of {heat_kw:.0f} kW or more ({_VENTED}). From the first coat "
        f"on the slab is then {_span(min(slabs), max(slabs))} (a guess: read it). Work "
        f"can begin on {date_words(begins.date())} and ends on {date_words(ends.date())}. Tell "
        f"site.heater_kw={heat_kw:.0f} and site.heater_vented=true in the job, and ask again."
    )


def _span(low_c: float, high_c: float) -> str:
    low, high = _both(low_c), _both(high_c)
    return low if low == high else f"{low} to {high}"


def _later(question: Question, house: House, job: Job, weather: Outdoors, people: int) -> str:
    days = _YEAR_DAYS + question.ahead.days
    ahead, _ = _hours(question, job, weather, kept_warm(job), days)
    walked = first_chain(question, replace(house, ahead=ahead), people)
    if walked is None:
        return "Waiting does not help: no date of the file has a chain of days without more heat."
    day = day_date(ahead, walked[0].start // PER_DAY)
    return (
        f"Or wait until {date_words(day)} {day.year}: the first date in the file on which all of "
        "it works without more heat."
    )


def _hours(
    question: Question, job: Job, weather: Outdoors, standing: Standing, days: int
) -> tuple[Ahead, tuple[HourAtSlab, ...]]:
    begins = question.ahead.begins
    hours = slab_hours(weather, standing, job.site.ground_c, first=begins, days=days)
    limits = limits_of(job.sealer)
    lit = sunlit_hours(sunlight_of(job, weather), hours)
    return ahead_from(hours, begins=begins, days=days, limits=limits, sunlit=lit), hours


def _against(question: Question, lack: Lack, job: Job, weather: Outdoors) -> str:
    """What stands against stain or sealer in the working hours, by kind and share."""
    if lack.step.place not in {"coat", "seal"}:
        return ""
    days = question.ahead.days
    _, hours = _hours(question, job, weather, kept_warm(job), days)
    first = round((question.ahead.begins - hours[0].starts_at) / timedelta(hours=1))
    inside = range(first, first + 24 * days)
    worked = [n for n in inside if WORK_FROM_MIN / 60 <= (n - first) % 24 < WORK_UNTIL_MIN / 60]
    kinds: Counter[str] = Counter()
    if lack.step.place == "coat":
        for n in worked:
            slab_c = hours[n].conditions.surface_c
            if slab_verdict(surface_c=slab_c).word == "no":
                kinds["slab too cold" if slab_c < HEATED_TO_C else "slab too warm"] += 1
        return _shares("stain", kinds, len(worked))
    told = sealings(hours, limits_of(job.sealer))
    for n in worked:
        if told[n].word == "no":
            kinds.update({one.partition(":")[0] for one in told[n].reasons})
    return _shares("sealer", kinds, len(worked))


def _shares(what: str, kinds: Counter[str], count: int) -> str:
    told: Iterator[str] = (f"{kind} {n / count * 100:.0f} %" for kind, n in kinds.most_common(4))
    words: Sequence[str] = list(told)
    if not words:
        return ""
    return f"Against {what} in the hours of work stand: {', '.join(words)}."


def _both(value_c: float) -> str:
    return f"{f_from_c(value_c):.0f} °F ({value_c:.0f} °C)"
