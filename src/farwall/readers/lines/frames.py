"""Frames on a page: matrices that set one frame into another, and curves as points."""

from __future__ import annotations

from itertools import pairwise

from farwall.floor.geometry import Point

Matrix = tuple[float, float, float, float, float, float]
"""a, b, c, d, e, f of SVG and PDF: x' = a x + c y + e, y' = b x + d y + f."""
IDENTITY: Matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
_STEPS = 16  # pieces of a curve: as a quarter circle of 0.9 m it is then told to 1 mm


def times(outer: Matrix, inner: Matrix) -> Matrix:
    """What is drawn in `inner`, seen from outside of `outer`."""
    a, b, c, d, e, f = outer
    g, h, i, j, k, m = inner
    return (
        a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j,
        a * k + c * m + e, b * k + d * m + f,
    )  # fmt: skip


def placed(matrix: Matrix, point: Point) -> Point:
    """A point seen from outside."""
    a, b, c, d, e, f = matrix
    return a * point[0] + c * point[1] + e, b * point[0] + d * point[1] + f


def bezier(control: list[Point]) -> list[Point]:
    """Points on the curve with these controls, both ends among them."""
    points = [_on_bezier(control, step / _STEPS) for step in range(1, _STEPS)]
    return [control[0], *points, control[-1]]


def _on_bezier(control: list[Point], t: float) -> Point:
    """De Casteljau's construction."""
    while len(control) > 1:
        control = [
            (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t) for a, b in pairwise(control)
        ]
    return control[0]
