"""Upright shapes with inner corners: letters, spiral, comb, bends, rooms through wide openings."""

from __future__ import annotations

from farwall.bench.drawing import box, opening, polygon, rooms_shape, shape
from farwall.bench.nouns import Shape

_L = [(0, 0), (7, 0), (7, 3), (3, 3), (3, 7.5), (0, 7.5)]
_T = [(2.5, 0), (4.5, 0), (4.5, 4), (7, 4), (7, 7), (0, 7), (0, 4), (2.5, 4)]
_U = [(0, 0), (2.2, 0), (2.2, 4), (5, 4), (5, 0), (7.2, 0), (7.2, 6.2), (0, 6.2)]
_Z = [(0, 0), (5, 0), (5, 3.5), (8, 3.5), (8, 6.5), (3, 6.5), (3, 3), (0, 3)]
_PLUS = [
    (3, 0), (5.4, 0), (5.4, 3), (8.4, 3), (8.4, 5.4), (5.4, 5.4),
    (5.4, 8.4), (3, 8.4), (3, 5.4), (0, 5.4), (0, 3), (3, 3),
]  # fmt: skip
_CROSS = [
    (1.5, 0), (2.7, 0), (2.7, 4.1), (9, 4.1), (9, 5.5), (2.7, 5.5),
    (2.7, 7), (1.5, 7), (1.5, 5.5), (0, 5.5), (0, 4.1), (1.5, 4.1),
]  # fmt: skip
_H = [
    (0, 0), (2.4, 0), (2.4, 3), (4.6, 3), (4.6, 0), (7, 0), (7, 7.4),
    (4.6, 7.4), (4.6, 4.6), (2.4, 4.6), (2.4, 7.4), (0, 7.4),
]  # fmt: skip
_SPIRAL = [
    (0, 0), (7.2, 0), (7.2, 7), (1.4, 7), (1.4, 2.8), (4.4, 2.8), (4.4, 4.2), (2.8, 4.2),
    (2.8, 5.6), (5.8, 5.6), (5.8, 1.4), (0, 1.4),
]  # fmt: skip
_COMB = [
    (0, 0), (9, 0), (9, 4.4), (7.4, 4.4), (7.4, 1.6), (5.3, 1.6), (5.3, 4.4), (3.7, 4.4),
    (3.7, 1.6), (1.6, 1.6), (1.6, 4.4), (0, 4.4),
]  # fmt: skip
_BENDS = [
    (0, 0), (1.1, 0), (1.1, 3), (4.5, 3), (4.5, 0.5), (5.6, 0.5), (5.6, 4.1),
    (2.2, 4.1), (2.2, 6.6), (1.1, 6.6), (1.1, 4.1), (0, 4.1),
]  # fmt: skip
_SNAKE = [
    (0, 0), (1, 0), (1, 4), (2.2, 4), (2.2, 0), (4.4, 0), (4.4, 5), (3.4, 5), (3.4, 1),
    (3.2, 1), (3.2, 5), (0, 5),
]  # fmt: skip
_NECK = [
    (0, 0), (3.4, 0), (3.4, 1.6), (5, 1.6), (5, 0), (8.6, 0), (8.6, 3.6), (5, 3.6), (5, 2.2),
    (3.4, 2.2), (3.4, 3.6), (0, 3.6),
]  # fmt: skip
_GREAT = [
    (0, 0), (5, 0), (5, -1.6), (8, -1.6), (8, 0), (11.5, 0), (11.5, 2.5), (13, 2.5), (13, 5),
    (11.5, 5), (11.5, 7), (6.4, 7), (6.4, 8), (3.4, 8), (3.4, 7), (0, 7),
]  # fmt: skip
_STEPPED = [
    (0, 0), (6.6, 0), (6.6, 1.5), (5.4, 1.5), (5.4, 3), (4.2, 3), (4.2, 4.5), (3, 4.5), (3, 6),
    (0, 6),
]  # fmt: skip

LETTERS: tuple[Shape, ...] = (
    shape("L, end of the foot", _L, [(7, 1), (7, 1.9)]),
    shape("L, inner corner", _L, [(3.1, 3), (4, 3)]),
    shape("L, outer corner", _L, [(0, 0.1), (0, 1.0)]),
    shape("T, foot", _T, [(3.05, 0), (3.95, 0)]),
    shape("T, end of the bar", _T, [(0, 5), (0, 5.9)]),
    shape("U, end of an arm", _U, [(0.6, 0), (1.5, 0)]),
    shape("U, base", _U, [(3.15, 6.2), (4.05, 6.2)]),
    shape("Z", _Z, [(0, 1), (0, 1.9)]),
    shape("Z, middle", _Z, [(5, 1), (5, 1.9)]),
    shape("plus", _PLUS, [(3.75, 0), (4.65, 0)]),
    shape("cross of corridors", _CROSS, [(1.65, 0), (2.55, 0)]),
    shape("H, end of a leg", _H, [(0.75, 0), (1.65, 0)]),
    shape("H, crossbar", _H, [(3.05, 3), (3.95, 3)]),
    shape("spiral", _SPIRAL, [(0, 0.25), (0, 1.15)]),
    shape("comb, end", _COMB, [(0, 0.3), (0, 1.2)]),
    shape("comb, between teeth", _COMB, [(4.05, 0), (4.95, 0)]),
    shape("corridor with bends", _BENDS, [(0.1, 0), (1.0, 0)]),
    shape("folded corridor", _SNAKE, [(0.05, 0), (0.95, 0)]),
    shape("two ends and a narrow neck", _NECK, [(0, 1.4), (0, 2.3)]),
    shape("great room with alcoves", _GREAT, [(0, 3), (0, 4.8)]),
    shape("steps along a slope", _STEPPED, [(2.4, 0), (3.3, 0)]),
    rooms_shape(
        "dumbbell",
        {"near": polygon(box(0, 0, 4, 4)), "far": polygon(box(4, 0.5, 9, 5))},
        [opening("arch", "wide", [(4, 1.2), (4, 3.2)], "near", "far")],
        [(0, 1.5), (0, 2.4)],
        "near",
    ),
    rooms_shape(
        "dumbbell, small far end",
        {"near": polygon(box(0, 0, 6, 5)), "far": polygon(box(6, 1.4, 8.4, 3.8))},
        [opening("arch", "wide", [(6, 2), (6, 3.4)], "near", "far")],
        [(0.4, 0), (1.3, 0)],
        "near",
    ),
    rooms_shape(
        "three in a row",
        {
            "one": polygon(box(0, 0, 3.5, 4)),
            "two": polygon(box(3.5, 0, 6.5, 4)),
            "three": polygon(box(6.5, 0, 10.5, 4)),
        },
        [
            opening("arch-1", "wide", [(3.5, 0.4), (3.5, 2.2)], "one", "two"),
            opening("arch-2", "wide", [(6.5, 1.8), (6.5, 3.6)], "two", "three"),
        ],
        [(4.55, 0), (5.45, 0)],
        "two",
    ),
)
