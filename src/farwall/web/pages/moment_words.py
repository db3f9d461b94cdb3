"""A moment of the plan in words: what is done now, how the edge stands, what comes next."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from farwall.facts.plan import Clock, Field, Plan
from farwall.job.moments import Moment, moment_at
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import listed, room_names, volume
from farwall.web.words import said

_SOON_MIN = 0.02


@dataclass(frozen=True)
class MomentWords:
    """time: on the wall · head: where and what · lines: edge, tank · next: what comes then."""

    time: str
    head: str
    lines: tuple[str, ...]
    next: str


def coat_at(plan: Plan, minute: float) -> str:
    """The coat in hand at a minute: the one begun last by then, before all the first."""
    begun = [field for field in plan.fields if field.start_min <= minute]
    chosen = max(begun, key=lambda f: f.start_min, default=None)
    chosen = chosen or min(plan.fields, key=lambda f: f.start_min, default=None)
    return chosen.coat if chosen is not None else ""


def moment_of(plan: Plan, minute: float) -> Moment | None:
    """The floor at a minute; None where the plan has no field at all."""
    return moment_at(plan, coat_at(plan, minute), minute) if plan.fields else None


def words_of(plan: Plan, moment: Moment | None, clock: WallClock, units: Units) -> MomentWords:
    """The moment in words."""
    if moment is None:
        return MomentWords(clock.time(0), said("now-no-field"), (), "")
    field, minute = moment.field, moment.minute
    head, lines = _head(plan, moment, units)
    if field is None and not lines:
        lines = tuple(_waits(plan, moment.coat, clock))
    return MomentWords(clock.time(minute), head, lines, _next(plan, minute, clock, units))


def _head(plan: Plan, moment: Moment, units: Units) -> tuple[str, tuple[str, ...]]:
    field, minute = moment.field, moment.minute
    coats = [coat.id for coat in plan.inputs.coats]
    number = coats.index(moment.coat) + 1 if moment.coat in coats else 1
    if field is None:
        last = all(one.end_min <= minute for one in plan.fields)
        return said("now-all-sprayed" if last else "now-coat-dries", n=number), ()
    rooms = listed(room_names(plan, field.rooms))
    if field.verdict == "cannot":
        return said("now-cannot", rooms=rooms), ()
    band = next((one for one in field.bands if one.start_min <= minute < one.end_min), None)
    lines = []
    if moment.edge is not None:
        age, lives = f"{moment.edge.age_min:.1f}", f"{field.open_time_min.low:.1f}"
        late = moment.edge.age_min > field.open_time_min.low
        lines.append(said("now-edge-dead" if late else "now-edge", age=age, lives=lives))
    elif minute >= field.start_min:
        lines.append(said("now-no-edge"))
    lines.append(said("now-tank", tank=volume(moment.tank_l, units)))
    lines.append(said("now-share", n=number, share=f"{100 * moment.sprayed_share:.0f}"))
    if band is not None:
        place = sorted(one.order for one in field.bands).index(band.order) + 1
        told = said("now-band", rooms=rooms, band=place, bands=len(field.bands))
        return told, tuple(lines)
    pause = _pause(plan, minute)
    if pause:
        return said("now-refill", rooms=rooms), tuple(lines)
    begun = field.start_min <= minute
    return said("now-walk" if begun else "now-before", rooms=rooms), tuple(lines)


def _pause(plan: Plan, minute: float) -> bool:
    return any(
        one.at_min <= minute < one.at_min + one.minutes for f in plan.fields for one in f.refills
    )


def _waits(plan: Plan, coat: str, clock: WallClock) -> Iterator[str]:
    """The wait that follows a coat."""
    ends = max((f.end_min for f in plan.fields if f.coat == coat), default=0.0)
    wait = next((one for one in plan.clocks if one.coat == coat and one.begins_min is None), None)
    if wait is not None:
        yield wait_told(wait, ends, clock)


def wait_told(wait: Clock, begins: float, clock: WallClock) -> str:
    """A wait as a sentence: from when to when, and the likeliest."""
    if wait.likely_min is None:
        return said("wait-never", name=wait.name)
    low, likely = clock.time(begins + wait.low_min), clock.time(begins + wait.likely_min)
    if wait.high_min is None:
        return said("wait-open", name=wait.name, low=low, likely=likely)
    high = clock.time(begins + wait.high_min)
    return said("wait", name=wait.name, low=low, likely=likely, high=high)


def _next(plan: Plan, minute: float, clock: WallClock, units: Units) -> str:
    coming = sorted(_coming(plan, clock, units), key=lambda one: one[0])
    return next((told for at, told in coming if at > minute + _SOON_MIN), "")


def _coming(plan: Plan, clock: WallClock, units: Units) -> Iterator[tuple[float, str]]:
    first: set[str] = set()
    coats = [coat.id for coat in plan.inputs.coats]
    for coat in dict.fromkeys(field.coat for field in plan.fields):
        ends = max(field.end_min for field in plan.fields if field.coat == coat)
        n = coats.index(coat) + 1 if coat in coats else 1
        yield ends, said("next-end", at=clock.time(ends), n=n)
    for field in sorted(plan.fields, key=lambda one: one.start_min):
        if field.verdict == "cannot":
            continue
        rooms, at = listed(room_names(plan, field.rooms)), clock.time(field.start_min)
        if field.coat not in first:
            first.add(field.coat)
            yield field.start_min, said("next-coat", rooms=rooms, at=at)
        else:
            yield field.start_min, said("next-field", rooms=rooms, at=at)
        yield from _refills(field, clock, units)


def _refills(field: Field, clock: WallClock, units: Units) -> Iterator[tuple[float, str]]:
    for one in field.refills:
        key = "next-swap" if one.by.startswith("helper") else "next-refill"
        at, litres = clock.time(one.at_min), volume(one.litres, units)
        yield one.at_min, said(key, at=at, litres=litres, minutes=f"{one.minutes:g}")
