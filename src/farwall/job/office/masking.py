"""What is masked, room by room: walls by their true length, openings, dams."""

from __future__ import annotations

from dataclasses import dataclass

from farwall.job.office.ground import OfficeGround


@dataclass(frozen=True)
class RoomMasked:
    """A room: wall that is masked, m; how high the film stands, m; openings whose jambs are
    wrapped."""

    room: str
    name: str
    wall_m: float
    film_m: float
    jambs: int


@dataclass(frozen=True)
class Masked:
    """All rooms, and in all: wall, m; film, m²; jambs; outside doors that want a dam."""

    rooms: tuple[RoomMasked, ...]
    wall_m: float
    film_m2: float
    jambs: int
    dams: int
    warnings: tuple[str, ...] = ()


FILM_M = 1.22
"""48 in, the usual height of film where a wand is swung (36 to 48 in) [common-practice]."""


def masked_of(ground: OfficeGround) -> Masked:
    """What is masked in the job's house."""
    job = ground.job
    wished, rooms = job.supplies.masking, []
    for one in ground.measured.rooms:
        if one.room in wished.not_masked:
            continue
        film_m = wished.room_film_m.get(one.room, wished.film_m or FILM_M)
        jambs = sum(
            job.floor.opening_by_id[id_].kind in {"door", "cased", "outside"}
            for id_ in one.opening_widths_m
        )
        name = job.floor.room_by_id[one.room].label
        rooms.append(RoomMasked(one.room, name, one.mask_m, film_m, jambs))
    return Masked(
        rooms=tuple(rooms),
        wall_m=sum(one.wall_m for one in rooms),
        film_m2=sum(one.wall_m * one.film_m for one in rooms),
        jambs=sum(one.jambs for one in rooms),
        dams=ground.measured.openings.get("outside", 0),
    )


def masked_said(found: Masked) -> tuple[str, ...]:
    """Lines for a terminal."""
    return (
        f"{found.wall_m:.0f} m of wall, {found.jambs} jambs, {found.dams} outside doors to dam",
        *found.warnings,
    )
