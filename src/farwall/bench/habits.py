"""Habits of the trade beside the plan (common practice, no source), where they can be measured.

Here: the largest open area last; one extra gallon on five or six, mixed once.
A stop at every doorway, and half the mix in the tank, then gauge, are in
`more_habits`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from farwall.bench.nouns import Case
from farwall.errors import Unanswerable
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Field, Plan
from farwall.floor.takeoff import take_off
from farwall.job.plan_job import plan_job
from farwall.mix.thirst import first_belief
from farwall.mix.usual_rule import usual_rule
from farwall.nouns import dataclass

_ALIKE = 0.005


@dataclass(frozen=True)
class LargestLast:
    """What comes of the planner's order with the largest room moved to the end.

    `came_to`: `as planned` (it was last already), `shuts in`, `same`, `worse`
    or `better`; shares are of the worst field's open time, 1 being all of it.
    """

    case: str
    came_to: str
    planned_share: float
    habit_share: float | None = None
    dead_edges: int = 0
    """Fields that hold in the plan's order and lose their edge in this one."""


@dataclass(frozen=True)
class ExtraGallon:
    """Chance, 0 to 1, that one extra on six or on five runs dry inside a field of the coat."""

    case: str
    on_six: float
    on_five: float
    allowed: float
    """The chance that the gate of the plan allows for the whole job."""


def largest_last(
    case: Case, plan: Plan, *, planner: Callable[[Job], Plan] = plan_job
) -> LargestLast:
    """Plan the case again with its largest room sprayed last."""
    fields = first_coat(plan)
    share = worst_share(fields)
    takeoff = take_off(case.job.floor)
    largest = max(takeoff.rooms, key=lambda room: room.net_m2).room
    if largest in fields[-1].rooms:
        return LargestLast(case.name, "as planned", share)
    rooms = dict.fromkeys(room for field in fields for room in field.rooms)
    order = (*(room for room in rooms if room != largest), largest)
    wished = replace(case.job, wishes=replace(case.job.wishes, order=order))
    try:
        other = first_coat(planner(wished))
    except Unanswerable:
        return LargestLast(case.name, "shuts in", share)
    found = worst_share(other)
    lost = sum(not _holds(one) for one in other) - sum(not _holds(one) for one in fields)
    word = "same" if abs(found - share) <= _ALIKE else "worse" if found > share else "better"
    return LargestLast(case.name, word, share, found, max(0, lost))


def extra_gallon(case: Case, plan: Plan) -> ExtraGallon:
    """The usual rule on the litres of the first coat's fields, as the plan reckons them."""
    settled = settle(case.job)
    coat = settled.coats[0]
    litres = [sum(band.litres for band in field.bands) for field in first_coat(plan)]
    rule = usual_rule(litres, coat=coat.id, belief=first_belief(coat.spread_percent))
    allowed = 1 - settled.certainty_percent / 100
    # The low chance is that of the larger extra: one on five.
    return ExtraGallon(case.name, rule.chance_dry_high, rule.chance_dry_low, allowed)


def first_coat(plan: Plan) -> list[Field]:
    """The fields of the first coat in their order."""
    return [field for field in plan.fields if field.coat == plan.inputs.coats[0].id]


def worst_share(fields: list[Field]) -> float:
    """The oldest edge over the open time, of the field where that is largest."""
    return max(field.peak_age_min / max(field.open_time_min.low, 1e-9) for field in fields)


def _holds(field: Field) -> bool:
    return field.peak_age_min <= field.open_time_min.low
