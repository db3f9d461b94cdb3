"""One drawing in the making: what is drawn, where it lies, and what is already taken."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import field
from functools import cached_property

import shapely
from shapely.geometry.base import BaseGeometry

from farwall.facts.plan import Plan
from farwall.floor.geometry import Point
from farwall.floor.nouns import Opening
from farwall.nouns import dataclass
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import Board, Box, Words, clear_of, ring_around
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.scene import Scene, middle
from farwall.papers.drawing.walls import wall_mass
from farwall.papers.ink import INK, PAPER, SOFT
from farwall.papers.lettering import Lettering
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

WAY_OUT = "way out"
STOP_LINE = "stop line"
_DRAW_TOLERANCE_M = 0.01


@dataclass
class Sheet:
    """A drawing of one scene while it grows.

    `view` is the part of the drawing in which the floor itself shows; `key`
    collects names that found no place.
    """

    plan: Plan
    scene: Scene
    svg: Svg
    frame: Frame
    board: Board
    lettering: Lettering
    units: Units
    view: Box
    key: list[str] = field(default_factory=list)

    @cached_property
    def walls(self) -> BaseGeometry:
        """The walls on the drawing."""
        return self.frame.shape(wall_mass(self.scene.storey.rooms, self.scene.storey.openings))

    def shows(self, shape: BaseGeometry) -> bool:
        """Whether the box around a shape of the floor [m] reaches into the view."""
        west, south, east, north = shape.bounds
        (x0, y1), (x1, y0) = self.frame.at((west, south)), self.frame.at((east, north))
        left, top, right, low = self.view
        return x0 <= right and x1 >= left and y0 <= low and y1 >= top

    def words(
        self,
        lines: tuple[str, ...],
        size: float,
        *,
        bold: bool = False,
        head: str = "",
        head_size: float = 0.0,
    ) -> Words:
        """Words in this drawing's lettering, as wide as its widest likely font."""
        widen = self.lettering.widen
        return Words(lines, size, bold=bold, head=head, head_size=head_size, widen=widen)

    def fill(self, shape: BaseGeometry, **values: object) -> None:
        """Fill a shape of the floor."""
        thin = shape.simplify(_DRAW_TOLERANCE_M)
        self.svg.element("path", d=self.frame.path(thin), fill_rule="evenodd", **values)

    def write(self, words: Words, centre: Point, *, cased: bool = False, fill: str = INK) -> None:
        """Write words with their middle at a place of the drawing."""
        for at, line, size, bold in words.baselines(centre):
            self.svg.text(at, line, size, bold=bold, cased=cased, fill=fill)

    def write_near(
        self,
        words: Words,
        at: Point,
        *,
        first: Sequence[Point] = (),
        cased: bool = True,
        fill: str = INK,
        leader_from: float = 11.0,
        rings: int = 14,
    ) -> bool:
        """Write words at the first free place near `at`.

        A leader ties them to it when they stand farther off than `leader_from`.
        False when there is no free place within reach; nothing is written then.
        """
        start = words.height / 2 + 6
        around = ring_around(at, start=start, step=7.0, rings=rings)
        wide = [(at[0] + 1.2 * (x - at[0]) * words.width / words.height / 2, y) for x, y in around]
        centre = self.board.place(words, [*first, *_merged(around, wide)])
        if centre is None:
            return False
        box = words.box(centre)
        gap = _gap(box, at)
        if gap > leader_from:
            marks.leader(self.svg, _edge_point(box, at), at)
        self.write(words, centre, cased=cased, fill=fill)
        return True


def _merged(near: list[Point], wide: list[Point]) -> list[Point]:
    return [point for pair in zip(wide, near, strict=True) for point in pair]


def _gap(box: tuple[float, float, float, float], at: Point) -> float:
    across = max(box[0] - at[0], 0.0, at[0] - box[2])
    down = max(box[1] - at[1], 0.0, at[1] - box[3])
    return math.hypot(across, down)


def _edge_point(box: tuple[float, float, float, float], at: Point) -> Point:
    return (min(max(at[0], box[0]), box[2]), min(max(at[1], box[1]), box[3]))


def draw_walls(sheet: Sheet) -> None:
    """Thick walls."""
    sheet.fill(wall_mass(sheet.scene.storey.rooms, sheet.scene.storey.openings), fill=INK)


def draw_fixtures(sheet: Sheet, *, within: BaseGeometry | None = None) -> None:
    """Everything kept dry, named where there is room."""
    for thing in sheet.scene.storey.fixtures:
        shape = thing.polygon.shape
        if within is not None and not within.intersects(shape):
            continue
        marks.fixture(sheet.svg, sheet.frame.path(shape))
        on_page = sheet.frame.shape(shape)
        for lines in ((f"{thing.kind}, kept dry",), (f"{thing.kind},", "kept dry"), (thing.kind,)):
            words = sheet.words(lines, sheet.lettering.small)
            centre = sheet.board.place_inside(words, on_page)
            if centre is not None:
                sheet.write(words, centre)
                break


def draw_openings(sheet: Sheet, *, faded: bool = False) -> None:
    """Door leaves thin; stop lines dashed."""
    for opening in sheet.scene.storey.openings:
        line = [sheet.frame.at(point) for point in opening.line]
        if opening.id in sheet.scene.stop_ids:
            continue
        if opening.kind in {"door", "outside"}:
            sheet.svg.line(line, stroke=SOFT if faded else INK, stroke_width=1.2)
    for cut in sheet.scene.storey.saw_cuts:
        if cut.id not in sheet.scene.stop_ids:
            sheet.svg.line(
                [sheet.frame.at(p) for p in cut.line],
                stroke=SOFT, stroke_width=0.8, stroke_dasharray="1 2",
            )  # fmt: skip


def draw_stop_lines(sheet: Sheet) -> list[tuple[Point, Point]]:
    """Stop lines dashed 7-3 on paper ground; returns their ends on the drawing."""
    drawn: dict[str, list[Point]] = {}
    for one in sheet.scene.fields:
        for stop in one.stop_lines:
            drawn[stop.id] = [sheet.frame.at(point) for point in stop.line]
    for line in drawn.values():
        sheet.svg.line(line, stroke=PAPER, stroke_width=5)
        sheet.svg.line(line, stroke=INK, stroke_width=1.8, stroke_dasharray=marks.STOP_DASH)
        sheet.board.take_line(line, 2)
    return [(line[0], line[-1]) for line in drawn.values()]


def name_stop_lines(sheet: Sheet, lines: Sequence[tuple[Point, Point]]) -> None:
    """The words beside each stop line where they find room; the legend names the rest."""
    words = sheet.words((STOP_LINE,), sheet.lettering.small)
    for start, end in lines:
        mid = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        if abs(end[0] - start[0]) < abs(end[1] - start[1]):
            off = words.width / 2 + 7
            centres = [(mid[0] + side * off, mid[1] + dy) for dy in (0, -8, 8) for side in (-1, 1)]
        else:
            off = words.height / 2 + 3
            centres = [
                (mid[0] + dx, mid[1] + side * off) for dx in (0, -14, 14) for side in (-1, 1)
            ]
        centre = sheet.board.place(words, centres)
        if centre is not None:
            sheet.write(words, centre, cased=True)


def outward(opening: Opening, floor: BaseGeometry) -> Point:
    """The direction on the drawing from a floor [m] out through an opening, length 1."""
    (x0, y0), (x1, y1) = opening.line
    long = math.hypot(x1 - x0, y1 - y0) or 1.0
    normal = ((y1 - y0) / long, -(x1 - x0) / long)
    mid = middle(opening)
    sides = [
        floor.distance(
            shapely.Point(mid[0] + turn * normal[0] * 0.5, mid[1] + turn * normal[1] * 0.5)
        )
        for turn in (1, -1)
    ]
    sign = 1.0 if sides[0] > sides[1] else -1.0
    return (normal[0] * sign, -normal[1] * sign)


def name_ways_out(
    sheet: Sheet,
    openings: Sequence[Opening],
    floor: BaseGeometry,
    label: tuple[str, ...] = (WAY_OUT,),
) -> None:
    """The way from a floor [m], named beyond each of these openings, with an arrow through it."""
    for opening in openings:
        at = sheet.frame.at(middle(opening))
        dx, dy = outward(opening, floor)
        start, tip = (at[0] - 10 * dx, at[1] - 10 * dy), (at[0] + 14 * dx, at[1] + 14 * dy)
        marks.arrow(sheet.svg, [start, tip])
        sheet.board.take_line([start, tip], 3)
        words = sheet.words(label, sheet.lettering.body, bold=True)
        reach_x, reach_y = words.width / 2 + 20, words.height / 2 + 18
        beside = words.width / 2 + 9
        first = [
            (at[0] + dx * reach_x + dy * side * beside, at[1] + dy * (10 if side else reach_y))
            for side in ((0,) if abs(dx) > abs(dy) else (0, 1, -1))
        ]
        if abs(dx) > abs(dy):
            edge = sheet.board.page[2] if dx > 0 else sheet.board.page[0]
            x = edge - math.copysign(words.width / 2 + 3, dx)
            first += [(x, at[1] + turn * (words.height / 2 + 9)) for turn in (-1, 1, -2, 2)]
        on_page = sheet.frame.shape(floor)
        around = ring_around(at, start=words.height / 2 + 6, step=8, rings=12)
        first += clear_of(on_page, words, around)
        sheet.write_near(words, at, first=first, leader_from=40)
