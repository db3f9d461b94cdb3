"""What is to be done in a field beside spraying: tanks, and where to stop."""

from __future__ import annotations

import shapely

from farwall.facts.plan import Field, Plan, Refill
from farwall.papers.drawing.scene import way_of
from farwall.papers.run_sheet.look_points import look_points
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import volume

_IN_ROOM_M, _NEAR_DOOR_M = 0.2, 3.0
_TOGETHER = "Striped, II: second sprayer. Same time: begun together, 1 m (3 ft) apart."
_ONE_RESTS = "One sprays here; the second rests or fills tanks outside."


def field_points(plan: Plan, field: Field, units: Units, clock: WallClock) -> list[str]:
    """Refills, the spare tank, where to stop: in the order in which they are wanted."""
    refills = sorted(field.refills, key=lambda refill: refill.at_min)
    points = [_refill_words(plan, field, both, units, clock) for both in _at_once(refills)]
    if any(band.sprayer == 2 for band in field.bands):
        points.insert(0, _TOGETHER)
    elif plan.inputs.crew.sprayers == 2:
        points.insert(0, _ONE_RESTS)
    if any(refill.by == "helper" for refill in refills):
        points.append("The helper waits with the full spare tank on dry floor at the way out.")
    if not refills:
        points.append("No refill in this field: one tank lasts.")
    points += look_points(plan, field, clock)
    stops = len(field.stop_lines)
    if stops:
        names = "the dashed stop line" if stops == 1 else f"the {stops} dashed stop lines"
        points.append(f"Stop at {names} on the map, nowhere else.{_in_sight(field)}")
    return points


def _in_sight(field: Field) -> str:
    """Which stop lines the main window looks at; those wish for the most care."""
    seen = [stop for stop in field.stop_lines if stop.seen and stop.kind != "outside"]
    if not seen:
        return ""
    every = len(seen) == len([stop for stop in field.stop_lines if stop.kind != "outside"])
    which = "It lies" if every and len(seen) == 1 else f"{len(seen)} of them lie"
    which = "One of them lies" if not every and len(seen) == 1 else which
    return f" {which} in sight of the main window."


def _at_once(refills: list[Refill]) -> list[list[Refill]]:
    """Refills in order, those that two sprayers do in the same minute together."""
    groups: list[list[Refill]] = []
    for refill in refills:
        if groups and groups[-1][0].at_min == refill.at_min:
            groups[-1].append(refill)
        else:
            groups.append([refill])
    return groups


def _refill_words(
    plan: Plan, field: Field, refills: list[Refill], units: Units, clock: WallClock
) -> str:
    refill = refills[0]
    done = [band.order for band in field.bands if band.end_min <= refill.at_min + 0.01]
    who = (
        "the helper brings it"
        if refill.by.startswith("helper")
        else f"fetch it {_where(plan, field, refill)}"
    )
    litres = " and ".join(volume(one.litres, units) for one in refills)
    more = f"{refill.minutes:.1f} min, {litres} more"
    tank = "a full tank" if len(refills) == 1 else "two full tanks"
    if refill.by.endswith("sprayer 2"):
        who = f"for II, {who}"
    if not done:
        return f"Begin with {tank}, {clock.time(refill.at_min)}: {who}, {more}."
    tank = tank.removeprefix("a ").capitalize()
    return f"{tank} at {clock.time(refill.at_min)} after band {max(done)}: {who}, {more}."


def _where(plan: Plan, field: Field, refill: Refill) -> str:
    """Where the spare tank waits, in words."""
    at = shapely.Point(refill.at)
    for room in plan.inputs.floor.rooms:
        if room.polygon.shape.distance(at) < _IN_ROOM_M:
            return "where the can stands" if room.id in field.rooms else f"in {room.label}"
    way = way_of(plan, field)
    near = way is not None and shapely.LineString(way.line).distance(at) < _NEAR_DOOR_M
    return "outside the way out" if near else "outside"
