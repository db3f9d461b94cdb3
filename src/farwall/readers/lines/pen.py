"""Puts the lines of a drawn page on a sheet: straight pieces, curves, closed rings, arcs.

Pages (SVG, PDF) know paths only; what a CAD office calls a line, an arc or a ring is told from
their shape.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from itertools import pairwise
from math import dist, isfinite

from farwall.errors import Mistake, Refused
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.arcs import Arc, arc_through, chords, joined_arcs
from farwall.readers.lines.sheet import Ring, Role, Stroke, Swing

MOST_STROKES = 200_000
FARTHEST = 1e9
_LEAST_SWEEP_DEG = 10.0


def too_many() -> Refused:
    """What is said of a drawing with more lines than are read."""
    what = f"The drawing holds more than {MOST_STROKES:,} pieces of lines."
    return Refused(Mistake("", what, "Save the floor plan alone into a file of its own."))


@dataclass(frozen=True)
class Piece:
    """Points in order that were drawn in one go; `curve` when they lie along a curve."""

    points: Sequence[Point]
    curve: bool = False


@dataclass
class Pen:
    """Collects strokes, swings and rings in the unit of the page."""

    strokes: list[Stroke] = field(default_factory=list)
    swings: list[Swing] = field(default_factory=list)
    rings: list[Ring] = field(default_factory=list)
    seen: int = 0

    def trace(self, pieces: Sequence[Piece], *, layer: str, role: Role, dashed: bool = False,
              closed: bool = False, sliver: float = 0.0) -> None:  # fmt: skip
        """Add one connected line; `closed` ones end where they began.

        A closed box narrower than `sliver` is a line that was drawn as a filled box.

        Raises ValueError where a point lies beyond any page, Refused past the most strokes.
        """
        whole = [piece for part in pieces for piece in _parted(part)]
        points = [point for piece in whole for point in piece.points]
        if not points:
            return
        self._count(len(points))
        _check(points)
        middle = _middle_line(points, sliver) if sliver else None
        if middle:
            self.strokes.append(Stroke(*middle, layer, role, dashed))
            return
        if closed and points[0] != points[-1]:
            whole.append(Piece((points[-1], points[0])))
        if closed and not any(piece.curve for piece in whole):
            self._ring(whole, layer, role, dashed=dashed)
        self._swings(whole, layer, role)
        for piece in whole:
            for start, end in pairwise(piece.points):
                if start != end:
                    stroke = Stroke(start, end, layer, role, dashed, curve=piece.curve)
                    self.strokes.append(stroke)

    def _count(self, more: int) -> None:
        self.seen += more
        if self.seen > MOST_STROKES:
            raise too_many()

    def _ring(self, whole: Sequence[Piece], layer: str, role: Role, *, dashed: bool) -> None:
        points = [point for piece in whole for point in piece.points]
        clean = tuple(p for p, q in zip(points, points[1:] + points[:1], strict=True) if p != q)
        if len(clean) >= 3:
            self.rings.append(Ring(clean, layer, role, dashed))

    def _swings(self, whole: Sequence[Piece], layer: str, role: Role) -> None:
        arcs: list[Arc] = []
        for piece in whole:
            arc = arc_through(piece.points) if piece.curve else None
            longer = joined_arcs(arcs[-1], arc) if arcs and arc else None
            if longer:
                arcs[-1] = longer
            elif arc:
                arcs.append(arc)
        self.swings += [
            Swing(arc.centre, arc.ends, arc.radius, arc.sweep_deg, layer, role)
            for arc in arcs
            if arc.sweep_deg >= _LEAST_SWEEP_DEG
        ]


def _parted(piece: Piece) -> list[Piece]:
    """A straight piece with its arcs of chords as curves of their own."""
    if piece.curve or len(piece.points) < 6:
        return [piece]
    found, last = [], 0
    for start, end in chords(piece.points):
        found += [
            Piece(piece.points[last : start + 1]),
            Piece(piece.points[start : end + 1], curve=True),
        ]
        last = end
    found.append(Piece(piece.points[last:]))
    return [part for part in found if len(part.points) > 1]


def _middle_line(points: Sequence[Point], sliver: float) -> tuple[Point, Point] | None:
    """The line in the middle of a long box as thin as a pen, or None."""
    corners = list(dict.fromkeys(points))
    if len(corners) != 4:
        return None
    a, b, c, d = corners
    if dist(a, b) > dist(b, c):
        b, c, d, a = a, b, c, d
    ends = dist(a, b), dist(c, d)
    if max(ends) > sliver or dist(b, c) < 3 * max(ends):
        return None
    return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), ((c[0] + d[0]) / 2, (c[1] + d[1]) / 2)


def _check(points: Sequence[Point]) -> None:
    for x, y in points:
        if not (isfinite(x) and isfinite(y)) or max(abs(x), abs(y)) > FARTHEST:
            raise ValueError("a point lies beyond any page")
