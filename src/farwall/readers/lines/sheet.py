"""What is on the sheet, freed from the file format: strokes, swings, rings, words, measures.

Lengths are drawing units until `scaled` has brought them to metres.
"""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum
from math import hypot

from farwall.floor.geometry import Point
from farwall.nouns import dataclass


class Role(StrEnum):
    """What the strokes of a layer stand for."""

    WALL = "wall"
    OPENING = "opening"
    HEADER = "header"
    OUTLINE = "outline"
    AREA = "area"
    FIXTURE = "fixture"
    STAIR = "stair"
    PAPER = "paper"
    OTHER = "other"


@dataclass(frozen=True)
class Stroke:
    """One straight line."""

    start: Point
    end: Point
    layer: str
    role: Role
    dashed: bool = False
    block: str = ""
    curve: bool = False
    """Part of an arc that was cut into straight pieces."""

    @property
    def length(self) -> float:
        """Length in the unit of the sheet."""
        return hypot(self.end[0] - self.start[0], self.end[1] - self.start[1])


@dataclass(frozen=True)
class Swing:
    """An arc: the way of a door's leaf, when it stands where a door is."""

    centre: Point
    ends: tuple[Point, Point]
    radius: float
    sweep_deg: float
    layer: str
    role: Role


@dataclass(frozen=True)
class Ring:
    """A closed line of straight pieces, its first point not repeated."""

    points: tuple[Point, ...]
    layer: str
    role: Role
    dashed: bool = False
    block: str = ""


@dataclass(frozen=True)
class Band:
    """A line with a breadth: a wall drawn as one stroke as thick as itself, or only a bold line."""

    points: tuple[Point, ...]
    width: float
    layer: str
    role: Role
    dashed: bool = False
    closed: bool = False


@dataclass(frozen=True)
class Words:
    """One line of lettering, placed by its middle."""

    text: str
    at: Point
    height: float
    turned_deg: float
    layer: str


@dataclass(frozen=True)
class Measure:
    """A dimension: the length between its points, and what is written over it."""

    length: float
    text: str
    at: Point | None = None
    """The middle of its line."""


@dataclass(frozen=True)
class Calibration:
    """Further evidence of the scale: what told it (`the printed scale 1:50`), and its figure."""

    source: str
    m_per_unit: float


@dataclass(frozen=True)
class Block:
    """A symbol set into the drawing: its name and the box it covers."""

    name: str
    low: Point
    high: Point
    role: Role


@dataclass(frozen=True)
class Sheet:
    """The whole drawing in one plane; `format` is the kind of file it came in."""

    strokes: tuple[Stroke, ...] = ()
    swings: tuple[Swing, ...] = ()
    rings: tuple[Ring, ...] = ()
    bands: tuple[Band, ...] = ()
    words: tuple[Words, ...] = ()
    measures: tuple[Measure, ...] = ()
    blocks: tuple[Block, ...] = ()
    calibrations: tuple[Calibration, ...] = ()
    """What else tells the scale: a printed scale, a drawn bar, a length given by the user; the most
    exact first."""
    header_code: int = 0
    inch_letters: bool = False
    """True when the file sets its dimensions in feet and inches of one-inch units."""
    north_deg: float | None = None
    skipped: tuple[tuple[str, int], ...] = ()
    aside: tuple[tuple[str, int], ...] = ()
    """Kinds of things that are no walls and were left aside, in words, and how many."""
    repairs: tuple[str, ...] = ()
    format: str = "DXF"

    def scaled(self, factor: float) -> Sheet:
        """The same sheet with every length multiplied."""

        def at(point: Point) -> Point:
            return point[0] * factor, point[1] * factor

        return replace(
            self,
            strokes=tuple(
                Stroke(at(s.start), at(s.end), s.layer, s.role, s.dashed, s.block, s.curve)
                for s in self.strokes
            ),
            swings=tuple(
                replace(
                    s,
                    centre=at(s.centre),
                    ends=(at(s.ends[0]), at(s.ends[1])),
                    radius=s.radius * factor,
                )
                for s in self.swings
            ),
            rings=tuple(
                Ring(tuple(map(at, r.points)), r.layer, r.role, r.dashed, r.block)
                for r in self.rings
            ),
            bands=tuple(
                replace(b, points=tuple(map(at, b.points)), width=b.width * factor)
                for b in self.bands
            ),
            words=tuple(replace(w, at=at(w.at), height=w.height * factor) for w in self.words),
            measures=tuple(
                replace(m, length=m.length * factor, at=m.at and at(m.at)) for m in self.measures
            ),
            calibrations=tuple(
                replace(c, m_per_unit=c.m_per_unit / factor) for c in self.calibrations
            ),
            blocks=tuple(replace(b, low=at(b.low), high=at(b.high)) for b in self.blocks),
        )
