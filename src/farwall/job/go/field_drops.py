"""Which drop seconds lie in a field of a plan: its rooms, later pours, patches stained along."""

from __future__ import annotations

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.job import Job
from farwall.facts.plan import Field
from farwall.facts.slab import Patch

_TOUCH_M2 = 0.02
"""Less floor than this of a patch is a corner's doing."""


def drops_in(field: Field, job: Job) -> dict[str, float]:
    """Drop seconds as told of all floor in a field, by room id or patch (`trench t1`).

    A room of which the field holds no more than a later pour with seconds of its own is left out,
    a patch that is left dry too.
    """
    told = {room: one.drop_s for room, one in job.survey.rooms.items()}
    found = {room: drop_s for room in field.rooms if (drop_s := told.get(room)) is not None}
    tried = [
        one
        for one in job.survey.patches
        if one.room in field.rooms and one.drop_s is not None and not one.left_dry
    ]
    if not tried:
        return found
    floor = shapely.union_all([band.polygon.shape for band in field.bands])
    for one in tried:
        if _holds(floor, one):
            found[f"{one.kind} {one.id}"] = one.drop_s or 0.0
    for room in job.floor.rooms:
        pours = [o.polygon.shape for o in tried if o.kind == "pour" and o.polygon is not None]
        rest = shapely.difference(room.polygon.shape & floor, shapely.union_all(pours))
        if pours and room.id in found and rest.area < _TOUCH_M2:
            del found[room.id]
    return found


def _holds(floor: BaseGeometry, patch: Patch) -> bool:
    if patch.polygon is None or floor.is_empty:
        return True
    return bool(floor.intersection(patch.polygon.shape).area > _TOUCH_M2)
