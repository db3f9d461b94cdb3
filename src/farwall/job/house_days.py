"""The days of one house alone, laid so that its first coat falls on the day of its plan. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Any

from farwall.air.foretold import Outdoors
from farwall.days.practice import BEFORE_COATS, FIRST_COAT
from farwall.errors import Refused, Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.job.plan_days import Answer, Ask, house_ids, plan_days
from farwall.nouns import dataclass

_MOST_BEFORE_DAYS = 12
"""No house is cleaned and masked for longer before its first coat: a limit of our search."""
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
    if day is None:
        return _only_counted(job, weather, lessons)
    try:
        laid = _laid(job, Ask(), coats_from, weather, lessons)
    except (Refused, Unanswerable) as no:
        return HouseDays({}, {}, on_the_day=False, no=_why(no))
    house = laid.answer.document["houses"][0]
    return HouseDays(
        laid.answer.document, house, on_the_day=day == _coat_day(house), notes=laid.answer.notes
    )


def begun_before(
    job: Job, ask: Ask, *, weather: Outdoors | None = None, lessons: Lessons | None = None
) -> Ask:
    """`ask`, begun so long before the job's own start that its first coat is begun at that.

    A job's start is its first stroke, not its first broom. Where no calendar begins the coat then,
    it falls on that day at another hour, or else before. Back comes `ask` as it is without a start,
    or where the house finds no days.
    """
    if not job.starts_at:
        return ask
    try:
        return _laid(job, ask, (), weather, lessons).ask
    except (Refused, Unanswerable):
        return ask


@dataclass(frozen=True)
class _Laid:
    """A question and its answer, of one house."""

    ask: Ask
    answer: Answer

    def begins(self, step: str) -> datetime:
        return datetime.fromisoformat(self._step(step)["starts_at"])

    def ends(self, step: str) -> datetime:
        return datetime.fromisoformat(self._step(step)["ends_at"])

    def _step(self, step: str) -> Mapping[str, Any]:
        steps: Sequence[Mapping[str, Any]] = self.answer.document["houses"][0]["steps"]
        return next(one for one in steps if one["id"] == step)


def _laid(
    job: Job, ask: Ask, coats_from: Sequence[datetime],
    weather: Outdoors | None, lessons: Lessons | None,
) -> _Laid:  # fmt: skip
    """The house begun before its start. Raises as `plan_days` where it finds no days from there."""
    first = datetime.fromisoformat(str(job.starts_at))
    case = _Case(job, ask, weather, lessons)
    return case.at_its_hour(tuple(coats_from) or (first,)) or case.on_its_day(first.date())


@dataclass(frozen=True)
class _Case:
    job: Job
    ask: Ask
    weather: Outdoors | None
    lessons: Lessons | None

    def begun(self, day: date, coats_from: tuple[datetime, ...] = ()) -> _Laid:
        (name,) = house_ids([self.job])
        ask = replace(self.ask, begins=day, coats_from={name: coats_from})
        return _Laid(ask, plan_days([self.job], ask, weather=self.weather, lessons=self.lessons))

    def at_its_hour(self, coats_from: tuple[datetime, ...]) -> _Laid | None:
        """The latest first day from which the first coat begins when its plan begins it."""
        for before in range(_MOST_BEFORE_DAYS + 1):
            try:
                laid = self.begun(coats_from[0].date() - timedelta(days=before), coats_from)
            except (Refused, Unanswerable):
                return None
            if laid.begins(FIRST_COAT) - coats_from[0] < _GRID:
                return laid
            if laid.ends(BEFORE_COATS) <= coats_from[0]:
                return None  # it was masked in time, and still this calendar lays no coat then
        return None

    def on_its_day(self, day: date) -> _Laid:
        """The latest first day from which the first coat falls on its day, or else before it."""
        laid = self.begun(day)
        for before in range(1, _MOST_BEFORE_DAYS + 1):
            if laid.begins(FIRST_COAT).date() <= day:
                break
            try:
                laid = self.begun(day - timedelta(days=before))
            except (Refused, Unanswerable):
                break
        return laid


def _only_counted(job: Job, weather: Outdoors | None, lessons: Lessons | None) -> HouseDays:
    """The days of a house that told none: they count from the first on site."""
    try:
        answer = plan_days([job], Ask(), weather=weather, lessons=lessons)
    except (Refused, Unanswerable) as no:
        return HouseDays({}, {}, told=False, on_the_day=False, no=_why(no))
    house = answer.document["houses"][0]
    return HouseDays(answer.document, house, told=False, on_the_day=False, notes=answer.notes)


def _why(no: Refused | Unanswerable) -> str:
    return no.reason if isinstance(no, Unanswerable) else str(no)


def _coat_day(house: Mapping[str, Any]) -> date | None:
    at = next((one["starts_at"] for one in house["steps"] if one["id"] == FIRST_COAT), None)
    return None if at is None else datetime.fromisoformat(at).date()
