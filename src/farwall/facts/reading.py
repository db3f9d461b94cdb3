"""What a reader found in a file: a floor, and an honest list beside it."""

from __future__ import annotations

from dataclasses import field
from typing import Literal

from farwall.floor.geometry import Point, PolygonGeometry
from farwall.floor.nouns import Exit, Floor
from farwall.nouns import dataclass

MISPLACED = "polygon-misplaced"
"""Under `left`, a room stands where the file draws it though its walls and doors lie elsewhere:
such a reading tells what the file says and is no floor."""
StatedKind = Literal["net", "gross", "wall-centre", "size-text"]


@dataclass(frozen=True)
class Storey:
    """A level of the house; `elevation_m` is None where the file does not say."""

    id: str
    name: str
    elevation_m: float | None = None


@dataclass(frozen=True)
class Stated:
    """What the file itself says of a room's size, kept apart from its geometry."""

    area_m2: float
    kind: StatedKind
    text: str = ""


@dataclass(frozen=True)
class Note:
    """Something mended, left open or asked: a code, a place in metres if it has one, words.

    shape: the piece of floor that it is about [m], where the reader has it: a slab left out, a
    cabinet that may stand there.
    """

    code: str
    what: str
    where: Point | None = None
    shape: PolygonGeometry | None = None


@dataclass(frozen=True)
class Step:
    """A step inside a storey: where its edge lies, and how far the floor rises to its left [m]."""

    line: tuple[Point, Point]
    rise_m: float


@dataclass(frozen=True)
class Reading:
    """A floor read from a file, with its unit, its repairs and its open questions.

    Without a scale the shapes stand for their proportions alone, at `shapes_m_per_unit` metres a
    drawing unit. `ceilings_m` and `levels_m` hold, by the id of a room, its clear height and the
    height of its floor [m] where the file gives them; `fixture_storeys`, by the id of a fixture,
    its storey. `origin_m` is where the floor's origin lies in the drawing.
    """

    format: str
    length_unit: str
    header_unit: str
    scale_m_per_unit: float | None
    floor: Floor
    exits: tuple[Exit, ...] = ()
    storeys: tuple[Storey, ...] = ()
    stated: dict[str, Stated] = field(default_factory=dict)
    mended: tuple[Note, ...] = ()
    left: tuple[Note, ...] = ()
    asks: tuple[Note, ...] = ()
    ceilings_m: dict[str, float] = field(default_factory=dict)
    levels_m: dict[str, float] = field(default_factory=dict)
    steps: tuple[Step, ...] = ()
    fixture_storeys: dict[str, str] = field(default_factory=dict)
    shapes_m_per_unit: float | None = None
    origin_m: Point = (0.0, 0.0)
