"""A calendar read again by code that shares nothing with what made it.

Takes the document alone. Refuses, each with a code: `unreadable` ·
`two-places` · `two-sprays` · `no-guard` · `two-judges` · `wet-floor` ·
`out-of-time` (a wait is longer than it may be) · `coat-window` · `seal-window` ·
`trade-inside` · `lock` · `out-of-hours` · `too-short` · `out-of-order` ·
`too-early` · `late` (the days late are told wrong) · `proof`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import combinations, pairwise
from typing import Any

_HAIR_MIN = 0.5
_NONE = timedelta(0)
_HAIR_WORTH_MIN = 1.0


@dataclass(frozen=True)
class DayFault:
    """One thing wrong: its code, the house, the moment, what it is."""

    code: str
    house: str
    at: str
    what: str


@dataclass(frozen=True)
class _Step:
    house: str
    crew: str
    id: str
    where: str
    split: bool
    minutes: float
    start: datetime
    end: datetime


def check_days(told: Mapping[str, Any]) -> list[DayFault]:
    """Every fault of a calendar document; empty when it holds."""
    try:
        return list(_faults(told))
    except (KeyError, TypeError, ValueError, AttributeError, IndexError) as trouble:
        what = f"The calendar cannot be read: {type(trouble).__name__} {trouble}."
        return [DayFault("unreadable", "", "", what)]


def _faults(told: Mapping[str, Any]) -> Iterator[DayFault]:
    people = {str(crew["id"]): int(crew["people"]) for crew in told["crews"]}
    begins = datetime.fromisoformat(told["begins"])
    houses = {str(house["id"]): [_step(house, step, begins) for step in house["steps"]]
              for house in told["houses"]}  # fmt: skip
    for house in told["houses"]:
        mine = houses[str(house["id"])]
        yield from _order(house, mine)
        hours = house.get("hours", told["hours"])  # a heated house has hours of its own
        yield from _waits(house, mine, hours, begins)
        yield from _lock(house, mine, told["away"], begins)
        yield from _dates(house, mine)
        for step in mine:
            yield from _window(step, told["work"], hours, begins)
    for crew, size in people.items():
        yield from _crew([one for each in houses.values() for one in each if one.crew == crew])
        yield from _guards(houses, crew, size)
    for steps in houses.values():
        for step in steps:
            if step.crew not in people:
                yield _fault("two-judges", step, f"Nobody knows the crew {step.crew}.")
    proof = told["proof"]
    if proof["bound_days"] > proof["cost_days"] + 1e-6:
        yield DayFault("proof", "", "", "The bound is above the cost of the answer.")


def _step(house: Mapping[str, Any], step: Mapping[str, Any], begins: datetime) -> _Step:
    return _Step(
        str(house["id"]),
        str(step.get("crew", house["crew"])),
        str(step["id"]),
        str(step["where"]),
        bool(step["split"]),
        float(step["minutes"]),
        _shown(step["starts_at"], begins),
        _shown(step["ends_at"], begins),
    )


def _shown(moment: str, begins: datetime) -> datetime:
    """What the clock on the wall shows then, with the offset of the first day.

    Offsets up to an hour apart are a clock put forward or back; others are another clock.
    """
    at = datetime.fromisoformat(moment)
    apart = (at.utcoffset() or _NONE) - (begins.utcoffset() or _NONE)
    if abs(apart) <= timedelta(hours=1):
        return at.replace(tzinfo=begins.tzinfo)
    return at.astimezone(begins.tzinfo)


def _fault(code: str, step: _Step, what: str) -> DayFault:
    return DayFault(code, step.house, step.start.isoformat(), f"{step.id}: {what}")


def _minutes(span: timedelta) -> float:
    return span.total_seconds() / 60


def _order(house: Mapping[str, Any], steps: list[_Step]) -> Iterator[DayFault]:
    names = [step.id for step in steps]
    coats = [f"coat-{n}" for n in range(1, int(house["coats"]) + 1)]
    seals = [f"seal-{n}" for n in range(1, int(house.get("seal_coats", 2)) + 1)]
    due = ["clean", "mask", *coats, "neutralise", *seals, "finish", "hand-over"]
    if names != due:
        yield _fault("out-of-order", steps[0], f"the steps are {', '.join(names)}.")
    for before, after in pairwise(steps):
        if after.start < before.end:
            yield _fault("out-of-order", after, f"begins before {before.id} ends.")
    for crew in {step.crew for step in steps} - {steps[0].crew}:
        yield _fault("two-judges", steps[0], f"another crew, {crew}, would judge its colour too.")
    for step in steps:
        if step.end <= step.start:
            yield _fault("too-short", step, "ends before it begins.")


def _waits(
    house: Mapping[str, Any], steps: list[_Step], hours: Mapping[str, Any], begins: datetime
) -> Iterator[DayFault]:
    by_id = {step.id: n for n, step in enumerate(steps)}
    for wait in house["waits"]:
        n = by_id[str(wait["before"])]
        before, after = steps[n - 1], steps[n]
        paces = hours.get(wait["pace"]) or [1.0] * len(hours["film"])
        worth = float(wait["likely_min"])
        longest = wait["longest_min"]
        if longest is not None:
            worth = min(worth, float(longest))
            if _minutes(after.start - before.end) > float(longest) + _HAIR_MIN:
                yield _fault("out-of-time", after, f"{wait['name']} takes longer than it may.")
        passed = _passed(paces, _minutes(before.end - begins), _minutes(after.start - begins))
        if passed < worth - _HAIR_WORTH_MIN:
            yield _fault("wet-floor", after, f"begins before {wait['name']} is over.")


def _passed(paces: list[float], start_min: float, end_min: float) -> float:
    """Mild minutes that pass between two minutes from the first midnight."""
    total, at = 0.0, start_min
    while at < end_min - 1e-9:
        hour = int(at // 60)
        until = min(end_min, (hour + 1) * 60.0)
        total += (until - at) * float(paces[hour])
        at = until
    return total


def _lock(
    house: Mapping[str, Any], steps: list[_Step], away: list[Mapping[str, Any]], begins: datetime
) -> Iterator[DayFault]:
    start = _shown(house["lock"]["starts_at"], begins)
    end = _shown(house["lock"]["ends_at"], begins)
    sealed = max(step.end for step in steps if step.where == "seal")
    if start > steps[0].start or end < sealed + timedelta(hours=24):
        yield _fault("lock", steps[0], "the lock does not reach from cleaning to sealer + 24 h.")
    for one in away:
        if one["house"] != house["id"]:
            continue
        day = datetime.combine(date.fromisoformat(one["date"]), datetime.min.time(), begins.tzinfo)
        if day < max(end, steps[-1].end) and day + timedelta(days=1) > min(start, steps[0].start):
            yield _fault(
                "trade-inside", steps[0], f"the {one['trade']} is inside on {one['date']}."
            )


def _dates(house: Mapping[str, Any], steps: list[_Step]) -> Iterator[DayFault]:
    if steps[0].start.date() < date.fromisoformat(house["free_from"]):
        yield _fault("too-early", steps[0], "the house is not free yet.")
    late = 0
    if house["due"] is not None:
        last = (steps[-1].end - timedelta(seconds=1)).date()
        late = max(0, (last - date.fromisoformat(house["due"])).days)
    if late != house["late_days"]:
        yield _fault("late", steps[-1], f"{late} days late, not {house['late_days']}.")


def _window(
    step: _Step, work: Mapping[str, Any], hours: Mapping[str, Any], begins: datetime
) -> Iterator[DayFault]:
    evening = step.where in {"coat", "rinse"}
    until = float(work["evening_min"] if evening else work["until_min"])
    worked, out, shut = 0.0, 0.0, 0.0
    at = step.start
    while at < step.end:
        upto = min(step.end, at + timedelta(minutes=5))
        of_day = at.hour * 60 + at.minute
        length = _minutes(upto - at)
        inside = (
            float(work["from_min"]) <= of_day
            and of_day + length <= until + 1e-6
            and at.weekday() in work["weekdays"]
        )
        hour = int(_minutes(at - begins) // 60)
        fine = step.where not in {"coat", "seal"} or bool(hours[step.where][hour])
        worked += length if inside and fine else 0.0
        out += length if not inside else 0.0
        shut += length if inside and not fine else 0.0
        at = upto
    may_rest = step.split or (step.where == "rinse" and step.minutes > 9 * 60)
    if out > _HAIR_MIN and not may_rest:
        yield _fault("out-of-hours", step, "is not done within one day's working hours.")
    if shut > _HAIR_MIN and not may_rest:
        what = "the slab does not allow stain" if step.where == "coat" else "no window for sealer"
        yield _fault(f"{step.where}-window", step, f"{what} all the while.")
    if worked < step.minutes - _HAIR_MIN:
        yield _fault("too-short", step, f"{worked:.0f} of {step.minutes:.0f} min of work fit in.")


def _crew(steps: list[_Step]) -> Iterator[DayFault]:
    for one, other in combinations(sorted(steps, key=lambda step: step.start), 2):
        if other.start >= one.end:
            continue
        if one.house != other.house:
            what = f"{one.crew} would be at {one.house} as well."
            yield _fault("two-places", other, what)
    sprayed: dict[date, str] = {}
    for step in sorted(steps, key=lambda step: step.start):
        if step.where == "coat":
            day = step.start.date()
            if sprayed.setdefault(day, step.house) != step.house:
                what = f"{step.crew} sprays {sprayed[day]} on the same day."
                yield _fault("two-sprays", step, what)


def _guards(houses: Mapping[str, list[_Step]], crew: str, people: int) -> Iterator[DayFault]:
    """While a crew sprays, each other floor of its own that is fresh needs a person to guard it."""
    fresh = []
    for steps in houses.values():
        coats = [step for step in steps if step.where == "coat" and step.crew == crew]
        rinses = [step.start for step in steps if step.where == "rinse"]
        if coats and rinses:
            fresh.append((coats[0].house, coats[0].start, min(rinses)))
    for steps in houses.values():
        for step in steps:
            if step.where != "coat" or step.crew != crew:
                continue
            others = [
                house for house, start, end in fresh
                if house != step.house and start < step.end and end > step.start
            ]  # fmt: skip
            # One sprays, one helps at the spray; who is left over guards the others.
            if len(others) > max(people - 2, 0):
                yield _fault("no-guard", step, f"nobody guards {', '.join(others)} meanwhile.")
