"""The calendar in sentences: what, when, until when it may run, what moves."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime
from typing import Any

from farwall.papers.wall_clock import Units
from farwall.phrasebook import LANGUAGE, speaking
from farwall.phrasebook import told as in_language
from farwall.web.pages.when import clock_told, day_told, moment_told
from farwall.web.words import said

Json = Mapping[str, Any]


def step_name(ident: str) -> str:
    """What a step of the chain is called: `coat 1`, `judge, neutralise, scrub, rinse`."""
    return _step("days-step", ident)


def step_short(ident: str) -> str:
    """The same in a word or two."""
    return _step("days-short", ident)


def _step(prefix: str, ident: str) -> str:
    kind, _, n = ident.rpartition("-")
    if kind in {"coat", "seal"}:
        return said(f"{prefix}-{kind}", n=n)
    return said(f"{prefix}-{ident}")


def _at(step: Json, key: str) -> datetime:
    return datetime.fromisoformat(step[key])


def told_in_short(house: Json) -> str:
    """`Mon 8 Jun to Thu 18 Jun`, and LATE where it is."""
    first, last = _at(house["steps"][0], "starts_at"), _at(house["steps"][-1], "ends_at")
    told = said("days-from-to", first=day_told(first), last=day_told(last))
    return told + (said("days-late", days=_days(house["late_days"])) if house["late_days"] else "")


def _days(count: int) -> str:
    return said("days-day-1") if count == 1 else said("days-days", n=count)


def steps_told(house: Json) -> list[str]:
    """What is done on each day: `Mon 8 Jun protect and clean, 7:30 am to 3:45 pm`, one a line."""
    by_day: dict[date, list[str]] = {}
    for step in house["steps"]:
        by_day.setdefault(_at(step, "starts_at").date(), []).append(step_name(step["id"]))
    return [
        said("days-on-day", day=day_told(day), what=", ".join(names))
        for day, names in by_day.items()
    ]


def hours_told(house: Json, units: Units) -> list[str]:
    """Each step by the clock, what it waits for, and between when it may be done."""
    return [line for step in house["steps"] for line in _step_told(step, units)]


def _step_told(step: Json, units: Units) -> Iterator[str]:
    start, end = _at(step, "starts_at"), _at(step, "ends_at")
    until = clock_told(end, units) if end.date() == start.date() else moment_told(end, units)
    told = said(
        "days-step-at", day=day_told(start), start=clock_told(start, units), until=until,
        what=step_name(step["id"]),
    )  # fmt: skip
    if step["wait"] and step["ready_at"]:
        told += said("days-after-wait", over=moment_told(_at(step, "ready_at"), units))
    low = moment_told(_at(step, "ends_low_at"), units)
    if step["ends_high_at"]:
        high = moment_told(_at(step, "ends_high_at"), units)
        yield told + said("days-done-between", low=low, high=high)
    else:
        yield told + said("days-done-open", low=low)


def house_told(house: Json, units: Units) -> list[str]:
    """When it is handed over at best and worst, the lock, the chance of a lost day."""
    last, lock = house["steps"][-1], house["lock"]
    low, likely = _at(last, "ends_low_at"), _at(last, "ends_at")
    values = {"likely": day_told(likely), "low": day_told(low)}
    if last["ends_high_at"]:
        high = day_told(_at(last, "ends_high_at"))
        sure = values["low"] == high
        lines = [said("days-over-sure" if sure else "days-over", high=high, **values)]
    else:
        lines = [said("days-over-open", **values)]
    ends = moment_told(datetime.fromisoformat(lock["ends_at"]), units)
    lines.append(said("days-locked", until=ends))
    if house["lost_chance"] is not None:
        lines.append(said("days-chance", share=f"{100 * house['lost_chance']:.0f}"))
    if house["late_days"]:
        due = date.fromisoformat(house["due"])
        late = _days(house["late_days"])
        lines.append(said("days-is-late", due=day_told(due), days=late))
    return lines


def proof_told(told: Json) -> str:
    """How good it is: its cost, what none comes below, the gap between."""
    proof = told["proof"]
    if len(told["houses"]) == 1:
        return said("days-proof-one", n=proof["columns"])
    key = "days-proof-best" if proof["gap_percent"] < 0.05 else "days-proof"
    return said(
        key, cost=f"{proof['cost_days']:.1f}", bound=f"{proof['bound_days']:.1f}",
        gap=f"{proof['gap_percent']:.1f}", n=f"{proof['columns']:,}",
    )  # fmt: skip


def next_steps(told: Json, now: datetime, units: Units, *, most: int = 6) -> list[str]:
    """What is on next at which house, from a moment on."""
    coming = [
        (_at(step, "starts_at"), str(house["name"]), str(step["id"]))
        for house in told["houses"] for step in house["steps"]
        if _at(step, "ends_at") > now
    ]  # fmt: skip
    return [
        said("days-next", when=moment_told(at, units), house=name, what=step_name(step))
        for at, name, step in sorted(coming)[:most]
    ]


def moves_told(moved: Sequence[Json], told: Json) -> list[str]:
    """What moves, a paragraph for each house that it moves in; that nothing does is told too."""
    if not moved:
        return [said("days-nothing-moves")]
    lines = []
    for one in moved:
        parts = [said("days-moves-in", house=one["name"], what=_hand_over(one["hand_over_days"]))]
        if one["crew"] != one["crew_was"]:
            was, now = (str(one[key]).removeprefix("crew ") for key in ("crew_was", "crew"))
            parts.append(said("days-other-crew", was=was, now=now))
        parts += [_moved(step) for step in one["steps"]]
        lines.append(" ".join([f"{'; '.join(parts)}.", *_in_tongue(one["why"], told)]))
    still = {house["id"] for house in told["houses"]} - {one["house"] for one in moved}
    names = [str(house["name"]) for house in told["houses"] if house["id"] in still]
    if names:
        lines.append(said("days-still", names=", ".join(names)))
    return lines


def reasons_told(told: Json) -> list[str]:
    """Why each house moved by what was asked and let stand, a paragraph for each."""
    names = {house["id"]: house["name"] for house in told["houses"]}
    return [
        f"{names.get(one['house'], one['house'])}: {' '.join(_in_tongue(one['why'], told))}"
        for one in told.get("moved", ())
    ]


def _in_tongue(sentences: Sequence[str], document: Json) -> list[str]:
    """In the language that is spoken; what trades are called stays in every one."""
    with speaking(LANGUAGE.get(), {str(one["trade"]) for one in document.get("away", ())}):
        return [in_language(one) for one in sentences]


def _moved(step: Json) -> str:
    was, now = day_told(_at(step, "was")), day_told(_at(step, "now"))
    return said("days-moved", what=step_name(step["id"]), now=now, was=was)


def _hand_over(days: int) -> str:
    if not days:
        return said("days-over-same")
    return said("days-over-later" if days > 0 else "days-over-earlier", days=_days(abs(days)))
