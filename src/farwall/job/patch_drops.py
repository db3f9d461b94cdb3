"""Drop seconds of patches that are stained along: how they bound open times, when they say no."""

from __future__ import annotations

from functools import cached_property

import shapely

from farwall.air.limits import drop_verdict
from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.floor.geometry import PolygonGeometry, polygon_geometry, polygons_of
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Spot:
    """Floor of one room that takes a drop in its own time: part of a patch that is stained along.

    share: of the room's floor, 0 to 1.
    """

    id: str
    room: str
    drop_s: float
    polygon: PolygonGeometry
    share: float

    @cached_property
    def shape(self) -> shapely.Polygon:
        """Its floor. [m]"""
        return self.polygon.shape


def spots_of(job: Job) -> tuple[Spot, ...]:
    """The drawn patches with drop seconds of their own, cut to their room; none left dry."""
    floors = {room.id: room.polygon.shape for room in job.floor.rooms}
    found = []
    for one in job.survey.patches:
        if one.left_dry or one.drop_s is None or one.polygon is None or one.room not in floors:
            continue
        inside = shapely.intersection(one.polygon.shape, floors[one.room])
        share = float(inside.area / floors[one.room].area)
        found += [
            Spot(one.id, one.room, one.drop_s, polygon_geometry(part), share)
            for part in polygons_of(inside)
        ]
    return tuple(found)


def refused_by_patch(job: Job, rooms: tuple[str, ...]) -> Unanswerable | None:
    """Why these rooms may not be stained on account of a patch in them, or None.

    A drop that stands for more than a minute anywhere in a field is a no for all of it; a patch
    that is left dry is not in the field.
    """
    for one in job.survey.patches:
        if one.left_dry or one.drop_s is None or one.room not in rooms:
            continue
        verdict = drop_verdict(drop_s=one.drop_s)
        if verdict.word == "no":
            words = f"On {one.kind} {one.id}: {verdict.reason[0].lower()}{verdict.reason[1:]}"
            leave = "Or leave it for another colour (`decision`), drawn on the plan: it stays dry."
            return Unanswerable(words, remedies=[*verdict.remedies, leave])
    return None
