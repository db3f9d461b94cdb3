"""What a block or a layout holds, loose, and how a symbol sets it on the sheet."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import field, replace
from math import atan2, degrees, dist, hypot, isfinite, radians, sqrt
from math import cos as _cos
from math import sin as _sin

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.dxf.bulk import FARTHEST, tidied
from farwall.readers.lines.sheet import Band, Block, Measure, Ring, Stroke, Swing, Words

_ROUND = 0.25
"""A swing set this much wider than deep is still taken for a swing."""


@dataclass
class Pieces:
    """Loose lines, arcs and words in one plane."""

    strokes: list[Stroke] = field(default_factory=list)
    swings: list[Swing] = field(default_factory=list)
    rings: list[Ring] = field(default_factory=list)
    bands: list[Band] = field(default_factory=list)
    words: list[Words] = field(default_factory=list)
    measures: list[Measure] = field(default_factory=list)
    blocks: list[Block] = field(default_factory=list)
    skipped: Counter[str] = field(default_factory=Counter)
    aside: Counter[str] = field(default_factory=Counter)

    @property
    def size(self) -> int:
        """How many things these are."""
        marks = len(self.words) + len(self.measures) + len(self.bands)
        return len(self.strokes) + len(self.swings) + len(self.rings) + marks

    def add(self, other: Pieces) -> None:
        """Put other pieces beside these."""
        self.strokes += other.strokes
        self.swings += other.swings
        self.rings += other.rings
        self.bands += other.bands
        self.words += other.words
        self.measures += other.measures
        self.blocks += other.blocks
        self.skipped.update(other.skipped)
        self.aside.update(other.aside)


@dataclass(frozen=True)
class Setting:
    """How a symbol's plane lies on the sheet: x' = a x + c y + e, y' = b x + d y + f."""

    a: float
    b: float
    c: float
    d: float
    e: float
    f: float

    @staticmethod
    def of(matrix: Sequence[float]) -> Setting:
        """From the sixteen figures of a matrix for row vectors; raises ValueError when spoilt."""
        figures = [float(matrix[i]) for i in (0, 1, 4, 5, 12, 13)]
        if not all(isfinite(v) and abs(v) <= FARTHEST for v in figures):
            raise ValueError("a symbol set beyond any sheet")
        return Setting(*figures)

    @property
    def grows(self) -> float:
        """How much lengths grow in the mean."""
        return sqrt(abs(self.a * self.d - self.b * self.c))

    def at(self, point: Point) -> Point:
        """Where a point comes to lie; raises ValueError beyond any sheet."""
        x = self.a * point[0] + self.c * point[1] + self.e
        y = self.b * point[0] + self.d * point[1] + self.f
        if not -FARTHEST <= x <= FARTHEST or not -FARTHEST <= y <= FARTHEST:
            raise ValueError("a point lies beyond any sheet")
        return tidied(x), tidied(y)

    def set(self, pieces: Pieces, block: str) -> Pieces:
        """The pieces on the sheet; `block` is the name they keep from their symbol, if any."""
        at = self.at
        return Pieces(
            strokes=[
                Stroke(at(s.start), at(s.end), s.layer, s.role, s.dashed, block or s.block, s.curve)
                for s in pieces.strokes
            ],
            swings=[swing for s in pieces.swings if (swing := self._swing(s)) is not None],
            rings=[
                Ring(tuple(map(at, r.points)), r.layer, r.role, r.dashed, block or r.block)
                for r in pieces.rings
            ],
            bands=[
                replace(b, points=tuple(map(at, b.points)), width=b.width * self.grows)
                for b in pieces.bands
            ],
            words=[self._words(w) for w in pieces.words],
            measures=[
                Measure(m.length * self.grows, m.text, m.at and at(m.at)) for m in pieces.measures
            ],
            blocks=list(pieces.blocks),
            skipped=pieces.skipped,
            aside=pieces.aside,
        )

    def _swing(self, swing: Swing) -> Swing | None:
        centre, first, second = map(self.at, (swing.centre, *swing.ends))
        reach = dist(centre, first), dist(centre, second)
        if min(reach) <= 0 or max(reach) / min(reach) > 1 + _ROUND:
            return None
        return replace(swing, centre=centre, ends=(first, second), radius=sum(reach) / 2)

    def _words(self, words: Words) -> Words:
        turn = radians(words.turned_deg)
        up_x = -self.a * _sin(turn) + self.c * _cos(turn)
        up_y = -self.b * _sin(turn) + self.d * _cos(turn)
        tall = hypot(up_x, up_y)
        # A mirrored symbol's lettering is stacked the way its letters stand up.
        turned = (degrees(atan2(up_y, up_x)) - 90.0) % 360.0
        return replace(words, at=self.at(words.at), height=words.height * tall, turned_deg=turned)


PLAIN = Setting(1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
