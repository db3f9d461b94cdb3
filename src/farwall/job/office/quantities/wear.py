"""What people wear with acid, by person and day. Pure.

The sheet of the stain in hand, the maker's schedule for cartridges and the law win.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from math import ceil

from farwall.acid.may import needs_of
from farwall.acid.worn import BREATHING, asked_of
from farwall.days.work_hours import EVENING_MIN, WORK_FROM_MIN
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.quantities import Quantity
from farwall.facts.van import StockKind
from farwall.facts.workers import Duty, Worker
from farwall.job.acid_day.people.hours import spells_of
from farwall.job.office.quantities.basis import Basis, line, times
from farwall.job.office.quantities.practice import (
    CARTRIDGES_PER_PERSON_DAY,
    GLOVES_PER_PERSON_DAY,
    SUITS_PER_PERSON_DAY,
)
from farwall.nouns import dataclass

SPRAY_DUTIES: frozenset[Duty] = frozenset({"mixes", "sprays", "helps"})
_NO_SCHEDULE = (
    "Nobody told after how many minutes the maker's schedule has cartridges changed: a pair for "
    "each person and day is taken; the schedule wins."
)


@dataclass(frozen=True)
class AcidDays:
    """Who touches acid, and on how many days: of spraying, and in all with the wash day.

    told: the person-days are the user's own.
    """

    people: int
    spray_days: int
    all_days: int
    person_days: float
    breathing_days: float
    told: bool = False


def acid_days(basis: Basis) -> AcidDays:
    """From the plan's days and the wash day's; people as told, else the crew that sprays."""
    spraying, washing = _dates(basis)
    both = spraying | washing
    workers = [one for one in basis.ground.job.workers if _duties(one)]
    if workers:
        people = len(workers)
        days = float(sum(_days_of(one, spraying, washing) for one in workers))
        breathing = float(sum(_breathing_days(basis, one, spraying, washing) for one in workers))
    else:
        crew = basis.ground.job.crew
        people = crew.sprayers + crew.helper
        days, breathing = float(people * len(both)), float(people * len(spraying))
    told = basis.ground.job.supplies.person_days
    return AcidDays(
        people, len(spraying), len(both), days if told is None else told, breathing,
        told is not None,
    )  # fmt: skip


def wear_lines(basis: Basis) -> tuple[Quantity, ...]:
    """Gloves, suits, eyes, cartridges, boots."""
    days = acid_days(basis)
    return (
        _by_day(days),
        line(
            "suit", "suits", times((1, 1, 1), days.person_days * SUITS_PER_PERSON_DAY),
            f"A suit or apron for each: {_days_said(days)}.",
        ),
        _by_person(days, "goggles", "goggles and face shields"),
        _cartridges(basis, days),
        _by_person(days, "boots", "pairs of rubber boots"),
    )  # fmt: skip


def wear_warnings(basis: Basis) -> tuple[str, ...]:
    """What nobody told of cartridges."""
    told = [one.cartridge for one in basis.ground.job.workers if _breathes(basis, one)]
    sure = told and all(one is not None and one.change_after_min is not None for one in told)
    return () if sure else (_NO_SCHEDULE,)


def _by_day(days: AcidDays) -> Quantity:
    low, _, high = GLOVES_PER_PERSON_DAY
    rule = f"{low:g} to {high:g} pairs of chemical gloves for each: {_days_said(days)}."
    ends = times(GLOVES_PER_PERSON_DAY, days.person_days)
    return line("gloves", "pairs of gloves", ends, rule, ready=ends[2])


def _by_person(days: AcidDays, kind: StockKind, what: str) -> Quantity:
    rule = f"One for each of {days.people} who work with acid; they are kept."
    if days.people == 1:
        rule = "One for the one who works with acid; they are kept."
    ends = (days.people, days.people, days.people)
    return line(kind, what, ends, rule)


def _days_said(days: AcidDays) -> str:
    if days.told:
        return f"{days.person_days:g} person-days, as told"
    return (
        f"{days.people} with acid on {days.all_days} day{'s' * (days.all_days != 1)}, "
        f"{days.person_days:g} person-days, the wash day among them"
    )


def _cartridges(basis: Basis, days: AcidDays) -> Quantity:
    """New pairs by the maker's schedule where told, and one to spare; else a pair a day."""
    workers = [one for one in basis.ground.job.workers if _breathes(basis, one)]
    timed = [one for one in workers if one.cartridge is not None and one.cartridge.change_after_min]
    minutes = sum(end - begin for _, (begin, end) in spells_of(basis.ground.plan))
    by_schedule = sum(_new_pairs(one, minutes) for one in timed)
    untimed = len(workers) - len(timed)
    each = CARTRIDGES_PER_PERSON_DAY
    if workers:
        by_day = sum(
            _breathing_days(basis, one, *_dates(basis)) for one in workers if one not in timed
        )
    else:
        by_day = round(days.breathing_days)
    likely = by_schedule + by_day * each
    if timed and not untimed:
        rule = (
            f"By the maker's schedule as told, {minutes:.0f} min of spraying: {by_schedule} new, "
            "and a spare pair."
        )
        return line(
            "cartridges",
            "pairs of cartridges",
            (likely, likely, likely + 1),
            rule,
            ready=likely + 1,
            rank=Rank.MEASURED,
            source="told in the job",
        )
    rule = (
        f"A pair, acid gas and P100, for each who breathes the vapour and day: {likely}. The "
        "maker's schedule wins, never the nose."
    )
    return line(
        "cartridges",
        "pairs of cartridges",
        (likely, likely, 2 * likely),
        rule,
        source=f"{PRACTICE}, {OUR_GUESS}",
    )


def _new_pairs(worker: Worker, minutes: float) -> int:
    pair = worker.cartridge
    assert pair is not None
    assert pair.change_after_min is not None
    worn = pair.used_min + (minutes if SPRAY_DUTIES & set(worker.duties) else 0.0)
    return max(ceil(worn / pair.change_after_min - 1e-9) - 1, 0)


def _duties(worker: Worker) -> set[Duty]:
    return set(worker.duties) & (SPRAY_DUTIES | {"scrubs"})


def _days_of(worker: Worker, spraying: frozenset[date], washing: frozenset[date]) -> int:
    duties = _duties(worker)
    days = spraying if duties & SPRAY_DUTIES else frozenset()
    return len(days | washing) if "scrubs" in duties else len(days)


def _breathes(basis: Basis, worker: Worker) -> bool:
    needs = needs_of(basis.ground.job)
    return any(set(BREATHING) & set(asked_of(duty, needs)) for duty in _duties(worker))


def _breathing_days(
    basis: Basis, worker: Worker, spraying: frozenset[date], washing: frozenset[date]
) -> int:
    """Days on which a duty of theirs asks for a respirator: spraying; chromate and ammonia more."""
    needs = needs_of(basis.ground.job)
    duties = {duty for duty in _duties(worker) if set(BREATHING) & set(asked_of(duty, needs))}
    days = spraying if duties & SPRAY_DUTIES else frozenset()
    return len(days | washing) if "scrubs" in duties else len(days)


def _dates(basis: Basis) -> tuple[frozenset[date], frozenset[date]]:
    """Days of spraying and of washing; where the wash day is not in sight, one more day."""
    plan, part = basis.ground.plan, basis.washing
    start = datetime.fromisoformat(plan.starts_at)
    minutes = [m for field in plan.fields for m in (field.start_min, field.end_min)] or [0.0]
    spraying = frozenset((start + timedelta(minutes=one)).date() for one in minutes)
    hours_a_day = (EVENING_MIN - WORK_FROM_MIN) / 60
    count = max(1, ceil((part.hours.likely or 0.0) / hours_a_day))
    begins = part.begins_at[1] or part.begins_at[0]
    first = datetime.fromisoformat(begins).date() if begins else max(spraying) + timedelta(days=1)
    return spraying, frozenset(first + timedelta(days=n) for n in range(count))
