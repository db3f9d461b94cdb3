"""The past of a day settled: told times laid over the plan's, what is done set apart from the rest.

A person on the floor tells little: a minute, the last band done, a closed room. All else
is as planned. Where bands are told to have been quicker than planned, the minutes between are
shared out evenly; where only the minute now is late, the bands are taken to have been done on time,
for older edges are the safe guess.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.facts.plan import Band, Field, Plan, Refill, TimedPoint, Walk
from farwall.facts.so_far import Done, SoFar
from farwall.floor.geometry import Point
from farwall.job.so_far_sense import (
    HAIR_MIN,
    LITRE,
    bands_by_id,
    every_band,
    insist_on_sense,
    whole_fields,
)

AT_M = 0.5
"""A place told this near to the planned one is taken for it. Rank: guess."""
_SAME_MIN = 0.01
_QUICKEST = 2.0
"""Nobody sprays more than so many times as fast as planned: a minute mistyped. Rank: guess."""


@dataclass(frozen=True)
class Settled:
    """Where the day stands.

    `done`: bands with their true times, by id, in order; the last may still be in hand, then
    `now_min`, from when on the rest may begin, is its end. `before`: the coats below; `past`: the fields of the coat with
    only what is done of them; `rest`: those with bands to do, as planned. `tank_l` is what the
    tank holds at `at_min`, `tank_then_l` at `now_min`. `as_planned`: nothing has changed.
    """

    at_min: float
    now_min: float
    coat: str
    done: dict[str, Band]
    before: tuple[Field, ...]
    past: tuple[Field, ...]
    rest: tuple[Field, ...]
    here: Point
    """Where the last band done ended."""
    at: Point
    base: Point
    tank_l: float
    tank_then_l: float
    helper_free_min: float
    as_planned: bool


def settle_past(plan: Plan, so_far: SoFar) -> Settled:
    """The past of `plan` as `so_far` tells it. Raises `Refused` with every mistake."""
    insist_on_sense(plan, so_far)
    planned = _as_planned(plan, so_far.at_min)
    told = _told(plan, so_far, planned)
    done = _with_times(plan, so_far, told)
    _insist_on_order(plan, done)
    coat = _coat_in_hand(plan, done)
    base = _base(plan, coat)
    now = max([so_far.at_min, *(band.end_min for band in done.values())])
    own = [field for field in whole_fields(plan) if field.coat == coat]
    moved = _clock_of(plan, done, coat)
    past = tuple(found for field in own if (found := _past_of(field, done, moved)) is not None)
    rest = tuple(field for field in own if any(band.id not in done for band in field.bands))
    last = max((b for f in past for b in f.bands), key=lambda b: b.end_min, default=None)
    here = base if last is None else last.path[-1][:2]
    reckoned_l = _tank_at(plan, coat, past, so_far.at_min)
    # A coat that is not begun begins with an empty tank: what is in it now is the coat below.
    fresh = not past and coat != plan.fields[0].coat
    same_tank = fresh or so_far.tank_l is None or abs(so_far.tank_l - reckoned_l) <= LITRE
    tank_l = reckoned_l if same_tank or so_far.tank_l is None else so_far.tank_l
    same_place = so_far.at is None or _apart_m(so_far.at, here) <= AT_M
    at = here if same_place or so_far.at is None else so_far.at
    as_planned = (
        same_tank
        and same_place
        and not so_far.closed
        and {i: (b.start_min, b.end_min) for i, b in done.items()}
        == {i: (b.start_min, b.end_min) for i, b in planned.items()}
        and not (plan.so_far is not None and plan.so_far.closed)
    )
    return Settled(
        at_min=so_far.at_min,
        now_min=now,
        coat=coat,
        done=done,
        before=_coats_below(plan, done, coat),
        past=past,
        rest=rest,
        here=here,
        at=at,
        base=base,
        tank_l=round(tank_l, 4),
        tank_then_l=round(tank_l - _still_to_come_l(done, so_far.at_min), 4),
        helper_free_min=max([now, *_helper_back(past)]),
        as_planned=as_planned,
    )


def _as_planned(plan: Plan, minute: float) -> dict[str, Band]:
    """The bands that the plan has done by this minute, the one in hand among them."""
    bands = sorted(bands_by_id(plan).values(), key=lambda band: band.start_min)
    return {band.id: band for band in bands if band.start_min < minute - HAIR_MIN}


def _told(plan: Plan, so_far: SoFar, planned: dict[str, Band]) -> dict[str, Done]:
    """What is told to be done, by band."""
    every = sorted(bands_by_id(plan).values(), key=lambda band: band.start_min)
    of_field = {field.id: field.bands for field in whole_fields(plan)}
    found: dict[str, Done] = {}
    if not so_far.done and so_far.done_up_to is None:
        found = {name: Done(name) for name in planned}
    elif so_far.done_up_to is not None:
        last = max(b.start_min for b in every if so_far.done_up_to in (b.id, *_owner(plan, b)))
        found = {band.id: Done(band.id) for band in every if band.start_min <= last}
    if plan.so_far is not None:  # what was told once is fixed
        found.update({one.id: Done(one.id) for one in plan.so_far.done})
    for one in so_far.done:
        whole = of_field.get(one.id)
        found.update({one.id: one} if whole is None else _field_told(one, whole))
    if so_far.in_hand is not None:
        found[so_far.in_hand.id] = so_far.in_hand
    return found


def _owner(plan: Plan, band: Band) -> tuple[str, ...]:
    return tuple(field.id for field in plan.fields if band in field.bands)


def _field_told(one: Done, bands: Sequence[Band]) -> dict[str, Done]:
    """A field told as one: its bands share its minutes as planned."""
    first, last = bands[0].start_min, bands[-1].end_min
    start = first if one.start_min is None else one.start_min
    end = one.end_min
    if one.start_min is None and end is None:
        return {band.id: Done(band.id) for band in bands}
    lasts = (last - first) if end is None else (end - start)
    scale = lasts / (last - first)
    return {
        band.id: Done(
            band.id,
            start + (band.start_min - first) * scale,
            start + (band.end_min - first) * scale,
        )
        for band in bands
    }


def _with_times(plan: Plan, so_far: SoFar, told: dict[str, Done]) -> dict[str, Band]:
    """Bands done with their true times; untold ones lie between their neighbours as planned."""
    bands = [band for band in every_band(plan).values() if band.id in told]
    bands.sort(key=lambda band: band.start_min)
    hand = _in_hand(so_far, told, bands)
    last = max((b.end_min for b in bands if b.id != hand), default=0.0)
    fixed = _fixed_until(plan, told)
    squeeze = _squeezed(fixed, last, so_far.at_min)
    found: dict[str, Band] = {}
    for band in bands:
        start, end = told[band.id].start_min, told[band.id].end_min
        lasts = band.end_min - band.start_min
        if band.id == hand:
            begun = band.start_min if start is None else start
            begun = min(begun, so_far.at_min)
            found[band.id] = _at_times(band, begun, max(begun + lasts, so_far.at_min))
            continue
        if start is None and end is None:
            start, end = squeeze(band.start_min), squeeze(band.end_min)
        elif start is None:
            start = (end or 0.0) - lasts
        elif end is None:
            end = min(start + lasts, so_far.at_min)
        found[band.id] = _at_times(band, start, end or start)
    return found


def _in_hand(so_far: SoFar, told: dict[str, Done], bands: Sequence[Band]) -> str:
    """The band that is being sprayed now, empty when none is."""
    if so_far.in_hand is not None:
        return so_far.in_hand.id
    if so_far.done or so_far.done_up_to is not None or not bands:
        return ""
    last = max(bands, key=lambda band: band.start_min)
    as_told = told[last.id].start_min is None
    return last.id if as_told and last.end_min > so_far.at_min + HAIR_MIN else ""


def _fixed_until(plan: Plan, told: dict[str, Done]) -> float:
    """The last minute that nobody may move: of a past settled before, and of told times."""
    ends = [one.end_min for one in plan.so_far.done] if plan.so_far is not None else []
    bands = every_band(plan)
    ends += [bands[name].end_min for name, one in told.items() if one.end_min is not None]
    return max(ends, default=0.0)


def _squeezed(fixed: float, last: float, now: float) -> Callable[[float], float]:
    """Planned minutes as they must have been: the untold ones end before now."""
    if last <= now + HAIR_MIN or last <= fixed:
        return lambda minute: min(minute, now)
    share = max(now - fixed, 0.0) / (last - fixed)
    if share < 1 / _QUICKEST:
        what = f"what is told as done ends at {last:.1f} min in the plan, and now is {now:.1f} min."
        raise Refused(Mistake("at_min", what, "Tell the minute now, and the last band done."))
    return lambda minute: minute if minute <= fixed else fixed + (minute - fixed) * share


def _at_times(band: Band, start: float, end: float) -> Band:
    """The band sprayed from `start` to `end`, walked at one pace."""
    if start == band.start_min and end == band.end_min:
        return band
    start, end = round(start, 4), round(max(end, start), 4)
    return replace(band, start_min=start, end_min=end, path=_over(band.path, start, end))


def _over(path: tuple[TimedPoint, ...], start: float, end: float) -> tuple[TimedPoint, ...]:
    t0, t1 = path[0][2], path[-1][2]
    share = (end - start) / (t1 - t0) if t1 > t0 else 0.0
    moved = [(x, y, round(start + (t - t0) * share, 4)) for x, y, t in path]
    moved[-1] = (*moved[-1][:2], end)
    return tuple(moved)


def _insist_on_order(plan: Plan, done: dict[str, Band]) -> None:
    """Bands of a field in a row, one at a time, and no coat begun before the one below is done."""
    mistakes = []
    for field in whole_fields(plan):
        lacking = ""
        for band in field.bands:
            if band.id not in done:
                lacking = lacking or band.id
            elif lacking:
                what = f"{band.id} is told done, and {lacking} before it is not."
                mistakes.append(Mistake("done", what, f"Tell {lacking} too, or leave it out."))
                break
    ordered = sorted(done.values(), key=lambda band: band.start_min)
    for before, after in pairwise(ordered):
        if after.start_min < before.end_min - 0.05:
            what = f"{after.id} begins at {after.start_min:.2f} min, before {before.id} ends at "
            what += f"{before.end_min:.2f} min."
            mistakes.append(Mistake("done", what, "One person sprays one band at a time."))
    coats = [coat.id for coat in plan.inputs.coats]
    begun = [c for c in coats if any(f.coat == c and f.bands[0].id in done for f in plan.fields)]
    for coat in begun[:-1]:
        open_ = [f.id for f in plan.fields if f.coat == coat and f.bands[-1].id not in done]
        if open_:
            what = f"coat {begun[-1]} is begun, and {', '.join(open_)} of coat {coat} is not done."
            mistakes.append(Mistake("done", what, "Tell what is done of both coats."))
    if mistakes:
        raise Refused(*mistakes, about="The day so far cannot be like this:")


def _coat_in_hand(plan: Plan, done: dict[str, Band]) -> str:
    """The first coat that is not all done; the last one when all are."""
    for field in plan.fields:
        if any(band.id not in done for band in field.bands):
            return field.coat
    return plan.fields[-1].coat


def _base(plan: Plan, coat: str) -> Point:
    """Where the tub stands: where the first walk of the coat begins."""
    for field in plan.fields:
        if field.coat == coat:
            for walk in field.walks:
                return walk.path[0][:2]
    return plan.fields[0].walks[0].path[0][:2]


Clock = Callable[[float], float]


def _clock_of(plan: Plan, done: dict[str, Band], coat: str) -> Clock | None:
    """From the plan's minutes to true ones; None when bands were done in another order."""
    bands = every_band(plan)
    of_coat = {b.id for f in whole_fields(plan) if f.coat == coat for b in f.bands}
    own = [name for name in done if name in of_coat]
    own.sort(key=lambda name: bands[name].start_min)
    planned = [m for name in own for m in (bands[name].start_min, bands[name].end_min)]
    true = [m for name in own for m in (done[name].start_min, done[name].end_min)]
    if planned == true or not own:
        return lambda minute: minute
    if any(after < before - HAIR_MIN for before, after in pairwise(true)):
        return None

    def moved(minute: float) -> float:
        if minute <= planned[0]:
            return minute + true[0] - planned[0]
        if minute >= planned[-1]:
            return minute + true[-1] - planned[-1]
        return round(float(np.interp(minute, planned, true)), 4)

    return moved


def _coats_below(plan: Plan, done: dict[str, Band], coat: str) -> tuple[Field, ...]:
    """The coats under the one in hand, at their true minutes."""
    coats = [one.id for one in plan.inputs.coats]
    found = []
    for below in coats[: coats.index(coat)]:
        moved = _clock_of(plan, done, below)
        own = [field for field in plan.fields if field.coat == below]
        found += [past for field in own if (past := _past_of(field, done, moved)) is not None]
    return tuple(found)


def _past_of(field: Field, done: dict[str, Band], moved: Clock | None) -> Field | None:
    """The field with only what is done of it, at its true minutes; None when nothing is."""
    bands = tuple(done[band.id] for band in field.bands if band.id in done)
    if not bands:
        return None
    planned = [band for band in field.bands if band.id in done]
    whole = len(bands) == len(field.bands)
    ends = float("inf") if whole else planned[-1].start_min + _SAME_MIN
    refills, walks = [], []
    if moved is not None:
        refills = [refill for refill in field.refills if refill.at_min < ends]
        walks = [w for w in field.walks if _kept(w, refills, ends)]
        refills = [_refill_at(refill, moved) for refill in refills]
        walks = [Walk(w.who, tuple((x, y, moved(t)) for x, y, t in w.path)) for w in walks]
    return replace(
        field,
        bands=bands,
        refills=tuple(refills),
        walks=tuple(walks),
        start_min=bands[0].start_min,
        end_min=bands[-1].end_min,
    )


def _kept(walk: Walk, refills: Sequence[Refill], ends: float) -> bool:
    """Whether a walk led to what is done: the sprayer's to a band, the helper's to a filling."""
    first, last = walk.path[0][2], walk.path[-1][2]
    if walk.who.startswith("sprayer"):
        return last <= ends
    return any(
        abs(last - refill.at_min) <= _SAME_MIN
        or abs(first - refill.at_min - refill.minutes) <= _SAME_MIN
        for refill in refills
    )


def _refill_at(refill: Refill, moved: Clock) -> Refill:
    start, end = moved(refill.at_min), moved(refill.at_min + refill.minutes)
    return replace(refill, at_min=start, minutes=round(max(end - start, 0.0), 4))


def _tank_at(plan: Plan, coat: str, past: Sequence[Field], minute: float) -> float:
    """What the tank holds by the plan's own reckoning, from the last time it was told."""
    since, level = 0.0, 0.0
    if plan.so_far is not None and plan.so_far.coat == coat:
        since, level = plan.so_far.at_min, plan.so_far.tank_l
    for field in past:
        level += sum(r.litres for r in field.refills if r.at_min + r.minutes > since)
        level -= sum(_sprayed_l(b, minute) - _sprayed_l(b, since) for b in field.bands)
    return max(0.0, level)


def _sprayed_l(band: Band, minute: float) -> float:
    lasts = max(band.end_min - band.start_min, 1e-9)
    return band.litres * min(max((minute - band.start_min) / lasts, 0.0), 1.0)


def _still_to_come_l(done: dict[str, Band], minute: float) -> float:
    """What the band in hand still takes."""
    return sum(band.litres - _sprayed_l(band, minute) for band in done.values())


def _helper_back(past: Sequence[Field]) -> list[float]:
    return [w.path[-1][2] for field in past for w in field.walks if w.who == "helper"]


def _apart_m(one: Point, other: Point) -> float:
    return float(np.hypot(one[0] - other[0], one[1] - other[1]))
