"""The sizes that hours go with, taken from floor, plan, wash day and masking."""

from __future__ import annotations

import math

from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours.days import site_days
from farwall.job.office.masking import Masked
from farwall.job.office.scope import Scope
from farwall.nouns import dataclass
from farwall.price.hours import Sizes, Three


@dataclass(frozen=True)
class RoomSize:
    """A room of the scope: area m², wall to mask m, its share of the washing."""

    room: str
    name: str
    area_m2: float
    wall_m: float
    wash_share: float


def rooms_of(ground: OfficeGround, masked: Masked, scope: Scope) -> tuple[RoomSize, ...]:
    """Every room of the scope; a room that the wash day does not know washes by its area."""
    walls = {one.room: one.wall_m for one in masked.rooms}
    washed = {one.room: one.work_h.likely for one in ground.washing.rooms}
    inside = [one for one in ground.measured.rooms if one.room in scope.rooms]
    known = all(washed.get(one.room) is not None for one in inside)
    weights = [(washed[one.room] or 0.0) if known else one.net_m2 for one in inside]
    total = math.fsum(weights) or 1.0
    by_id = ground.job.floor.room_by_id
    return tuple(
        RoomSize(
            one.room, by_id[one.room].label, one.net_m2, walls.get(one.room, 0.0), weight / total
        )
        for one, weight in zip(inside, weights, strict=True)
    )


def sizes_of(ground: OfficeGround, masked: Masked, scope: Scope) -> Sizes:
    """Sizes of the scope; people: who sprays and helps, two at least, for nobody works alone."""
    rooms = rooms_of(ground, masked, scope)
    area_m2 = math.fsum(one.area_m2 for one in rooms)
    crew = ground.job.crew
    people = max(crew.sprayers + int(crew.helper), 2 if crew.second_adult else 1)
    return Sizes(
        area_m2=area_m2,
        wall_m=math.fsum(one.wall_m for one in rooms),
        coat_min=tuple(_coat_min(ground, scope, coat) for coat in scope.coats),
        people=people,
        sealer_coats=scope.sealer_coats,
        finish_coats=scope.finish_coats,
        site_days=site_days(ground, scope, area_m2=area_m2, people=people),
        wash_h=_wash_h(ground, scope),
        us=ground.job.wishes.units == "us",
    )


def _coat_min(ground: OfficeGround, scope: Scope, coat: str) -> float:
    """Minutes of the plan's fields in this coat, by the share of their floor in the scope."""
    areas = {one.room: one.net_m2 for one in ground.measured.rooms}
    minutes = 0.0
    for field in (*ground.plan.fields, *ground.plan.left):
        if field.coat != coat:
            continue
        whole = math.fsum(areas.get(room, 0.0) for room in field.rooms)
        inside = math.fsum(areas.get(room, 0.0) for room in field.rooms if room in scope.rooms)
        minutes += (field.end_min - field.start_min) * (inside / whole if whole else 1.0)
    return minutes


def _wash_h(ground: OfficeGround, scope: Scope) -> Three | None:
    """Hours of the wash day in the rooms of the scope; None where it does not know them all."""
    found = [one.work_h for one in ground.washing.rooms if one.room in scope.rooms]
    if len(found) < len(scope.rooms):
        return None
    ends = [(one.low, one.likely, one.high) for one in found]
    if any(end is None for one in ends for end in one):
        return None
    low, likely, high = (math.fsum(end or 0.0 for end in each) for each in zip(*ends, strict=True))
    return (low, likely, high)
