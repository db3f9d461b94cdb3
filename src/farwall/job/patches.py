"""Patches, trenches and later pours on the floor that is planned.

A patch that is left for another colour is kept dry like a fixture. The joint of a later pour is a
place where a stop hides, like a saw cut. What is stained along keeps its own drop seconds.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.errors import Unanswerable
from farwall.facts.job import Job
from farwall.facts.slab import Patch
from farwall.floor.geometry import DECIMALS
from farwall.floor.nouns import Fixture, Floor, SawCut
from farwall.floor.thresholds import join_thresholds
from farwall.spray.building import build_world
from farwall.spray.world import Piece, World

JOINT = "pour joint of "
"""How the line of a pour's joint begins its id."""
_OFF_WALL_M, _PAST_WALL_M = 0.05, 0.06
_MOST_OF_IT = 0.5
_LEAST_M = 0.05


def planned_floor(job: Job) -> Floor:
    """The floor of a job, thresholds joined; patches left dry as fixtures, pour joints as cuts."""
    floor = join_thresholds(job.floor)
    drawn = [one for one in job.survey.patches if one.polygon is not None]
    if not drawn:
        return floor
    dry = tuple(
        Fixture(one.kind, one.polygon, one.id)
        for one in drawn
        if one.left_dry and one.polygon is not None
    )
    cuts = tuple(
        SawCut(line, JOINT + one.id if n == 0 else f"{JOINT}{one.id} {n + 1}")
        for one in drawn
        if one.kind == "pour" and not one.left_dry
        for n, line in enumerate(_joints(one, floor))
    )
    return replace(floor, fixtures=floor.fixtures + dry, saw_cuts=floor.saw_cuts + cuts)


def _joints(pour: Patch, floor: Floor) -> Iterator[tuple[tuple[float, float], ...]]:
    """The edge of a pour where it runs over its room's floor, a little past the walls."""
    room = floor.room_by_id.get(pour.room)
    if room is None or pour.polygon is None:
        return
    inner = shapely.buffer(room.polygon.shape, -_OFF_WALL_M, join_style="mitre")
    edge = shapely.line_merge(shapely.intersection(pour.polygon.shape.exterior, inner))
    for part in shapely.get_parts(edge).tolist():
        if isinstance(part, shapely.LineString) and not part.is_ring and part.length > _LEAST_M:
            yield _lengthened([(float(x), float(y)) for x, y in part.coords])


def _lengthened(xy: list[tuple[float, float]]) -> tuple[tuple[float, float], ...]:
    ends = []
    for near, far in ((xy[0], xy[1]), (xy[-1], xy[-2])):
        length = shapely.Point(near).distance(shapely.Point(far))
        ends.append(
            tuple(n + (n - f) / length * _PAST_WALL_M for n, f in zip(near, far, strict=True))
        )
    line = [ends[0], *xy[1:-1], ends[1]]
    return tuple((round(x, DECIMALS), round(y, DECIMALS)) for x, y in line)


def with_drops(world: World, job: Job) -> World:
    """The world whose pieces know their drop seconds as told, and the later pour they lie on."""
    told = {room: one.drop_s for room, one in job.survey.rooms.items() if one.drop_s is not None}
    pours = [one for one in job.survey.patches if one.kind == "pour" and one.polygon is not None]
    if not told and not pours:
        return world
    return replace(
        world, pieces={name: _told(piece, told, pours) for name, piece in world.pieces.items()}
    )


def _told(piece: Piece, told: dict[str, float], pours: list[Patch]) -> Piece:
    for pour in pours:
        if pour.room == piece.room and _covers(pour, piece.shape):
            drop_s = told.get(piece.room) if pour.drop_s is None else pour.drop_s
            return replace(piece, drop_s=drop_s, pour=pour.id)
    return replace(piece, drop_s=told.get(piece.room))


def _covers(pour: Patch, shape: BaseGeometry) -> bool:
    if pour.polygon is None:
        return False
    return bool(pour.polygon.shape.intersection(shape).area > _MOST_OF_IT * shape.area)


def cut_off_by_patches(job: Job, floor: Floor, world: World) -> None:
    """Raises `Unanswerable` where a patch that is left dry leaves floor that nobody gets to.

    It is masked and walked around, so one that runs from wall to wall shuts off what lies beyond.
    """
    left = [one for one in job.survey.patches if one.left_dry and one.polygon is not None]
    lost = _out_of_reach(world) if left else set()
    if not lost:
        return
    ids = {one.id for one in left}
    bare = tuple(one for one in floor.fixtures if one.id not in ids)
    if _out_of_reach(build_world(replace(floor, fixtures=bare), job.exits)):
        return  # no way in at all: told by the cut into fields
    by = [one for one in left if one.room in lost] or left
    names = " and ".join(f"{one.kind} {one.id}" for one in by)
    raise Unanswerable(
        f"Nobody gets past {names}: left dry from wall to wall, it shuts off floor of "
        f"{world.called(sorted(lost))}.",
        remedies=[
            "Stain it along with the floor and disclose it (`stain and disclose`).",
            "Draw it with a way past it, as wide as a person.",
        ],
    )


def in_the_way(job: Job, no: Unanswerable) -> Unanswerable:
    """The same refusal, naming the patches that are left dry: they may be what narrows a way."""
    left = [f"{one.kind} {one.id}" for one in job.survey.patches if one.left_dry]
    if not left:
        return no
    word = (
        f"The plan walks around {' and '.join(left)}, left dry: leave a way past as wide as a "
        "person, or stain it along (`stain and disclose`)."
    )
    return Unanswerable(no.reason, remedies=[*no.remedies, word])


def _out_of_reach(world: World) -> set[str]:
    """Rooms with floor that no way out leads to, by seams alone."""
    seen = {seam.a for seam in world.seams if seam.is_way_out}
    queue = list(seen)
    while queue:
        here = queue.pop()
        for seam in world.seams_of(here):
            there = seam.other(here)
            if there and there not in seen:
                seen.add(there)
                queue.append(there)
    return {world.pieces[name].room for name in set(world.pieces) - seen}
