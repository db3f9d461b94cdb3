"""Two more habits of the trade beside the plan (common practice, no source).

A stop at every doorway: each room is sprayed alone. Half the mix in the tank,
then gauge: the likely need is mixed, half of it sprayed, and what is still
wanted told from the floor that the half has covered.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import partial
from random import Random
from typing import Literal

from farwall.bench.habits import first_coat
from farwall.bench.nouns import Case
from farwall.errors import Unanswerable
from farwall.facts.defaults import settle
from farwall.facts.plan import Field, Plan
from farwall.job.plan_job import plan_job
from farwall.mix.thirst import Thirst, first_belief
from farwall.mix.usual_rule import EXTRA_LOW
from farwall.nouns import dataclass
from farwall.spray.fields import Budget, Cut
from farwall.spray.sweeps import Pieces, Sweeps

SEEN = frozenset({"cased", "wide"})
"""A cold line here is seen open: no leaf hides it."""
_DRAWS = 4000
_HAIR_L = 1e-9
_ONE_PLACE = frozenset({"wide", "saw cut"})
"""No doorway: what is joined by these is one open place."""

Came = Literal["enough", "dry", "mixed inside"]


@dataclass(frozen=True)
class EveryDoorway:
    """What comes of a stop at every doorway, beside the plan's own fields.

    `came_to`: `same` fields, `other` ones, or `cannot` be walked. Dead edges are
    fields whose oldest edge outlives its open time; lines seen open are stops
    in a frame without a leaf.
    """

    case: str
    came_to: Literal["same", "other", "cannot"]
    fields: tuple[int, int]
    """Of the plan, of the habit; the same order below."""
    dead_edges: tuple[int, int]
    seen_open: tuple[int, int]


@dataclass(frozen=True)
class HalfThenGauge:
    """Chances, 0 to 1, by the belief of the gate. `dry`: the tank is empty inside a field;
    `mixed_inside`: more has to be mixed inside a field, while its edge waits; `dry_with_extra`
    is dry when the second mixing is by one on six more than gauged."""

    case: str
    dry: float
    mixed_inside: float
    dry_with_extra: float


def every_doorway(
    case: Case, plan: Plan, *, planner: Callable[..., Plan] = plan_job
) -> EveryDoorway:
    """Plan the case again with each room, or rooms without a doorway between, a field."""
    own = first_coat(plan)
    try:
        other = first_coat(planner(case.job, cut=cut_at_doorways))
    except Unanswerable:
        other = []
    came: Literal["same", "other", "cannot"] = "other" if other else "cannot"
    if {field.rooms for field in own} == {field.rooms for field in other}:
        came = "same"
    return EveryDoorway(
        case.name,
        came,
        (len(own), len(other)),
        (_dead(own), _dead(other)),
        (_seen_open(own), _seen_open(other)),
    )


def cut_at_doorways(sweeps: Sweeps, budget: Budget) -> Cut:
    """Fields that end at every doorway, each as tight as it comes."""
    group = {name: frozenset([name]) for name in sweeps.world.pieces}
    for seam in sweeps.world.seams:
        if seam.b and seam.kind in _ONE_PLACE:
            joined: Pieces = group[seam.a] | group[seam.b]
            group.update(dict.fromkeys(joined, joined))
    fields = tuple(sorted(set(group.values()), key=sorted))
    worst = max(sweeps.best_age_min(field) / budget(field) for field in fields)
    return Cut(fields, worst, 0.0, len(fields), proved=True, gap=0.0)


def _dead(fields: Sequence[Field]) -> int:
    return sum(field.peak_age_min > field.open_time_min.low for field in fields)


def _seen_open(fields: Sequence[Field]) -> int:
    return len({line.id for field in fields for line in field.stop_lines if line.kind in SEEN})


def half_then_gauge(case: Case, plan: Plan, *, draws: int = _DRAWS) -> HalfThenGauge:
    """The habit on the likely litres of the first coat's fields, drawn by the gate's belief."""
    likely = [sum(band.litres for band in field.bands) for field in first_coat(plan)]
    belief = first_belief(settle(case.job).coats[0].spread_percent)
    days = list(_days(likely, belief, draws))
    came = [gauged(likely, used, extra=0.0) for used in days]
    careful = [gauged(likely, used, extra=EXTRA_LOW) for used in days]
    share = partial(_share, draws=draws)
    return HalfThenGauge(
        case.name, share(came, "dry"), share(came, "mixed inside"), share(careful, "dry")
    )


def _share(came: Sequence[Came], what: Came, *, draws: int) -> float:
    return came.count(what) / draws


def gauged(likely_l: Sequence[float], used_l: Sequence[float], *, extra: float) -> Came:
    """How the habit ends on a day when these fields take `used_l` where `likely_l` was mixed.

    When half of the mix is sprayed, what the rest of the floor takes is told from the floor that
    the half has covered. The field in hand is finished from the other half; where that is too
    little by the gauge, more is mixed at once. At the next stop line what the later fields lack by
    the gauge is mixed, and `extra` of their need more (0 to 1).
    """
    whole = math.fsum(likely_l)
    left = whole / 2
    for number, (likely, used) in enumerate(zip(likely_l, used_l, strict=True)):
        if used < left:
            left -= used
            continue
        done = left / used
        thirst = (whole / 2) / (math.fsum(likely_l[:number]) + done * likely)
        here = (1 - done) * likely, (1 - done) * used
        later = math.fsum(likely_l[number + 1 :]), math.fsum(used_l[number + 1 :])
        return _second_half(whole / 2, thirst, here, later, extra)
    return "enough"


def _second_half(
    half_l: float,
    thirst: float,
    here_l: tuple[float, float],
    later_l: tuple[float, float],
    extra: float,
) -> Came:
    """The field in hand from the other half, later ones from what is left and a second mixing.

    here_l, later_l: what is likely and what is taken, of this field's rest and of later fields.
    """
    (likely_here_l, used_here_l), (likely_later_l, used_later_l) = here_l, later_l
    if thirst * likely_here_l > half_l + _HAIR_L:
        return "mixed inside"
    if used_here_l > half_l + _HAIR_L:
        return "dry"
    gauge_l = thirst * likely_later_l * (1 + extra)
    there_l = max(half_l - used_here_l, gauge_l)
    return "dry" if used_later_l > there_l + _HAIR_L else "enough"


def _days(likely_l: Sequence[float], belief: Thirst, draws: int) -> list[list[float]]:
    """Litres that each field takes on each of so many days, the same days each time."""
    dice = Random(1).gauss
    found = []
    for _ in range(draws):
        job = belief.mean + math.sqrt(belief.variance) * dice(0.0, 1.0)
        own = math.sqrt(belief.field_variance)
        found.append([likely * math.exp(job + own * dice(0.0, 1.0)) for likely in likely_l])
    return found
