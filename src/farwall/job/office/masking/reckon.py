"""What is masked in the house of a job, room by room and in all. Pure."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Sequence

from farwall.facts.job import Job
from farwall.floor.masking import RoomEdge, joined_edges
from farwall.floor.nouns import Floor, Opening
from farwall.floor.takeoff import width_m
from farwall.floor.thresholds import join_thresholds
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking.figures import figures_of
from farwall.job.office.masking.heights import Heights
from farwall.job.office.masking.items import item_warnings, items_of, listed_dams, long_m
from farwall.job.office.masking.joins import joins_of
from farwall.job.office.masking.nouns import Dam, FilmRun, Gap, Jamb, Masked, RoomMasked
from farwall.job.office.masking.rules import (
    DAM_FILM_M,
    DEPTH_M,
    DOOR_M,
    FRAMED,
    GAPS_BY,
    KICKS,
    LAP_M,
    LEAVES,
    PAPER_M,
    RETURN_M,
    TACK_EVERY_M,
    TACK_M,
    UNTOLD,
    USED_SHARE,
    WRAP_TALL_M,
    fixture_kind,
)


def masked_of(ground: OfficeGround) -> Masked:
    """What is masked in the job's house."""
    return masked_in(ground.job)


def masked_in(job: Job) -> Masked:
    """What is masked in the job's house; needs no plan."""
    wished = job.supplies.masking
    heights = Heights(wished, job.floor.fixtures)
    joined = join_thresholds(job.floor)
    edges = [one for one in joined_edges(joined) if one.room not in wished.not_masked]
    rooms = tuple(_room(job, heights, edge, n) for n, edge in enumerate(edges, 1))
    items, dams = items_of(job), _dams(job, joined)
    gaps, gaps_by = _gaps(job, rooms), wished.gaps or GAPS_BY
    sides = [side for room in rooms for side in room.sides]
    bare = Masked(
        rooms=rooms,
        wall_m=math.fsum(one.wall_m for one in rooms) + math.fsum(long_m(one) for one in items),
        film_m2=math.fsum([
            *(one.film_m2 for one in rooms),
            *(one.length_m * DAM_FILM_M / USED_SHARE for one in dams),
            *(one.film_m2 / USED_SHARE for one in items),
        ]),
        jambs=len(sides),
        dams=len(dams),
        stage=wished.stage or UNTOLD,
        stage_told=wished.stage is not None,
        film_lengths_m=_lengths(rooms),
        paper_m=math.fsum(
            run.length_m / USED_SHARE
            for one in rooms for run in one.runs if 0 < run.film_m <= PAPER_M
        ),
        tape_m=math.fsum([
            *(one.tape_m for one in rooms),
            *(one.length_m / USED_SHARE for one in gaps if gaps_by == "tape"),
            *(one.tape_m / USED_SHARE for one in items),
        ]),
        wrap_m=math.fsum(one.wrap_m for one in sides),
        jamb_feet=2 * len(sides),
        doors=len(gaps),
        gap_m=math.fsum(one.length_m for one in gaps),
        gaps_by=gaps_by,
        dam_m=math.fsum(one.length_m for one in dams),
        kick_m=math.fsum(one.kick_m for one in rooms)
        + math.fsum(long_m(one) for one in items if one.kind == "kick"),
        corners=sum(one.corners for one in rooms),
        joins=sum(one.joins for one in rooms),
        gaps=gaps, dam_list=dams, items=items, not_masked=wished.not_masked,
        warnings=(*_warnings(job, heights), *_off_edge(joined, edges), *item_warnings(items, job)),
    )  # fmt: skip
    return figures_of(bare, job)


def _room(job: Job, heights: Heights, edge: RoomEdge, number: int) -> RoomMasked:
    room = job.floor.room_by_id[edge.room]
    usual, _ = heights.usual_m(edge.room)
    tall = heights.tall_in(edge.room)
    sides, wrapped = _sides(job, heights, edge)
    walls = [
        one for one in edge.of_kind("wall", "fixture", "reveal")
        if one.kind != "reveal" or job.floor.opening_by_id[one.of].kind not in FRAMED
    ]  # fmt: skip
    runs = tuple(part for one in walls for part in heights.along(one, edge.room, tall))
    hung = [one for one in runs if one.film_m > 0]
    joins = joins_of(hung)
    film_m2 = math.fsum([
        *(one.length_m * one.film_m for one in hung if one.film_m > PAPER_M),
        *(LAP_M * high for high in joins if high > PAPER_M),
        *(one.wrap_m * WRAP_TALL_M for one in sides),
    ])  # fmt: skip
    return RoomMasked(
        room=edge.room, name=room.label, number=number, storey=room.storey,
        wall_m=math.fsum(one.length_m for one in hung) + wrapped,
        film_m=usual, jambs=len(sides),
        kick_m=math.fsum(one.length_m for one in hung if one.what in KICKS),
        corners=edge.corners if usual > 0 else 0,
        joins=len(joins),
        film_m2=film_m2 / USED_SHARE,
        tape_m=_tape_m(hung, joins) / USED_SHARE,
        runs=runs, sides=sides,
    )  # fmt: skip


def _tape_m(hung: Sequence[FilmRun], joins: Sequence[float]) -> float:
    """A line along the foot, an upright at each join, and what holds the upper edge. [m]"""
    foot = math.fsum(one.length_m for one in hung)
    return foot + math.fsum(joins) + foot * TACK_M / TACK_EVERY_M


def _sides(job: Job, heights: Heights, edge: RoomEdge) -> tuple[tuple[Jamb, ...], float]:
    """The frames that are wrapped from this room, and the length of their reveals. [m]"""
    depths: dict[str, list[float]] = defaultdict(list)
    for one in edge.of_kind("reveal"):
        depths[one.of].append(one.length_m)
    sides, wrapped = [], 0.0
    for mouth in edge.mouths:
        opening = job.floor.opening_by_id[mouth.opening]
        if not _stands(opening, heights):
            continue
        seen = depths.get(opening.id, [])
        depth = max(seen) if seen else DEPTH_M
        wrapped += math.fsum(seen) if len(seen) > 1 else 2 * depth
        wide = width_m(opening)
        sides.append(
            Jamb(opening.id, edge.room, mouth.line, wide, depth, bool(seen), 2 * DOOR_M + wide)
        )
    return tuple(sides), wrapped


def _stands(opening: Opening, heights: Heights) -> bool:
    """Whether an opening has a frame that stands at this stage."""
    return opening.kind == "outside" or (opening.kind in FRAMED and heights.stage.frames)


def _gaps(job: Job, rooms: Sequence[RoomMasked]) -> tuple[Gap, ...]:
    wrapped = dict.fromkeys(side.opening for room in rooms for side in room.sides)
    return tuple(
        Gap(one.id, 2 * DOOR_M + width_m(one))
        for one in (job.floor.opening_by_id[id_] for id_ in sorted(wrapped))
        if one.kind in LEAVES
    )


def _dams(job: Job, joined: Floor) -> tuple[Dam, ...]:
    drawn = [
        Dam(one.id, one.rooms[0] if one.rooms else "", one.line, width_m(one) + 2 * RETURN_M)
        for one in joined.openings
        if one.kind == "outside"
    ]
    return (*sorted(drawn, key=lambda one: one.opening), *listed_dams(job))


def _lengths(rooms: Sequence[RoomMasked]) -> tuple[tuple[float, float], ...]:
    """Height of film and the length of it that is hung, laps and loss in it, lowest first."""
    found: dict[float, float] = defaultdict(float)
    for room in rooms:
        hung = [one for one in room.runs if one.film_m > 0]
        for one in hung:
            found[round(one.film_m, 4)] += one.length_m
        for high in joins_of(hung):
            found[round(high, 4)] += LAP_M
    return tuple(
        (high, long / USED_SHARE) for high, long in sorted(found.items()) if high > PAPER_M
    )


def _off_edge(joined: Floor, edges: Sequence[RoomEdge]) -> list[str]:
    """Openings that a drawing has somewhere else than on the walls of their rooms."""
    here = {(mouth.opening, edge.room) for edge in edges for mouth in edge.mouths}
    rooms = {edge.room for edge in edges}
    off = sum(
        any(room in rooms and (one.id, room) not in here for room in one.rooms)
        for one in joined.openings
    )
    if not off:
        return []
    many = "1 opening lies" if off == 1 else f"{off} openings lie"
    told = (
        f"{many} on no wall of its room on the plan: that wall is counted whole and its frame is "
        "not. Mend it on the drawing."
    )
    return [told]


def _warnings(job: Job, heights: Heights) -> list[str]:
    wished = job.supplies.masking
    told = []
    if wished.stage is None:
        told.append(
            "When in the build the floor is stained was not told: reckoned as after paint, which "
            "has the most to mask."
        )
    elif not heights.stage.cabinets and any(
        fixture_kind(one.kind) in KICKS for one in job.floor.fixtures
    ):
        told.append(
            f"The plan shows cabinets: {wished.stage} they are not set yet, so no kick is masked."
        )
    return told
