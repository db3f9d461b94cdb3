"""Rooms in which something is kept dry: islands, columns, tubs, stair openings, cores."""

from __future__ import annotations

from farwall.bench.drawing import box, round_of, shape
from farwall.bench.nouns import Shape

DRY: tuple[Shape, ...] = (
    shape(
        "kitchen island",
        box(0, 0, 5.2, 4.4),
        [(0, 1.4), (0, 2.3)],
        dry=[("island", box(1.7, 1.6, 3.7, 2.6))],
    ),
    shape(
        "two islands",
        box(0, 0, 7.5, 5.4),
        [(3.3, 0), (4.2, 0)],
        dry=[("island", box(1.4, 2.2, 3, 3.2)), ("island", box(4.4, 2.2, 6.2, 3.2))],
    ),
    shape(
        "island near the wall",
        box(0, 0, 5, 4.2),
        [(4, 0), (4.9, 0)],
        dry=[("island", box(0.7, 1.2, 2.3, 3.5))],
    ),
    shape(
        "round column",
        box(0, 0, 6, 5),
        [(2.4, 0), (3.3, 0)],
        dry=[("column", round_of((3.2, 2.6), 0.3, 24))],
    ),
    shape(
        "four columns",
        box(0, 0, 9, 6),
        [(0, 2.5), (0, 3.5)],
        dry=[("column", box(x, y, x + 0.3, y + 0.3)) for x in (2.7, 6) for y in (1.8, 3.9)],
    ),
    shape(
        "kitchen peninsula",
        box(0, 0, 5.4, 4.2),
        [(0.5, 0), (1.4, 0)],
        dry=[("cabinet", box(2.4, 1.6, 5.4, 2.3)), ("cabinet", box(2, 3.6, 5.4, 4.2))],
    ),
    shape(
        "bath with tub",
        box(0, 0, 2.6, 1.75),
        [(0, 0.1), (0, 0.86)],
        dry=[("tub", box(1.8, 0, 2.6, 1.75))],
    ),
    shape(
        "bath, tub and cabinet",
        box(0, 0, 3, 2.4),
        [(0.1, 0), (0.91, 0)],
        dry=[("tub", box(1.4, 1.65, 3, 2.4)), ("cabinet", box(2.4, 0, 3, 1))],
    ),
    shape(
        "stair opening",
        box(0, 0, 6.4, 6),
        [(2.7, 0), (3.6, 0)],
        holes=[box(2.6, 1.7, 3.7, 4.7)],
    ),
    shape(
        "stair opening near a side",
        box(0, 0, 5.5, 6.5),
        [(4.4, 0), (5.3, 0)],
        holes=[box(0.8, 2, 1.9, 5.2)],
    ),
    shape(
        "round stair",
        box(0, 0, 5.6, 5.6),
        [(0, 2.3), (0, 3.2)],
        holes=[round_of((2.8, 2.8), 0.95, 32)],
    ),
    shape(
        "corridor round a core",
        box(0, 0, 7, 6),
        [(3, 0), (3.9, 0)],
        holes=[box(1.3, 1.3, 5.7, 4.7)],
    ),
    shape(
        "garage with bench and post",
        box(0, 0, 9, 6.6),
        [(0.6, 0), (5.5, 0)],
        dry=[("cabinet", box(8.4, 1, 9, 6)), ("column", box(6, 3.2, 6.2, 3.4))],
    ),
)
