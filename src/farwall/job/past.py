"""The past of a day settled: told times laid over the plan's, what is done set apart from the rest.

A person on the floor tells little: a minute, the last band done, a closed room. All else
is as planned.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from farwall.facts.plan import Band, Field, Plan, Refill, Walk
from farwall.facts.so_far import SoFar
from farwall.floor.geometry import Point
from farwall.job.clock_of import Clocks, clocks_of
from farwall.job.second_past import (
    SecondPast,
    base_2,
    sprayers_from_now,
    stands,
    swaps_for,
    word_of,
)
from farwall.job.so_far_sense import LITRE, insist_on_sense, whole_fields
from farwall.job.told_times import as_planned, bands_done
from farwall.nouns import dataclass

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
    second: SecondPast | None = None
    """Where two were at work until now; `stays` says whether the second goes on."""


def settle_past(plan: Plan, so_far: SoFar) -> Settled:
    """The past of `plan` as `so_far` tells it. Raises `Refused` with every mistake."""
    insist_on_sense(plan, so_far)
    planned = as_planned(plan, so_far.at_min)
    done = bands_done(plan, so_far)
    coat = _coat_in_hand(plan, done)
    base = _base(plan, coat)
    now = max([so_far.at_min, *(band.end_min for band in done.values())])
    own = [field for field in whole_fields(plan) if field.coat == coat]
    moved = clocks_of(plan, done, coat)
    rest = tuple(field for field in own if any(band.id not in done for band in field.bands))
    goes_on = bool(rest)
    past = tuple(
        found for field in own
        if (found := _past_of(field, done, moved, goes_on=goes_on)) is not None
    )  # fmt: skip
    # Of bands told to have ended in one minute the one planned last was the last.
    last = max(reversed([b for f in past for b in f.bands]), key=_ended, default=None)
    here = base if last is None else last.path[-1][:2]
    sprayers = sprayers_from_now(plan, so_far)
    if sprayers is not None:
        here = stands(1, past, base, now)
    reckoned_l = tank_at(plan, coat, past, so_far.at_min)
    # A coat that is not begun begins with an empty tank: what is in it now is the coat below.
    fresh = not past and coat != plan.fields[0].coat
    same_tank = fresh or so_far.tank_l is None or abs(so_far.tank_l - reckoned_l) <= LITRE
    tank_l = reckoned_l if same_tank or so_far.tank_l is None else so_far.tank_l
    same_place = so_far.at is None or _apart_m(so_far.at, here) <= AT_M
    at = here if same_place or so_far.at is None else so_far.at
    second = _second(plan, so_far, coat, past, done)
    unchanged = (
        same_tank
        and same_place
        and not so_far.closed
        and (second is None or second.as_planned)
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
        tank_then_l=round(tank_l - _still_to_come_l(done, so_far.at_min, sprayer=1), 4),
        helper_free_min=max([now, *_helper_back(past)]),
        as_planned=unchanged,
        second=second,
    )


def _second(
    plan: Plan,
    so_far: SoFar,
    coat: str,
    past: Sequence[Field],
    done: dict[str, Band],
) -> SecondPast | None:
    """The second sprayer where the crew is of two; None where it is of one, or he left before."""
    sprayers = sprayers_from_now(plan, so_far)
    if sprayers is None:
        return None
    before = 2 if plan.so_far is None else plan.so_far.sprayers or 2
    own_base = base_2(plan, coat, _base(plan, coat))
    now = max([so_far.at_min, *(band.end_min for band in done.values())])
    here = stands(2, past, own_base, now)
    reckoned_l = tank_at(plan, coat, past, so_far.at_min, sprayer=2)
    fresh = not past and coat != plan.fields[0].coat
    told_l = so_far.tank_2_l
    same_tank = fresh or told_l is None or abs(told_l - reckoned_l) <= LITRE
    tank_l = reckoned_l if same_tank or told_l is None else told_l
    same_place = so_far.at_2 is None or _apart_m(so_far.at_2, here) <= AT_M
    return SecondPast(
        here=here,
        at=here if same_place or so_far.at_2 is None else so_far.at_2,
        base=own_base,
        tank_l=round(tank_l, 4),
        tank_then_l=round(tank_l - _still_to_come_l(done, so_far.at_min, sprayer=2), 4),
        stays=sprayers == 2,
        as_planned=same_tank and same_place and sprayers == before,
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
                if walk.who != word_of(2):
                    return walk.path[0][:2]
    return plan.fields[0].walks[0].path[0][:2]


def _coats_below(plan: Plan, done: dict[str, Band], coat: str) -> tuple[Field, ...]:
    """The coats under the one in hand, at their true minutes."""
    coats = [one.id for one in plan.inputs.coats]
    found = []
    for below in coats[: coats.index(coat)]:
        moved = clocks_of(plan, done, below)
        own = [field for field in plan.fields if field.coat == below]
        found += [past for field in own if (past := _past_of(field, done, moved)) is not None]
    return tuple(found)


def _past_of(
    field: Field, done: dict[str, Band], moved: Clocks | None, *, goes_on: bool = False
) -> Field | None:
    """The field with only what is done of it, at its true minutes; None when nothing is.

    goes_on: the coat does, so that nobody walked out for good behind the last band of it.
    """
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
        last = planned[-1].end_min - _SAME_MIN
        walks = [w for w in walks if not (goes_on and _is_sprayers(w) and w.path[0][2] >= last)]
        walks = [moved.walk(walk, refills) for walk in walks]
        refills = [moved.refill(refill) for refill in refills]
    return replace(
        field,
        bands=bands,
        refills=tuple(refills),
        walks=tuple(walks),
        start_min=min(band.start_min for band in bands),
        end_min=max(band.end_min for band in bands),
    )


def _kept(walk: Walk, refills: Sequence[Refill], ends: float) -> bool:
    """Whether a walk led to what is done: the sprayer's to a band, the helper's to a filling."""
    first, last = walk.path[0][2], walk.path[-1][2]
    if _is_sprayers(walk):
        return last <= ends
    return any(
        abs(last - refill.at_min) <= _SAME_MIN
        or abs(first - refill.at_min - refill.minutes) <= _SAME_MIN
        for refill in refills
    )


def _is_sprayers(walk: Walk) -> bool:
    return walk.who.startswith("sprayer")


def tank_at(
    plan: Plan, coat: str, past: Sequence[Field], minute: float, *, sprayer: int = 1
) -> float:
    """What a tank holds by the plan's own reckoning, from the last time it was told. [L]"""
    since, level = 0.0, 0.0
    told = plan.so_far
    if told is not None and told.coat == coat:
        litres = told.tank_l if sprayer == 1 else told.tank_2_l
        since, level = (0.0, 0.0) if litres is None else (told.at_min, litres)
    for field in past:
        fills = [refill for refill in field.refills if swaps_for(refill.by) == sprayer]
        own = [band for band in field.bands if band.sprayer == sprayer]
        level += sum(r.litres for r in fills if r.at_min + r.minutes > since)
        level -= sum(_sprayed_l(b, minute) - _sprayed_l(b, since) for b in own)
    return max(0.0, level)


def _sprayed_l(band: Band, minute: float) -> float:
    lasts = max(band.end_min - band.start_min, 1e-9)
    return band.litres * min(max((minute - band.start_min) / lasts, 0.0), 1.0)


def _still_to_come_l(done: dict[str, Band], minute: float, *, sprayer: int) -> float:
    """What the band in a sprayer's hand still takes. [L]"""
    own = [band for band in done.values() if band.sprayer == sprayer]
    return sum(band.litres - _sprayed_l(band, minute) for band in own)


def _helper_back(past: Sequence[Field]) -> list[float]:
    return [w.path[-1][2] for field in past for w in field.walks if w.who == "helper"]


def _apart_m(one: Point, other: Point) -> float:
    return float(np.hypot(one[0] - other[0], one[1] - other[1]))
