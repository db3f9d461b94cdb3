"""Which moment of a plan is looked at, and on which tape."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time

from farwall.facts.plan import Plan
from farwall.web.pages.shown import Shown
from farwall.web.pages.tape import SCALES, Scale

_BEFORE_MIN = 0.02
_ON_MIN = 0.05
"""A step lands a little after a band begins, so that its first floor shows."""
_DAY_MIN = 1440


@dataclass(frozen=True)
class Look:
    """minute and scale of the tape; the steps before and after; where something is sprayed.

    steps: minutes at which something begins · spans: from and to of each coat, for playing.
    """

    minute: float
    scale: Scale
    before: float | None
    after: float | None
    steps: tuple[float, ...]
    spans: tuple[tuple[float, float], ...]


def look_at(shown: Shown, *, minute: float | None = None, at: str = "", scale: str = "") -> Look:
    """What is looked at: the minute, the time of day `at` (H:MM), else the tightest moment."""
    plan = shown.plan
    told = _of_day(shown, at)
    chosen = minute if minute is not None else told if told is not None else _tightest(plan)
    first, last = _range(plan)
    chosen = round(min(max(chosen, first), last), 2)
    steps = _steps(plan)
    return Look(
        minute=chosen,
        scale=next((one for one in SCALES if one == scale), "day"),
        before=max((one for one in steps if one < chosen - 0.01), default=None),
        after=min((one for one in steps if one > chosen + 0.01), default=None),
        steps=steps,
        spans=_spans(plan),
    )


def _of_day(shown: Shown, at: str) -> float | None:
    """The minute of a time of the first day; None when it is no time."""
    try:
        wanted = time.fromisoformat(at)
    except ValueError:
        return None
    start = shown.clock.starts_at
    minute = (wanted.hour - start.hour) * 60 + wanted.minute - start.minute
    return float(minute)


def _range(plan: Plan) -> tuple[float, float]:
    ends = max((field.end_min for field in plan.fields), default=0.0)
    waits = [(one.begins_min or ends) + (one.high_min or one.low_min) for one in plan.clocks]
    return min([0.0, *(f.start_min for f in plan.fields)]), max([ends + 1, *waits])


def _tightest(plan: Plan) -> float:
    """Just before the edge that has least to spare is met: what the plan hangs on."""
    told = [field.tightest for field in plan.fields if field.tightest is not None]
    worst = min(told, key=lambda one: one.spare_min, default=None)
    if worst is None:
        return plan.fields[0].start_min if plan.fields else 0.0
    return worst.met_min - _BEFORE_MIN


def _steps(plan: Plan) -> tuple[float, ...]:
    found = {0.0}
    for field in plan.fields:
        found |= {round(band.start_min + _ON_MIN, 2) for band in field.bands}
        found |= {round(one.at_min + _ON_MIN, 2) for one in field.refills}
        found.add(round(field.end_min + _ON_MIN, 2))
    return tuple(sorted(found))


def _spans(plan: Plan) -> tuple[tuple[float, float], ...]:
    coats = dict.fromkeys(field.coat for field in plan.fields)
    found = []
    for coat in coats:
        mine = [field for field in plan.fields if field.coat == coat]
        found.append((min(f.start_min for f in mine), max(f.end_min for f in mine) + _ON_MIN))
    return tuple(sorted(found))
