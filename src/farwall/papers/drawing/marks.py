"""The marks of a floor drawing: arrows, the person, the spare tank, the scale bar."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely
from shapely.ops import substring

from farwall.floor.geometry import Point
from farwall.papers.ink import INK, LINE, PAPER, SOFT, WHITE
from farwall.papers.svg import Svg, number
from farwall.units import M_PER_FT

HATCH = "dry"
STOP_DASH = "7 3"
WALK_DASH = "2 3"
_HEAD = 6.0
SCALE_BAR_UNITS = 110.0
"""The scale bar is never longer than this."""


def hatch_pattern(ident: str, *, ink: str = LINE) -> str:
    """The hatch of floor that is not being sprayed now: lines in one direction."""
    return (
        f'<defs><pattern id="{ident}-{HATCH}" width="7" height="7" patternUnits="userSpaceOnUse"'
        f' patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="7" stroke="{ink}"'
        f' stroke-width="{1 if ink == LINE else 0.6}"/></pattern></defs>'
    )


def arrow(
    svg: Svg, points: Sequence[Point], *, width: float = 1.3, dash: str | None = None
) -> None:
    """A polyline with a head at its end, cased in white so that it shows on any ground."""
    if len(points) < 2 or math.dist(points[0], points[-1]) < 1e-6:
        return
    line = shapely.LineString(points)
    if line.length <= _HEAD:
        return
    shaft = substring(line, 0, line.length - _HEAD * 0.7)
    tip = points[-1]
    back = line.interpolate(line.length - _HEAD)
    head = _head((back.x, back.y), tip)
    along = [(x, y) for x, y in shaft.coords]
    svg.line(along, stroke=WHITE, stroke_width=width + 2.4, stroke_linecap="round")
    svg.element("path", d=head, fill=INK, stroke=WHITE, stroke_width=2.4, paint_order="stroke")
    svg.line(along, stroke=INK, stroke_width=width, stroke_dasharray=dash)


def _head(back: Point, tip: Point) -> str:
    angle = math.atan2(tip[1] - back[1], tip[0] - back[0])
    wings = [
        (tip[0] - _HEAD * math.cos(angle + turn), tip[1] - _HEAD * math.sin(angle + turn))
        for turn in (0.45, -0.45)
    ]
    corners = [tip, *wings]
    return "M" + " ".join(f"{number(x)},{number(y)}" for x, y in corners) + "Z"


def person(svg: Svg, at: Point, wand_to: Point | None, *, small: bool = False) -> None:
    """A ringed dot, with a stroke to the side on which the wand is held."""
    ring, dot = (5.0, 2.8) if small else (8.0, 4.5)
    if wand_to is not None and math.dist(at, wand_to) > 1:
        reach = min(20.0, math.dist(at, wand_to)) / math.dist(at, wand_to)
        end = (at[0] + (wand_to[0] - at[0]) * reach, at[1] + (wand_to[1] - at[1]) * reach)
        svg.line([at, end], stroke=WHITE, stroke_width=5, stroke_linecap="round")
        svg.line([at, end], stroke=INK, stroke_width=2)
    svg.element("circle", cx=at[0], cy=at[1], r=ring, fill=WHITE, stroke=INK, stroke_width=1.3)
    svg.element("circle", cx=at[0], cy=at[1], r=dot, fill=INK)


def tank(svg: Svg, at: Point) -> None:
    """A full tank: a small upright can."""
    x, y = at
    svg.element(
        "path",
        d=f"M{number(x - 4)},{number(y + 6)}V{number(y - 3)}L{number(x - 1.5)},{number(y - 6)}"
        f"H{number(x + 1.5)}L{number(x + 4)},{number(y - 3)}V{number(y + 6)}Z",
        fill=WHITE,
        stroke=INK,
        stroke_width=1.4,
    )
    svg.line([(x - 4, y + 1), (x + 4, y + 1)], stroke=INK, stroke_width=1.2)


def scale_bar(svg: Svg, at: Point, *, units_per_m: float, size: float) -> float:
    """Feet above, metres below, both from one zero; returns its width. `at` is its left middle."""
    feet = _round_length(SCALE_BAR_UNITS / units_per_m / M_PER_FT)
    metres = _round_length(feet * M_PER_FT)
    x, y = at
    for length_m, label, up in (
        (feet * M_PER_FT, f"{feet:g} ft", True),
        (metres, f"{metres:g} m", False),
    ):
        sign = -1 if up else 1
        end = x + length_m * units_per_m
        svg.line([(x, y), (end, y)], stroke=INK, stroke_width=1)
        for k in range(3):
            tick = x + (end - x) * k / 2
            svg.line(
                [(tick, y), (tick, y + sign * (4 if k % 2 else 6))], stroke=INK, stroke_width=1
            )
        base = y - 3 if up else y + 3 + size * 0.72
        svg.text((end + 4, base), label, size, anchor="start")
    return max(feet * M_PER_FT, metres) * units_per_m


def _round_length(rough: float) -> float:
    """The largest of 1, 2, 3, 5, 10, 20… (or tenths) not above a rough length."""
    power = 10.0 ** math.floor(math.log10(max(rough, 1e-6)))
    return max(step * power for step in (1, 2, 3, 5) if step * power <= rough * 1.0001)


def fixture(svg: Svg, path: str) -> None:
    """Something kept dry: paper with a thin outline."""
    svg.element("path", d=path, fill=PAPER, fill_rule="evenodd", stroke=INK, stroke_width=1)


def leader(svg: Svg, start: Point, end: Point) -> None:
    """A thin line from a word to what it names, with a dot there."""
    svg.line([start, end], stroke=SOFT, stroke_width=0.8)
    svg.element("circle", cx=end[0], cy=end[1], r=1.6, fill=INK)
