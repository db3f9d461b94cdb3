"""What is to be done in a field beside spraying: tanks, and where to stop."""

from __future__ import annotations

import shapely

from farwall.facts.plan import Field, Plan, Refill
from farwall.papers.drawing.scene import way_of
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import volume

_IN_ROOM_M, _NEAR_DOOR_M = 0.2, 3.0
_TOGETHER = (
    "Striped bands, II beside the number, are for the second sprayer. Bands with the same time are "
    "begun together; stay 1 m (3 ft) apart, and go out by the same dry way."
)
_ONE_RESTS = "One sprays this field; the second sprayer rests or fills tanks outside."


def field_points(plan: Plan, field: Field, units: Units, clock: WallClock) -> list[str]:
    """Refills, the spare tank, where to stop: in the order in which they are wanted."""
    refills = sorted(field.refills, key=lambda refill: refill.at_min)
    points = [_refill_words(plan, field, refill, units, clock) for refill in refills]
    if any(band.sprayer == 2 for band in field.bands):
        points.insert(0, _TOGETHER)
    elif plan.inputs.crew.sprayers == 2:
        points.insert(0, _ONE_RESTS)
    if any(refill.by == "helper" for refill in refills):
        points.append("The helper waits with the full spare tank on dry floor at the way out.")
    if not refills:
        points.append("No refill in this field: one tank lasts.")
    stops = len(field.stop_lines)
    if stops:
        names = "the dashed stop line" if stops == 1 else f"the {stops} dashed stop lines"
        points.append(f"Stop at {names} on the map, nowhere else.")
    return points


def _refill_words(plan: Plan, field: Field, refill: Refill, units: Units, clock: WallClock) -> str:
    done = [band.order for band in field.bands if band.end_min <= refill.at_min + 0.01]
    second = refill.by.endswith("sprayer 2")
    who = (
        "the helper brings it"
        if refill.by.startswith("helper")
        else f"fetch it {_where(plan, field, refill)}"
    )
    if second:
        who = f"second sprayer, {who}"
    more = f"{refill.minutes:.1f} min, {volume(refill.litres, units)} more"
    if not done:
        return f"Begin with a full tank, {clock.time(refill.at_min)}: {who}, {more}."
    return f"Full tank at {clock.time(refill.at_min)} after band {max(done)}: {who}, {more}."


def _where(plan: Plan, field: Field, refill: Refill) -> str:
    """Where the spare tank waits, in words."""
    at = shapely.Point(refill.at)
    for room in plan.inputs.floor.rooms:
        if room.polygon.shape.distance(at) < _IN_ROOM_M:
            return "where the can stands" if room.id in field.rooms else f"in {room.label}"
    way = way_of(plan, field)
    near = way is not None and shapely.LineString(way.line).distance(at) < _NEAR_DOOR_M
    return "outside the way out" if near else "outside"
