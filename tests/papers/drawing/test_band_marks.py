"""Arrows of bands keep to their band."""

from __future__ import annotations

import shapely
from tests.papers.invented_plan import small_house

from farwall.papers.drawing.band_marks import draw_band_arrows
from farwall.papers.drawing.board import Board
from farwall.papers.drawing.frame import Frame
from farwall.papers.drawing.scene import scene_of_field, storeys
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.svg import Svg


def test_an_arrow_around_a_corner_does_not_cross_what_lies_in_it():
    """By hand: a band in an L, a line that cuts its corner, an arrow that ends there."""
    plan = small_house()
    field = plan.fields[0]
    scene = scene_of_field(field, storeys(plan))
    page = (0.0, 0.0, 200.0, 200.0)
    svg = Svg(width=200, height=200, family="x")
    frame = Frame(west=0, north=200, left=0, top=0, scale=1)
    sheet = Sheet(plan, scene, svg, frame, Board(page), PAPER_LETTERING, "us", page)
    band = shapely.union(shapely.box(0, 0, 20, 200), shapely.box(0, 0, 200, 20))
    draw_band_arrows(sheet, [([(10, 190), (10, 100), (100, 10), (190, 10)], 0.0, band)])
    xs = [float(pair.partition(",")[0]) for pair in _shaft(svg).split()]
    ys = [float(pair.partition(",")[2]) for pair in _shaft(svg).split()]
    line = shapely.LineString(list(zip(xs, ys, strict=True)))
    assert line.length > 60
    assert band.buffer(0.1).contains(line)


def _shaft(svg: Svg) -> str:
    return svg.parts[-1].split('d="M')[1].split('"')[0]
