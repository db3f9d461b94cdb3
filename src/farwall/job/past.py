"""The past of a day settled: told times laid over the plan's, what is done set apart from the rest.

A person on the floor tells little: a minute, the last band done, a closed room. All else
is as planned.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np

from farwall.facts.plan import Band, Field, Plan, Refill, Walk
from farwall.facts.so_far import SoFar
from farwall.floor.geometry import Point
from farwall.job.so_far_sense import HAIR_MIN, LITRE, every_band, insist_on_sense, whole_fields
from farwall.job.told_times import as_planned, bands_done

AT_M = 0.5
"""A place told this near to the planned one is taken for it. Rank: guess."""
_SAME_MIN = 0.01


@dataclass(frozen=True)
class Settled:
    """Where the day stands.

    `done`: bands with their true times, by id, in order; the last may still be in hand, then
    `now_min`, from when on the rest may begin, is its end. `before`: the coats below; `past`:
    fields of the coat in hand with only what is done of them; `rest`: those with bands to
    do, as planned. `tank_l` is in the tank at `at_min`, `tank_then_l` at `now_min`.
    `as_planned`: nothing has changed.
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
    planned = as_planned(plan, so_far.at_min)
    done = bands_done(plan, so_far)
    coat = _coat_in_hand(plan, done)
    base = _base(plan, coat)
    now = max([so_far.at_min, *(band.end_min for band in done.values())])
    own = [field for field in whole_fields(plan) if field.coat == coat]
    moved = _clock_of(plan, done, coat)
    past = tuple(found for field in own if (found := _past_of(field, done, moved)) is not None)
    rest = tuple(field for field in own if any(band.id not in done for band in field.bands))
    # Of bands told to have ended in one minute the one planned last was the last.
    last = max(reversed([b for f in past for b in f.bands]), key=_ended, default=None)
    here = base if last is None else last.path[-1][:2]
    reckoned_l = _tank_at(plan, coat, past, so_far.at_min)
    # A coat that is not begun begins with an empty tank: what is in it now is the coat below.
    fresh = not past and coat != plan.fields[0].coat
    same_tank = fresh or so_far.tank_l is None or abs(so_far.tank_l - reckoned_l) <= LITRE
    tank_l = reckoned_l if same_tank or so_far.tank_l is None else so_far.tank_l
    same_place = so_far.at is None or _apart_m(so_far.at, here) <= AT_M
    at = here if same_place or so_far.at is None else so_far.at
    unchanged = (
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
        as_planned=unchanged,
    )


def _ended(band: Band) -> tuple[float, float]:
    return band.end_min, band.start_min


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
