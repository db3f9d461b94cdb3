"""Lines and curves of a drawing as points in its plane, arcs as swings, dimensions as lengths."""

from __future__ import annotations

import re
from math import ceil, cos, hypot, isfinite, radians, sin
from typing import Any

from farwall.floor.geometry import Point
from farwall.readers.dxf.bulk import FARTHEST, tidied
from farwall.readers.dxf.words import stacked_apart
from farwall.readers.lines.sheet import Measure, Role, Swing

_ANGLES = {2, 5}
_CHORD_DEG = 4.0
"""Chords of 4 degrees keep the area of a circle to 0.1 %: 1 - sin(x)/x, plane geometry."""


def flat(point: Any) -> Point:
    """A point without its height; raises ValueError when it is no place on a sheet."""
    x, y = float(point[0]), float(point[1])
    if not (-FARTHEST <= x <= FARTHEST and -FARTHEST <= y <= FARTHEST):
        raise ValueError("a point lies beyond any sheet")
    return tidied(x), tidied(y)


def points_of(entity: Any, kind: str) -> list[Point]:
    """The points of a line or curve, a full turn closed; raises ValueError when it is none."""
    if kind == "LINE":
        return [flat(entity.dxf.start), flat(entity.dxf.end)]
    if kind in {"ARC", "CIRCLE"}:
        return _arc(entity, kind)
    from ezdxf import path

    if kind == "POLYLINE" and not (entity.is_2d_polyline or entity.is_3d_polyline):
        raise ValueError("a mesh is no line on a floor")
    way = path.make_path(entity)
    size = path.bbox([way], fast=True).size.vec2
    fine = max(size.magnitude * 5e-4, 1e-9)
    points = [flat(point) for point in way.flattening(fine)]
    if len(points) > 10_000:
        raise ValueError("a curve with more points than any wall has")
    return points


def _arc(entity: Any, kind: str) -> list[Point]:
    start = float(entity.dxf.start_angle) if kind == "ARC" else 0.0
    sweep = _sweep_deg(entity) if kind == "ARC" else 360.0
    radius = abs(float(entity.dxf.radius))
    centre = entity.dxf.center
    if radius == 0.0 or not isfinite(radius + start + sweep):
        raise ValueError("an arc without a size")
    pieces = max(2, ceil(sweep / _CHORD_DEG))
    turns = [radians(start + sweep * step / pieces) for step in range(pieces + 1)]
    rim = [(centre[0] + radius * cos(t), centre[1] + radius * sin(t), centre[2]) for t in turns]
    points = [flat(point) for point in entity.ocs().points_to_wcs(rim)]
    return [*points[:-1], points[0]] if sweep >= 360.0 else points


def _sweep_deg(entity: Any) -> float:
    sweep = (float(entity.dxf.end_angle) - float(entity.dxf.start_angle)) % 360.0
    return sweep or 360.0


def swing_of(entity: Any, layer: str, role: Role) -> Swing:
    """An arc as the way of a leaf."""
    centre = flat(entity.ocs().to_wcs(entity.dxf.center))
    ends = flat(entity.start_point), flat(entity.end_point)
    return Swing(centre, ends, abs(float(entity.dxf.radius)), _sweep_deg(entity), layer, role)


def width_of(entity: Any, kind: str) -> float:
    """The breadth of a polyline drawn as a band, or 0 where it has none or several."""
    if kind == "LWPOLYLINE":
        if entity.dxf.hasattr("const_width"):
            return _sound(entity.dxf.const_width)
        widths = {(round(p[2], 6), round(p[3], 6)) for p in entity.get_points()}
    elif kind == "POLYLINE" and entity.is_2d_polyline:
        own = entity.dxf.get("default_start_width", 0.0), entity.dxf.get("default_end_width", 0.0)
        widths = {
            (v.dxf.get("start_width", own[0]), v.dxf.get("end_width", own[1]))
            for v in entity.vertices
        }
    else:
        return 0.0
    one = widths.pop() if len(widths) == 1 else (0.0, 0.0)
    return _sound(one[0]) if one[0] == one[1] else 0.0


def _sound(width: Any) -> float:
    value = float(width)
    return value if isfinite(value) and 0 < value < FARTHEST else 0.0


def measures_of(entity: Any) -> list[Measure]:
    """A dimension with what is lettered over it, none for an angle.

    Raises ValueError where it has no length.
    """
    if entity.dimtype in _ANGLES:
        return []
    length = float(entity.get_measurement())
    if not isfinite(length) or not 0 < length < FARTHEST:
        raise ValueError("a dimension without a length")
    text = str(entity.dxf.get("text", "") or "")
    if text in {"", "<>"}:
        text = _block_text(entity)
    return [Measure(length, text, _middle(entity))]


def _middle(entity: Any) -> Point | None:
    ends = [entity.dxf.get(name) for name in ("defpoint2", "defpoint3")]
    if any(end is None for end in ends):
        return None
    first, second = flat(ends[0]), flat(ends[1])
    if hypot(second[0] - first[0], second[1] - first[1]) == 0:
        return None
    return (first[0] + second[0]) / 2, (first[1] + second[1]) / 2


def _block_text(entity: Any) -> str:
    block = entity.get_geometry_block()
    for part in block if block is not None else ():
        if part.dxftype() == "MTEXT":
            return re.sub(r"\s+", " ", stacked_apart(part)).strip()
        if part.dxftype() == "TEXT":
            return str(part.plain_text())
    return ""
