"""Lines, boxes, circles and polygons of SVG as connected lines, like paths."""

from __future__ import annotations

import re
from collections.abc import Callable
from math import cos, pi, sin

from farwall.floor.geometry import Point
from farwall.readers.lines.hand import Subpath
from farwall.readers.lines.pen import Piece
from farwall.readers.svg.paths import arc_points, subpaths
from farwall.readers.svg.tree import Node
from farwall.readers.svg.units import length

_NUMBER = re.compile(r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?")
_STEPS, _FEW_STEPS = 64, 16
_SMALL = 0.01  # of the view: no room is that small, so its edge may be coarse
View = tuple[float, float]
"""What 100 % stands for, across and down."""


def drawn(node: Node, view: View) -> list[Subpath]:
    """The connected lines of a shape in its own frame; nothing for what is no shape.

    Raises ValueError where its numbers cannot be read.
    """
    make = SHAPES.get(node.tag)
    return make(node, view) if make else []


def _path(node: Node, view: View) -> list[Subpath]:
    del view
    return subpaths(node.get("d")) if node.get("d").strip() not in {"", "none"} else []


def _line(node: Node, view: View) -> list[Subpath]:
    start = _number(node, "x1", view[0]), _number(node, "y1", view[1])
    end = _number(node, "x2", view[0]), _number(node, "y2", view[1])
    return [Subpath([Piece((start, end))])]


def _poly(node: Node, view: View) -> list[Subpath]:
    del view
    numbers = [float(text) for text in _NUMBER.findall(node.get("points"))]
    points = list(zip(numbers[::2], numbers[1::2], strict=False))
    if len(points) < 2:
        return []
    return [Subpath([Piece(points)], closed=node.tag == "polygon")]


def _rect(node: Node, view: View) -> list[Subpath]:
    x, y = _number(node, "x", view[0]), _number(node, "y", view[1])
    wide, high = _number(node, "width", view[0]), _number(node, "height", view[1])
    if wide <= 0 or high <= 0:
        return []
    rx, ry = _radii(node, view, wide, high)
    if rx <= 0 or ry <= 0:
        corners = [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
        return [Subpath([Piece(corners)], closed=True)]
    return [_rounded((x, y, x + wide, y + high), rx, ry)]


def _radii(node: Node, view: View, wide: float, high: float) -> tuple[float, float]:
    rx = _number(node, "rx", view[0]) if "rx" in node.attrs else None
    ry = _number(node, "ry", view[1]) if "ry" in node.attrs else None
    rx, ry = rx if rx is not None else ry, ry if ry is not None else rx
    return min(rx or 0.0, wide / 2), min(ry or 0.0, high / 2)


def _rounded(box: tuple[float, float, float, float], rx: float, ry: float) -> Subpath:
    x, y, right, low = box
    sides: list[tuple[Point, Point]] = [
        ((x + rx, y), (right - rx, y)),
        ((right, y + ry), (right, low - ry)),
        ((right - rx, low), (x + rx, low)),
        ((x, low - ry), (x, y + ry)),
    ]
    pieces = []
    for (start, end), (after, _) in zip(sides, sides[1:] + sides[:1], strict=True):
        pieces += [
            Piece((start, end)),
            Piece(arc_points(end, after, (rx, ry, 0, 0, 1)), curve=True),
        ]
    return Subpath(pieces, closed=True)


def _ellipse(node: Node, view: View) -> list[Subpath]:
    middle = _number(node, "cx", view[0]), _number(node, "cy", view[1])
    if node.tag == "circle":
        rx = ry = _number(node, "r", (view[0] + view[1]) / 2)
    else:
        rx, ry = _number(node, "rx", view[0]), _number(node, "ry", view[1])
    if rx <= 0 or ry <= 0:
        return []
    steps = _FEW_STEPS if max(rx, ry) < _SMALL * max(view) else _STEPS
    turns = [2 * pi * step / steps for step in range(steps)]
    points = [(middle[0] + rx * cos(turn), middle[1] + ry * sin(turn)) for turn in turns]
    return [Subpath([Piece([*points, points[0]], curve=True)], closed=True)]


def _number(node: Node, name: str, whole: float) -> float:
    text = node.get(name, "0")
    value = length(text, whole=whole)
    if value is None:
        raise ValueError(f"{name} of a {node.tag} is no length")
    return value


SHAPES: dict[str, Callable[[Node, View], list[Subpath]]] = {
    "path": _path,
    "line": _line,
    "polyline": _poly,
    "polygon": _poly,
    "rect": _rect,
    "circle": _ellipse,
    "ellipse": _ellipse,
}
