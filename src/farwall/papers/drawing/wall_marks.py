"""The walls' letters: each stands where its wall is measured from, mostly a corner.

A small arrow leads from the letter along the wall. Letter and arrow stand on
the floor in front of the wall, so that no partition is taken for its other face.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.floor.geometry import Point
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import INK, WHITE
from farwall.papers.wall_ticks import WallRun

_GAP, _SHAFT, _HEAD = 2.5, 11.0, 3.5


def draw_wall_marks(sheet: Sheet, walls: Sequence[WallRun]) -> None:
    """A ringed letter and a small arrow for each wall that has ticks."""
    for run in walls:
        _mark(sheet, run)


def _mark(sheet: Sheet, run: WallRun) -> None:
    """At the corner; else a little way along the wall, smaller, or behind it."""
    a, b = sheet.frame.at(run.line[0]), sheet.frame.at(run.line[1])
    long = math.dist(a, b) or 1.0
    along = ((b[0] - a[0]) / long, (b[1] - a[1]) / long)
    in_floor = (-along[1], along[0])  # the floor lies to the right of a run; y points down here
    lettering = sheet.lettering
    places = [
        (size, slide, side)
        for side in (1, -1)
        for slide in (0.0, 6.0, 14.0, 24.0)
        for size in (lettering.body, lettering.small)
        if slide < 0.6 * long
    ]
    for size, slide, side in places:
        radius = _radius(sheet, run, size)
        ahead, aside = radius + _GAP + slide, side * (radius + _GAP)
        centre = (
            a[0] + ahead * along[0] + aside * in_floor[0],
            a[1] + ahead * along[1] + aside * in_floor[1],
        )
        box = (centre[0] - radius, centre[1] - radius, centre[0] + radius, centre[1] + radius)
        if sheet.board.free(box) or (size, slide, side) == places[-1]:
            sheet.board.take(box)
            _arrow(sheet, centre, along, radius)
            _ringed(sheet, run.letter, centre, radius, size)
            return


def _radius(sheet: Sheet, run: WallRun, size: float) -> float:
    words = sheet.words((run.letter,), size, bold=True)
    return max(words.width, 0.98 * words.height) / 2 + 0.5


def _arrow(sheet: Sheet, centre: Point, along: Point, radius: float) -> None:
    """From the ring along the wall."""
    start = (centre[0] + radius * along[0], centre[1] + radius * along[1])
    tip = (start[0] + _SHAFT * along[0], start[1] + _SHAFT * along[1])
    wings = [
        (
            tip[0] - _HEAD * (along[0] - turn * along[1] * 0.7),
            tip[1] - _HEAD * (along[1] + turn * along[0] * 0.7),
        )
        for turn in (1, -1)
    ]
    sheet.svg.line([start, tip], stroke=WHITE, stroke_width=3.2, stroke_linecap="round")
    sheet.svg.line([start, tip], stroke=INK, stroke_width=1.1)
    sheet.svg.line([wings[0], tip, wings[1]], stroke=INK, stroke_width=1.1)
    sheet.board.take_line([start, tip], 2)


def _ringed(sheet: Sheet, letter: str, centre: Point, radius: float, size: float) -> None:
    sheet.svg.element(
        "circle",
        cx=centre[0],
        cy=centre[1],
        r=radius - 0.5,
        fill=WHITE,
        stroke=INK,
        stroke_width=0.9,
    )
    sheet.write(sheet.words((letter,), size, bold=True), centre)
