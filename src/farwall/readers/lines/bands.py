"""Lines drawn with a breadth: walls where they are as thick as a wall is, else plain lines."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import shapely

from farwall.floor.geometry import Point, polygons_of
from farwall.readers.lines.portals import WALL_DEPTH_M
from farwall.readers.lines.sheet import Band, Sheet, Stroke


def laid_out(sheet: Sheet) -> Sheet:
    """A sheet in metres, its bands as strokes: both faces of a wall's body, or the middle line."""
    if not sheet.bands:
        return sheet
    thick = [b for b in sheet.bands if WALL_DEPTH_M[0] <= b.width <= WALL_DEPTH_M[1]]
    strokes = [s for band in sheet.bands if band not in thick for s in _middle(band)]
    for like in sorted({(b.layer, b.role, b.dashed) for b in thick}):
        same = [b for b in thick if (b.layer, b.role, b.dashed) == like]
        body = shapely.unary_union([_body(band) for band in same])
        for shape in polygons_of(body):
            for ring in (shape.exterior, *shape.interiors):
                points = [(float(x), float(y)) for x, y in ring.coords]
                strokes += [Stroke(a, b, *like) for a, b in pairwise(points)]
    return replace(sheet, strokes=(*sheet.strokes, *strokes), bands=())


def _points(band: Band) -> list[Point]:
    return [*band.points, band.points[0]] if band.closed else list(band.points)


def _middle(band: Band) -> list[Stroke]:
    pairs = pairwise(_points(band))
    return [Stroke(a, b, band.layer, band.role, band.dashed) for a, b in pairs if a != b]


def _body(band: Band) -> shapely.geometry.base.BaseGeometry:
    way = shapely.LineString(_points(band))
    if band.closed:
        inner, outer = (shapely.Polygon(band.points).buffer(s * band.width / 2, join_style="mitre")
                        for s in (-1, 1))  # fmt: skip
        return outer.difference(inner)
    return way.buffer(band.width / 2, cap_style="flat", join_style="mitre", mitre_limit=3.0)
