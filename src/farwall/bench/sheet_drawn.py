"""A floor drawn as an office draws it, on a sheet of paper as pixels, for photographs of it.

Walls filled, as two lines or as one; leaves with their swings, glass, names, dimension lines, a
frame and a title box. Widths of pens and heights of letters: common practice, no source.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, hypot, pi, sin
from typing import Any, Literal

import numpy as np
import numpy.typing as npt
import shapely

from farwall.floor.geometry import Point, polygons_of
from farwall.floor.nouns import Floor, Opening
from farwall.nouns import dataclass

Style = Literal["filled", "double", "single"]
Grey = npt.NDArray[np.uint8]
THICK_M = 0.15
"""How deep outside walls are drawn."""
_PEN_MM, _THIN_MM, _LETTER_MM = 0.5, 0.25, 2.6
_MARGIN_MM, _SUB = 10.0, 16
_WINDOW_M, _ROOM_FOR_IT_M = 1.2, 2.2
INK, PAPER = 40, 250


@dataclass(frozen=True)
class Drawn:
    """The sheet: `grey` its pixels, `px_per_mm` their size, `ratio` metres of house a millimetre.

    `low_m` lies at `low_mm` on the paper, from its lower left corner.
    """

    grey: Grey
    px_per_mm: float
    ratio: float
    low_m: Point
    low_mm: Point
    floor: Floor

    @property
    def paper_mm(self) -> tuple[float, float]:
        """Width and height of the sheet."""
        high, wide = self.grey.shape
        return wide / self.px_per_mm, high / self.px_per_mm

    def px(self, place: Point) -> Point:
        """Where a place of the house [m] lies among the pixels, x right and y down."""
        x_mm = self.low_mm[0] + (place[0] - self.low_m[0]) / self.ratio
        y_mm = self.low_mm[1] + (place[1] - self.low_m[1]) / self.ratio
        return x_mm * self.px_per_mm, self.grey.shape[0] - y_mm * self.px_per_mm


def draw_sheet(
    floor: Floor, *, style: Style, paper_mm: tuple[float, float], ratio: float, long_px: int
) -> Drawn:
    """The floor in the middle of the sheet. `ratio`: metres of house to a millimetre of paper."""
    px_per_mm = long_px / max(paper_mm)
    wide, high = (round(side * px_per_mm) for side in paper_mm)
    low_x, low_y, high_x, high_y = shapely.unary_union(
        [r.polygon.shape for r in floor.rooms]
    ).bounds
    low_mm = (
        (paper_mm[0] - (high_x - low_x) / ratio) / 2,
        (paper_mm[1] - (high_y - low_y) / ratio) / 2 + 4,
    )
    grey = np.full((high, wide), PAPER, np.uint8)
    drawn = Drawn(grey, px_per_mm, ratio, (low_x, low_y), low_mm, floor)
    pen = _Pen(drawn)
    windows = _windows(floor)
    _walls(pen, floor, style, windows)
    for line in windows:
        _glass(pen, line, style)
    for one in floor.openings:
        if one.kind in {"door", "outside"}:
            _leaf(pen, floor, one)
    _letters(pen, floor)
    _dimensions(pen, (low_x, low_y, high_x, high_y))
    _frame(pen)
    return drawn


class _Pen:
    def __init__(self, drawn: Drawn) -> None:
        self.drawn = drawn

    def line(self, places: list[Point], wide_mm: float, *, closed: bool = False) -> None:
        import cv2

        wide = max(1, round(wide_mm * self.drawn.px_per_mm))
        fixed = self._fixed(places)
        cv2.polylines(self.drawn.grey, [fixed], closed, INK, wide, cv2.LINE_AA, 4)

    def _fixed(self, places: list[Point]) -> npt.NDArray[np.int32]:
        """Sixteenths of a pixel between the middles of pixels."""
        points = np.array([self.drawn.px(place) for place in places])
        return np.round((points - 0.5) * _SUB).astype(np.int32)

    def fill_within(self, shape: shapely.Polygon) -> None:
        """Ink up to the shape's edge: the pen that fills reaches half a pixel beyond its own."""
        half = 0.5 / self.drawn.px_per_mm * self.drawn.ratio
        for part in polygons_of(shape.buffer(-half, join_style="mitre")):
            self._fill(part)

    def _fill(self, shape: shapely.Polygon) -> None:
        import cv2

        rings = [shape.exterior, *shape.interiors]
        fixed = [
            np.round((np.array([self.drawn.px(p) for p in r.coords[:-1]]) - 0.5) * _SUB).astype(
                np.int32
            )
            for r in rings
        ]
        cv2.fillPoly(self.drawn.grey, fixed, INK, cv2.LINE_AA, 4)

    def text(self, text: str, at_px: Point, height_mm: float) -> None:
        import cv2

        size = height_mm * self.drawn.px_per_mm / 21
        wide = max(1, round(0.25 * self.drawn.px_per_mm))
        (w, h), _ = cv2.getTextSize(text, cv2.FONT_HERSHEY_SIMPLEX, size, wide)
        place = (round(at_px[0] - w / 2), round(at_px[1] + h / 2))
        cv2.putText(
            self.drawn.grey, text, place, cv2.FONT_HERSHEY_SIMPLEX, size, INK, wide, cv2.LINE_AA
        )


def _walls(pen: _Pen, floor: Floor, style: Style, windows: list[tuple[Point, Point]]) -> None:
    rooms = shapely.unary_union([room.polygon.shape for room in floor.rooms])
    ways = [one.line for one in floor.openings]
    if style == "single":
        gaps = shapely.unary_union([_across(line, 0.02) for line in ways])
        for room in floor.rooms:
            rings = [room.polygon.shape.exterior, *room.polygon.shape.interiors]
            for part in shapely.get_parts(shapely.MultiLineString(rings).difference(gaps)).tolist():
                pen.line(list(part.coords), _PEN_MM)
        return
    body = rooms.buffer(THICK_M, join_style="mitre").difference(rooms)
    cut = shapely.unary_union([_across(line, THICK_M + 0.02) for line in (*ways, *windows)])
    for part in polygons_of(body.difference(cut)):
        if style == "filled":
            pen.fill_within(part)
        else:
            for ring in (part.exterior, *part.interiors):
                pen.line(list(ring.coords[:-1]), _PEN_MM, closed=True)


def _across(line: tuple[Point, ...], reach: float) -> shapely.Polygon:
    return shapely.LineString(line).buffer(reach, cap_style="flat")


def _windows(floor: Floor) -> list[tuple[Point, Point]]:
    """One in the middle of each long outer wall of a room, where no opening is near."""
    rooms = shapely.unary_union([room.polygon.shape for room in floor.rooms])
    ways = shapely.unary_union([shapely.LineString(one.line) for one in floor.openings])
    found = []
    for room in floor.rooms:
        points = room.polygon.shape.exterior.coords
        for (ax, ay), (bx, by) in pairwise(points):
            long = hypot(bx - ax, by - ay)
            ux, uy = (bx - ax) / long, (by - ay) / long
            mx, my = (ax + bx) / 2, (ay + by) / 2
            out = shapely.LineString(
                [(mx + uy * 0.05, my - ux * 0.05), (mx + uy * 0.9, my - ux * 0.9)]
            )
            side = out.buffer(0.7, cap_style="flat")
            if long < _ROOM_FOR_IT_M or side.intersects(rooms) or ways.distance(side) < 0.1:
                continue
            half = _WINDOW_M / 2
            found.append(((mx - ux * half, my - uy * half), (mx + ux * half, my + uy * half)))
    return found


def _glass(pen: _Pen, line: tuple[Point, Point], style: Style) -> None:
    """Both faces and a pane; `line` runs along the room's face, the outside to its right."""
    if style == "single":
        return
    (ax, ay), (bx, by) = line
    long = hypot(bx - ax, by - ay)
    nx, ny = (by - ay) / long, -(bx - ax) / long
    for share in (0.0, 0.5, 1.0):
        dx, dy = nx * THICK_M * share, ny * THICK_M * share
        pen.line([(ax + dx, ay + dy), (bx + dx, by + dy)], _THIN_MM)


def _leaf(pen: _Pen, floor: Floor, one: Opening) -> None:
    """An open leaf and its swing, into the first room of the opening."""
    (ax, ay), (bx, by) = one.line
    wide = hypot(bx - ax, by - ay)
    room = floor.room_by_id[one.rooms[0]].polygon.shape
    ux, uy = (bx - ax) / wide, (by - ay) / wide
    nx, ny = uy, -ux
    inner = shapely.Point((ax + bx) / 2 + nx * 0.3, (ay + by) / 2 + ny * 0.3)
    if not room.intersects(inner):
        nx, ny = -nx, -ny
    face = shapely.LineString(one.line).distance(room)
    hx, hy = ax + nx * face, ay + ny * face
    pen.line([(hx, hy), (hx + nx * wide, hy + ny * wide)], _THIN_MM)
    start, turn = atan2(uy, ux), 1 if ux * ny - uy * nx > 0 else -1
    arc = [start + turn * pi / 2 * step / 24 for step in range(25)]
    pen.line([(hx + wide * cos(a), hy + wide * sin(a)) for a in arc], _THIN_MM)


def _letters(pen: _Pen, floor: Floor) -> None:
    for room in floor.rooms:
        at = room.polygon.shape.representative_point()
        pen.text(room.label.upper(), pen.drawn.px((float(at.x), float(at.y))), _LETTER_MM)


def _dimensions(pen: _Pen, bounds: tuple[float, float, float, float]) -> None:
    low_x, low_y, high_x, high_y = bounds
    away = THICK_M + 8 * pen.drawn.ratio
    pen.line([(low_x, low_y - away), (high_x, low_y - away)], _THIN_MM)
    pen.line([(low_x - away, low_y), (low_x - away, high_y)], _THIN_MM)
    for x in (low_x, high_x):
        pen.line([(x, low_y - away * 0.6), (x, low_y - away * 1.1)], _THIN_MM)
    for y in (low_y, high_y):
        pen.line([(low_x - away * 0.6, y), (low_x - away * 1.1, y)], _THIN_MM)
    x, y = pen.drawn.px(((low_x + high_x) / 2, low_y - away))
    pen.text(f"{high_x - low_x:.2f}", (x, y - 3 * pen.drawn.px_per_mm), _LETTER_MM)


def _frame(pen: _Pen) -> None:
    """The frame of the sheet and a title box in its lower right corner."""
    import cv2

    grey, k = pen.drawn.grey, pen.drawn.px_per_mm
    high, wide = grey.shape
    margin, pen_px = round(5 * k), max(1, round(0.5 * k))
    box: Any = (margin, margin, wide - margin, high - margin)
    cv2.rectangle(grey, box[:2], box[2:], INK, pen_px)
    corner = (wide - margin - round(50 * k), high - margin - round(12 * k))
    cv2.rectangle(grey, corner, box[2:], INK, pen_px)
    pen.text("FLOOR PLAN", (corner[0] + 25 * k, corner[1] + 6 * k), 3.5)
