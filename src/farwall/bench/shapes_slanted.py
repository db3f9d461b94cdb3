"""Shapes with slanted or round walls, and upright ones turned by 17 degrees."""

from __future__ import annotations

from farwall.bench.drawing import arc, box, round_of, shape, turned
from farwall.bench.nouns import Shape

_TURN_DEG = 17.0
_ROOM = turned(box(0, 0, 6, 4), _TURN_DEG)
_L = [(0, 0), (5.6, 0), (5.6, 2.4), (2.4, 2.4), (2.4, 6), (0, 6)]
_BAY = [(0, 0), (5, 0), (5, 4), (3.9, 4), (3.3, 5), (1.7, 5), (1.1, 4), (0, 4)]
_ROUND = arc((0, 0), 2.8, -80, 260, legs=44)  # the door lies in the flat that is left
_HEXAGON = round_of((0, 0), 3.2, 6)
_OCTAGON = round_of((0, 0), 3, 8)
_HOURGLASS = [(0, 0), (5, 0), (3, 3), (5, 6), (0, 6), (2, 3)]

SLANTED: tuple[Shape, ...] = (
    shape("trapezoid, wide side", [(0, 0), (7, 0), (5, 4), (1.5, 4)], [(3, 0), (3.9, 0)]),
    shape("trapezoid, narrow side", [(0, 0), (7, 0), (5, 4), (1.5, 4)], [(2.8, 4), (3.7, 4)]),
    shape("parallelogram", [(0, 0), (6, 0), (8, 3.5), (2, 3.5)], [(0.2, 0), (1.1, 0)]),
    shape("triangle, long side", [(0, 0), (7, 0), (2, 5)], [(2.6, 0), (3.5, 0)]),
    shape("triangle, near a tip", [(0, 0), (6, 0), (3, 5.2)], [(4.5, 0), (5.4, 0)]),
    shape("thin wedge", [(0, 0), (5, 0), (5, 2.2)], [(5, 0.6), (5, 1.5)]),
    shape("wedge, blunt tip", [(0, 0), (9, -0.9), (9, 2.7), (0, 1)], [(0, 0.05), (0, 0.95)]),
    shape("hexagon", _HEXAGON, [(0.45, _HEXAGON[4][1]), (-0.45, _HEXAGON[4][1])]),
    shape("octagon with a post", _OCTAGON, [_OCTAGON[0], _OCTAGON[1]],
          dry=[("column", box(-0.2, -0.2, 0.2, 0.2))]),
    shape("round room", _ROUND, [(-0.45, _ROUND[0][1]), (0.45, _ROUND[0][1])]),
    shape("half round", arc((0, 0), 3.4, 0, 180, legs=24), [(-0.45, 0), (0.45, 0)]),
    shape("apse", [(0, 0), (5, 0), *arc((2.5, 4.5), 2.5, 0, 180, legs=20)], [(2, 0), (3, 0)]),
    shape("bay", _BAY, [(0.1, 0), (1.0, 0)]),
    shape("hourglass", _HOURGLASS, [(2.05, 0), (2.95, 0)]),
    shape("room turned", _ROOM, turned([(2.2, 0), (3.1, 0)], _TURN_DEG)),
    shape("L turned", turned(_L, _TURN_DEG), turned([(5.6, 0.7), (5.6, 1.6)], _TURN_DEG)),
    shape("room turned, island",
          turned(box(0, 0, 6, 4.6), _TURN_DEG), turned([(0, 0.2), (0, 1.1)], _TURN_DEG),
          dry=[("island", turned(box(2, 1.7, 4, 2.8), _TURN_DEG))]),
)  # fmt: skip
