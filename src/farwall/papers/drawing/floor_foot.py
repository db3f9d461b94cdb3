"""The foot of the floor drawing: scale, what ramp and dash mean, the key of small rooms."""

from __future__ import annotations

from farwall.floor.geometry import Point
from farwall.papers.drawing import marks
from farwall.papers.drawing.sheet import STOP_LINE, Sheet
from farwall.papers.ink import DONE, INK, LINE, RAMP, SOFT
from farwall.papers.lettering import LINE_HEIGHT, text_width, wrap
from farwall.papers.svg import Svg
from farwall.phrasebook import speaking

EDGE = 6.0
_DONE = "done"


def draw_foot(sheet: Sheet, *, ramp: bool, stop_lines: bool, done: bool = False) -> None:
    """Scale, ramp and dash explained in a row, or more rows where it is narrow; then the key."""
    svg, size = sheet.svg, sheet.lettering.small
    row = svg.height + size * 1.5
    marks.scale_bar(svg, (EDGE, row), units_per_m=sheet.frame.scale, size=size)
    tellers = {"ramp": _ramp_told, "stop line": _stop_told, "done": _done_told}
    for what, x, down in legend(svg.width, size, ramp=ramp, stop_lines=stop_lines, done=done):
        tellers[what](svg, (x, row + down), size)
        svg.height = max(svg.height, row + down + size * 1.4)
    svg.height = max(svg.height, row + size * 1.4)
    _write_key(sheet, size)


def legend(
    width: float, size: float, *, ramp: bool, stop_lines: bool, done: bool = False
) -> list[tuple[str, float, float]]:
    """What the foot explains, each with its place across and how far below the scale bar."""
    told = [("ramp", _ramp_width(size))] if ramp else []
    if stop_lines:
        told.append(("stop line", 33 + text_width(STOP_LINE, size) * 1.15))
    if done:
        told.append(("done", 26 + text_width(_DONE, size) * 1.15))
    x, down = EDGE + marks.SCALE_BAR_UNITS + text_width("00 ft", size) + 34, 0.0
    placed = []
    for what, wide in told:
        if x + wide > width:
            x, down = EDGE, down + size * 2.1
        placed.append((what, x, down))
        x += wide + 26
    return placed


def _ramp_width(size: float) -> float:
    return (
        (text_width("sprayed first", size) + text_width("last", size)) * 1.1 + 18 * len(RAMP) + 16
    )


def _ramp_told(svg: Svg, at: Point, size: float) -> None:
    x, row = at
    svg.text((x, row + size * 0.35), "sprayed first", size, anchor="start", fill=SOFT)
    x += text_width("sprayed first", size) * 1.1 + 8
    for colour in RAMP:
        svg.element(
            "rect",
            x=x,
            y=row - size * 0.45,
            width=18,
            height=size * 0.9,
            fill=colour,
            stroke=LINE,
            stroke_width=0.4,
        )
        x += 18
    svg.text((x + 8, row + size * 0.35), "last", size, anchor="start", fill=SOFT)


def _stop_told(svg: Svg, at: Point, size: float) -> None:
    x, row = at
    dash = marks.STOP_DASH
    svg.line([(x, row), (x + 27, row)], stroke=INK, stroke_width=1.8, stroke_dasharray=dash)
    svg.text((x + 33, row + size * 0.35), STOP_LINE, size, anchor="start", fill=SOFT)


def _done_told(svg: Svg, at: Point, size: float) -> None:
    x, row = at
    box = {"x": x, "y": row - size * 0.45, "width": 18, "height": size * 0.9}
    svg.element("rect", **box, fill=DONE, stroke=LINE, stroke_width=0.4)
    svg.text((x + 26, row + size * 0.35), _DONE, size, anchor="start", fill=SOFT)


def _write_key(sheet: Sheet, size: float) -> None:
    """Names of the rooms that were too small for theirs, as many in a row as fit."""
    if not sheet.key:
        return
    wide = (sheet.svg.width - 2 * EDGE) / sheet.lettering.widen
    with speaking("en"):  # names only: no sentence is sought in them
        for line in wrap(" · ".join(sheet.key), wide, size) or sheet.key:
            sheet.svg.height += size * LINE_HEIGHT
            sheet.svg.text((EDGE, sheet.svg.height - size * 0.3), line, size, anchor="start")
