"""Straight edges cut where an opening begins or ends, or where another edge faces them closely."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from farwall.floor.geometry import Point
from farwall.nouns import dataclass

Line = tuple[Point, Point]
ON_EDGE_M = 0.002
"""An opening's line this near to an edge lies on it: plans round to tenths of a millimetre."""
HIDDEN_M = 0.03
"""Nobody reaches between two edges that face each other nearer than this. Rank: guess."""
_LEAST_M = 1e-6
_CRUMB_M = 0.001
"""A rest shorter than this beside a span belongs to the span."""


@dataclass(frozen=True)
class Piece:
    """A straight part of the edge: what it is (`wall`, `mouth`, …), and of which thing."""

    kind: str
    of: str
    start: Point
    end: Point

    @property
    def length_m(self) -> float:
        """From end to end."""
        return math.dist(self.start, self.end)

    @property
    def way(self) -> Point:
        """Its direction, of length 1."""
        return _way(self.start, self.end)


def cut(piece: Piece, spans: Iterable[tuple[float, float, str, str]]) -> list[Piece]:
    """The piece cut into parts; `spans` are metres from its start with the kind and thing there.

    Where two spans lie on each other the first one holds. Parts outside of all stay as they are.
    """
    long = piece.length_m
    taken: list[tuple[float, float, str, str]] = []
    for low, high, kind, of in spans:
        free = [(0.0 if low < _CRUMB_M else low, long if high > long - _CRUMB_M else high)]
        for t0, t1, _, _ in taken:
            free = [part for one in free for part in _less(one, (t0, t1))]
        taken += [(a, b, kind, of) for a, b in free if b - a > _LEAST_M]
    parts: list[Piece] = []
    at = 0.0
    for low, high, kind, of in sorted(taken):
        if low - at > _LEAST_M:
            parts.append(_part(piece, at, low, piece.kind, piece.of))
            at = low
        parts.append(_part(piece, at, high, kind, of))
        at = high
    if long - at > _LEAST_M or not parts:
        parts.append(_part(piece, at, long, piece.kind, piece.of))
    elif at != long:
        last = parts[-1]
        parts[-1] = Piece(last.kind, last.of, last.start, piece.end)
    return parts


def on_line(piece: Piece, line: Line, within_m: float = ON_EDGE_M) -> tuple[float, float] | None:
    """Which part of the piece a line along it covers, metres from its start; None for none."""
    (ax, ay), (dx, dy) = piece.start, piece.way
    along, aside = [], []
    for x, y in line:
        along.append((x - ax) * dx + (y - ay) * dy)
        aside.append(abs((x - ax) * dy - (y - ay) * dx))
    if max(aside) > within_m:
        return None
    low, high = max(min(along), 0.0), min(max(along), piece.length_m)
    return (low, high) if high - low > _LEAST_M else None


def faced(piece: Piece, other: Piece) -> tuple[float, float] | None:
    """Which part of the piece another one faces across a gap that no hand reaches into."""
    (dx, dy), (ex, ey) = piece.way, other.way
    if dx * ex + dy * ey > -0.999:
        return None
    (ax, ay), (bx, by) = piece.start, other.start
    # The floor lies to the left of both, so the other edge stands on the left of this one.
    across = dx * (by - ay) - dy * (bx - ax)
    if not 0 <= across < HIDDEN_M:
        return None
    return on_line(piece, (other.start, other.end), HIDDEN_M)


def turn_deg(before: Piece, after: Piece) -> float:
    """How far the edge turns from one piece to the next: to the left is positive."""
    (ax, ay), (bx, by) = before.way, after.way
    return math.degrees(math.atan2(ax * by - ay * bx, ax * bx + ay * by))


def _less(one: tuple[float, float], other: tuple[float, float]) -> Sequence[tuple[float, float]]:
    """What is left of a stretch without another."""
    low, high = one
    return [(low, min(high, other[0])), (max(low, other[1]), high)]


def _part(piece: Piece, low: float, high: float, kind: str, of: str) -> Piece:
    return Piece(kind, of, _at(piece, low), _at(piece, high))


def _at(piece: Piece, metres: float) -> Point:
    if metres <= 0:
        return piece.start
    if metres >= piece.length_m - _LEAST_M:
        return piece.end
    (x, y), (dx, dy) = piece.start, piece.way
    return (x + metres * dx, y + metres * dy)


def _way(start: Point, end: Point) -> Point:
    long = math.dist(start, end) or 1.0
    return ((end[0] - start[0]) / long, (end[1] - start[1]) / long)
