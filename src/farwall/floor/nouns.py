"""The floor: rooms, openings, exits, fixtures, saw cuts, windows.

Values only, immutable, metres. `exits` live beside the floor in a job, for a
way out is a choice of the day and not a fact of the slab.
"""

from __future__ import annotations

from functools import cached_property
from typing import Literal

from farwall.floor.geometry import Point, PolygonGeometry
from farwall.nouns import dataclass

OpeningKind = Literal["door", "cased", "wide", "outside"]
"""door: a leaf hides a seam · cased: a frame without a leaf · wide: neither ·
outside: leads out of the house."""


@dataclass(frozen=True)
class Room:
    """A room: its inner wall face, with the floor under its doors where a plan gives it."""

    id: str
    polygon: PolygonGeometry
    name: str = ""
    storey: str = ""

    @property
    def label(self) -> str:
        """What a person calls the room."""
        return self.name or self.id


@dataclass(frozen=True)
class Opening:
    """A way through a wall: `line` is where a seam would lie (under the leaf).

    `rooms` holds two ids, one for an outside door, one id twice when both
    sides are the same room. `threshold` is the floor in the depth of the wall
    when the rooms end at their wall faces.
    """

    id: str
    kind: OpeningKind
    line: tuple[Point, Point]
    rooms: tuple[str, ...]
    width_m: float | None = None
    threshold: PolygonGeometry | None = None


@dataclass(frozen=True)
class Exit:
    """A way out of the house to ground that may be walked: an outside opening."""

    id: str
    opening: str


@dataclass(frozen=True)
class Fixture:
    """Something on the slab that is kept dry and walked around (tub, cabinet, island)."""

    kind: str
    polygon: PolygonGeometry
    id: str = ""


@dataclass(frozen=True)
class SawCut:
    """A shallow cut in the slab: a place where colour may end unseen."""

    line: tuple[Point, ...]
    id: str = ""


@dataclass(frozen=True)
class Window:
    """A window in plan, with its sill and height where the drawing gives them.

    `room` is the id of the room it lights, the nearest one when left out; `reveal_m` the depth of
    its wall; `covered` says that film or a blanket keeps the sun off, `main` that this is the
    window by which the floor is looked at.
    """

    line: tuple[Point, Point]
    sill_m: float | None = None
    height_m: float | None = None
    id: str = ""
    room: str = ""
    reveal_m: float | None = None
    covered: bool = False
    main: bool = False


@dataclass(frozen=True)
class Floor:
    """Everything of the slab that a plan needs, on one storey or several."""

    rooms: tuple[Room, ...]
    openings: tuple[Opening, ...] = ()
    fixtures: tuple[Fixture, ...] = ()
    saw_cuts: tuple[SawCut, ...] = ()
    windows: tuple[Window, ...] = ()
    north_deg: float | None = None

    @cached_property
    def room_by_id(self) -> dict[str, Room]:
        """Rooms by id."""
        return {room.id: room for room in self.rooms}

    @cached_property
    def opening_by_id(self) -> dict[str, Opening]:
        """Openings by id."""
        return {opening.id: opening for opening in self.openings}


def free_name(wish: str, taken: set[str]) -> str:
    """`wish`, or the first of `wish-2`, `wish-3` … that is not taken yet."""
    names = [wish, *(f"{wish}-{number}" for number in range(2, len(taken) + 3))]
    return next(name for name in names if name not in taken)
