"""Each room of the wash day: water, how much to wet at once, passes, edges, hours. Pure."""

from __future__ import annotations

import math
from collections.abc import Mapping

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Plan
from farwall.floor.short_labels import short_labels
from farwall.job.acid_day.washing.noun import Ends, SoFar, WashRoom, ends_of
from farwall.job.acid_day.washing.times import (
    EDGE_M_H,
    MAN_HOUR_M2,
    Pace,
    dries_min,
    minutes,
    scaled,
    wet_at_once,
)
from farwall.job.lasting import Lasting
from farwall.job.live.rinse_rules import do, why
from farwall.job.rinses import Rinses
from farwall.nouns import dataclass
from farwall.units import M_PER_IN

LANE_M = 17 * M_PER_IN * 2 / 3
"""A machine of 17 in, a third of each lane run twice: 11 in of new floor. A guess."""
_NARROW_DEG = 22.5


WAY_OUT = "the way out"


@dataclass(frozen=True)
class RoomFacts:
    """What the rooms are reckoned from. `water`: of all rinses, L/m², `rinses`: how many."""

    plan: Plan
    rinses: Rinses
    lasting: Lasting
    begins_min: float
    edges: Mapping[str, float]
    pace: Pace
    water: Ends
    counts: Ends


def wash_room(facts: RoomFacts, number: int, room: str, way: str) -> WashRoom:
    """One room, washed as number `number`, backing into `way`."""
    found = next(one for one in facts.plan.inputs.floor.rooms if one.id == room)
    area, edge = facts.rinses.areas[room], facts.edges.get(room, 0.0)
    dries = dries_min(facts.lasting.conditions_in(room, facts.begins_min))
    wet, rinse = wet_at_once(dries, facts.pace, area)
    runs, first, second = lanes(found.polygon.shape)
    return WashRoom(
        room=room, name=found.label, order=number, way=way, way_name=_way_name(facts.plan, way),
        area_m2=area, edge_m=edge, runs=runs, lanes_first=first, lanes_second=second,
        rinse_l=_times(area, _each(facts)),
        water_l=_times(area, facts.water),
        dries_min=dries, wet_m2=wet, rinse_m2=rinse,
        scrub_min=minutes(area, facts.pace.scrub), vacuum_min=minutes(area, facts.pace.vacuum),
        work_h=scaled(area, MAN_HOUR_M2), edge_h=scaled(edge, EDGE_M_H),
        strips=facts.rinses.readings[room], so_far=so_far(facts.rinses, room),
    )  # fmt: skip


def _each(facts: RoomFacts) -> Ends:
    """Water of one rinse: that of all over the usual number. [L/m²]"""
    usual = facts.counts.likely or 1.0
    water = facts.water
    return Ends(*(None if one is None else one / usual for one in water.three))


def _times(area_m2: float, per: Ends) -> Ends:
    return Ends(*(None if one is None else one * area_m2 for one in per.three))


def so_far(rinses: Rinses, room: str) -> SoFar:
    """What the log tells of a room, and what comes next."""
    rounds, step = rinses.rounds(room), rinses.step(room)
    last = rounds[-1] if rounds else None
    return SoFar(
        rinses=rinses.counts(room)[-1] if rounds else 0,
        phs=last.phs if last is not None else (),
        rag=last.rag if last is not None else "",
        powder=last.powder if last is not None else None,
        verdict=step.verdict,
        why=why(rinses, room, step),
        do=do(step),
        more=None if step.more is None else ends_of(step.more),
    )


def lanes(shape: BaseGeometry) -> tuple[str, int, int]:
    """How the machine runs: the first pass along the long side, the second across it, as many
    lanes each. The long side lies `left to right`, `top to bottom` or `slantwise` on the plan."""
    box = shapely.oriented_envelope(shape)
    points = list(box.exterior.coords) if isinstance(box, shapely.Polygon) else []
    if len(points) < 4:
        return "left to right", 1, 1
    (x0, y0), (x1, y1), (x2, y2) = points[:3]
    sides = [(math.dist((x0, y0), (x1, y1)), x1 - x0, y1 - y0),
             (math.dist((x1, y1), (x2, y2)), x2 - x1, y2 - y1)]  # fmt: skip
    (short, *_), (long, dx, dy) = sorted(sides)
    turned = math.degrees(math.atan2(abs(dy), abs(dx)))
    runs = (
        "left to right" if turned < _NARROW_DEG
        else "top to bottom" if turned > 90 - _NARROW_DEG else "slantwise"
    )  # fmt: skip
    return runs, max(math.ceil(short / LANE_M), 1), max(math.ceil(long / LANE_M), 1)


def _way_name(plan: Plan, way: str) -> str:
    """What people call a room, for short; a way out of the house is that of the room itself."""
    return short_labels(plan.inputs.floor.rooms).get(way, WAY_OUT if way else "")
