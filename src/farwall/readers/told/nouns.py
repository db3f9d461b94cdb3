"""What a building model tells of itself, freed from its file format; metres, x right, y up.

A reader of a format fills these; `told.assemble` makes the floor of them: doors by geometry first,
relations second, and what the two disagree about in the list of what is left.
"""

from __future__ import annotations

from dataclasses import field

import shapely

from farwall.facts.reading import Note, Stated, Storey
from farwall.floor.geometry import Point
from farwall.nouns import dataclass


@dataclass(frozen=True)
class ToldSpace:
    """A room of the model: `id` is the file's own, `shape` its floor in plan [m].

    floor_m: height of its floor; height_m: clear height under the ceiling. `outdoors` is a roof, a
    deck, a garden: told, not sprayed.
    """

    id: str
    shape: shapely.Polygon
    name: str = ""
    storey: str = ""
    floor_m: float | None = None
    height_m: float | None = None
    stated: Stated | None = None
    outdoors: bool = False


@dataclass(frozen=True)
class ToldOpening:
    """A door or a passage of the model.

    seam: its line in plan, along the wall [m], as wide as the leaf or the passage. leaf: a door
    hangs in it; without one it is a passage, an air surface or a virtual boundary. relations: the
    ids of the spaces that the file joins by it; said_outside: the file's own flag. A seam of None
    means that the file joins spaces without saying where.
    """

    id: str
    seam: tuple[Point, Point] | None
    leaf: bool
    relations: tuple[str, ...] = ()
    storey: str = ""
    width_m: float | None = None
    height_m: float | None = None
    said_outside: bool | None = None
    foot_m: float | None = None


@dataclass(frozen=True)
class ToldWindow:
    """A window: its line in plan [m]; sill and height [m] where told."""

    line: tuple[Point, Point]
    sill_m: float | None = None
    height_m: float | None = None
    storey: str = ""
    room: str = ""


@dataclass(frozen=True)
class ToldFixture:
    """Something that stands on the slab or ends in it: tub, cabinet, drain, tap, outlet."""

    kind: str
    shape: shapely.Polygon
    storey: str = ""


@dataclass(frozen=True)
class Told:
    """All that a model tells. `wall_m` is the deepest wall that a door may stand in."""

    format: str
    length_unit: str
    header_unit: str
    scale_m_per_unit: float
    spaces: tuple[ToldSpace, ...]
    openings: tuple[ToldOpening, ...] = ()
    windows: tuple[ToldWindow, ...] = ()
    fixtures: tuple[ToldFixture, ...] = ()
    storeys: tuple[Storey, ...] = ()
    north_deg: float | None = None
    mended: tuple[Note, ...] = ()
    left: tuple[Note, ...] = ()
    asks: tuple[Note, ...] = field(default=())
    wall_m: float = 0.6
