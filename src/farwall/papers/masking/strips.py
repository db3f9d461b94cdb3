"""Film along walls on the drawing: a strip on the floor before the wall, drawn by its height.

Heights are told apart by shape and not by shade: low film is a hollow strip, usual film a solid
one, film to full height a broad one with a white line in it.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.job.office.masking import FilmRun, RoomMasked
from farwall.nouns import dataclass
from farwall.papers.drawing.frame import path_data
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, WHITE
from farwall.papers.svg import Svg
from farwall.units import M_PER_IN

Style = Literal["low", "usual", "full"]
_LOW_M, _FULL_M = 36.5 * M_PER_IN, 72 * M_PER_IN
WIDE = {"low": 3.0, "usual": 3.0, "full": 6.0}
"""Width of a strip, in units of the drawing; narrower where a whole house is drawn small."""
_WIDEST_M = {"low": 0.12, "usual": 0.12, "full": 0.24}


@dataclass(frozen=True)
class Look:
    """How a style is painted: its fill, whether a white line runs in it."""

    fill: str
    line: bool


LOOKS: dict[Style, Look] = {
    "low": Look(WHITE, line=False), "usual": Look(INK, line=False), "full": Look(INK, line=True),
}  # fmt: skip


def style_of(film_m: float) -> Style:
    """Hollow up to 36 in, broad from 72 in on, solid between."""
    return "low" if film_m <= _LOW_M else "full" if film_m >= _FULL_M else "usual"


def draw_strips(sheet: Sheet, room: RoomMasked, net: BaseGeometry) -> BaseGeometry:
    """The film of a room on its floor; returns what it takes of the drawing.

    net: the floor of the room that is not kept dry. [m]
    """
    floor = sheet.frame.shape(net)
    taken = []
    for style, look in LOOKS.items():
        runs = [one for one in room.runs if one.film_m > 0 and style_of(one.film_m) == style]
        if not runs:
            continue
        wide = min(WIDE[style], _WIDEST_M[style] * sheet.frame.scale)
        strip = shapely.intersection(_strip(sheet, runs, wide), floor)
        sheet.svg.element(
            "path", d=path_data(strip), fill=look.fill, fill_rule="evenodd", stroke=INK,
            stroke_width=0.7,
        )  # fmt: skip
        if look.line:
            _white_line(sheet, runs, floor, wide / 2)
        taken.append(strip)
    return shapely.union_all(taken)


def _strip(sheet: Sheet, runs: Iterable[FilmRun], wide: float) -> BaseGeometry:
    """The runs, joined around corners, as a strip to both sides; the caller keeps the floor's."""
    return shapely.union_all([
        line.buffer(wide, cap_style="flat", join_style="mitre") for line in _lines(sheet, runs)
    ])  # fmt: skip


def _white_line(sheet: Sheet, runs: Iterable[FilmRun], floor: BaseGeometry, half: float) -> None:
    """A line in the middle of a broad strip, all along it."""
    whole = shapely.union_all([
        line.buffer(half, cap_style="flat", join_style="mitre") for line in _lines(sheet, runs)
    ])  # fmt: skip
    inner = shapely.intersection(whole.boundary, floor.buffer(-half / 2, join_style="mitre"))
    merged = shapely.line_merge(inner) if inner.geom_type == "MultiLineString" else inner
    for part in shapely.get_parts(merged).tolist():
        if part.length > WIDE["full"]:
            points = [(float(x), float(y)) for x, y in part.coords]
            sheet.svg.line(points, stroke=WHITE, stroke_width=0.4 * half)


def _lines(sheet: Sheet, runs: Iterable[FilmRun]) -> list[BaseGeometry]:
    """Runs on the drawing, those that follow each other as one line, a closed one as a ring."""
    lines = [shapely.set_precision(shapely.LineString(one.line), 1e-4) for one in runs]
    merged = shapely.line_merge(shapely.MultiLineString(lines))
    drawn = [sheet.frame.shape(one) for one in shapely.get_parts(merged).tolist()]
    return [shapely.LinearRing(one.coords) if one.is_ring else one for one in drawn]


def strip_key(svg: Svg, style: Style, at: tuple[float, float], width: float) -> None:
    """A piece of strip, for the key; `at` is its left middle."""
    look, wide = LOOKS[style], WIDE[style]
    x, y = at
    svg.element(
        "rect", x=x, y=y - wide / 2, width=width, height=wide, fill=look.fill, stroke=INK,
        stroke_width=0.7,
    )  # fmt: skip
    if look.line:
        svg.line([(x, y), (x + width, y)], stroke=WHITE, stroke_width=1.2)
