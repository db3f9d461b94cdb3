"""The wash day of a planned job, from its facts, its plan and what its log tells. Pure."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from farwall.acid.rinse_water import ALL_RINSES_L_M2, ROUNDS, rinse_water
from farwall.days.work_hours import EVENING_MIN, WORK_FROM_MIN
from farwall.evidence import Rank
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.floor.takeoff import take_off
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.washing.drums import drums_told
from farwall.job.acid_day.washing.noun import Ends, WashDay, ends_of
from farwall.job.acid_day.washing.order import wash_order
from farwall.job.acid_day.washing.rooms import RoomFacts, wash_room
from farwall.job.acid_day.washing.times import (
    Pace,
    free_min,
    in_working_day,
    summed,
)
from farwall.job.acid_day.washing.words import warnings_of
from farwall.job.lasting import lasting_of
from farwall.job.rinses import Rinses
from farwall.job.story import story

BICARBONATE_G_L = (7.0, 15.0)
"""2 to 4 tablespoons a gallon: a safe default of the trade, common practice."""


def washing_of(ground: Ground) -> WashDay:
    """The wash day: when, rooms in order, water, drums, hours, and what each room asks for."""
    job, plan = ground.job, ground.plan
    told = ground.story or story(plan, ground.kept)
    rinses = Rinses(job, plan, told)
    settled = settle(job, starts_at=plan.starts_at)
    area = sum(rinses.areas.values())
    water = rinse_water(area, l_per_m2=job.washing.water_l_per_m2)
    free, people = free_min(plan), _people(job)
    start = datetime.fromisoformat(plan.starts_at)
    facts = RoomFacts(
        plan=plan, rinses=rinses, lasting=lasting_of(settled, ground.weather),
        begins_min=free.likely if free.likely is not None else free.low or 0.0,
        edges={one.room: one.mask_m for one in take_off(job.floor).rooms},
        pace=Pace.of(job.washing.scrub_m2_min, job.washing.vacuum_m2_min),
        water=_per_m2(job), counts=_counts(job),
    )  # fmt: skip
    rooms = tuple(
        wash_room(facts, n, room, way) for n, (room, way) in enumerate(wash_order(plan), 1)
    )
    work = summed([one.work_h for one in rooms])
    hours = Ends(*(None if one is None else one / people for one in work.three))
    begins = _begins(free, start, (hours.likely or 0.0) * 60)
    found = WashDay(
        begins=begins,
        begins_at=tuple(_iso(start, one) for one in begins.three),  # type: ignore[arg-type]
        rooms=rooms,
        water_from=job.washing.water_from,
        rinses_l=ends_of(water.rinses_l),
        scrub_l=ends_of(water.scrub_l),
        all_l=ends_of(water.all_l),
        rinses=_counts(job),
        drums=drums_told(job.washing, plan, ends_of(water.all_l)),
        base=job.washing.base or "",
        base_g_l=BICARBONATE_G_L if job.washing.base in {None, "bicarbonate"} else None,
        tap_ph=rinses.wanted.tap_ph, unstained_ph=rinses.wanted.unstained_ph,
        least_ph=rinses.wanted.window[0], most_ph=rinses.wanted.window[1],
        people=people, work_h=work, hours=hours,
        more_than_a_day=(hours.likely or 0.0) * 60 > EVENING_MIN - WORK_FROM_MIN,
        hepa=_hepa(job), ground_fault=job.washing.ground_fault,
        grounds=grounds_of(job),
    )  # fmt: skip
    return replace(found, warnings=warnings_of(found, plan))


def _people(job: Job) -> int:
    """Who washes: all who spray and help; the second adult on site is no hand."""
    return job.crew.sprayers + (1 if job.crew.helper else 0)


def _per_m2(job: Job) -> Ends:
    told = job.washing.water_l_per_m2
    return Ends(*ALL_RINSES_L_M2) if told is None else Ends(told, told, told)


def _counts(job: Job) -> Ends:
    told = job.washing.rinses
    return Ends(*ROUNDS) if told is None else Ends(told, told, told)


def _begins(free: Ends, start: datetime, lasts_min: float) -> Ends:
    """The same ends moved to hours of work; the early one needs no whole day before it."""
    return Ends(
        in_working_day(free.low, start, 60.0),
        in_working_day(free.likely, start, lasts_min),
        in_working_day(free.high, start, lasts_min),
    )


def _iso(start: datetime, at_min: float | None) -> str:
    if at_min is None:
        return ""
    moment = start + timedelta(minutes=round(at_min))
    return moment.replace(second=0, microsecond=0).isoformat()


def _hepa(job: Job) -> bool:
    """Whether its loose powder asks for a HEPA vacuum: manganese, chromate, or not known."""
    metals = ("manganese(II) chloride", "sodium dichromate", "potassium dichromate",
              "chromium(III) chloride")  # fmt: skip
    told = job.stains and all(one.contents for one in job.stains)
    holds = any(each.substance in metals for one in job.stains for each in one.contents)
    return holds or not told or any(one.chromate is not False for one in job.stains)


_AS_USUAL = {
    "us": (
        "8, 12, 20 gal on 100 ft²", "1.5, 2.5, 4 gal on 100 ft²", "375 to 750 ft² an hour",
        "22 to 48 ft² a minute", "50, 90, 150 ft² an hour of one", "80 to 260 ft an hour of one",
    ),
    "metric": (
        "3.3, 4.9, 8.1 L on 1 m²", "0.6, 1.0, 1.6 L on 1 m²", "35 to 70 m² an hour",
        "2.0 to 4.5 m² a minute", "4.6, 8.4, 14 m² an hour of one", "24 to 79 m an hour of one",
    ),
}  # fmt: skip
"""The usual figures in the reader's units: all rinses, scrubbing water, scrubbing, vacuum, all the
work, edges."""


def grounds_of(job: Job) -> tuple[tuple[str, str, str, str], ...]:
    """What the day rests on: name, value, rank, source."""
    told, practice, guess = "told in the job", Rank.PRACTICE.value, Rank.GUESS.value
    washing = job.washing
    told_so = _AS_USUAL[job.wishes.units]
    water = "as told" if washing.water_l_per_m2 else told_so[0]
    scrub = "as told" if washing.scrub_m2_min else told_so[2]
    vacuum = "as told" if washing.vacuum_m2_min else told_so[3]
    measured = Rank.MEASURED.value
    return (
        ("water of all rinses", water, *((measured, told) if washing.water_l_per_m2 else
                                         (practice, "common-practice"))),
        ("water of scrubbing", told_so[1], guess, "house-guess"),
        ("all the work", told_so[4], practice, "common-practice"),
        ("edges by hand", told_so[5], guess, "house-guess"),
        ("scrubbing", scrub, *((measured, told) if washing.scrub_m2_min else
                               (practice, "issa-times"))),
        ("vacuum", vacuum, *((measured, told) if washing.vacuum_m2_min else
                             (guess, "house-guess"))),
        ("first to dry", "a film of 0.15 mm, evaporation at its quickest", guess,
         "uno-1998, house-guess"),
        ("how many rinses", "the room's own rag and strips", guess, "house-guess"),
    )  # fmt: skip
