"""Sun on a floor drawing: half-strength yellow under a hatch, so that grey shows it too."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import shapely

from farwall.facts.sunlight import SunPatch
from farwall.floor.geometry import Point
from farwall.floor.nouns import Window
from farwall.papers.drawing.frame import Frame
from farwall.papers.ink import INK, SUN, WHITE
from farwall.papers.svg import Svg, number

SUN_HATCH = "sun"
_STRENGTH = 0.5


def sun_pattern(ident: str) -> str:
    """The hatch of sun: thin lines the other way than those of floor that is not sprayed now."""
    return (
        f'<defs><pattern id="{ident}-{SUN_HATCH}" width="5" height="5"'
        f' patternUnits="userSpaceOnUse" patternTransform="rotate(-60)"><line x1="0" y1="0" x2="0"'
        f' y2="5" stroke="{INK}" stroke-width="0.7" stroke-opacity="0.55"/></pattern></defs>'
    )


def draw_sun(svg: Svg, frame: Frame, patches: Iterable[SunPatch], *, hatched: bool = True) -> None:
    """Patches of sun; `sun_pattern(svg.ident)` must be there."""
    shapes = [patch.polygon.shape for patch in patches]
    if not shapes:
        return
    path = frame.path(shapely.union_all(shapes))
    svg.element("path", d=path, fill_rule="evenodd", fill=SUN, fill_opacity=_STRENGTH)
    if hatched:
        svg.element("path", d=path, fill_rule="evenodd", fill=f"url(#{svg.ident}-{SUN_HATCH})",
                    stroke=INK, stroke_width=0.5)  # fmt: skip


def draw_windows(svg: Svg, frame: Frame, windows: Sequence[Window]) -> None:
    """Windows as a thin white line in the wall; one that is covered is struck through."""
    for window in windows:
        line = [frame.at(point) for point in window.line]
        svg.line(line, stroke=INK, stroke_width=4)
        dash = "2 2" if window.covered else None
        svg.line(line, stroke=WHITE, stroke_width=2, stroke_dasharray=dash)


def sun_key(svg: Svg, at: Point, *, size: float) -> float:
    """A swatch of the sun with its lower left corner at a place; returns where it ends."""
    x, y = at
    for fill, opacity in ((SUN, _STRENGTH), (f"url(#{svg.ident}-{SUN_HATCH})", None)):
        svg.element("rect", x=x, y=y - size * 0.8, width=22, height=size * 0.9, fill=fill,
                    fill_opacity=opacity, stroke=INK, stroke_width=0.5)  # fmt: skip
    return x + 22


def north_arrow(svg: Svg, at: Point, north_deg: float, *, size: float) -> None:
    """An arrow to the north, its middle at a place, with its letter at the tip."""
    turn = math.radians(north_deg)
    dx, dy = math.sin(turn), -math.cos(turn)
    x, y = at
    tip, foot = (x + dx * size, y + dy * size), (x - dx * size, y - dy * size)
    svg.line([foot, tip], stroke=INK, stroke_width=1.2)
    wings = [
        (tip[0] - 6 * math.sin(turn + side), tip[1] + 6 * math.cos(turn + side))
        for side in (0.45, -0.45)
    ]
    corners = " ".join(f"{number(a)},{number(b)}" for a, b in (tip, *wings))
    svg.element("path", d=f"M{corners}Z", fill=INK)
    beyond = size + 8
    svg.text((x + dx * beyond, y + dy * beyond + size * 0.35), "N", size, bold=True)
