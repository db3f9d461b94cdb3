"""Rectangles: ratios, places and widths of the way out."""

from __future__ import annotations

from farwall.bench.drawing import box, shape
from farwall.bench.nouns import Shape

PLAIN: tuple[Shape, ...] = (
    shape("small square", box(0, 0, 3, 3), [(1.05, 0), (1.95, 0)]),
    shape("square of 6 m", box(0, 0, 6, 6), [(2.55, 0), (3.45, 0)]),
    shape("square, corner door", box(0, 0, 5, 5), [(0.1, 0), (1.0, 0)]),
    shape("4 to 3, short wall", box(0, 0, 3, 4), [(1.05, 0), (1.95, 0)]),
    shape("4 to 3, long wall", box(0, 0, 4, 3), [(1.55, 0), (2.45, 0)]),
    shape("2 to 1, short wall", box(0, 0, 3.2, 6.4), [(1.15, 0), (2.05, 0)]),
    shape("2 to 1, long wall", box(0, 0, 6.4, 3.2), [(2.75, 0), (3.65, 0)]),
    shape("2 to 1, corner", box(0, 0, 7.6, 3.8), [(0.1, 0), (1.0, 0)]),
    shape("3 to 1, short wall", box(0, 0, 2.4, 7.2), [(0.75, 0), (1.65, 0)]),
    shape("3 to 1, long wall", box(0, 0, 10.5, 3.5), [(4.8, 0), (5.7, 0)]),
    shape("3 to 1, third of the wall", box(0, 0, 9.6, 3.2), [(2.6, 0), (3.5, 0)]),
    shape("wide opening, long wall", box(0, 0, 6, 4), [(0.6, 0), (5.4, 0)]),
    shape("wide opening, short wall", box(0, 0, 5, 7), [(0.3, 0), (4.7, 0)]),
    shape("straight corridor, end", box(0, 0, 1.1, 8), [(0.1, 0), (1.0, 0)]),
    shape("straight corridor, middle", box(0, 0, 9, 1.2), [(4.05, 0), (4.95, 0)]),
    shape("narrow closet", box(0, 0, 2.4, 0.62), [(0.8, 0), (1.6, 0)]),
    shape("walk-in closet", box(0, 0, 1.7, 2.6), [(0.5, 0), (1.26, 0)]),
    shape("garage, wide door", box(0, 0, 6.1, 6.4), [(0.61, 0), (5.49, 0)]),
    shape("hall of 12 by 7", box(0, 0, 12, 7), [(5.4, 0), (6.6, 0)]),
)
