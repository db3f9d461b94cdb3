"""The calendar of the firm's houses, made in a process of its own: plain values in and out."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, field, replace
from datetime import date, datetime
from typing import TYPE_CHECKING, Any

from farwall.errors import FarwallError, Refused, Unanswerable
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.air.foretold import Outdoors
    from farwall.facts.job import Job
    from farwall.facts.lessons import Lessons
    from farwall.job.plan_days import Answer, Ask

Json = dict[str, Any]


@dataclass(frozen=True)
class Asked:
    """What a calendar is asked for, as it is kept. Dates are ISO; `days`: None, as many as needed.

    weather, forecast: SHA-256 and name of an EPW file, and of a forecast, in the book · readings:
    of slab and air, that hold for the one house asked about · rain, away: what if; away is house,
    trade, date.
    """

    houses: tuple[str, ...]
    begins: str
    crews: int = 1
    people: int = 2
    days: int | None = None
    free: Mapping[str, str] = field(default_factory=dict)
    due: Mapping[str, str] = field(default_factory=dict)
    weather: tuple[str, str] | None = None
    forecast: tuple[str, str] | None = None
    readings: Mapping[str, float] = field(default_factory=dict)
    rain: tuple[str, ...] = ()
    away: tuple[tuple[str, str, str], ...] = ()

    @property
    def plainly(self) -> Asked:
        """The same without rain and other trades."""
        return replace(self, rain=(), away=())

    def to_dict(self) -> Json:
        """As plain JSON values."""
        told = asdict(self)
        return told | {
            "houses": list(self.houses), "rain": list(self.rain),
            "away": [list(one) for one in self.away],
            "weather": None if self.weather is None else list(self.weather),
            "forecast": None if self.forecast is None else list(self.forecast),
            "free": dict(self.free), "due": dict(self.due), "readings": dict(self.readings),
        }  # fmt: skip


def asked_from(told: Mapping[str, Any]) -> Asked:
    """The question again, from what `to_dict` gave."""
    weather, forecast = told["weather"], told.get("forecast")
    return Asked(
        houses=tuple(told["houses"]), begins=told["begins"], crews=told["crews"],
        people=told["people"], days=told["days"], free=dict(told["free"]), due=dict(told["due"]),
        weather=None if weather is None else (weather[0], weather[1]),
        forecast=None if forecast is None else (forecast[0], forecast[1]),
        readings=dict(told["readings"]), rain=tuple(told["rain"]),
        away=tuple((one[0], one[1], one[2]) for one in told["away"]),
    )  # fmt: skip


def calendar_of(
    told: Json, facts: Mapping[str, Json], weather: Sequence[str], lessons: Json | None
) -> Json:
    """The calendar of these houses. Never raises for what they say.

    told: an `Asked`; facts: of each house by id; weather: paths of the EPW file and of the
    forecast, as far as there are any; lessons: as the book keeps them. Back comes `document` (None
    where nothing could be placed), `faults` of the independent checker, and `unplaced`: houses that
    find no days, why, what would help.
    """
    from pathlib import Path

    from farwall.readers.any_weather import read_ahead
    from farwall.web.firm import lessons_in

    asked = asked_from(told)
    unplaced: list[Json] = []
    try:
        known = lessons_in(lessons)
        ahead = read_ahead([Path(one) for one in weather])
    except FarwallError as error:
        return _answer(None, [_no("", "", error)])
    jobs = _jobs(asked, facts, unplaced)
    case = _Case(ahead, known)
    while jobs:
        try:
            return _answer(case.answer(jobs, asked), unplaced)
        except FarwallError as error:
            lost = _lost(error) & jobs.keys()
            if not lost:
                return _answer(None, [*unplaced, _no("", "", error)])
            for name in sorted(lost):
                job = jobs.pop(name)
                unplaced.append(case.why(name, job, asked, error))
    return _answer(None, unplaced)


@dataclass(frozen=True)
class _Case:
    weather: Outdoors | None
    lessons: Lessons | None

    def answer(self, jobs: Mapping[str, Job], asked: Asked) -> Answer:
        from farwall.job.plan_days import plan_days

        ask = _ask(asked, jobs)
        return plan_days(list(jobs.values()), ask, weather=self.weather, lessons=self.lessons)

    def why(self, name: str, job: Job, asked: Asked, error: FarwallError) -> Json:
        """Why one house finds no days, as it is told of this house alone."""
        try:
            self.answer({name: job}, asked.plainly)
        except FarwallError as own:
            error = own
        return _no(name, job.name or name, error)


def _jobs(asked: Asked, facts: Mapping[str, Json], unplaced: list[Json]) -> dict[str, Job]:
    """The houses that can be read; of the others it is told."""
    from farwall.readers.job_json import job_from

    found: dict[str, Job] = {}
    for name in asked.houses:
        if name not in facts:
            continue
        try:
            job = replace(job_from(facts[name], f"The job {name}"), id=name)
        except FarwallError as error:
            unplaced.append(_no(name, str(facts[name].get("name") or name), error))
            continue
        if asked.readings and len(asked.houses) == 1:
            read: Any = dict(asked.readings)
            job = replace(job, survey=replace(job.survey, **read))
        found[name] = job
    return found


def _ask(asked: Asked, ids: Mapping[str, Job]) -> Ask:
    from farwall.job.plan_days import Ask
    from farwall.readers.zones import zone_of

    def of(told: Mapping[str, str]) -> dict[str, date]:
        return {name: date.fromisoformat(day) for name, day in told.items() if name in ids}

    return Ask(
        begins=date.fromisoformat(asked.begins) if asked.begins else None,
        crews=asked.crews, people=asked.people, days=asked.days,
        rain=tuple(date.fromisoformat(one) for one in asked.rain),
        away=tuple(
            (house, trade, date.fromisoformat(day))
            for house, trade, day in asked.away if house in ids
        ),
        free=of(asked.free), due=of(asked.due), zone=zone_of(ids.values()),
    )  # fmt: skip


def _lost(error: FarwallError) -> set[str]:
    """The houses that fit nowhere, where it is known which."""
    from farwall.days.why import NoDays

    no = error if isinstance(error, NoDays) else error.__cause__
    return {lack.house.id for lack in no.lacks} if isinstance(no, NoDays) else set()


def _no(house: str, name: str, error: FarwallError) -> Json:
    why, remedies = str(error), list[str]()
    if isinstance(error, Unanswerable):
        why, remedies = error.reason, list(error.remedies)
    elif isinstance(error, Refused):
        why, remedies = " ".join(map(str, error.mistakes)), []
    return {"house": house, "name": name, "why": why, "remedies": remedies}


def _answer(answer: Answer | None, unplaced: list[Json]) -> Json:
    return {
        "document": None if answer is None else answer.document,
        "faults": [] if answer is None else [asdict(one) for one in answer.faults],
        "unplaced": unplaced,
    }


def moves(before: Json, now: Json) -> list[Json]:
    """What begins on another day in `now`, house by house of both; those that stay tell nothing.

    Of each: `house`, `name`, `hand_over_days` later, `crew` and `crew_was`, `steps` with the
    moments at which they begin, `was` and `now`, `why` it moved in English sentences.
    """
    why = {one["house"]: one["why"] for one in now.get("moved", ())}
    was = {one["id"]: one for one in before["houses"]}
    found = []
    for house in now["houses"]:
        old = was.get(house["id"])
        if old is None:
            continue
        begun = {step["id"]: step["starts_at"] for step in old["steps"]}
        steps = [
            {"id": step["id"], "was": begun[step["id"]], "now": step["starts_at"]}
            for step in house["steps"]
            if step["id"] in begun and begun[step["id"]][:10] != step["starts_at"][:10]
        ]
        if steps or old["crew"] != house["crew"]:
            later = _last_day(house) - _last_day(old)
            found.append({
                "house": house["id"], "name": house["name"], "hand_over_days": later.days,
                "crew": house["crew"], "crew_was": old["crew"], "steps": steps,
                "why": why.get(house["id"], []),
            })  # fmt: skip
    return found


def _last_day(house: Json) -> date:
    return datetime.fromisoformat(house["steps"][-1]["ends_at"]).date()
