"""Why this order and not that one: the best order's reasons, and what another would cost."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import partial
from itertools import pairwise
from math import dist, isfinite
from typing import cast

from farwall.air.weather import Forecast, WeatherFile
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.numbered import numbered
from farwall.facts.plain import plain
from farwall.facts.plan import Field, Plan
from farwall.job.explained import (
    Explained,
    FieldFigures,
    NotNow,
    OrderFigures,
    Place,
    Stop,
)
from farwall.job.faults_told import FaultWords
from farwall.job.ground import JobGround, ground_of
from farwall.job.laying_out import LaidOut, laid_out
from farwall.job.plan_job import plan_job
from farwall.job.way_words import seam_named
from farwall.spray.check import check_plan
from farwall.spray.order import House, order_asked_for
from farwall.spray.reasons import Turn, numbers_of, shut_in, turns
from farwall.spray.stop_reasons import StopReason, stop_reasons
from farwall.spray.sweeps import Pieces
from farwall.spray.unlike import unlike
from farwall.spray.unparted import HIDDEN


def explain(
    job: Job,
    *,
    weather: WeatherFile | Forecast | None = None,
    order: Sequence[str] = (),
    lessons: Lessons | None = None,
    sprayer: str = "",
) -> Explained:
    """Why the best order is the best, and what `order` (or the job's wish) would cost.

    order: room ids; may name some of the rooms, the others then follow. lessons, sprayer: as
    `plan_job` takes them. Raises `Unanswerable`
    when no order at all lets everybody out.
    """
    asked = tuple(order) or job.wishes.order
    free = replace(job, wishes=replace(job.wishes, order=()))
    planned = partial(plan_job, weather=weather, lessons=lessons, sprayer=sprayer)
    plan = planned(free)
    ground = ground_of(free, weather, lessons=lessons, sprayer=sprayer)
    laid = laid_out(ground)
    house = House(laid.cut.fields, laid.sweeps, laid.budget)
    us = job.wishes.units == "us"
    numbers = numbers_of(house, [step.pieces for step in laid.order.steps])
    reasons = turns(house, numbers)
    return Explained(
        best=_figures(plan, us=us),
        asked=_asked(partial(planned, free, order=asked), ground, house, asked, us=us)
        if asked
        else None,
        places=tuple(_place(ground, turn, n) for n, turn in enumerate(reasons, 1)),
        stops=_stops(ground, laid),
        proof=plan.proof,
    )


def _asked(
    planned: Callable[[], Plan],
    ground: JobGround,
    house: House,
    asked: tuple[str, ...],
    *,
    us: bool,
) -> OrderFigures:
    order = order_asked_for(house, asked)
    rooms = tuple(_rooms(ground, house.fields[index]) for index in order)
    shut = shut_in(house, order)
    if not shut:
        try:
            return _figures(planned(), us=us)
        except Unanswerable as no:
            return _no_order(rooms, (no.reason,))
    words = []
    for one in shut:
        wet = [_named(ground, pieces) for pieces in one.into]
        into = f" but into {' and '.join(wet)}, sprayed before it" if wet else ""
        words.append(f"{_named(ground, one.pieces)}: no way out{into}.")
    return _no_order(rooms, tuple(words))


def _no_order(rooms: tuple[tuple[str, ...], ...], words: tuple[str, ...]) -> OrderFigures:
    return OrderFigures(
        rooms=rooms,
        stands=False,
        shut_in=words,
        faults=(),
        fields=(),
        least_margin_min=None,
        minutes=None,
        walked_m=None,
        refills_in_the_open=None,
        stop_lines=(),
    )


def _figures(plan: Plan, *, us: bool) -> OrderFigures:
    document = cast("Mapping[str, object]", plain(plan))
    faults, words = check_plan(document), FaultWords.of(document, us=us)
    label = {room.id: room.label for room in plan.inputs.floor.rooms}
    fields = tuple(_field(plan, field, label) for field in plan.fields)
    first = plan.fields[0].coat
    return OrderFigures(
        rooms=tuple(
            one.rooms for one, f in zip(fields, plan.fields, strict=True) if f.coat == first
        ),
        stands=not faults,
        shut_in=tuple(words.told(fault.what) for fault in faults if fault.code == "shut-in"),
        faults=tuple(f"{fault.code}: {words.told(fault.what)}" for fault in faults),
        fields=fields,
        least_margin_min=min(one.margin_min for one in fields),
        minutes=round(sum(_minutes(plan, coat.id) for coat in plan.inputs.coats), 1),
        walked_m=round(sum(_walked_m(field) for field in plan.fields), 1),
        refills_in_the_open=sum(_in_the_open(field) for field in plan.fields),
        stop_lines=tuple(
            dict.fromkeys(
                stop.id
                for field in plan.fields
                for stop in field.stop_lines
                if stop.kind != "outside"
            )
        ),
    )


def _field(plan: Plan, field: Field, label: Mapping[str, str]) -> FieldFigures:
    return FieldFigures(
        field.id,
        numbered(plan, field.id),
        tuple(label[room] for room in field.rooms),
        field.exit,
        field.verdict,
        round(field.peak_age_min, 2),
        round(field.open_time_min.low - field.peak_age_min, 2),
    )


def _minutes(plan: Plan, coat: str) -> float:
    """From the first walk of a coat to the sprayer's last step. [min]"""
    fields = [field for field in plan.fields if field.coat == coat]
    begins = min(_times(fields[0]))
    return max(max(_times(field)) for field in fields) - begins


def _times(field: Field) -> list[float]:
    walks = [t for walk in field.walks for _, _, t in (walk.path[0], walk.path[-1])]
    return [field.start_min, field.end_min, *walks]


def _walked_m(field: Field) -> float:
    """The sprayer's walks without spraying. [m]"""
    paths = [walk.path for walk in field.walks if walk.who == "sprayer"]
    return sum(dist(a[:2], b[:2]) for path in paths for a, b in pairwise(path))


def _in_the_open(field: Field) -> int:
    return sum(refill.at_min > field.start_min for refill in field.refills)


def _place(ground: JobGround, turn: Turn, place: int) -> Place:
    others = tuple(
        NotNow(
            _rooms(ground, one.pieces),
            one.why,
            None if one.worst_share is None else round(one.worst_share, 3),
        )
        for one in turn.passed
    )
    return Place(place, _rooms(ground, turn.pieces), round(turn.share, 3), _decided(turn), others)


def _decided(turn: Turn) -> str:
    """What put the field here: the first of these that any other field would have lost."""
    if not turn.passed:
        return "the last that is left"
    open_ = [one for one in turn.passed if one.why != "shut in"]
    if not open_:
        return "any other now would shut somebody in"
    for why, words in _WORDS.items():
        if any(one.why == why for one in open_):
            return words
    return "alike: the order of doors and sizes"


_WORDS = {
    "margin": "another now would leave the tightest edge less to spare",
    "largest last": "the largest open field goes last",
    "far first": "far fields first, for shorter walks",
}


def _stops(ground: JobGround, laid: LaidOut) -> tuple[Stop, ...]:
    found = stop_reasons(laid.cut.fields, laid.sweeps, laid.budget)
    return tuple(_stop(ground, one) for one in sorted(found, key=lambda one: one.seam.id))


def _stop(ground: JobGround, one: StopReason) -> Stop:
    can = isfinite(one.share)
    between = (_rooms(ground, one.fields[0]), _rooms(ground, one.fields[1]))
    return Stop(
        one.seam.id,
        one.seam.kind,
        one.cost,
        between,
        round(one.age_min, 2) if can else None,
        round(one.share, 3) if can else None,
        one.another[0].id if one.another else None,
        round(one.another[1], 3) if one.another and isfinite(one.another[1]) else None,
        _parts_unlike(ground, one) or _without(one),
        seam_named(ground.floor, one.seam.id),
        seam_named(ground.floor, one.another[0].id) if one.another else "",
    )


def _parts_unlike(ground: JobGround, one: StopReason) -> str:
    """The word that a stop keeps floor apart that takes stain unlike; empty where it does not."""
    pieces = ground.world.pieces
    both = [[pieces[name] for name in sorted(field)] for field in one.fields]
    if not any(unlike(a, b) for a in both[0] for b in both[1]):
        return ""
    return "Without it one field would hold floor that takes stain unlike (drop seconds, or pours)."


def _without(one: StopReason) -> str:
    if not isfinite(one.share):
        return "Without it nobody could spray both in one go."
    share = f"{100 * one.share:.0f} % of its budget, with it {100 * one.apart_share:.0f} %"
    if one.needed:
        return f"Without it the oldest edge would take {share}."
    if one.seam.kind not in HIDDEN:
        return f"Not for the edge ({share})."
    if not one.one_tank:
        return f"Not for the edge ({share}): one tank would not do both."
    seen = "is in sight, and hides" if one.seam.sight else "is not seen"
    return f"Not for the edge ({share}): here a stop {seen}."


def _rooms(ground: JobGround, pieces: Pieces) -> tuple[str, ...]:
    rooms = ground.floor.room_by_id
    ids = dict.fromkeys(ground.world.pieces[piece].room for piece in sorted(pieces))
    return tuple(rooms[one].label for one in ids)


def _named(ground: JobGround, pieces: Pieces) -> str:
    return " + ".join(_rooms(ground, pieces))
