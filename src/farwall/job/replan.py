"""Plan again in mid-day: the past fixed, the rest laid from where the day stands. Pure."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import replace

import rfc8785

from farwall.errors import Unanswerable
from farwall.facts.numbered import numbered
from farwall.facts.plain import plain
from farwall.facts.plan import Band, Field, Mix, Plan
from farwall.facts.so_far import BandDone, LeftField, Past, SoFar
from farwall.job.coat_again import Remains
from farwall.job.daylight import Daylight
from farwall.job.looks_again import boxed_again, looks_again
from farwall.job.more_mix import more_mix
from farwall.job.past import Settled, settle_past
from farwall.job.rest_of_day import RestOfDay
from farwall.job.say_midday import STANDS_ON_WET
from farwall.job.second_past import without_who_never_came
from farwall.job.sun_midday import without_advice
from farwall.job.way_words import no_dry_way
from farwall.spray.schedule import NoDryWay


def replan(plan: Plan, so_far: SoFar, *, light: Daylight | None = None) -> Plan:
    """The plan of the whole day again, from the state that is told.

    What is sprayed keeps its polygons and has its true minutes; the field in
    hand goes on from its next band, its edges aged by true times; later fields
    keep the planned order but for closed rooms, which come later or are left
    for another day. When nothing has changed the rest is the plan's own. Open
    times and waits stay those of the plan; chances, proof and advice on the
    sun, which were the morning's, are left out. Raises `Refused` for what cannot be so, and
    `Unanswerable` when no dry way leads on, by the names of the rooms. Where two spray, both go on
    from where they stand; once the second has left, the rest is for the first. light: of the
    plan's days, for a coat that comes late; the plan does not tell its place, and without it the
    evening of the calendar counts.
    """
    try:
        return _replanned(plan, so_far, light)
    except NoDryWay as no:
        raise Unanswerable(no_dry_way(plan, no.start, no.end), remedies=(_DRY_WAY,)) from no


_DRY_WAY = "Tell where everybody stands, or wait until the floor between is dry."


def _replanned(plan: Plan, so_far: SoFar, light: Daylight | None) -> Plan:
    state = settle_past(plan, so_far)
    day = RestOfDay(plan, state, so_far.closed, light)
    if state.as_planned:
        found = Remains(plan.fields, plan.left, _why_before(plan))
    else:
        found = day.remains()
    past = _past(state, so_far, found)
    fields = without_who_never_came(found.fields)
    looks = plan.looks if state.as_planned else looks_again(plan, fields, after_min=so_far.at_min)
    again = replace(
        plan,
        fields=fields,
        left=found.left,
        mixes=boxed_again(_mixes(plan.mixes, fields), fields, looks),
        looks=looks,
        so_far=sealed(past, fields),
        chances=plan.chances if state.as_planned else None,
        proof=plan.proof if state.as_planned else None,
        sun=plan.sun if state.as_planned else without_advice(plan.sun),
        warnings=(
            *(w for w in plan.warnings if not w.startswith((_LEFT, STANDS_ON_WET))),
            *_left_words(plan, found),
            *_on_wet(plan, state, so_far),
        ),
    )
    return replace(again, more_mix=more_mix(again, so_far))


_LEFT = "Left for another day: "


def _left_words(plan: Plan, found: Remains) -> tuple[str, ...]:
    names = _room_names(plan)
    return tuple(
        f"{_LEFT}{numbered(plan, field.id)} ({', '.join(names[room] for room in field.rooms)}): "
        f"{found.why.get(field.id, '')}"
        for field in found.left
    )


def _room_names(plan: Plan) -> dict[str, str]:
    return {room.id: room.label for room in plan.inputs.floor.rooms}


def _mixes(mixes: Sequence[Mix], fields: Sequence[Field]) -> tuple[Mix, ...]:
    """The mixes with the fields they now serve; what has come back is served by the first."""
    served = {name for mix in mixes for name in mix.fields}
    made: list[Mix] = []
    for mix in mixes:
        first = all(other.coat != mix.coat for other in made)
        names = [
            field.id
            for field in fields
            if field.id in mix.fields
            or (first and field.coat == mix.coat and field.id not in served)
        ]
        made.append(replace(mix, fields=tuple(names)))
    return tuple(made)


def _on_wet(plan: Plan, state: Settled, so_far: SoFar) -> tuple[str, ...]:
    """Closed rooms that this coat has covered already."""
    open_ = {room for field in state.rest for room in field.rooms}
    wet = {room for field in state.past for room in field.rooms} - open_
    names = _room_names(plan)
    rooms = [names[closed.room] for closed in so_far.closed if closed.room in wet]
    return (f"{STANDS_ON_WET}, in {', '.join(rooms)}: look at it.",) if rooms else ()


def _why_before(plan: Plan) -> dict[str, str]:
    return {} if plan.so_far is None else {one.field: one.why for one in plan.so_far.left}


def _past(state: Settled, so_far: SoFar, found: Remains) -> Past:
    ordered = sorted(state.done.values(), key=lambda band: (band.start_min, band.sprayer))
    second = state.second
    return Past(
        at_min=so_far.at_min,
        coat=state.coat,
        done=tuple(BandDone(band.id, band.start_min, band.end_min) for band in ordered),
        at=state.at,
        tank_l=state.tank_l,
        tub_l=so_far.tub_l,
        closed=so_far.closed,
        left=tuple(LeftField(field.id, found.why.get(field.id, "")) for field in found.left),
        past_hash="",
        at_2=None if second is None else second.at,
        tank_2_l=None if second is None else second.tank_l,
        sprayers=None if second is None else 2 if second.stays else 1,
    )


def sealed(past: Past, fields: Sequence[Field]) -> Past:
    """The past with the hash of itself and of its bands as they stand in the plan."""
    bands: dict[str, Band] = {band.id: band for field in fields for band in field.bands}
    told = plain(replace(past, past_hash=""))
    done = [plain(bands[one.id]) for one in past.done]
    text = rfc8785.dumps([told, done])
    return replace(past, past_hash=hashlib.sha256(text).hexdigest())
