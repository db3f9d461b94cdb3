"""Cuts drawn lines to the window that is left of them to be seen."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import isinf

from farwall.floor.geometry import Point
from farwall.readers.lines.hand import Subpath
from farwall.readers.lines.pen import Piece

Box = tuple[float, float, float, float]
"""Left, bottom, right, top."""


def within(paths: Sequence[Subpath], window: Box) -> list[Subpath]:
    """The lines inside of a window; a closed one that is cut is closed no more."""
    if all(map(isinf, window)):
        return list(paths)
    found = []
    for path in paths:
        points = [point for piece in path.pieces for point in piece.points]
        if all(_inside(point, window) for point in points):
            found.append(path)
            continue
        pieces = [*path.pieces]
        if path.closed and points[0] != points[-1]:
            pieces.append(Piece((points[-1], points[0])))
        found += [Subpath([part]) for piece in pieces for part in _cut(piece, window)]
    return found


def _inside(point: Point, window: Box) -> bool:
    left, bottom, right, top = window
    return left <= point[0] <= right and bottom <= point[1] <= top


def _cut(piece: Piece, window: Box) -> list[Piece]:
    parts: list[list[Point]] = []
    for start, end in pairwise(piece.points):
        seen = _seen(start, end, window)
        if seen is None:
            continue
        if parts and parts[-1][-1] == seen[0]:
            parts[-1].append(seen[1])
        else:
            parts.append([*seen])
    return [Piece(part, piece.curve) for part in parts]


def _seen(start: Point, end: Point, window: Box) -> tuple[Point, Point] | None:
    """The part of a line in a window (Liang and Barsky's way, from memory)."""
    (x, y), dx, dy = start, end[0] - start[0], end[1] - start[1]
    left, bottom, right, top = window
    first, last = 0.0, 1.0
    for step, room in ((-dx, x - left), (dx, right - x), (-dy, y - bottom), (dy, top - y)):
        if step == 0:
            if room < 0:
                return None
        elif step < 0:
            first = max(first, room / step)
        else:
            last = min(last, room / step)
    if first >= last:
        return None
    a = start if first == 0 else (x + dx * first, y + dy * first)
    b = end if last == 1 else (x + dx * last, y + dy * last)
    return a, b
