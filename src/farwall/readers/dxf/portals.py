"""Places in the walls where one can or could pass: door heads, and gaps between two jambs.

A portal is a rectangle in the depth of the wall. Its two jambs are its short
sides against the wall; its two faces look into what lies on either side.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

import shapely

from farwall.floor.geometry import Point
from farwall.readers.dxf.bounds import Bounds, line
from farwall.readers.dxf.faces import polygons_between
from farwall.readers.dxf.sheet import Role, Stroke

WALL_DEPTH_M = (0.05, 0.65)
PASSAGE_M = (0.35, 7.0)
_ALIGNED_M = 0.03


@dataclass(frozen=True)
class Portal:
    """A rectangle in a wall: `faces` are its two long sides, both running jamb to jamb."""

    faces: tuple[tuple[Point, Point], tuple[Point, Point]]
    found_by: str

    @property
    def width_m(self) -> float:
        """Clear width between the jambs."""
        (a, b), _ = self.faces
        return hypot(b[0] - a[0], b[1] - a[1])

    @property
    def depth_m(self) -> float:
        """Depth of the wall."""
        (a, _), (c, _) = self.faces
        return hypot(c[0] - a[0], c[1] - a[1])

    @property
    def seam(self) -> tuple[Point, Point]:
        """The line in the middle of the wall's depth."""
        (a, b), (c, d) = self.faces
        return ((a[0] + c[0]) / 2, (a[1] + c[1]) / 2), ((b[0] + d[0]) / 2, (b[1] + d[1]) / 2)

    @property
    def middle(self) -> Point:
        """The middle of the seam."""
        (a, b) = self.seam
        return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2

    @property
    def shape(self) -> shapely.Polygon:
        """The floor under the opening."""
        (a, b), (c, d) = self.faces
        return shapely.Polygon([a, b, d, c])

    @property
    def outline(self) -> list[shapely.LineString]:
        """Its four sides as lines."""
        (a, b), (c, d) = self.faces
        return [shapely.LineString(pair) for pair in ((a, b), (b, d), (d, c), (c, a))]


def find_portals(bounds: Bounds) -> list[Portal]:
    """All portals: the drawn heads first, then the gaps between jambs that no head closes."""
    heads = _heads(bounds)
    return heads + _jamb_gaps(bounds, heads)


def _heads(bounds: Bounds) -> list[Portal]:
    lines = [line(s) for s in bounds.strong if s.role is Role.HEADER]
    if not lines:
        return []
    faces = polygons_between(lines)
    portals = [portal for face in faces if (portal := _rectangle(face)) is not None]
    return sorted(portals, key=lambda portal: portal.seam)


def _rectangle(face: shapely.Polygon) -> Portal | None:
    plain = shapely.get_coordinates(face.simplify(0.002)).tolist()
    corners = [(float(x), float(y)) for x, y in plain[:-1]]
    box = face.minimum_rotated_rectangle
    if len(corners) != 4 or not isinstance(box, shapely.Polygon) or face.area < 0.98 * box.area:
        return None
    a, b, c, d = corners
    if hypot(b[0] - a[0], b[1] - a[1]) < hypot(c[0] - b[0], c[1] - b[1]):
        a, b, c, d = b, c, d, a
    portal = Portal(((a, b), (d, c)), "head")
    deep = WALL_DEPTH_M[0] <= portal.depth_m <= WALL_DEPTH_M[1]
    return portal if deep and PASSAGE_M[0] <= portal.width_m <= PASSAGE_M[1] else None


def _jamb_gaps(bounds: Bounds, heads: list[Portal]) -> list[Portal]:
    jambs = [j for j in _jambs(bounds) if not any(_on_jamb(j, head) for head in heads)]
    walls = [line(s) for s in bounds.strong if s.role is not Role.HEADER]
    tree = shapely.STRtree(walls)
    pairs = [
        portal
        for index, first in enumerate(jambs)
        for second in jambs[index + 1 :]
        if (portal := _facing(first, second)) is not None
    ]
    pairs.sort(key=lambda portal: (round(portal.width_m, 4), portal.seam))
    found: list[Portal] = []
    for portal in pairs:
        inner = portal.shape.buffer(-min(0.02, portal.depth_m / 4))
        crossed = len(tree.query(inner, predicate="intersects")) > 0
        if not crossed and not any(portal.shape.intersects(p.shape) for p in found + heads):
            found.append(portal)
    return found


@dataclass(frozen=True)
class _Jamb:
    start: Point
    end: Point
    outward: Point
    """Unit vector away from the wall that ends here, into the gap."""


def _jambs(bounds: Bounds) -> list[_Jamb]:
    """Short strokes across the end of a wall: both wall faces leave from them the same way."""
    strokes = [s for s in bounds.closing if s.role is not Role.HEADER]
    lines = [line(s) for s in strokes]
    tree = shapely.STRtree(lines)
    found = []
    for stroke in strokes:
        if not WALL_DEPTH_M[0] <= stroke.length <= WALL_DEPTH_M[1]:
            continue
        outward = _outward(stroke, strokes, tree)
        if outward:
            found.append(_Jamb(stroke.start, stroke.end, outward))
    return found


def _outward(stroke: Stroke, strokes: list[Stroke], tree: shapely.STRtree) -> Point | None:
    ways = [_leaving(stroke, point, strokes, tree) for point in (stroke.start, stroke.end)]
    for side in (1.0, -1.0):
        if all(side in way for way in ways) and not any(-side in way for way in ways):
            dx, dy = stroke.end[0] - stroke.start[0], stroke.end[1] - stroke.start[1]
            return side * dy / stroke.length, -side * dx / stroke.length
    return None


def _leaving(
    stroke: Stroke, point: Point, strokes: list[Stroke], tree: shapely.STRtree
) -> set[float]:
    """On which sides of the stroke other wall lines leave from one of its ends, square to it."""
    ux = (stroke.end[0] - stroke.start[0]) / stroke.length
    uy = (stroke.end[1] - stroke.start[1]) / stroke.length
    sides = set()
    for index in tree.query(shapely.Point(point), predicate="dwithin", distance=0.004):
        other = strokes[int(index)]
        if other.role is Role.OPENING or other is stroke:
            continue
        for end in (other.start, other.end):
            vx, vy = end[0] - point[0], end[1] - point[1]
            reach = hypot(vx, vy)
            if reach > 0.01 and abs(vx * ux + vy * uy) < 0.1 * reach:
                sides.add(1.0 if ux * vy - uy * vx > 0 else -1.0)
    return sides


def _facing(first: _Jamb, second: _Jamb) -> Portal | None:
    """The portal between two jambs that look at each other squarely."""
    if first.outward[0] * second.outward[0] + first.outward[1] * second.outward[1] > -0.99:
        return None
    ends = sorted(
        (second.start, second.end),
        key=lambda p: hypot(p[0] - first.start[0], p[1] - first.start[1]),
    )
    (a, c), (b, d) = (first.start, first.end), (ends[0], ends[1])
    ox, oy = first.outward
    for start, end in ((a, b), (c, d)):
        vx, vy = end[0] - start[0], end[1] - start[1]
        ahead, aside = vx * ox + vy * oy, abs(-vx * oy + vy * ox)
        if not PASSAGE_M[0] <= ahead <= PASSAGE_M[1] or aside > _ALIGNED_M:
            return None
    return Portal(((a, b), (c, d)), "jambs")


def _on_jamb(jamb: _Jamb, head: Portal) -> bool:
    return all(head.shape.distance(shapely.Point(p)) < 0.01 for p in (jamb.start, jamb.end))
