"""Gaps between two jambs that look at each other, with no head drawn over them."""

from __future__ import annotations

from math import dist, hypot

import shapely

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.readers.lines.bounds import Bounds, line, lines_of
from farwall.readers.lines.meetings import Ends, Meetings, is_short
from farwall.readers.lines.portals import PASSAGE_M, Portal, clear_of
from farwall.readers.lines.sheet import Role, Stroke, Swing

_ALIGNED_M = 0.03
_HINGE_M = 0.12
_POST = 1.7
"""A box longer than that for its breadth may be a piece of wall between two doors."""


@dataclass(frozen=True)
class Jamb:
    """The end of a wall: its two corners, and the way out of the wall into the gap."""

    start: Point
    end: Point
    outward: Point


class Jambs:
    """The jambs of the walls; `caps` are wall ends that no stroke closes in the drawing."""

    def __init__(self, bounds: Bounds, caps: list[Stroke]) -> None:
        self._strokes = [s for s in bounds.closing if s.role is not Role.HEADER] + caps
        self._met = Meetings(self._strokes)
        self._last: tuple[list[Portal], list[Jamb]] | None = None

    def free(self, known: list[Portal]) -> list[Jamb]:
        """Short strokes across the end of a wall, off all known portals: both wall faces leave
        from them the same way.
        """
        if not self._strokes:
            return []
        if self._last is None or self._last[0] != known:
            self._last = list(known), self._found(known)
        return self._last[1]

    def _found(self, known: list[Portal]) -> list[Jamb]:
        ends = Ends(self._met, known)
        found = []
        for stroke in _off_portals([s for s in self._strokes if is_short(s)], known):
            outward = _outward(stroke, ends)
            if outward and not _is_side_of_post(stroke, ends):
                found.append(Jamb(stroke.start, stroke.end, outward))
        return found


def jamb_portals(bounds: Bounds, ends: Jambs, known: list[Portal]) -> list[Portal]:
    """Portals between facing jambs.

    Each portal found tells which lines beside it are walls, so that more can be found.
    """
    walls = [s for s in bounds.strong if s.role is not Role.HEADER]
    found: list[Portal] = []
    while True:
        jambs = ends.free(known + found)
        pairs = [portal for pair in _pairs(jambs) if (portal := _facing(*pair)) is not None]
        pairs.sort(key=lambda portal: (round(portal.width_m, 4), portal.seam))
        more = _uncrossed(pairs, walls, known + found)
        if not more:
            return found
        found += more


def corner_portals(
    bounds: Bounds, ends: Jambs, swings: list[Swing], known: list[Portal]
) -> list[Portal]:
    """Portals from a jamb to the face of a wall square to it, where a leaf swings."""
    walls = [s for s in bounds.strong if s.role is not Role.HEADER]
    tree = shapely.STRtree(lines_of(walls))
    found = []
    for jamb in ends.free(known):
        near = [s for s in swings if min(dist(s.centre, jamb.start), dist(s.centre, jamb.end))
                < max(_HINGE_M, 1.15 * s.radius)]  # fmt: skip
        for swing in near:
            portal = _to_wall(jamb, swing, walls, tree)
            if portal is not None:
                found.append(portal)
    found.sort(key=lambda portal: (round(portal.width_m, 4), portal.seam))
    return _uncrossed(found, walls, known)


def _uncrossed(pairs: list[Portal], walls: list[Stroke], known: list[Portal]) -> list[Portal]:
    """The narrowest portals that no wall runs across and that lie apart from each other."""
    lines = lines_of(walls)
    tree = shapely.STRtree(lines)
    found: list[Portal] = []
    for portal in pairs:
        inner = portal.shape.buffer(-min(0.02, portal.depth_m / 4))
        hits = [walls[int(i)] for i in tree.query(inner, predicate="intersects")]
        if all(_runs_along(s, portal) for s in hits) and clear_of(portal, known, found):
            found.append(portal)
    return found


def _runs_along(stroke: Stroke, portal: Portal) -> bool:
    """Glass and panels run along the wall; a wall across the gap does not."""
    (ax, ay), (bx, by) = portal.seam
    dx, dy = stroke.end[0] - stroke.start[0], stroke.end[1] - stroke.start[1]
    aside = abs(dx * (by - ay) - dy * (bx - ax)) / portal.width_m
    return aside < 0.5 * portal.depth_m


def _outward(stroke: Stroke, ends: Ends) -> Point | None:
    """The way out of the wall that a stroke closes: both faces leave it on the other side."""
    found = []
    for side in (1.0, -1.0):
        ways = [_leaving(stroke, point, ends) for point in (stroke.start, stroke.end)]
        walled = all(side in way for way in ways)
        if walled and not any(way.get(-side, False) for way in ways):
            dx, dy = stroke.end[0] - stroke.start[0], stroke.end[1] - stroke.start[1]
            found.append((side * dy / stroke.length, -side * dx / stroke.length))
    return found[0] if len(found) == 1 else None


def _is_side_of_post(stroke: Stroke, ends: Ends) -> bool:
    """Whether a stroke is a side of a lone box nearly as long as broad: a post ends no wall."""
    beside = [ends.meeting(point, stroke) for point in (stroke.start, stroke.end)]
    if any(len(others) != 1 for others in beside):
        return False
    (first,), (second,) = beside
    if max(first.length, second.length) > _POST * stroke.length:
        return False
    far = [max((s.start, s.end), key=lambda p: dist(p, at)) for s, at in
           ((first, stroke.start), (second, stroke.end))]  # fmt: skip
    across = [s for s in ends.meeting(far[0], first) if s is not second]
    return any(min(dist(s.start, far[1]), dist(s.end, far[1])) < 0.004 for s in across)


def _leaving(stroke: Stroke, point: Point, ends: Ends) -> dict[float, bool]:
    """On which sides other lines leave from an end, square to the stroke; true for firm ones."""
    ux = (stroke.end[0] - stroke.start[0]) / stroke.length
    uy = (stroke.end[1] - stroke.start[1]) / stroke.length
    sides: dict[float, bool] = {}
    for other in ends.meeting(point, stroke):
        for end in (other.start, other.end):
            vx, vy = end[0] - point[0], end[1] - point[1]
            reach = hypot(vx, vy)
            if reach > 0.01 and abs(vx * ux + vy * uy) < 0.1 * reach:
                side = 1.0 if ux * vy - uy * vx > 0 else -1.0
                sides[side] = sides.get(side, False) or ends.is_firm(other)
    return sides


def _pairs(jambs: list[Jamb]) -> list[tuple[Jamb, Jamb]]:
    """Each jamb with those straight ahead of it within a passage's width, each pair once."""
    if not jambs:
        return []
    rays = []
    for jamb in jambs:
        (x, y), (ox, oy) = jamb.start, jamb.outward
        rays.append(shapely.LineString([(x, y), (x + ox * PASSAGE_M[1], y + oy * PASSAGE_M[1])]))
    tree = shapely.STRtree([shapely.LineString([jamb.start, jamb.end]) for jamb in jambs])
    first, second = tree.query(rays, predicate="dwithin", distance=2 * _ALIGNED_M)
    return [(jambs[int(a)], jambs[int(b)]) for a, b in zip(first, second, strict=True) if a < b]


def _facing(first: Jamb, second: Jamb) -> Portal | None:
    """The portal between two jambs that look at each other squarely."""
    if first.outward[0] * second.outward[0] + first.outward[1] * second.outward[1] > -0.99:
        return None
    ends = sorted((second.start, second.end), key=lambda p: dist(p, first.start))
    (a, c), (b, d) = (first.start, first.end), (ends[0], ends[1])
    ox, oy = first.outward
    for start, end in ((a, b), (c, d)):
        vx, vy = end[0] - start[0], end[1] - start[1]
        ahead, aside = vx * ox + vy * oy, abs(-vx * oy + vy * ox)
        if not PASSAGE_M[0] <= ahead <= PASSAGE_M[1] or aside > _ALIGNED_M:
            return None
    return Portal(((a, b), (c, d)), "jambs")


def _to_wall(jamb: Jamb, swing: Swing, walls: list[Stroke], tree: shapely.STRtree) -> Portal | None:
    """The rectangle from a jamb straight on to the next wall, if a leaf of that width swings."""
    ox, oy = jamb.outward
    faces = []
    for x, y in (jamb.start, jamb.end):
        start = x + ox * 0.05, y + oy * 0.05
        way = shapely.LineString([start, (x + ox * PASSAGE_M[1], y + oy * PASSAGE_M[1])])
        hits = [way.intersection(line(walls[int(i)])) for i in tree.query(way, "intersects")]
        reach = min((hit.distance(shapely.Point(x, y)) for hit in hits), default=0.0)
        if not 0.85 * swing.radius <= reach <= 1.15 * swing.radius + 0.05:
            return None
        faces.append(((x, y), (x + ox * reach, y + oy * reach)))
    portal = Portal((faces[0], faces[1]), "corner")
    corners = [point for face in portal.faces for point in face]
    return portal if min(dist(swing.centre, c) for c in corners) < _HINGE_M else None


def _off_portals(strokes: list[Stroke], known: list[Portal]) -> list[Stroke]:
    """The strokes that do not have both their ends on one portal."""
    if not known or not strokes:
        return strokes
    tree = shapely.STRtree([portal.shape for portal in known])
    on_both: set[tuple[int, int]] | None = None
    for ends in ([s.start for s in strokes], [s.end for s in strokes]):
        which, portal = tree.query(shapely.points(ends), predicate="dwithin", distance=0.01)
        pairs = set(zip(which.tolist(), portal.tolist(), strict=True))
        on_both = pairs if on_both is None else on_both & pairs
    taken = {which for which, _ in on_both or set()}
    return [s for i, s in enumerate(strokes) if i not in taken]
