"""Storeys by the height of the floors, and rooms that lie on several at once."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import count, pairwise

import shapely

from farwall.facts.reading import Note, Storey
from farwall.floor.geometry import Point
from farwall.readers.told.nouns import ToldSpace
from farwall.readers.told.shells import Plan
from farwall.readers.told.storeys import STOREY_RISE_M

_WALL_M = 0.6
_DOWN_M = 0.6
"""A foot may lie so far below the floor that its opening belongs to: a step (guess)."""


def by_height(
    rooms: Sequence[ToldSpace], taken: set[str]
) -> tuple[list[ToldSpace], list[Storey], list[Note]]:
    """The rooms, those without a storey now on one; the storeys made for them; and a word on it.

    `taken` are the ids of storeys that there are already.
    """
    bare = [room for room in rooms if not room.storey]
    if not bare:
        return list(rooms), [], []
    heights = sorted({room.floor_m or 0.0 for room in bare})
    bases = heights[:1] + [b for a, b in pairwise(heights) if b - a >= STOREY_RISE_M]
    free = (f"level-{number}" for number in count(1) if f"level-{number}" not in taken)
    storeys = [
        Storey(own, f"Floor at {base + 0.0:.2f} m", base)
        for own, base in zip(free, bases, strict=False)
    ]
    put = [
        room if room.storey else replace(room, storey=_storey(room.floor_m or 0.0, storeys))
        for room in rooms
    ]
    what = (
        f"{len(bare)} rooms are on no storey in the file; they were sorted by the height of their "
        f"floors into {len(bases)}."
    )
    return put, storeys, [Note("storeys-by-height", what)]


def _storey(height: float, storeys: Sequence[Storey]) -> str:
    return [s.id for s in storeys if (s.elevation_m or 0.0) <= height + 1e-9][-1]


def pieces_of(room: ToldSpace, plan: Plan, storeys: Sequence[Storey]) -> list[ToldSpace]:
    """The room, and each piece of its floor that lies apart as a room of its own.

    A piece a storey higher goes to the storey at its height, where there is one. A stated area is
    that of all pieces together and stays with none of them.
    """
    if not plan.parts:
        return [room]
    pieces = [replace(room, stated=None)]
    for number, part in enumerate(plan.parts, start=2):
        away = abs(part.floor_m - plan.floor_m) >= STOREY_RISE_M
        pieces.append(
            replace(
                room,
                id=f"{room.id}-{number}",
                shape=part.shape,
                storey=_nearest(part.floor_m, storeys) if away else room.storey,
                floor_m=part.floor_m,
                height_m=part.height_m,
                stated=None,
            )
        )
    return pieces


def settled(room: ToldSpace, storeys: Sequence[Storey]) -> tuple[ToldSpace, list[Note]]:
    """The room on the storey at its own height, when the file puts it on one far from it."""
    level = next((s.elevation_m for s in storeys if s.id == room.storey), None)
    if level is None or room.floor_m is None or abs(room.floor_m - level) < STOREY_RISE_M:
        return room, []
    better = _nearest(room.floor_m, storeys)
    if not better:
        return room, []
    what = (
        f"“{room.name}” is on a storey at {level:.2f} m in the file, but its floor lies at "
        f"{room.floor_m:.2f} m: it was put on the storey there."
    )
    return replace(room, storey=better), [Note("storey-by-floor", what)]


def _nearest(height: float, storeys: Sequence[Storey]) -> str:
    told = [(abs(s.elevation_m - height), s.id) for s in storeys if s.elevation_m is not None]
    return min(told)[1] if told and min(told)[0] < STOREY_RISE_M else ""


def part_at(
    pieces: Sequence[ToldSpace], foot_m: float | None, at: Point | None = None
) -> ToldSpace:
    """The piece of a room that an opening belongs to, by the height of its foot and its place.

    Of the pieces whose walls are at the place the highest that lies under the foot; else the one
    nearest in height, then in plan.
    """
    if foot_m is None or len(pieces) == 1:
        return pieces[0]
    spot = shapely.Point(at) if at is not None else None

    def away(piece: ToldSpace) -> float:
        return float(piece.shape.distance(spot)) if spot is not None else 0.0

    under = [
        piece
        for piece in pieces
        if spot is not None
        and away(piece) <= _WALL_M
        and (piece.floor_m or 0.0) <= foot_m + _DOWN_M
    ]
    if under:
        return max(under, key=lambda piece: (piece.floor_m or 0.0, -away(piece)))
    return min(pieces, key=lambda p: (round(abs((p.floor_m or 0.0) - foot_m)), away(p)))


def floor_words(name: str, plan: Plan, stated_m2: float | None = None) -> Iterator[Note]:
    """What a person has to know of a floor at several heights or in several pieces."""
    middle = plan.shape.representative_point()
    at: Point = (float(middle.x), float(middle.y))
    for height, area in plan.steps:
        rise = height - plan.floor_m
        where = f"{abs(rise):.2f} m {'above' if rise > 0 else 'below'} the rest of its floor"
        yield Note("floor-at-two-heights", f"{area:.2f} m² of “{name}” lie {where}.", at)
    if plan.parts:
        areas = ", ".join(f"{p.shape.area:.2f} m² at {p.floor_m:.2f} m" for p in plan.parts)
        what = (
            f"“{name}” is one space in the file, but its floor lies in {len(plan.parts) + 1} "
            f"pieces: {plan.shape.area:.2f} m² at {plan.floor_m:.2f} m, {areas}. Each was taken as "
            "a room."
        )
        told = f" The file states {stated_m2:.2f} m² for all." if stated_m2 else ""
        yield Note("room-in-pieces", what + told, at)
    if plan.apart_m2 > 0.5:
        what = f"{plan.apart_m2:.2f} m² of “{name}” lie apart from its floor and were left out."
        yield Note("room-apart", what, at)
