"""The seal day of a job: hours, coats, fields and bands, waits, and what must be said beside them.

facts → dry-down → hours → fields and order → crossed coats on the clock → litres → plan, sealing.
Pure, no file, no clock.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from farwall.air.sealers import limits_of
from farwall.air.sealing import HourToSeal, may_seal
from farwall.air.weather import Forecast, WeatherFile
from farwall.beside import Beside, at_once
from farwall.days.clock import SATURDAY
from farwall.days.work_hours import WORK_FROM_MIN
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.ground import JobGround, ground_of
from farwall.job.laying_out import LaidOut, laid_out
from farwall.job.seal_day.beside import sealing_of_day
from farwall.job.seal_day.coats import LaidCoat, coats_laid
from farwall.job.seal_day.crossing import Ways
from farwall.job.seal_day.edge import SealLasting, never
from farwall.job.seal_day.hours import HALF_H, Begins, SealHours, begins_for, next_half_hour
from farwall.job.seal_day.noun import Sealing
from farwall.job.seal_day.patch import WAIT_H
from farwall.job.seal_day.ready import reasons_of
from farwall.job.seal_day.settle import settled_for_sealer
from farwall.job.seal_day.told import Told, plan_of
from farwall.job.seal_day.waits import SealWaits
from farwall.job.seal_earliest import Earliest, earliest_of
from farwall.job.sun_slab import worse
from farwall.job.sunlight import sunlight_of
from farwall.job.waits import Waits
from farwall.nouns import dataclass

_WITH_WALKS = 1.3
"""First guess at minutes of a coat over those of laying it alone; then the plan's own count."""
_TRIES = 3
_LOOKED_AHEAD = timedelta(days=10)


@dataclass(frozen=True)
class SealDay:
    """A plan whose coats are `seal-1`, `seal-2`, …, and what is told beside it."""

    plan: Plan
    sealing: Sealing


@dataclass(frozen=True)
class _Day:
    """What a seal day is planned from."""

    job: Job
    weather: WeatherFile | Forecast | None
    ground: JobGround
    dried: Earliest
    known: SealHours
    waits: SealWaits
    not_before: datetime
    blocked: tuple[str, ...]


@dataclass(frozen=True)
class _Laid:
    """Its coats as planned from one start on."""

    lasting: SealLasting
    laid: LaidOut
    coats: tuple[LaidCoat, ...]

    @property
    def minutes(self) -> list[float]:
        """How long each coat takes."""
        return [coat.ends_min - coat.begins_min for coat in self.coats]


def seal_day(
    job: Job,
    *,
    weather: WeatherFile | Forecast | None = None,
    from_at: datetime | None = None,
    beside: Beside = at_once,
) -> SealDay:
    """The seal day of a job, replayable as a plan.

    weather: hours for slab and air; without it the survey's readings, or a mild day, stay all
    along. from_at: the floor is dry from here on, whatever its clock says. Raises
    `Unanswerable` when no order lets everybody out, `Refused` for hours that the weather lacks.
    """
    day = _facts(job, weather, from_at)
    area_m2 = sum(room.polygon.shape.area for room in job.floor.rooms)
    tools, coats = day.ground.settled.tools, day.ground.settled.coats
    minutes = [_WITH_WALKS * area_m2 / tools.spray_m2_min] * len(coats)
    for _ in range(_TRIES):
        begins = _begins(day, minutes)
        found = _laid(day, begins, beside)
        longer = [max(had, now) for had, now in zip(minutes, found.minutes, strict=True)]
        if not begins.coats or longer == minutes:
            break
        minutes = longer
    told = Told(
        job=job, weather=weather, settled=day.ground.settled, floor=day.ground.floor,
        limits=day.waits.limits, dried=day.dried, known=day.known, waits=day.waits,
        not_before=day.not_before, asked_from=from_at is not None, begins=begins,
        lasting=found.lasting, laid=found.laid, coats=found.coats, reasons=reasons_of(job),
    )  # fmt: skip
    plan = plan_of(told)
    return SealDay(plan, sealing_of_day(told))


def _facts(job: Job, weather: WeatherFile | Forecast | None, from_at: datetime | None) -> _Day:
    # A sealer lies over patches that take no stain, too: no field ends at them.
    whole = replace(job, survey=replace(job.survey, patches=()))
    ground = ground_of(whole, weather)
    limits, lasting = limits_of(job.sealer), ground.lasting
    zone = lasting.starts_at.tzinfo
    hours = [HourToSeal(one.starts_at.astimezone(zone), one.conditions) for one in lasting.hours]
    hours = hours or [HourToSeal(lasting.starts_at, lasting.conditions(0.0))]
    dried = earliest_of(lasting)
    settled = settled_for_sealer(job, ground.settled, limits)
    not_before = from_at.astimezone(zone) if from_at is not None else _dry_and_tried(dried)
    reasons = [one for one in reasons_of(job) if one.word == "no"]
    us = job.wishes.units == "us"
    words = may_seal(hours, limits, us=us)
    for room, lit in lasting.sun.hours(lasting.hours).items():
        sunny = [HourToSeal(one.starts_at.astimezone(zone), one.conditions) for one in lit]
        words = worse(words, may_seal(sunny, limits, us=us), room) if sunny else words
    return _Day(
        job,
        weather,
        replace(ground, settled=settled),
        dried,
        SealHours(words, us, weekends=_on_weekends(job, weather, from_at)),
        SealWaits(job.sealer, limits, lasting, Waits(lasting)),
        not_before,
        tuple(one.what for one in reasons),
    )


def _on_weekends(
    job: Job, weather: WeatherFile | Forecast | None, from_at: datetime | None
) -> bool:
    """Whether a Saturday is a day like others: none is told, or who asks names one himself."""
    if from_at is not None:
        return from_at.weekday() >= SATURDAY
    return job.starts_at is None and not isinstance(weather, Forecast)


def _dry_and_tried(dried: Earliest) -> datetime:
    """When it has surely dried down, and a patch laid when it likely had is a day old."""
    likely = dried.at_likely
    patched = dried.sure_at if likely is None else likely + timedelta(hours=WAIT_H[1])
    return next_half_hour(max(dried.sure_at, patched))


def _begins(day: _Day, minutes: Sequence[float]) -> Begins:
    hours = day.known.hours
    last = hours[-1].starts_at if len(hours) > 1 else day.not_before + _LOOKED_AHEAD

    def recoat(number: int, ends_at: datetime):  # type: ignore[no-untyped-def]
        return day.waits.recoat(f"seal-{number + 1}", ends_at)

    return begins_for(
        day.known,
        minutes,
        recoat,
        day.waits.limits.recoat_to_h * 60,
        not_before=day.not_before,
        last=last,
    )


def _laid(day: _Day, begins: Begins, beside: Beside) -> _Laid:
    starts_at = begins.coats[0] if begins.coats else _next_morning(day)
    no_hours = () if begins.coats else begins.against

    def refusing(moment: datetime) -> tuple[str, ...]:
        return day.blocked or no_hours or day.known.against(moment)

    settled = replace(day.ground.settled, starts_at=starts_at.isoformat())
    told = replace(day.job, starts_at=starts_at.isoformat())
    lasting = SealLasting(
        settled, day.ground.lasting.hours, sunlight_of(told, day.weather), refusing
    )
    open_all_day = replace(lasting, refusing=never)
    laid = laid_out(
        replace(day.ground, settled=settled, lasting=open_all_day),
        day.job.wishes.order,
        beside=beside,
    )
    ground = replace(day.ground, settled=settled, lasting=lasting)
    minutes: list[float | None] = [
        (one - starts_at).total_seconds() / 60 for one in begins.coats
    ] or [0.0, *[None] * (len(settled.coats) - 1)]
    rooms = [room.id for room in day.job.floor.rooms]
    edges = [lasting.of_floor(room, at_min or 0.0).low for room in rooms for at_min in minutes]
    ways = Ways(laid, settled.tools, settled.coats[0].l_per_m2, max(edges))
    waits = replace(day.waits, lasting=lasting)
    return _Laid(lasting, laid, coats_laid(ground, lasting, laid, ways, waits, begins=minutes))


def _next_morning(day: _Day) -> datetime:
    """The first hour of work when the floor is dry, or after."""
    morning = day.not_before.replace(hour=0, minute=0, second=0, microsecond=0)
    begin = morning + timedelta(minutes=WORK_FROM_MIN)
    while begin < day.not_before or not day.known.works(begin, begin + HALF_H):
        begin += timedelta(days=1)
    return begin
