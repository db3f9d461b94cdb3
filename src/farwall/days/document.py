"""A calendar as plain JSON values: all that another needs to read, draw or check it."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import Any

from farwall.days.nouns import Ahead, Calendar, HouseDays, Placed
from farwall.days.practice import LOCK_AFTER_SEAL_MIN, MILESTONES, chain_of
from farwall.days.work_hours import EVENING_MIN, WORK_FROM_MIN, WORK_UNTIL_MIN

VERSION = 1
CAUTIONS = (
    (
        "Hours of work and waits are common practice with no source, or guesses: the floor "
        "decides. Sheet and label of the material in hand, local codes and licensed practice win."
    ),
    (
        "Nobody works alone with acid. A floor with fresh stain is locked, signed and guarded "
        "until it is neutralised."
    ),
    (
        "Water heater and furnace off-flame before a sealer with solvent; doors open while stain "
        "or sealer goes down."
    ),
)


def document(calendar: Calendar) -> dict[str, Any]:
    """The calendar as dicts, lists, text and numbers; moments in ISO 8601 with offset."""
    question, proof = calendar.question, calendar.proof
    ahead = question.ahead
    return {
        "version": VERSION,
        "begins": ahead.begins.isoformat(),
        "rests_on": {"rank": ahead.rank.value, "source": ahead.source},
        "work": {
            "from_min": WORK_FROM_MIN,
            "until_min": WORK_UNTIL_MIN,
            "evening_min": EVENING_MIN,
            "weekdays": [0, 1, 2, 3, 4],
        },
        "crews": [{"id": crew.id, "people": crew.people} for crew in question.crews],
        "houses": [_house(one, ahead) for one in calendar.houses],
        "away": [
            {"house": one.house, "trade": one.trade, "date": day_date(ahead, one.day).isoformat()}
            for one in question.away
        ],
        "proof": {
            "cost_days": round(proof.cost_days, 6),
            "bound_days": round(proof.bound_days, 6),
            "gap_percent": round(proof.gap_percent, 4),
            "columns": proof.columns,
            "method": proof.method,
        },
        "hours": _hours(ahead),
        "cautions": list(CAUTIONS),
    }


def day_date(ahead: Ahead, day: int) -> date:
    """The date of a day of the calendar."""
    return (ahead.begins + timedelta(days=day)).date()


def moment(ahead: Ahead, minutes: float) -> datetime:
    """A minute of the calendar, which counts by the clock on the wall; with that day's offset."""
    return ahead.begins + timedelta(minutes=minutes)


def milestone_date(first: date, before_days: int) -> date:
    """So many days before the first one on site, on the working day at or before it."""
    day = first + timedelta(days=before_days)
    while day.weekday() > 4:
        day -= timedelta(days=1)
    return day


def _house(one: HouseDays, ahead: Ahead) -> dict[str, Any]:
    house, high = one.house, one.lock_end_high_min
    first = moment(ahead, one.steps[0].start_min).date()
    return {
        "id": house.id,
        "name": house.name,
        "area_m2": round(house.area_m2, 3),
        "coats": house.coats,
        "seal_coats": house.seal_coats,
        "crew": one.crew.id,
        "free_from": day_date(ahead, house.free_from_day).isoformat(),
        "due": None if house.due_day is None else day_date(ahead, house.due_day).isoformat(),
        "late_days": one.late_days,
        "lost_chance": None if one.lost_chance is None else round(one.lost_chance, 4),
        "milestones": [
            {"date": milestone_date(first, days).isoformat(), "what": what}
            for days, what in MILESTONES
        ],
        "steps": [_step(step, ahead) for step in one.steps],
        "waits": _waits(one),
        "lock": {
            "starts_at": moment(ahead, one.lock_start_min).isoformat(),
            "ends_at": moment(ahead, one.lock_end_min).isoformat(),
            "ends_high_at": None if high is None else moment(ahead, high).isoformat(),
            "after_seal_min": LOCK_AFTER_SEAL_MIN,
        },
        **({} if house.ahead is None else {"hours": _hours(house.ahead)}),
    }


def _step(step: Placed, ahead: Ahead) -> dict[str, Any]:
    ready, high = step.ready_min, step.end_high_min
    return {
        "id": step.id,
        "name": step.name,
        "starts_at": moment(ahead, step.start_min).isoformat(),
        "ends_at": moment(ahead, step.end_min).isoformat(),
        "minutes": step.minutes,
        "where": step.place,
        "split": step.split,
        "ends_low_at": moment(ahead, step.end_low_min).isoformat(),
        "ends_high_at": None if high is None else moment(ahead, high).isoformat(),
        "wait": step.wait,
        "ready_at": None if ready is None else moment(ahead, ready).isoformat(),
    }


def _waits(one: HouseDays) -> list[dict[str, Any]]:
    """Every wait of the house: the step it precedes, mild minutes, what hurries it, its rank."""
    return [
        {
            "before": step.id,
            "name": wait.name,
            "low_min": wait.minutes.low,
            "likely_min": wait.minutes.likely,
            "high_min": wait.minutes.high,
            "pace": wait.pace,
            "longest_min": wait.longest_min,
            "rank": wait.minutes.rank.value,
            "source": wait.minutes.source,
        }
        for step in chain_of(one.house)
        for wait in step.waits
    ]


def _hours(ahead: Ahead) -> dict[str, Any]:
    """What each hour from `begins` on allows, and the pace of waits in it."""
    told = ahead.hours
    return {
        "coat": [int(one.coat) for one in told],
        "seal": [int(one.seal) for one in told],
        "film": [round(one.film, 6) for one in told],
        "slab": [round(one.slab, 6) for one in told],
        "sealer": [round(one.sealer, 6) for one in told],
        "wet_days": sorted({n // 24 for n, one in enumerate(told) if one.wet}),
        **({} if all(one.clock == 1 for one in told) else {"clock": [one.clock for one in told]}),
    }
