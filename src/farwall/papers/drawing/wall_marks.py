"""The walls' letters beside the walls, and the dot in the corner each is measured from."""

from __future__ import annotations

import math

import shapely

from farwall.facts.plan import Field
from farwall.floor.geometry import Point
from farwall.papers.drawing.board import Words
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.drawing.walls import OUTER_WALL_M
from farwall.papers.ink import INK, WHITE
from farwall.papers.wall_ticks import WallRun, wall_ticks


def draw_wall_marks(sheet: Sheet, field: Field) -> None:
    """A ringed letter behind each wall that has ticks, a dot where measuring begins."""
    for run in wall_ticks(sheet.plan, field):
        _dot(sheet, run)
        _letter(sheet, run)


def _dot(sheet: Sheet, run: WallRun) -> None:
    """The dot stands on the floor, a little way along, so that two walls never share it."""
    a, b = sheet.frame.at(run.line[0]), sheet.frame.at(run.line[1])
    long = math.dist(a, b) or 1.0
    along = ((b[0] - a[0]) / long, (b[1] - a[1]) / long)
    in_floor = (-along[1], along[0])  # the floor lies to the right of a run; y points down here
    at = (a[0] + 5.5 * along[0] + 4 * in_floor[0], a[1] + 5.5 * along[1] + 4 * in_floor[1])
    tip = (at[0] + 9 * along[0], at[1] + 9 * along[1])
    sheet.svg.line([at, tip], stroke=WHITE, stroke_width=3.4, stroke_linecap="round")
    sheet.svg.line([at, tip], stroke=INK, stroke_width=1.2)
    sheet.svg.element("circle", cx=at[0], cy=at[1], r=2.6, fill=INK, stroke=WHITE, stroke_width=1)
    sheet.board.take_line([at, tip], 3)


def _letter(sheet: Sheet, run: WallRun) -> None:
    """Ringed letter on the far side of the wall, sliding along it and outward to a free place."""
    size = sheet.lettering.body
    words = sheet.words((run.letter,), size, bold=True)
    line = shapely.LineString([sheet.frame.at(point) for point in run.line])
    radius = max(words.width, words.height) / 2 + 1
    clear = OUTER_WALL_M * sheet.frame.scale + radius + 3
    for off in (clear, -radius - 5, clear + 12, -radius - 18, clear + 26):
        for share in (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8):
            centre = _beside(line, share, 0.0 if run.of and off > 0 else off)
            box = (centre[0] - radius, centre[1] - radius, centre[0] + radius, centre[1] + radius)
            if sheet.board.free(box):
                sheet.board.take(box)
                _ringed(sheet, words, centre, radius - 1)
                return
    _ringed(sheet, words, _beside(line, 0.5, -radius - 4), radius - 1)


def _ringed(sheet: Sheet, words: Words, centre: Point, radius: float) -> None:
    sheet.svg.element(
        "circle", cx=centre[0], cy=centre[1], r=radius, fill=WHITE, stroke=INK, stroke_width=0.9
    )
    sheet.write(words, centre)


def _beside(line: shapely.LineString, share: float, off: float) -> Point:
    """A place `off` units to the left of the run (behind the wall), `share` of its length along."""
    at = line.interpolate(share, normalized=True)
    ahead = line.interpolate(min(share + 0.01, 1.0), normalized=True)
    dx, dy = ahead.x - at.x, ahead.y - at.y
    long = math.hypot(dx, dy) or 1.0
    return (at.x + off * dy / long, at.y - off * dx / long)
