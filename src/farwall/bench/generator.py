"""An invented house of any number of rooms by a seed, the same on every machine.

Every room can be reached: those of a row through their hall, closets through
their room, wings through the lobbies at their left ends.
"""

from __future__ import annotations

from dataclasses import field

from farwall.bench.dice import Dice
from farwall.bench.drawing import box, opening, polygon
from farwall.bench.furnish import furnish
from farwall.bench.layout import LOBBY_CM, Place, Row, RowRoom, Wing, lay_out
from farwall.bench.nouns import Case, bench_job
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, OpeningKind, Room, SawCut
from farwall.nouns import dataclass

MOST_ROOMS = 200
JAMB_CM = 12
DOORS_CM = (76, 81, 91)
CLOSET_DOORS_CM = (66, 71)
OUTER_DOOR_CM = 91
KEPT_DRY_CM = 85
"""A tub or cabinets may stand this deep along the outer wall: no door there."""
_ROOMS_A_WAY_OUT = 40


@dataclass
class _House:
    """What was drawn so far. `half` is half the thickness of a wall, 0 where none is drawn. [cm]"""

    dice: Dice
    half: int
    rooms: list[Room] = field(default_factory=list)
    openings: list[Opening] = field(default_factory=list)
    fixtures: list[Fixture] = field(default_factory=list)
    saw_cuts: list[SawCut] = field(default_factory=list)

    def room(self, name: str, corners: list[Place]) -> None:
        self.rooms.append(Room(name, polygon([metres(corner) for corner in corners])))

    def way(self, kind: OpeningKind, one: Place, two: Place, *rooms: str) -> None:
        """An upright opening, with the floor under it where walls are drawn."""
        h = self.half
        along_x = one[1] == two[1]
        dx, dy = (0, h) if along_x else (h, 0)
        sill = polygon(
            box(*metres((one[0] - dx, one[1] - dy)), *metres((two[0] + dx, two[1] + dy)))
        )
        name = f"{kind}-{len(self.openings) + 1}"
        line = [metres(one), metres(two)]
        self.openings.append(opening(name, kind, line, *rooms, threshold=sill if h else None))


def metres(place: Place) -> tuple[float, float]:
    """A place in whole centimetres, in metres."""
    return (place[0] / 100, place[1] / 100)


def house_of(rooms: int, seed: int, *, ways_out: int | None = None, name: str = "") -> Case:
    """The job of a house of exactly `rooms` rooms (3 to 200), always the same for a seed.

    ways_out: how many there are; else one, and one more for every 40 rooms.
    Raises ValueError when the number of rooms is beyond that.
    """
    if not 3 <= rooms <= MOST_ROOMS:
        raise ValueError(f"a house of 3 to {MOST_ROOMS} rooms is drawn, not of {rooms}")
    dice = Dice(seed)
    made = _House(dice, half=dice.one_of((0, 6)))
    wings = lay_out(rooms, dice)
    for number, wing in enumerate(wings):
        _draw_wing(made, wing, wings[number - 1] if number else None)
    exits = _ways_out(made, wings, ways_out or 1 + rooms // _ROOMS_A_WAY_OUT)
    floor = Floor(
        tuple(made.rooms), tuple(made.openings), tuple(made.fixtures), tuple(made.saw_cuts)
    )
    return _job(name or f"house of {rooms}, seed {seed}", floor, exits, dice)


def _job(name: str, floor: Floor, exits: tuple[Exit, ...], dice: Dice) -> Case:
    job = bench_job(
        name,
        floor,
        exits,
        helper=dice.happens(0.6),
        tank_l=dice.one_of((7.5, 7.5, 11.0)),
        band_m=dice.one_of((0.9, 1.0, 1.1, 1.2)),
        spray_m2_min=dice.one_of((2.0, 2.4, 2.8, 3.4)),
        sheen_loss_min=dice.one_of((6.0, 9.0, 12.0, 18.0)),
    )
    return Case(name, job)


def _draw_wing(made: _House, wing: Wing, below: Wing | None) -> None:
    h = made.half
    made.room(wing.hall, inner(0, wing.y0, wing.length, wing.y1, h))
    if wing.lobby:
        low, high = wing.span
        made.room(wing.lobby, inner(-LOBBY_CM, low, 0, high, h))
        middle = (wing.y0 + wing.y1) // 2
        made.way("cased", (0, middle - 45), (0, middle + 45), wing.lobby, wing.hall)
        if below is not None:
            kind: OpeningKind = "door" if made.dice.happens(0.5) else "cased"
            made.way(kind, (-125, low), (-35, low), below.lobby, wing.lobby)
    for row in wing.rows:
        for room in row.rooms:
            _draw_room(made, row, room, wing.hall)
        for one, two in zip(row.rooms, row.rooms[1:], strict=False):
            _between(made, row, one, two)


def inner(x0: int, y0: int, x1: int, y1: int, h: int) -> list[Place]:
    """The corners of a cell less half a wall all round."""
    return [(x0 + h, y0 + h), (x1 - h, y0 + h), (x1 - h, y1 - h), (x0 + h, y1 - h)]


def _draw_room(made: _House, row: Row, room: RowRoom, hall: str) -> None:
    h, depth, closet = made.half, row.depth, room.closet
    corners = inner(room.u0, 0, room.u1, depth, h)
    if closet is not None:
        made.room(closet.id, placed(row, inner(closet.u0, closet.v0, room.u1, depth, h)))
        corners = inner(room.u0, 0, room.u1, closet.v0, h)
        if closet.u0 > room.u0:
            corners[2:] = [
                (room.u1 - h, closet.v0 - h),
                (closet.u0 - h, closet.v0 - h),
                (closet.u0 - h, depth - h),
                (room.u0 + h, depth - h),
            ]
    made.room(room.id, placed(row, corners))
    along = (room.u0, room.u1)
    _along_row(made, row, 0, along, like=_to_hall(made, room), rooms=(hall, room.id))
    if closet is not None:
        wide = made.dice.one_of(CLOSET_DOORS_CM)
        along = (closet.u0, room.u1)
        _along_row(made, row, closet.v0, along, like=("door", wide), rooms=(room.id, closet.id))
    furniture, cuts = furnish(row, room, h, made.dice)
    made.fixtures += furniture
    made.saw_cuts += cuts


def placed(row: Row, corners: list[Place]) -> list[Place]:
    """Corners of a row on the page."""
    return [row.at(u, v) for u, v in corners]


def _to_hall(made: _House, room: RowRoom) -> tuple[OpeningKind, int]:
    """The kind and width of the opening between a room and its hall. [cm]"""
    dice = made.dice
    if room.kind == "great":
        if dice.happens(0.5):
            return "wide", dice.between(180, 300)
        return "cased", dice.between(120, 160)
    if room.kind == "kitchen":
        return "cased", dice.between(90, 120)
    return "door", dice.one_of(DOORS_CM)


def _along_row(
    made: _House,
    row: Row,
    v: int,
    span: tuple[int, int],
    *,
    like: tuple[OpeningKind, int],
    rooms: tuple[str, str],
) -> None:
    """An opening `like` (kind, width) somewhere on a wall that runs along the row at `v`."""
    kind, wide = like
    play = JAMB_CM + made.half
    u = made.dice.between(span[0] + play, span[1] - play - wide)
    made.way(kind, row.at(u, v), row.at(u + wide, v), *rooms)


def _between(made: _House, row: Row, one: RowRoom, two: RowRoom) -> None:
    """Sometimes a way between neighbours, so that there are rings; wide between big rooms."""
    great = "great" in {one.kind, two.kind}
    if not made.dice.happens(0.6 if great else 0.15):
        return
    high = row.depth if one.closet is None else one.closet.v0
    if two.closet is not None and two.closet.u0 == two.u0:
        high = min(high, two.closet.v0)
    if {"bath", "kitchen"} & {one.kind, two.kind}:
        high = min(high, row.depth - KEPT_DRY_CM)
    kind: OpeningKind = "wide" if great and made.dice.happens(0.5) else "door"
    wide = made.dice.between(140, 200) if kind == "wide" else made.dice.one_of(DOORS_CM)
    play = JAMB_CM + made.half
    v = made.dice.between(play, high - play - wide)
    low, top = sorted([row.at(one.u1, v), row.at(one.u1, v + wide)])
    made.way(kind, low, top, one.id, two.id)


def _ways_out(made: _House, wings: tuple[Wing, ...], count: int) -> tuple[Exit, ...]:
    """Front door first, then the far ends of halls and the outer wall of the great room."""
    first = wings[0]
    middle = (first.y0 + first.y1) // 2
    half = OUTER_DOOR_CM // 2
    spots: list[tuple[Place, Place, str]] = []
    if first.lobby:
        spots.append(((-125, 0), (-125 + OUTER_DOOR_CM, 0), first.lobby))
    else:
        spots.append(((0, middle - half), (0, middle + half), first.hall))
    great = first.rows[0].rooms[0]
    u = great.u0 + 40
    spots.append((first.rows[0].at(u, first.rows[0].depth),
                  first.rows[0].at(u + 180, first.rows[0].depth), great.id))  # fmt: skip
    for wing in wings:
        y = (wing.y0 + wing.y1) // 2
        spots.append(((wing.length, y - half), (wing.length, y + half), wing.hall))
    exits: list[Exit] = []
    for one, two, room in spots[:count]:
        made.way("outside", one, two, room)
        exits.append(Exit(f"out-{len(exits) + 1}", made.openings[-1].id))
    return tuple(exits)
