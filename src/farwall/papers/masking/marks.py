"""Marks of the masking: wrapped jambs, dams at outside doors, and things with their letters."""

from __future__ import annotations

import math
from collections.abc import Callable

from farwall.floor.geometry import Point
from farwall.job.office.masking import Dam, ItemMasked, Jamb
from farwall.job.office.masking.rules import RETURN_M
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, WHITE
from farwall.papers.svg import Svg

_JAMB, _DAM_OFF_M, _HALF = 4.4, 0.22, 4.5
_ROPE = "2.2 1.4"


def draw_jamb(sheet: Sheet, side: Jamb) -> None:
    """A small square at the foot of either jamb, on the room's side of the wall."""
    (ax, ay), (bx, by) = side.line
    long = math.dist(*side.line) or 1.0
    into = (-(by - ay) / long, (bx - ax) / long)  # the floor lies to the left of a mouth
    reach = side.depth_m if side.measured else 0.0
    for x, y in side.line:
        at = sheet.frame.at((x + into[0] * reach, y + into[1] * reach))
        jamb_key(sheet.svg, at)
        sheet.board.take((at[0] - 3, at[1] - 3, at[0] + 3, at[1] + 3))


def jamb_key(svg: Svg, at: Point) -> None:
    """The square of a jamb."""
    svg.element(
        "rect", x=at[0] - _JAMB / 2, y=at[1] - _JAMB / 2, width=_JAMB, height=_JAMB, fill=WHITE,
        stroke=INK, stroke_width=1.1,
    )  # fmt: skip


def draw_dam(sheet: Sheet, dam: Dam, outward: Point) -> Point:
    """A rope across an outside door with its returns; where its words may stand beyond it.

    outward: the way out on the drawing, length 1.
    """
    ends = [sheet.frame.at(point) for point in dam.line]
    if len(ends) < 2:
        dam_key(sheet.svg, (ends[0][0] - 8, ends[0][1]), 16)
        return ends[0]
    (ax, ay), (bx, by) = ends[0], ends[-1]
    long = math.dist((ax, ay), (bx, by)) or 1.0
    along = ((bx - ax) / long, (by - ay) / long)
    off, more = _DAM_OFF_M * sheet.frame.scale, RETURN_M * sheet.frame.scale
    points = [
        (ax - along[0] * more + outward[0] * off, ay - along[1] * more + outward[1] * off),
        (bx + along[0] * more + outward[0] * off, by + along[1] * more + outward[1] * off),
    ]
    _rope(sheet.svg, points)
    sheet.board.take_line(points, 3)
    return ((points[0][0] + points[1][0]) / 2, (points[0][1] + points[1][1]) / 2)


def dam_key(svg: Svg, at: Point, width: float) -> None:
    """A piece of dam; `at` is its left middle."""
    _rope(svg, [at, (at[0] + width, at[1])])


def _rope(svg: Svg, points: list[Point]) -> None:
    svg.line(points, stroke=INK, stroke_width=5.2)
    svg.line(points, stroke=WHITE, stroke_width=3.6, stroke_dasharray=_ROPE)


def draw_item(sheet: Sheet, item: ItemMasked) -> None:
    """The symbol of a thing where it stands."""
    if item.at is None:
        return
    at = sheet.frame.at(item.at)
    symbol(sheet.svg, item.kind, at)
    sheet.board.take((at[0] - _HALF, at[1] - _HALF, at[0] + _HALF, at[1] + _HALF))


def symbol(svg: Svg, kind: str, at: Point) -> None:
    """A plain mark by kind: a drain is a crossed ring, a register a grille, metal a diamond."""
    _SYMBOLS.get(kind, _other)(svg, at)


def _ring(svg: Svg, at: Point) -> None:
    svg.element("circle", cx=at[0], cy=at[1], r=_HALF, fill=WHITE, stroke=INK, stroke_width=1.1)
    for dx, dy in ((_HALF, 0.0), (0.0, _HALF)):
        ends = [(at[0] - dx, at[1] - dy), (at[0] + dx, at[1] + dy)]
        svg.line(ends, stroke=INK, stroke_width=0.9)


def _grille(svg: Svg, at: Point) -> None:
    _box(svg, at, 1.5, 0.8)
    for k in (-3.4, 0.0, 3.4):
        svg.line([(at[0] + k, at[1] - 3.6), (at[0] + k, at[1] + 3.6)], stroke=INK, stroke_width=0.9)


def _diamond(svg: Svg, at: Point) -> None:
    x, y = at
    shape = [(x, y - _HALF), (x + _HALF, y), (x, y + _HALF), (x - _HALF, y), (x, y - _HALF)]
    svg.line(shape, stroke=INK, stroke_width=1.1, fill=INK)


def _crossed(svg: Svg, at: Point) -> None:
    _box(svg, at, 1.0, 1.0)
    for turn in (1, -1):
        svg.line(
            [(at[0] - _HALF, at[1] - turn * _HALF), (at[0] + _HALF, at[1] + turn * _HALF)],
            stroke=INK, stroke_width=0.9,
        )  # fmt: skip


def _steps(svg: Svg, at: Point) -> None:
    for k in (-_HALF, 0.0, _HALF):
        svg.line([(at[0] - _HALF, at[1] + k), (at[0] + _HALF, at[1] + k)], stroke=INK,
                 stroke_width=1.4)  # fmt: skip


def _post(svg: Svg, at: Point) -> None:
    _box(svg, at, 0.7, 0.7, fill=INK)


def _rope_bit(svg: Svg, at: Point) -> None:
    dam_key(svg, (at[0] - 8, at[1]), 16)


def _other(svg: Svg, at: Point) -> None:
    x, y = at
    shape = [(x, y - _HALF), (x + _HALF, y + _HALF), (x - _HALF, y + _HALF), (x, y - _HALF)]
    svg.line(shape, stroke=INK, stroke_width=1.1, fill=WHITE)


def _box(svg: Svg, at: Point, wide: float, tall: float, fill: str = WHITE) -> None:
    svg.element(
        "rect", x=at[0] - wide * _HALF, y=at[1] - tall * _HALF, width=2 * wide * _HALF,
        height=2 * tall * _HALF, fill=fill, stroke=INK, stroke_width=1.1,
    )  # fmt: skip


_SYMBOLS: dict[str, Callable[[Svg, Point], None]] = {
    "drain": _ring, "register": _grille, "metal": _diamond, "appliance": _crossed,
    "stair": _steps, "post": _post, "outside door": _rope_bit,
}  # fmt: skip
