"""A door's rooms by geometry set against the file's own relations, and which of them holds."""

from __future__ import annotations

from math import dist

import shapely

from farwall.facts.reading import Note
from farwall.floor.geometry import Point
from farwall.floor.thresholds import DEEPEST_WALL_M
from farwall.nouns import dataclass
from farwall.readers.told.nouns import ToldOpening
from farwall.readers.told.rooms import Rooms
from farwall.readers.told.sides import Sides

OUTSIDE = "outside"


@dataclass(frozen=True)
class Agreed:
    """The rooms that an opening joins; `sure` when geometry and relations say the same."""

    rooms: tuple[str, ...]
    sure: bool
    notes: tuple[Note, ...] = ()


def agreed(opening: ToldOpening, sides: Sides, rooms: Rooms) -> Agreed:
    """Geometry first; relations only where geometry finds less and they lie at the wall."""
    said = related(opening, rooms)
    found = tuple(dict.fromkeys(sides.rooms))
    if not said or set(said) == set(found):
        return Agreed(sides.rooms, sure=True)
    where = middle(sides.seam)
    third = [room for room in said if room not in found]
    if len(found) == 2 and set(found) < set(said):
        names = ", ".join(rooms.label(room) for room in third)
        what = (
            f"{_title(opening, sides.rooms, rooms)}: the file joins it to {names} too, which does "
            "not lie at it. The geometry was taken."
        )
        return Agreed(sides.rooms, sure=True, notes=(Note("door-third-space", what, where),))
    if len(sides.rooms) < 2 and set(found) <= set(said) and len(said) == 2:
        near = [room for room in third if _at_wall(room, sides, rooms)]
        if len(near) == len(third):
            what = (
                f"{_title(opening, said, rooms)}: its two sides were not found by geometry; the "
                "file's relations were taken. Look at the place."
            )
            return Agreed(said, sure=False, notes=(Note("door-by-relation", what, where),))
    what = (
        f"{_title(opening, sides.rooms, rooms)}: by geometry it joins "
        f"{_sides(sides.rooms, rooms)}, by the file's relations {_sides(said, rooms)}. "
        "The geometry was taken. Look at the place."
    )
    return Agreed(sides.rooms, sure=False, notes=(Note("door-disagrees", what, where),))


def related(opening: ToldOpening, rooms: Rooms) -> tuple[str, ...]:
    """The rooms that the file joins by an opening, those outdoors or taken out left aside."""
    return tuple(dict.fromkeys(r for name in opening.relations if (r := rooms.known(name))))


def flag_notes(opening: ToldOpening, found: tuple[str, ...], seam: tuple[Point, Point],
               rooms: Rooms) -> list[Note]:  # fmt: skip
    """What is to be said when the file's own flag speaks against what lies at its sides."""
    if opening.said_outside is True and len(found) == 2:
        what = (
            f"{_title(opening, found, rooms)}: the file calls it an outside door, though both "
            "sides are rooms. Taken as a door between them."
        )
        return [Note("door-flag", what, middle(seam))]
    if opening.said_outside is False and len(found) == 1:
        what = (
            f"{_title(opening, found, rooms)}: the file calls it an inside door, but no room of it "
            "lies on the other side. Not taken as a way out. Look at the place."
        )
        return [Note("way-out-unsure", what, middle(seam))]
    return []


def middle(seam: tuple[Point, Point]) -> Point:
    """The middle of a line, to tenths of a millimetre."""
    (ax, ay), (bx, by) = seam
    return round((ax + bx) / 2, 4), round((ay + by) / 2, 4)


def _at_wall(room: str, sides: Sides, rooms: Rooms) -> bool:
    seam = shapely.LineString(sides.seam)
    return bool(rooms.spaces[room].shape.boundary.buffer(DEEPEST_WALL_M).covers(seam))


def _title(opening: ToldOpening, found: tuple[str, ...], rooms: Rooms) -> str:
    """How a person finds an opening: what it is, how wide, between which rooms."""
    width = opening.width_m or (dist(*opening.seam) if opening.seam else None)
    wide = f" {width:.2f} m wide" if width else ""
    return f"{'Door' if opening.leaf else 'Opening'}{wide} at {_sides(found, rooms)}"


def _sides(found: tuple[str, ...], rooms: Rooms) -> str:
    names = [rooms.label(room) for room in found]
    if not names:
        return "no room"
    return f"{names[0]} and the {OUTSIDE}" if len(names) == 1 else " and ".join(names)
