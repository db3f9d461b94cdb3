"""Frames on a page: matrices that set one frame into another, and curves as points."""

from __future__ import annotations

from math import comb

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
    """Points on the curve with these three or four controls, both ends among them."""
    middle = []
    for weights in _WEIGHTS[len(control)]:
        x = y = 0.0
        for weight, point in zip(weights, control, strict=True):
            x += weight * point[0]
            y += weight * point[1]
        middle.append((x, y))
    return [control[0], *middle, control[-1]]


def _bernstein(count: int) -> list[tuple[float, ...]]:
    """The weights of the controls at each place between the ends (Bernstein's polynomials)."""
    last = count - 1
    places = [step / _STEPS for step in range(1, _STEPS)]
    return [
        tuple(comb(last, i) * t**i * (1 - t) ** (last - i) for i in range(count)) for t in places
    ]


_WEIGHTS = {count: _bernstein(count) for count in (3, 4)}
