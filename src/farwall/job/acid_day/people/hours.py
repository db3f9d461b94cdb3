"""Hours of an acid day for its people: spells of spraying, looks, cartridges, who stays out. Pure.

Lower functions: other parts and papers may call them.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from farwall.air.waits import DWELL, NEUTRALISE
from farwall.days.work_hours import rinsing_min
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.plan import Clock, Plan
from farwall.facts.workers import Cartridge
from farwall.floor.nouns import Floor
from farwall.floor.takeoff import take_off
from farwall.job.acid_day.people.noun import CartridgeDay, KeepOut, LookIn
from farwall.job.waits import rinsed_min

SPELL_GAP_MIN = 10.0
"""Between two fields so near nobody takes the respirator off: one spell. A guess."""
LAST_LOOK_MIN = 1.0
"""A look so short before they come out is that one."""
AIRED_MIN = 60.0
"""Doors open, fan blowing out, after the last rinse: a guess; the nose decides nothing."""
OTHERS = ("owner", "pets", "other trades")
Spell = tuple[float, float]


def spells_of(plan: Plan) -> tuple[tuple[str, Spell], ...]:
    """When somebody is inside to spray: coat with begin and end minute, in order."""
    found: list[tuple[str, Spell]] = []
    for field in sorted(plan.fields, key=lambda one: one.start_min):
        if found and found[-1][0] == field.coat:
            coat, (begin, end) = found[-1]
            if field.start_min - end <= SPELL_GAP_MIN:
                found[-1] = (coat, (begin, max(end, field.end_min)))
                continue
        found.append((field.coat, (field.start_min, field.end_min)))
    return tuple(found)


def looks_of(plan: Plan, every_min: float) -> tuple[LookIn, ...]:
    """Each look at who sprays: every so many minutes of a spell, and when they come out."""
    found: list[LookIn] = []
    for coat, (begin, end) in spells_of(plan):
        count = 1
        while begin + count * every_min < end - LAST_LOOK_MIN:
            at = begin + count * every_min
            found.append(LookIn(round(at, 2), moment(plan, at), coat))
            count += 1
        found.append(LookIn(round(end, 2), moment(plan, end), coat, last=True))
    return tuple(found)


def moment(plan: Plan, minute: float) -> str:
    """A minute of the plan as a moment, ISO 8601 with offset, to the full minute."""
    at = datetime.fromisoformat(plan.starts_at) + timedelta(minutes=minute, seconds=30)
    return at.replace(second=0, microsecond=0).isoformat()


def cartridge_day(pair: Cartridge, spells: Sequence[Spell], plan: Plan) -> CartridgeDay:
    """What the planned spraying makes of a pair: minutes left, and when a new one must be on."""
    planned = sum(end - begin for begin, end in spells)
    limit = pair.change_after_min
    if limit is None:
        return CartridgeDay(None, pair.used_min, round(planned, 1), None, None)
    left = limit - pair.used_min
    by = _used_up(spells, left) if planned > left else None
    return CartridgeDay(
        limit, pair.used_min, round(planned, 1), round(left - planned, 1),
        None if by is None else round(by, 1), "" if by is None else moment(plan, by),
    )  # fmt: skip


def _used_up(spells: Sequence[Spell], left: float) -> float | None:
    for begin, end in spells:
        if left < end - begin:
            return begin + max(left, 0.0)
        left -= end - begin
    return None


def keep_out(plan: Plan, floor: Floor) -> KeepOut:
    """Until when owner, pets and other trades stay out: rinsed and aired, by the plan's clocks.

    Likely: the plan's own hour of the last rinse. Late: after the long end of dwell and drying.
    """
    start = moment(plan, 0.0)
    clocks = {clock.name: clock for clock in plan.clocks}
    down = clocks.get("dry-down before sealing")
    likely = down.begins_min if down is not None and not plan.left else None
    late = _late_rinse(plan, floor, clocks) if likely is not None else None
    free = [moment(plan, one + AIRED_MIN) if one is not None else "" for one in (likely, late)]
    return KeepOut(
        who=OTHERS, from_at=start, rinsed_likely_min=likely, rinsed_late_min=late,
        free_likely_at=free[0], free_late_at=free[1], aired_min=AIRED_MIN,
        rank=Rank.GUESS.value, source=f"{PRACTICE}, {OUR_GUESS}",
    )  # fmt: skip


def _late_rinse(plan: Plan, floor: Floor, clocks: dict[str, Clock]) -> float | None:
    """The last rinse after the long end of dwell and drying; never before the likely one."""
    dwell, dry = clocks.get(DWELL.name), clocks.get(NEUTRALISE.name)
    down = clocks["dry-down before sealing"]
    if dwell is None or dwell.begins_min is None or dwell.high_min is None:
        return None
    if dry is not None and dry.high_min is None:
        return None
    waited = max(dwell.high_min, dry.high_min or 0.0 if dry is not None else 0.0)
    people = 2 if plan.inputs.crew.helper or plan.inputs.crew.sprayers > 1 else 1
    lasts = rinsing_min(area_m2=take_off(floor).net_m2, people=people)
    starts = datetime.fromisoformat(plan.starts_at)
    late = rinsed_min(starts, dwell.begins_min + waited, lasts_min=lasts)
    return round(max(late, down.begins_min or 0.0), 1)
