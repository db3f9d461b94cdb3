"""The days of one house alone, laid so that its first coat falls on the day of its plan. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime, timedelta
from typing import Any

from farwall.air.foretold import Outdoors
from farwall.errors import Refused, Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.job.plan_days import Ask, house_ids, plan_days
from farwall.nouns import dataclass

_MOST_BEFORE_DAYS = 12
"""No house is cleaned and masked for longer before its first coat: a limit of our search."""
FIRST_COAT, BEFORE_COATS = "coat-1", "mask"
_GRID = timedelta(minutes=15)


@dataclass(frozen=True)
class HouseDays:
    """A calendar document, the house in it, and why there is none where both are empty.

    told: whether its days are those of a calendar or of the job's own start; else they only count
    from the first one. on_the_day: whether its first coat falls on the day of the plan.
    """

    document: Mapping[str, Any]
    house: Mapping[str, Any]
    told: bool = True
    from_calendar: bool = False
    on_the_day: bool = True
    no: str = ""
    notes: tuple[str, ...] = ()


def house_days(
    job: Job, *, calendar: Mapping[str, Any] | None = None, weather: Outdoors | None = None,
    lessons: Lessons | None = None, coats_from: Sequence[datetime] = (),
) -> HouseDays:  # fmt: skip
    """The house in the firm's calendar where it stands there, else the days of this house alone.

    coats_from: when its coats begin by its plan, in order. Where that can be, they do so here: what
    comes before is laid so that the floor is masked by then, and no coat comes earlier.
    """
    day = datetime.fromisoformat(job.starts_at).date() if job.starts_at else None
    (name,) = house_ids([job])
    for house in (calendar or {}).get("houses", ()):
        if house["id"] == name and calendar is not None:
            notes = tuple(map(str, calendar.get("notes", ())))
            return HouseDays(
                calendar, house, from_calendar=True, on_the_day=day == _coat_day(house), notes=notes
            )
    if day is not None and coats_from:
        found = _by_plan(job, tuple(coats_from), weather, lessons)
        if found is not None:
            return found
    return _alone(job, day, weather, lessons)


def _by_plan(
    job: Job, coats_from: tuple[datetime, ...], weather: Outdoors | None, lessons: Lessons | None
) -> HouseDays | None:
    """The latest first day from which the first coat begins when its plan begins it; None: none."""
    day, (name,) = coats_from[0].date(), house_ids([job])
    for before in range(_MOST_BEFORE_DAYS + 1):
        ask = Ask(begins=day - timedelta(days=before), coats_from={name: coats_from})
        try:
            answer = plan_days([job], ask, weather=weather, lessons=lessons)
        except (Refused, Unanswerable):
            return None
        house = answer.document["houses"][0]
        begun = {one["id"]: datetime.fromisoformat(one["starts_at"]) for one in house["steps"]}
        done = {one["id"]: datetime.fromisoformat(one["ends_at"]) for one in house["steps"]}
        if begun[FIRST_COAT] - coats_from[0] < _GRID:
            return HouseDays(answer.document, house, notes=answer.notes)
        if done[BEFORE_COATS] <= coats_from[0]:
            return None  # it was masked in time, and still this calendar lays no coat then
    return None


def _alone(
    job: Job, day: date | None, weather: Outdoors | None, lessons: Lessons | None
) -> HouseDays:
    found: HouseDays | None = None
    for before in range(_MOST_BEFORE_DAYS + 1):
        ask = Ask(begins=day - timedelta(days=before) if day else None)
        try:
            answer = plan_days([job], ask, weather=weather, lessons=lessons)
        except (Refused, Unanswerable) as no:
            why = no.reason if isinstance(no, Unanswerable) else str(no)
            return found or HouseDays({}, {}, told=False, on_the_day=False, no=why)
        house = answer.document["houses"][0]
        coat_day = _coat_day(house)
        found = HouseDays(
            answer.document, house, told=day is not None, on_the_day=day == coat_day,
            notes=answer.notes,
        )  # fmt: skip
        if day is None or coat_day is None or coat_day <= day:
            break
    assert found is not None
    return found


def _coat_day(house: Mapping[str, Any]) -> date | None:
    at = next((one["starts_at"] for one in house["steps"] if one["id"] == FIRST_COAT), None)
    return None if at is None else datetime.fromisoformat(at).date()
