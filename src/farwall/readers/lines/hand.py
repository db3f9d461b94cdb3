"""What of a page's painted shapes is seen as lines: strokes, and the edges of filled shapes.

Nothing of the paper's own colour is seen. Small curved shapes without a stroke are outlines of
letters.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import field

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.pen import Pen, Piece
from farwall.readers.lines.sheet import Role

LETTERS = "shape like a letter's outline"
_WHOLE_PAGE = 0.95
_MOST_CORNERS = 8  # of a box, as programs write them
_LETTER = 0.02  # of the page: outlines of letters are smaller than that
_SLIVER = 0.0012  # of the page: boxes as thin as that are lines


@dataclass
class Subpath:
    """One connected line of a path."""

    pieces: list[Piece] = field(default_factory=list)
    closed: bool = False


@dataclass(frozen=True)
class Ink:
    """How a shape is painted: colours as `#rrggbb`, nothing where there is none; its layer."""

    stroke: str
    fill: str
    layer: str = ""
    role: Role = Role.OTHER
    dashed: bool = False


@dataclass
class Hand:
    """Draws what is seen; `size` is that of the page, `ground` the colour of its paper."""

    size: tuple[float, float]
    pen: Pen = field(default_factory=Pen)
    aside: Counter[str] = field(default_factory=Counter)
    ground: str = "#ffffff"

    def sees(self, ink: Ink) -> bool:
        """Whether anything painted so is seen on the page."""
        return ink.stroke not in {"", self.ground} or ink.fill not in {"", self.ground}

    def draw(self, paths: Sequence[Subpath], ink: Ink) -> None:
        """One shape. Raises ValueError where a point lies beyond any page."""
        inked = ink.stroke not in {"", self.ground}
        if ink.fill and self._is_ground(paths):
            self.ground = ink.fill
            if not inked:
                return
        if not inked and self._is_letters(paths):
            self.aside[LETTERS] += 1
            return
        for path in paths:
            self.pen.trace(
                path.pieces,
                layer=ink.layer,
                role=ink.role,
                dashed=ink.dashed and inked,
                closed=path.closed or not inked,
                sliver=0.0 if inked else _SLIVER * max(self.size),
            )

    def _is_ground(self, paths: Sequence[Subpath]) -> bool:
        """A filled box over the whole page is the paper that all else is drawn on."""
        if len(paths) != 1 or self.pen.strokes:
            return False
        points = [point for piece in paths[0].pieces for point in piece.points]
        if len(points) > _MOST_CORNERS:
            return False
        wide, high = extent(paths)
        covers = wide >= _WHOLE_PAGE * self.size[0] and high >= _WHOLE_PAGE * self.size[1]
        return covers and _area(points) >= _WHOLE_PAGE * wide * high

    def _is_letters(self, paths: Sequence[Subpath]) -> bool:
        curved = any(piece.curve for path in paths for piece in path.pieces)
        return curved and max(extent(paths)) < _LETTER * max(self.size)


def extent(paths: Sequence[Subpath]) -> tuple[float, float]:
    """How wide and how high a shape is."""
    points: list[Point] = [p for path in paths for piece in path.pieces for p in piece.points]
    if not points:
        return 0.0, 0.0
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(xs) - min(xs), max(ys) - min(ys)


def _area(points: Sequence[Point]) -> float:
    around = zip(points, [*points[1:], points[0]], strict=True)
    return abs(sum(a[0] * b[1] - a[1] * b[0] for a, b in around)) / 2
