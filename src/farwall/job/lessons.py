"""Lessons put to work in a job: what closed jobs taught stands where the job tells nothing.

A lesson wins over common practice and guesses. It loses to what was measured or told on this job: a
sampled coverage, a timed sheen, a told spray rate, a told spread.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from farwall.air.learned import Spread
from farwall.evidence import Rank, Span
from farwall.facts.job import Job
from farwall.facts.lessons import Lesson, Lessons, learned_from
from farwall.facts.plan import Ground
from farwall.facts.settled import FirmWait, SettledCoat, SettledJob
from farwall.learn.kinds import (
    CLOCK,
    CONSUMPTION,
    COVERAGE,
    ROOMS_WATCHED,
    SPRAY_RATE,
    TASK_HOURS,
    TYPICAL_HOURS,
)
from farwall.learn.spreads import CLOCK_SPREADS, ROOMS
from farwall.learn.told import coverage_path

_UNSURE = {Rank.PRACTICE.value, Rank.GUESS.value}
_RATE = "tools.spray_m2_min"
_SPREAD = "wishes.spread_percent"
_TIP = "what the tip lets through"

_END = 1.2815515655446004
"""90 % point of the standard normal."""

STEPS: dict[str, tuple[tuple[str, float], ...]] = {
    "clean": (("protect", 1.0), ("clean", 1.0)),
    "mask": (("mask", 1.0),),
    "coat": (("coat", 0.5),),
    "neutralise": (("judge", 1.0), ("neutralise", 1.0), ("rinse", 1.0)),
    "seal": (("seal", 0.5),),
    "finish": (("finish", 1.0),),
    "hand-over": (("hand-over", 1.0),),
}
"""Steps of the calendar, from tasks of the log; usual are two coats of stain, two of sealer."""


def with_lessons(settled: SettledJob, lessons: Lessons | None, *, person: str = "") -> SettledJob:
    """The settled job with what closed jobs taught where it rested on practice or a guess.

    person: who sprays, for the spray rate; the firm's own when not told. Each figure that is taken
    stands in `grounds` with rank `learned` and "learned from N jobs". Without lessons the
    very same job comes back.
    """
    if lessons is None or not lessons.lessons:
        return settled
    taught: dict[str, Ground] = {}
    told_spread = settled.job.wishes.spread_percent is not None
    coats = tuple(
        _coat(number, coat, settled.job, lessons, taught, keep_spread=told_spread)
        for number, coat in enumerate(settled.coats, 1)
    )
    spread_percent = settled.spread_percent
    if not told_spread and any(coat.field_share is not None for coat in coats):
        spread_percent = max(coat.spread_percent for coat in coats)
        sources = [taught[f"coats.{coat.id}.spread_percent"].source for coat in coats
                   if f"coats.{coat.id}.spread_percent" in taught]  # fmt: skip
        taught[_SPREAD] = _ground(_SPREAD, spread_percent, "%", sources[0])
    tools = replace(
        settled.tools, spray_m2_min=_spray_m2_min(settled, coats, lessons, person, taught)
    )
    waits = dict(_waits(lessons))
    for clock, wait in waits.items():
        name = f"usual wait, {clock}"
        taught[name] = _ground(name, wait.usual, "times the usual", learned_from(wait.jobs))
    return replace(
        settled,
        coats=coats,
        tools=tools,
        spray_rate_spread=_rate_spread(taught, lessons, person),
        spread_percent=spread_percent,
        firm_waits=waits,
        grounds=(
            *(taught.pop(one.name, one) for one in settled.grounds),
            *taught.values(),
        ),
    )


def _coat(
    number: int,
    coat: SettledCoat,
    job: Job,
    lessons: Lessons,
    taught: dict[str, Ground],
    *,
    keep_spread: bool,
) -> SettledCoat:
    """The coat with its coverage and its spread, where they were taught."""
    sampled = any(one.m2_per_l is not None for one in coat.samples)
    found: Lesson | None
    if coat.rank in _UNSURE:
        found = lessons.find(COVERAGE[min(number, 2) - 1], *path_of(job))
        if found is not None:
            name = f"coats.{coat.id}.m2_per_l"
            taught[name] = _ground(name, found.likely, "m2/L", _said(found))
            coat = replace(
                coat, m2_per_l=found.likely, l_per_m2=1 / found.likely, rank=Rank.LEARNED.value
            )
    else:
        found = lessons.find(CONSUMPTION[0 if sampled else 1])
    if found is None or keep_spread or found.spread_percent is None:
        return coat
    name = f"coats.{coat.id}.spread_percent"
    taught[name] = _ground(name, found.spread_percent, "%", _said(found))
    return replace(coat, spread_percent=found.spread_percent, field_share=found.field_share)


def path_of(job: Job) -> tuple[str, ...]:
    """Where this floor's coverage belongs: finish and drop seconds, as told for all its rooms."""
    survey = job.survey
    rooms = list(survey.rooms.values())
    finishes = {room.finish for room in rooms if room.finish is not None}
    finish = survey.finish or (next(iter(finishes)) if len(finishes) == 1 else None)
    if len(finishes | {finish}) > 1:
        finish = None
    told = sorted(room.drop_s for room in rooms if room.drop_s is not None)
    drop_s = told[len(told) // 2] if told else survey.drop_s
    return coverage_path(finish, drop_s)


def _spray_m2_min(
    settled: SettledJob,
    coats: Iterable[SettledCoat],
    lessons: Lessons,
    person: str,
    taught: dict[str, Ground],
) -> float:
    """The spray rate: a person's own where the job tells none, never more than the tip lets by."""
    was = next(one for one in settled.grounds if one.name == _RATE)
    held = was.source == _TIP
    rate = settled.tools.spray_m2_min
    found = lessons.find(SPRAY_RATE, *([person] if person else []))
    if found is None or not (held or was.rank in _UNSURE):
        return rate
    tip = settled.job.tools.tip_l_min
    most = math.inf if tip is None else tip * min(coat.m2_per_l for coat in coats)
    if found.likely > most:
        taught[_RATE] = Ground(_RATE, f"{most:g}", "m2/min", Rank.MEASURED.value, _TIP)
        return most
    taught[_RATE] = _ground(_RATE, found.likely, "m2/min", _said(found))
    return found.likely


def _rate_spread(taught: dict[str, Ground], lessons: Lessons, person: str) -> float | None:
    """How a person's next job strays from their rate, as a deviation of ln; None: not learned."""
    found = lessons.find(SPRAY_RATE, *([person] if person else []))
    if found is None or _RATE not in taught or taught[_RATE].rank != Rank.LEARNED.value:
        return None
    return math.log(found.high / found.low) / 2 / _END


def _waits(lessons: Lessons) -> Iterable[tuple[str, FirmWait]]:
    for clock, usual in CLOCK_SPREADS.items():
        found = lessons.find(CLOCK + clock)
        if found is not None:
            yield clock, _firm_wait(found, lessons.find(ROOMS + clock), usual)


def _firm_wait(found: Lesson, rooms: Lesson | None, usual: Spread) -> FirmWait:
    """The firm's wait: jobs spread by floor and by the mean of the rooms that were watched.

    What is not yet sure of the firm's own is added to the floor's spread.
    """
    room = usual.room if rooms is None else rooms.likely
    own = math.log(found.own_high / found.own_low) / 2 / _END
    floor = found.spread**2 - room**2 / ROOMS_WATCHED + own**2
    least = (usual.floor / 3) ** 2
    sure = min(max(1.0, found.own_low), found.own_high)
    return FirmWait(found.likely, sure, math.sqrt(max(floor, least)), room, found.jobs)


def labour_of(lessons: Lessons | None) -> tuple[tuple[str, Span], ...]:
    """Hours of the calendar's steps on 1,500 ft², where a task of theirs was taught."""
    found = []
    for step, tasks in STEPS.items():
        known = [(lessons.find(TASK_HOURS + task) if lessons else None) for task, _ in tasks]
        jobs = [one.jobs for one in known if one is not None]
        if not jobs:
            continue
        ends = [(one.low, one.likely, one.high) if one else TYPICAL_HOURS[task]
                for one, (task, _) in zip(known, tasks, strict=True)]  # fmt: skip
        low, likely, high = (
            math.fsum(end[n] * part for end, (_, part) in zip(ends, tasks, strict=True))
            for n in range(3)
        )
        found.append((step, Span(low, likely, high, Rank.LEARNED, learned_from(max(jobs)))))
    return tuple(found)


def _ground(name: str, value: float, unit: str, source: str) -> Ground:
    return Ground(name, f"{value:.4g}", unit, Rank.LEARNED.value, source)


def _said(found: Lesson) -> str:
    part = f" ({', '.join(found.of)})" if found.of else ""
    return f"{learned_from(found.jobs)}{part}"
