"""A moment of the plan in words: what is done now, how the edge stands, what comes next."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.facts.plan import Band, Field, Plan
from farwall.job.moments import Moment, moment_at
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import room_names, volume
from farwall.web.pages.course import Course
from farwall.web.pages.said_clock import SaidClock
from farwall.web.pages.shown import Shown
from farwall.web.pages.standing import Standing, piece_name
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


def words_of(shown: Shown, moment: Moment | None, stands: Standing | None = None) -> MomentWords:
    """The moment in words. stands: how the floor stands where nobody sprays."""
    clock = shown.clock
    if moment is None:
        return MomentWords(clock.time(0), said("now-no-field"), (), "")
    time, after = clock.time(moment.minute), _next(shown, moment.minute)
    if stands is not None:
        return MomentWords(time, stands.stage, stands.lines, after)
    head, lines = _head(shown.floor_plan, moment, shown.units)
    return MomentWords(time, head, lines, after)


def named(names: Sequence[str]) -> str:
    """`a, b and c`, in the page's language."""
    if len(names) < 2:
        return "".join(names)
    return said("list-and", first=", ".join(names[:-1]), last=names[-1])


def _head(plan: Plan, moment: Moment, units: Units) -> tuple[str, tuple[str, ...]]:
    field, minute = moment.field, moment.minute
    coats = [coat.id for coat in plan.inputs.coats]
    number = coats.index(moment.coat) + 1 if moment.coat in coats else 1
    if field is None:
        last = all(one.end_min <= minute for one in plan.fields)
        return said("now-all-sprayed" if last else "now-coat-dries", n=number), ()
    rooms = named(room_names(plan, field.rooms))
    if field.verdict == "cannot":
        return said("now-cannot", rooms=rooms), (said("now-cannot-line"),)
    lines = [*_edge(field, moment), _tank(field, moment, units)]
    lines.append(said("now-share", n=number, share=f"{100 * moment.sprayed_share:.0f}"))
    if any(one.who.startswith("helper") for one in moment.people):
        lines.append(said("now-helper"))
    band = next((one for one in field.bands if one.start_min <= minute < one.end_min), None)
    if band is not None:
        told = said("now-band", rooms=rooms, band=_place(field, band), bands=len(field.bands))
        return told, tuple(lines)
    if _pause(plan, minute):
        return said("now-refill", rooms=rooms), tuple(lines)
    begun = field.start_min <= minute
    return said("now-walk" if begun else "now-before", rooms=rooms), tuple(lines)


def _edge(field: Field, moment: Moment) -> Iterator[str]:
    """How old the live edge is and how long one lives here: the safe end, and the likely one."""
    open_ = field.open_time_min
    if moment.edge is not None:
        late = moment.edge.age_min > open_.low
        yield said("now-edge-dead" if late else "now-edge", age=f"{moment.edge.age_min:.1f}",
                   lives=f"{open_.low:.1f}", likely=f"{open_.likely:.0f}")  # fmt: skip
    elif moment.minute >= field.start_min:
        yield said("now-no-edge")


def _tank(field: Field, moment: Moment, units: Units) -> str:
    """What is in the tank, and to which band of the field that reaches."""
    tank = volume(moment.tank_l, units)
    left, last = moment.tank_l, None
    for band in sorted(field.bands, key=lambda one: one.start_min):
        if band.sprayer != 1 or band.end_min <= moment.minute:
            continue
        passed = max(moment.minute - band.start_min, 0.0) / max(band.end_min - band.start_min, 1e-9)
        left -= band.litres * (1 - min(passed, 1.0))
        if left < -1e-6:
            break
        last = band
    if last is None:
        return said("now-tank", tank=tank)
    return said("now-tank-to", tank=tank, band=_place(field, last))


def _place(field: Field, band: Band) -> int:
    return sorted(one.order for one in field.bands).index(band.order) + 1


def _pause(plan: Plan, minute: float) -> bool:
    return any(
        one.at_min <= minute < one.at_min + one.minutes for f in plan.fields for one in f.refills
    )


def _next(shown: Shown, minute: float) -> str:
    coming = sorted(_coming(shown.course, shown.clock, shown.units), key=lambda one: one[0])
    return next((told for at, told in coming if at > minute + _SOON_MIN), "")


def _coming(course: Course, clock: SaidClock, units: Units) -> Iterator[tuple[float, str]]:
    for piece in course.pieces:
        if piece.kind in {"planned", "happened"}:
            key = "next-piece" if piece.kind == "planned" else "next-entered"
            yield piece.from_min, said(key, at=clock.time(piece.from_min), name=piece_name(piece))
    for coat in course.coats:
        if any(one.verdict != "cannot" for one in coat.fields):
            yield coat.to_min, said("next-end", at=clock.time(coat.to_min), n=coat.number)
        yield from _fields(course.plan, coat.fields, clock, units)


def _fields(
    plan: Plan, fields: Sequence[Field], clock: SaidClock, units: Units
) -> Iterator[tuple[float, str]]:
    first = True
    for field in sorted(fields, key=lambda one: one.start_min):
        if field.verdict == "cannot":
            continue
        rooms, at = named(room_names(plan, field.rooms)), clock.time(field.start_min)
        yield field.start_min, said("next-coat" if first else "next-field", rooms=rooms, at=at)
        first = False
        yield from _refills(field, clock, units)


def _refills(field: Field, clock: SaidClock, units: Units) -> Iterator[tuple[float, str]]:
    for one in field.refills:
        key = "next-swap" if one.by.startswith("helper") else "next-refill"
        at, litres = clock.time(one.at_min), volume(one.litres, units)
        yield one.at_min, said(key, at=at, litres=litres, minutes=f"{one.minutes:g}")
