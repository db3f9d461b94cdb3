"""The live edge on a drawing: the one strong colour, cased, with its words beside it."""

from __future__ import annotations

import math

import shapely

from farwall.facts.plan import Field
from farwall.job.moments import LiveEdge, oldest_edge
from farwall.papers.drawing import marks
from farwall.papers.drawing.board import centres_inside, clear_of, ring_around
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import DANGER, WHITE
from farwall.papers.svg import Svg

_WIDTH, _CASING = 2.2, 2.2
OLDEST = "oldest edge"
_SHOWN_MIN = 0.05
_TRIED, _NEAR = 300, 30.0


def draw_edge(sheet: Sheet, line: shapely.Geometry) -> None:
    """A live edge, cased in white so that it shows on any ground."""
    runs = [
        [sheet.frame.at((x, y)) for x, y in part.simplify(0.02).coords]
        for part in shapely.get_parts(line).tolist()
        if isinstance(part, shapely.LineString) and part.length > 0
    ]
    for points in runs:
        sheet.svg.line(points, stroke=WHITE, stroke_width=_WIDTH + _CASING)
    for points in runs:
        sheet.svg.line(points, stroke=DANGER, stroke_width=_WIDTH)
        sheet.board.take_line(points, 1)


def edge_key(svg: Svg, at: tuple[float, float], width: float) -> None:
    """The stroke that stands for a live edge, in a key."""
    svg.line([at, (at[0] + width, at[1])], stroke=DANGER, stroke_width=_WIDTH)


def draw_oldest(sheet: Sheet, field: Field) -> LiveEdge | None:
    """Mark where the edges of a field are oldest; returns what to name."""
    edge = oldest_edge(field)
    if edge is None or edge.age_min < _SHOWN_MIN:
        return None
    draw_edge(sheet, edge.line)
    return edge


def name_oldest(sheet: Sheet, field: Field, edge: LiveEdge | None) -> None:
    """`oldest edge 5.0 min` beside the mark, on the field's floor or clear of every wall."""
    if edge is None:
        return
    at = sheet.frame.at(edge.at)
    floor = sheet.frame.shape(sheet.scene.storey.floor_of(field))
    for lines in ((f"{OLDEST} {edge.age_min:.1f} min",), (OLDEST, f"{edge.age_min:.1f} min")):
        words = sheet.words(lines, sheet.lettering.small, bold=True)
        inside = [
            centre
            for centre in centres_inside(words, floor, near=at)[:_TRIED]
            if math.dist(centre, at) < words.width / 2 + _NEAR
        ]
        centre = sheet.board.place(words, inside)
        if centre is not None:
            sheet.write(words, centre, cased=True, fill=DANGER)
            return
    off_walls = clear_of(sheet.walls, words, ring_around(at, start=14, step=7, rings=12))
    centre = sheet.board.place(words, off_walls)
    if centre is not None:
        marks.leader(sheet.svg, centre, at)
        sheet.write(words, centre, cased=True, fill=DANGER)
